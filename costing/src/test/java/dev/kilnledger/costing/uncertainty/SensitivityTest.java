package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.units.Amounts.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.ledger.FixturePlan;
import java.util.List;
import org.junit.jupiter.api.Test;

class SensitivityTest {
  private static final SobolAnalysis SOBOL = SobolAnalysis.standard();

  @Test
  void splitsTheVarianceOfIshigamisFunction() {
    // Ishigami and Homma, 1990, as in textbooks of sensitivity analysis (from memory): f = sin x1 +
    // a sin^2 x2 + b x3^4 sin x1, x uniform in -pi to pi. V1 = (1 + b pi^4 / 5)^2 / 2, V2 = a^2 /
    // 8, V13 = 8 b^2 pi^8 / 225, all else 0.
    double a = 7;
    double b = 0.1;
    double v1 = Math.pow(1 + b * Math.pow(Math.PI, 4) / 5, 2) / 2;
    double v2 = a * a / 8;
    double v13 = 8 * b * b * Math.pow(Math.PI, 8) / 225;
    double v = v1 + v2 + v13;
    List<UncertainInput> inputs = List.of(angle("x1"), angle("x2"), angle("x3"));
    SobolIndices indices =
        SOBOL.indices(
            "Ishigami's function",
            inputs,
            x ->
                Math.sin(x[0])
                    + a * Math.pow(Math.sin(x[1]), 2)
                    + b * Math.pow(x[2], 4) * Math.sin(x[0]),
            Trials.fixed(60_000, 1));
    // The variance of 120,000 values: kurtosis 3.5 gives a relative error of 0.0046.
    assertThat(indices.variance()).isCloseTo(v, within(0.02 * v));
    double[] first = {v1 / v, v2 / v, 0};
    double[] total = {(v1 + v13) / v, v2 / v, v13 / v};
    for (int i = 0; i < 3; i++) {
      SobolIndex index = indices.indices().get(i);
      assertThat(index.firstOrder()).isCloseTo(first[i], within(4 * index.firstOrderError()));
      assertThat(index.total()).isCloseTo(total[i], within(4 * index.totalError()));
      assertThat(index.firstOrderError()).isBetween(1e-4, 0.02);
      assertThat(index.totalError()).isBetween(1e-4, 0.02);
    }
    assertThat(indices.byTotal())
        .extracting(index -> index.input().name())
        .containsExactly("x1", "x2", "x3");
  }

  private static UncertainInput angle(String name) {
    return UncertainInput.of(name, Rectangular.of(-Math.PI, Math.PI), INVENTED);
  }

  @Test
  void sharesTheVarianceOfASum() {
    // f = 3 x1 + x2 + 5 with variances 1 and 4: shares 9 / 13 and 4 / 13, first and total alike;
    // x3 does nothing.
    List<UncertainInput> inputs =
        List.of(
            UncertainInput.of("x1", Normal.of(2, 1), INVENTED),
            UncertainInput.of("x2", Normal.of(100, 2), INVENTED),
            UncertainInput.of("x3", Normal.of(0, 9), INVENTED));
    Model sum = x -> 3 * x[0] + x[1] + 5;
    SobolIndices indices = SOBOL.indices("sum", inputs, sum, Trials.fixed(20_000, 2));
    double[] share = {9 / 13.0, 4 / 13.0, 0};
    for (int i = 0; i < 3; i++) {
      SobolIndex index = indices.indices().get(i);
      assertThat(index.firstOrder())
          .isCloseTo(share[i], within(4 * index.firstOrderError() + 1e-12));
      assertThat(index.total()).isCloseTo(share[i], within(4 * index.totalError() + 1e-12));
    }
    assertThat(indices.indices().get(2).total()).isZero();
    // The errors that the jackknife states are those that other seeds show.
    double spread = 0;
    for (int seed = 10; seed < 40; seed++) {
      SobolIndex index =
          SOBOL.indices("sum", inputs, sum, Trials.fixed(1_280, seed)).indices().get(0);
      spread += Math.pow((index.total() - share[0]) / index.totalError(), 2) / 30;
    }
    // A mean of 30 squares of standard normal values: 1, with a standard deviation of 0.26.
    assertThat(spread).isBetween(0.3, 2.0);
  }

  @Test
  void dependsOnTheSeedAndNotOnTheThreads() {
    UncertainPlan plan = fixture();
    Trials rows = Trials.fixed(700, 5);
    SobolIndices alone = new SobolAnalysis(1).indices(plan, CashFigure.ALL_PARTS, 25, rows);
    assertThat(new SobolAnalysis(2).indices(plan, CashFigure.ALL_PARTS, 25, rows)).isEqualTo(alone);
    assertThat(new SobolAnalysis(8).indices(plan, CashFigure.ALL_PARTS, 25, rows)).isEqualTo(alone);
    assertThat(alone.figure()).isEqualTo("all parts, 25 parts");
  }

  @Test
  void namesTheDriversOfAPlan() {
    // 25 parts take 7 spools at 60 +- 10 % and 5 crucibles at 45 +- 10 %: variances 42^2 and
    // 22.5^2 for as many standard deviations.
    SobolIndices indices =
        SOBOL.indices(fixture(), CashFigure.ALL_PARTS, 25, Trials.fixed(4_000, 1));
    SobolIndex first = indices.byTotal().get(0);
    assertThat(first.input().name()).isEqualTo("price of filament");
    assertThat(first.total())
        .isCloseTo(42 * 42 / (42 * 42 + 22.5 * 22.5), within(4 * first.totalError()));
    assertThat(Math.sqrt(indices.variance()))
        .isCloseTo(Math.hypot(42, 22.5), within(1.5)); // five standard errors, sd / sqrt(2 n)
    Tornado tornado = OneAtATime.standard().tornado(fixture(), CashFigure.ALL_PARTS, 25);
    // The quantiles of 5 and 95 % lie 1.644854 standard deviations from the mean (normal tables).
    assertThat(tornado.bars())
        .extracting(bar -> bar.input().name())
        .containsExactly("price of filament", "price of crucible");
    assertThat(tornado.bars().get(0).swing()).isCloseTo(2 * 1.644854 * 42, within(1e-3));
    assertThat(tornado.bars().get(1).swing()).isCloseTo(2 * 1.644854 * 22.5, within(1e-3));
    // Fixture: 4,100 for printer and kiln, 5 x 45, 7 x 60, 4 x 18 (1.71 + 25 x 0.09 = 3.96 kg), 8 x
    // 22 (7.5 kg), 25 x 8.40.
    assertThat(tornado.middle()).isCloseTo(4100 + 225 + 420 + 72 + 176 + 210, within(1e-9));
    assertThat(tornado.bars().get(0).atLow()).isLessThan(tornado.middle());
  }

  @Test
  void refusesWhatItCannotSplit() {
    assertThatThrownBy(
            () ->
                SOBOL.indices(
                    UncertainPlan.of(FixturePlan.of(1), List.of()),
                    CashFigure.USAGE,
                    1,
                    Trials.fixed(1_000, 1)))
        .hasMessageContaining("there is no input; accepted is one or more");
    assertThatThrownBy(() -> SOBOL.indices(fixture(), CashFigure.USAGE, 1, Trials.fixed(127, 1)))
        .hasMessage("Sobol analysis: rows are 127; accepted is a fixed number of 128 or more");
    assertThatThrownBy(() -> new OneAtATime(percent(95), percent(5)))
        .hasMessageContaining("quantiles are 95 % and 5 %; accepted is more than 0, ascending");
    assertThatThrownBy(() -> OneAtATime.standard().tornado(fixture(), CashFigure.USAGE, 0))
        .hasMessageContaining("parts is 0; accepted is from 1");
  }

  private static UncertainPlan fixture() {
    return UncertainPlan.of(
        FixturePlan.of(1),
        List.of(
            UncertainInput.price("crucible", Normal.of(45, 4.5), INVENTED),
            UncertainInput.price("filament", Normal.of(60, 6), INVENTED)));
  }
}
