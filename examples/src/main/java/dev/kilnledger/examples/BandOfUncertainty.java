package dev.kilnledger.examples;

import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.PERCENT;
import static org.joda.money.CurrencyUnit.EUR;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.uncertainty.Beta;
import dev.kilnledger.costing.uncertainty.BreakEvenBand;
import dev.kilnledger.costing.uncertainty.CashFigure;
import dev.kilnledger.costing.uncertainty.LogNormal;
import dev.kilnledger.costing.uncertainty.MonteCarlo;
import dev.kilnledger.costing.uncertainty.OneAtATime;
import dev.kilnledger.costing.uncertainty.Pert;
import dev.kilnledger.costing.uncertainty.SobolAnalysis;
import dev.kilnledger.costing.uncertainty.SobolIndex;
import dev.kilnledger.costing.uncertainty.TornadoBar;
import dev.kilnledger.costing.uncertainty.Trials;
import dev.kilnledger.costing.uncertainty.Triangular;
import dev.kilnledger.costing.uncertainty.UncertainInput;
import dev.kilnledger.costing.uncertainty.UncertainPlan;
import dev.kilnledger.costing.uncertainty.UncertainStatement;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.units.Amount;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.joda.money.BigMoney;

/** Prints how sure the cost of a hundred latch cams is, and which inputs matter. */
public final class BandOfUncertainty {
  private static final Source INVENTED = Source.user("invented for this example");
  private static final long PARTS = 100;
  private static final BigMoney BUDGET = BigMoney.of(EUR, 3000);
  private static final BigMoney OUTSIDE_PRICE = BigMoney.of(EUR, 30);

  private BandOfUncertainty() {}

  /**
   * Prints the bands, the probabilities and the main drivers.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.print(text());
  }

  /** {@return the window workshop's plan with what is not known of it} */
  static UncertainPlan plan() {
    LedgerPlan plan =
        WholeJob.standard().answer(WindowWorkshop.latchCams(PARTS)).statement().plan();
    return UncertainPlan.builder()
        .plan(plan)
        .addInputs(
            UncertainInput.price("bronze filament", LogNormal.of(80, 0.15), INVENTED),
            UncertainInput.price("electricity", Triangular.of(0.25, 0.30, 0.45), INVENTED),
            UncertainInput.quantity("bronze filament", Pert.of(17, 18, 24), INVENTED).in(GRAM),
            UncertainInput.life("crucible", Pert.of(4, 12, 16), INVENTED),
            UncertainInput.loss("alumina", Pert.of(2, 5, 15), INVENTED).in(PERCENT),
            UncertainInput.factor(
                "firing that is hotter or longer",
                List.of("quantity of electricity", "quantity of carbon"),
                Triangular.of(0.85, 1, 1.4),
                INVENTED),
            UncertainInput.partYield(Stage.SINTER, Beta.ofTried(17, 20), INVENTED),
            UncertainInput.chargeYield(Stage.SINTER, Beta.ofTried(11, 12), INVENTED))
        .failureRule(FailureRule.AT_RANDOM)
        .build();
  }

  /** {@return what is printed} */
  static String text() {
    UncertainPlan plan = plan();
    UncertainStatement drawn =
        MonteCarlo.standard().statement(plan, PARTS, Trials.fixed(20_000, 1));
    BreakEvenBand breakEven =
        MonteCarlo.standard().breakEven(plan, OUTSIDE_PRICE, 10 * PARTS, Trials.fixed(20_000, 2));

    TextPage page = new TextPage();
    page.title("How sure is the cost of " + PARTS + " latch cams?");
    page.paragraph("", "Distributions, budget and outside price are invented for this example.");
    page.heading("Not known for sure");
    plan.inputs().forEach(input -> page.paragraph("  - ", input.text()));
    page.paragraph(
        "  - ", "failures: " + plan.failureRule().words() + ", with the yields that are drawn");
    page.heading("Bands, by " + drawn.trials().text());
    for (CashFigure figure : CashFigure.values()) {
      page.paragraph("  ", drawn.band(figure).text());
    }
    page.paragraph(
        "  ",
        "stays within " + BUDGET + ": " + percent(drawn.allParts().probabilityWithin(BUDGET)));
    page.paragraph(
        "  ",
        "has broken even against "
            + OUTSIDE_PRICE
            + " a part by part "
            + PARTS
            + ": "
            + percent(breakEven.probabilityBy(PARTS))
            + "; half of the trials by part "
            + breakEven.median().map(String::valueOf).orElse("beyond " + breakEven.parts()));
    page.heading("Main drivers of the cash for all parts, failures as planned starts");
    page.row("  %-42s %12s %12s   %s", "share of the variance", "alone", "in all", "5 to 95 %");
    List<TornadoBar> bars = OneAtATime.standard().tornado(plan, CashFigure.ALL_PARTS, PARTS).bars();
    for (SobolIndex index :
        SobolAnalysis.standard()
            .indices(plan, CashFigure.ALL_PARTS, PARTS, Trials.fixed(4_096, 3))
            .byTotal()) {
      TornadoBar bar =
          bars.stream().filter(b -> b.input().equals(index.input())).findFirst().orElseThrow();
      page.row(
          "  %-42s %10.0f %% %10.0f %%   %.0f to %.0f",
          index.input().name(),
          100 * Math.max(0, index.firstOrder()),
          100 * index.total(),
          bar.atLow(),
          bar.atHigh());
    }
    page.paragraph(
        "  ",
        "The last column is the cash in EUR with that input alone at its 5 % and 95 % quantile."
            + " Inputs are independent of each other but for what they share.");
    return page.toString();
  }

  private static String percent(Amount<Dimensionless> share) {
    return share.format(PERCENT, 0);
  }
}
