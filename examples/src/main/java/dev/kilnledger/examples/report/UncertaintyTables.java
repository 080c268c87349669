package dev.kilnledger.examples.report;

import dev.kilnledger.costing.breakeven.Crossing;
import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.uncertainty.CashBand;
import dev.kilnledger.costing.uncertainty.CashFigure;
import dev.kilnledger.costing.uncertainty.Tornado;
import dev.kilnledger.costing.uncertainty.TornadoBar;
import dev.kilnledger.costing.uncertainty.UncertainInput;
import dev.kilnledger.costing.uncertainty.UncertainStatement;
import java.util.Optional;
import org.jsoup.nodes.Element;

/** Break-even and uncertainty in numbers. */
final class UncertaintyTables {
  private UncertaintyTables() {}

  static void writeCrossing(Element section, JobReport.BreakEven ways, Statement statement) {
    Crossing crossing = ways.crossing();
    Table table =
        new Table(
            section,
            "making against " + ways.other() + ": cash where they cross",
            "",
            "#part",
            "#making",
            "#" + ways.other());
    crossing(
        table,
        "first",
        crossing.first(),
        crossing.cashAtFirst(),
        crossing.otherAtFirst(),
        statement);
    crossing(
        table,
        "for good",
        crossing.permanent(),
        crossing.cashAtPermanent(),
        crossing.otherAtPermanent(),
        statement);
    table.row(
        "used up by a part",
        "",
        statement.money(crossing.usage().total()).toString(),
        statement.money(crossing.otherUsage().total()).toString());
  }

  private static void crossing(
      Table table,
      String name,
      Optional<Long> part,
      Optional<Account> making,
      Optional<Account> other,
      Statement statement) {
    table.row(
        name,
        part.map(number -> Long.toString(number)).orElse("never"),
        making.map(account -> statement.money(account.total()).toString()).orElse(""),
        other.map(account -> statement.money(account.total()).toString()).orElse(""));
  }

  static void writeBands(Element section, UncertainStatement statement) {
    Table table =
        new Table(
            section,
            statement.trials().text(),
            "figure, " + statement.allParts().currency().getCode(),
            "#5 %",
            "#median",
            "#95 %",
            "#mean");
    for (CashFigure figure : CashFigure.values()) {
      CashBand band = statement.band(figure);
      table.row(
          figure.words(),
          band.interval().low().getAmount().toPlainString(),
          band.median().getAmount().toPlainString(),
          band.interval().high().getAmount().toPlainString(),
          band.mean().getAmount().toPlainString());
    }
    Table inputs = new Table(section, "what was drawn", "input", "distribution", "source");
    for (UncertainInput input : statement.plan().inputs()) {
      String distribution = input.text().substring(input.name().length() + ": ".length());
      inputs.row(input.name(), distribution, input.source().cite());
    }
  }

  static void writeInputs(Element section, Tornado tornado, String currency) {
    Table table =
        new Table(
            section,
            tornado.figure() + ", " + currency + ", one input at a time",
            "input",
            "#at " + Words.percent(tornado.low().si()),
            "#at " + Words.percent(tornado.high().si()),
            "#swing");
    for (TornadoBar bar : tornado.bars()) {
      table.row(
          bar.input().name(),
          Words.decimals(bar.atLow(), 2),
          Words.decimals(bar.atHigh(), 2),
          Words.decimals(bar.swing(), 2));
    }
  }
}
