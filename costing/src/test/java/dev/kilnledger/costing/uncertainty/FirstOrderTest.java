package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Tails;
import java.util.List;
import org.junit.jupiter.api.Test;

class FirstOrderTest {
  private static final FirstOrder FIRST_ORDER = FirstOrder.standard();

  @Test
  void calibratesTheGaugeBlock() {
    // JCGM 100:2008, H.1 (published): l = l_s + d - l_s (dalpha theta + alpha_s dtheta); lengths
    // in nm. 50.000838 mm, u_c 32 nm, nu_eff 16, k 2.92, U 93 nm at 99 %.
    List<UncertainInput> inputs =
        List.of(
            input("l_s", 50_000_623, 25, 18),
            input("d", 215, 9.7, 25.6),
            input("alpha_s", 11.5e-6, 1.2e-6, Double.POSITIVE_INFINITY),
            input("theta", -0.1, 0.41, Double.POSITIVE_INFINITY),
            input("dalpha", 0, 0.58e-6, 50),
            input("dtheta", 0, 0.029, 2));
    UncertaintyBudget budget =
        FIRST_ORDER.propagate(
            "length of the block",
            inputs,
            x -> x[0] + x[1] - x[0] * (x[4] * x[3] + x[2] * x[5]),
            percent(99));
    assertThat(budget.estimate()).isCloseTo(50_000_838, within(0.5));
    assertThat(budget.combinedStandardUncertainty()).isCloseTo(32, within(0.5));
    assertThat(Math.floor(budget.effectiveDegreesOfFreedom())).isEqualTo(16);
    assertThat(budget.coverageFactor()).isCloseTo(2.92, within(0.005));
    // The Guide rounds u_c up to 32 before it multiplies: 2.92 x 32 = 93.
    assertThat(budget.expandedUncertainty()).isCloseTo(93, within(1.0));
    // The table of H.1, from memory: contributions 25, 9.7, 0, 0, 2.9, 16.6 nm; the last of them is
    // 50.000623 mm x 11.5e-6 x 0.029 = 16.68 nm before rounding.
    assertThat(budget.lines().stream().map(BudgetLine::contribution).toList())
        .usingElementComparator((a, b) -> Math.abs(a - b) < 0.1 ? 0 : a < b ? -1 : 1)
        .containsExactly(25.0, 9.7, 0.0, 0.0, 2.9, 16.6);
    assertThat(budget.lines().stream().mapToDouble(budget::share).sum()).isCloseTo(1, within(1e-9));
  }

  private static UncertainInput input(String name, double mean, double u, double freedom) {
    return UncertainInput.builder()
        .name(name)
        .distribution(Normal.of(mean, u))
        .degreesOfFreedom(freedom)
        .source(INVENTED)
        .build();
  }

  /** The example of {@link FirstOrder}. */
  @Test
  void multipliesLengthAndWidth() {
    UncertaintyBudget budget =
        FIRST_ORDER.propagate(
            "volume",
            List.of(
                UncertainInput.of("length", Normal.of(40, 0.02), INVENTED),
                UncertainInput.of("width", Normal.of(25, 0.02), INVENTED)),
            values -> values[0] * values[1],
            percent(95));
    assertThat(budget.estimate()).isEqualTo(1000);
    assertThat(budget.combinedStandardUncertainty()).isCloseTo(0.943, within(0.0005));
    // Known standard deviations: the normal quantile, 1.959964.
    assertThat(budget.coverageFactor()).isCloseTo(1.959964, within(5e-7));
    assertThat(budget.findings()).allMatch(finding -> finding.severity() == Severity.PASSED);
  }

  @Test
  void propagatesThroughTheUsageOfAPlan() {
    // The project's ledger case: usage 39.48 with 0.256 spools at 60 and 45 / life of a crucible.
    UncertainPlan plan =
        UncertainPlan.of(
            FixturePlan.of(1),
            List.of(
                UncertainInput.price("filament", Normal.of(60, 6), INVENTED),
                UncertainInput.life("crucible", Triangular.of(5, 6, 7), INVENTED),
                UncertainInput.quantity("filament", Normal.of(128, 4), INVENTED).in(GRAM)));
    UncertaintyBudget budget = FIRST_ORDER.propagate(plan, CashFigure.USAGE, percent(95));
    assertThat(budget.estimate()).isCloseTo(39.48, within(1e-9));
    List<BudgetLine> lines = budget.lines();
    assertThat(lines.get(0).sensitivity()).isCloseTo(0.256, within(1e-9));
    assertThat(lines.get(0).contribution()).isCloseTo(1.536, within(1e-9));
    // -45 / 36, times 1 / sqrt(6): extrapolated differences are good to the fourth order, 1e-6.
    assertThat(lines.get(1).sensitivity()).isCloseTo(-1.25, within(1e-5));
    assertThat(lines.get(1).standardUncertainty()).isCloseTo(1 / Math.sqrt(6), within(1e-9));
    assertThat(lines.get(2).contribution()).isCloseTo(4 * 60 / 500.0, within(1e-9));
    // 45 / life bends: |45/(6+u) + 45/(6-u) - 15| / |45/(6+u) - 45/(6-u)| = u / 6 = 0.068.
    assertThat(lines.get(1).bend()).isCloseTo(1 / Math.sqrt(6) / 6, within(1e-9));
  }

  @Test
  void saysWhereTheFirstOrderMissesSomething() {
    UncertainPlan plan =
        UncertainPlan.of(
            FixturePlan.of(1),
            List.of(UncertainInput.life("crucible", Rectangular.of(2, 10), INVENTED)));
    UncertaintyBudget budget = FIRST_ORDER.propagate(plan, CashFigure.USAGE, percent(95));
    // u / mean = 8 / sqrt(12) / 6 = 0.385.
    assertThat(budget.findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.code()).isEqualTo(UncertaintyFinding.LINEAR_OVER_SPREAD);
              assertThat(finding.severity()).isEqualTo(Severity.WARNING);
              assertThat(finding.message())
                  .isEqualTo(
                      "usage per part bends over the spread of life of crucible: the first order"
                          + " misses part of it, Monte Carlo does not");
              assertThat(finding.measured().orElseThrow().si()).isCloseTo(0.385, within(0.0005));
            });
    assertThat(
            FIRST_ORDER
                .propagate(
                    "square",
                    List.of(UncertainInput.of("x", Normal.of(0, 1), INVENTED)),
                    x -> x[0] * x[0],
                    percent(95))
                .findings()
                .get(0)
                .severity())
        .isEqualTo(Severity.WARNING);
  }

  /** Bends are (f(u) + f(-u) - 2 f(0)) / (f(u) - f(-u)) about a mean of 0 with u = 1. */
  @Test
  void tellsStraightLinesFromBends() {
    List<UncertainInput> inputs = List.of(input("x", 0, 1, 50), input("y", 5, 1, 50));
    // 10 x + x^2: 2 / 20, which is the limit; y does nothing.
    UncertaintyBudget limit =
        FIRST_ORDER.propagate("result", inputs, x -> 10 * x[0] + x[0] * x[0], percent(50));
    assertThat(limit.lines().get(0).bend()).isEqualTo(0.1);
    assertThat(limit.lines().get(1).bend()).isZero();
    assertThat(limit.findings()).allMatch(finding -> finding.severity() == Severity.PASSED);
    assertThat(limit.findings().get(0).message())
        .isEqualTo("result is nearly a straight line over the spread of x");
    // 10 x + 1.5 x^2: 3 / 20.
    assertThat(
            FIRST_ORDER
                .propagate("result", inputs, x -> 10 * x[0] + 1.5 * x[0] * x[0], ratio(0.9999))
                .findings())
        .extracting(Finding::severity)
        .containsExactly(Severity.WARNING, Severity.PASSED);
    for (double coverage : new double[] {0.499, 0.99991}) {
      assertThatThrownBy(() -> FIRST_ORDER.propagate("result", inputs, x -> x[0], ratio(coverage)))
          .hasMessageContaining("; accepted is from 0.5 to 0.9999");
    }
  }

  /** A single value does not spread, and adds nothing to what does. */
  @Test
  void addsNothingForWhatIsCertain() {
    UncertainInput certain = UncertainInput.of("certain", Empirical.of(5), INVENTED);
    UncertaintyBudget nothing =
        FIRST_ORDER.propagate("result", List.of(certain), x -> 3 * x[0], percent(95));
    assertThat(nothing.estimate()).isEqualTo(15);
    assertThat(nothing.combinedStandardUncertainty()).isZero();
    assertThat(nothing.expandedUncertainty()).isZero();
    assertThat(nothing.lines().get(0).sensitivity()).isZero();
    assertThat(nothing.share(nothing.lines().get(0))).isZero();
    UncertaintyBudget one =
        FIRST_ORDER.propagate(
            "result",
            List.of(certain, input("x", 0, 2, Double.POSITIVE_INFINITY)),
            x -> 3 * x[0] + x[1],
            percent(95));
    assertThat(one.combinedStandardUncertainty()).isCloseTo(2, within(1e-12));
    assertThat(one.share(one.lines().get(0))).isZero();
    assertThat(one.share(one.lines().get(1))).isCloseTo(1, within(1e-12));
  }

  @Test
  void refusesStepFunctions() {
    UncertainPlan fixture =
        UncertainPlan.of(
            FixturePlan.of(1),
            List.of(UncertainInput.price("filament", Normal.of(60, 6), INVENTED)));
    assertThatThrownBy(() -> FIRST_ORDER.propagate(fixture, CashFigure.ALL_PARTS, percent(95)))
        .hasMessage(
            "first-order propagation: all parts is cash for whole packs, a step function that has"
                + " no derivative; accepted is usage per part, or Monte Carlo for the cash");
    LedgerPlan rounded =
        LedgerPlan.builder()
            .prices(book().build())
            .partsPerFiring(1)
            .addResources(
                consumed("filament", Driver.PART, grams(128)).tails(Tails.STRANDED).build(),
                RunDown.builder()
                    .item("packing powder")
                    .fill(grams(1800))
                    .loss(percent(5))
                    .minimum(percent(60))
                    .source(INVENTED)
                    .build(),
                Aged.builder().item("carbon").fill(grams(300)).cycles(4).source(INVENTED).build())
            .build();
    UncertainPlan steps =
        UncertainPlan.of(
            rounded,
            List.of(
                UncertainInput.quantity("filament", Rectangular.of(100, 140), INVENTED).in(GRAM),
                UncertainInput.loss("packing powder", Rectangular.of(0.03, 0.07), INVENTED),
                UncertainInput.life("carbon", Rectangular.of(2, 6), INVENTED)));
    assertThatThrownBy(() -> FIRST_ORDER.propagate(steps, CashFigure.USAGE, percent(95)))
        .hasMessageContaining("quantity of filament enters as a whole number of uses")
        .hasMessageContaining("loss of packing powder enters as a whole number of uses")
        .hasMessageContaining("life of carbon enters as a whole number of uses");
    // Whole numbers that are certain are no steps: 60 for three parts, 18 for 1.8 kg that serve 10
    // firings (0.95^9 is 63 %, 0.95^10 not 60 %), and 22 for 0.3 kg that serve four.
    UncertainPlan certain =
        UncertainPlan.of(
            rounded, List.of(UncertainInput.price("filament", Normal.of(60, 6), INVENTED)));
    assertThat(FIRST_ORDER.propagate(certain, CashFigure.USAGE, percent(95)).estimate())
        .isCloseTo(60 / 3.0 + 18 * 1.8 / 10 + 22 * 0.3 / 4, within(1e-9));
    assertThatThrownBy(() -> FIRST_ORDER.propagate(fixture, CashFigure.USAGE, ratio(1)))
        .hasMessageContaining("coverage is 1; accepted is from 0.5 to 0.9999");
  }
}
