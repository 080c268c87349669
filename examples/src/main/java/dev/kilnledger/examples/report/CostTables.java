package dev.kilnledger.examples.report;

import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.ledger.Surcharge;
import java.math.RoundingMode;
import org.jsoup.nodes.Element;

/** The accounts of a statement, line by line; sums are rounded by the rule of the statement. */
final class CostTables {
  private final Element section;
  private final Statement statement;

  private CostTables(Element section, Statement statement) {
    this.section = section;
    this.statement = statement;
  }

  static void write(Element section, Statement statement) {
    section
        .appendElement("p")
        .text(
            "Packs are bought "
                + statement.plan().buying().words()
                + ". One firing is the whole route. A part costs what its own shortage triggers; a"
                + " part of a charge that is already fired costs nothing more.");
    CostTables tables = new CostTables(section, statement);
    tables.account(statement.firstPart());
    if (statement.parts() >= 2) {
      tables.account(statement.secondPart());
    }
    if (statement.parts() >= 3) {
      tables.account(statement.lastPart());
    }
    tables.account(statement.allParts());
    tables.account(statement.usage());
    tables.account(statement.leftovers());
  }

  private void account(Account account) {
    String sum = statement.money(account.total()).toString();
    if (account.lines().isEmpty() && account.surcharges().isEmpty()) {
      if (account != statement.leftovers()) {
        section
            .appendElement("p")
            .addClass("caption")
            .text(Words.kept(account.title() + ": " + sum + ", nothing has to be bought"));
      }
      return;
    }
    Table table = new Table(section, account.title(), "item", "what", "#amount");
    for (Line line : account.lines()) {
      table.row(line.item(), what(line), Words.exact(line.amount()));
    }
    for (Surcharge surcharge : account.surcharges()) {
      table.row(
          surcharge.title(),
          "on " + Words.exact(surcharge.base()),
          Words.exact(surcharge.amount()));
    }
    table.total("sum", "", sum);
    if (account == statement.allParts()) {
      table.total("on average", "", statement.money(statement.average()).toString());
    }
  }

  private static String what(Line line) {
    return line.entry().words()
        + " "
        + line.packs().setScale(6, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString()
        + " × "
        + PurchaseTables.content(line.offer())
        + " at "
        + line.offer().price();
  }
}
