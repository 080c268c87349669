package dev.kilnledger.examples;

import static org.joda.money.CurrencyUnit.EUR;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.breakeven.BreakEven;
import dev.kilnledger.costing.breakeven.Crossing;
import dev.kilnledger.costing.breakeven.OutsideOffer;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.CostStep;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.ledger.Loadings;
import dev.kilnledger.costing.ledger.ShoppingGroup;
import dev.kilnledger.costing.ledger.ShoppingList;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amounts;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * What an adviser hands over beside the statement: the shopping list, the staircase of costs, the
 * kiln as loaded against full, and when making beats buying. The outside prices are invented.
 */
final class AdviceText {
  private static final Source INVENTED = Source.user("invented for this example");
  private static final long STEPS = 25;

  private final TextPage page = new TextPage();
  private final JobAnswer answer;
  private final Statement statement;

  private AdviceText(JobAnswer answer) {
    this.answer = answer;
    this.statement = answer.statement();
  }

  /** The text for an answer. */
  static String of(JobAnswer answer) {
    AdviceText text = new AdviceText(answer);
    text.shopping(answer.statement().firstShoppingList());
    text.staircase();
    text.loadings();
    text.breakEven();
    return text.page.toString();
  }

  private void shopping(ShoppingList list) {
    page.heading("Shopping list for " + list.title());
    for (ShoppingGroup group : list.groups()) {
      amount(group.name(), statement.money(group.subtotal()).toString());
      for (Line line : group.lines()) {
        amount("  " + line.text() + ", " + line.offer().supplier(), line.amount().toString());
      }
    }
    amount("to be ordered", statement.money(list.total()).toString());
  }

  private void staircase() {
    page.heading("Part by part");
    page.row("  %6s %14s %16s   %s", "part", "cash", "average so far", "bought or metered");
    for (CostStep step : Ledger.standard().staircase(statement.plan(), 1, STEPS)) {
      List<String> items = step.cash().lines().stream().map(Line::item).distinct().toList();
      page.row(
          "  %6d %14s %16s   %s",
          step.part(),
          statement.money(step.cash().total()),
          statement.money(step.average()),
          step.part() == 1 ? "everything on the list, electricity" : String.join(", ", items));
    }
  }

  private void loadings() {
    int capacity = answer.load().arrangement().map(arrangement -> arrangement.capacity()).orElse(0);
    int planned = answer.job().partsPerCharge();
    page.heading("As loaded, and with the kiln filled");
    if (capacity <= planned) {
      page.paragraph("  ", "The crucible is full with " + planned + " parts.");
      return;
    }
    Loadings loadings = Ledger.standard().loadings(statement.plan(), capacity, statement.parts());
    page.row("  %-40s %20s %20s", "", planned + " in a charge", capacity + " in a charge");
    row("usage per part", loadings, Statement::usage);
    row("all " + statement.parts() + " parts", loadings, Statement::allParts);
    page.paragraph(
        "  ",
        "The firing is taken to use the same with a full crucible; its packing and heat differ a"
            + " little. A fuller charge is checked like any other: as a job of its own.");
  }

  private interface Figure {
    Account of(Statement statement);
  }

  private void row(String what, Loadings loadings, Figure figure) {
    page.row(
        "  %-40s %20s %20s",
        what,
        statement.money(figure.of(loadings.asPlanned()).total()),
        statement.money(figure.of(loadings.filled()).total()));
  }

  private void breakEven() {
    page.heading("Make or buy; outside prices are invented");
    crossing("a foundry at EUR 30.00 a part, any number", OutsideOffer.at(BigMoney.of(EUR, 30)));
    crossing(
        "a mill at EUR 4.00 a part, 50 at least, EUR 25.00 for sending",
        OutsideOffer.builder()
            .part(
                Offer.builder()
                    .item("milled cam")
                    .supplier("mill")
                    .content(Amounts.ratio(1))
                    .price(Money.of(EUR, 4))
                    .minimumOrder(50)
                    .source(INVENTED)
                    .build())
            .shipping(BigMoney.of(EUR, 25))
            .build());
  }

  private void crossing(String against, OutsideOffer outside) {
    Crossing crossing = BreakEven.standard().find(statement.plan(), outside);
    page.paragraph("  - ", "Against " + against + ": " + crossing.text() + ".");
  }

  private void amount(String what, String amount) {
    page.row("  %-80s %17s", what, amount);
  }
}
