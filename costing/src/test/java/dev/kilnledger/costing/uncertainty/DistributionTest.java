package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleSupplier;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Expected values not named otherwise follow from the closed forms given beside them. */
class DistributionTest {
  static List<Distribution> all() {
    return List.of(
        Normal.of(60, 5),
        Rectangular.of(2, 5),
        Triangular.of(8, 10, 15),
        Pert.of(8, 10, 15),
        LogNormal.of(100, 0.3),
        Beta.of(17.5, 3.5),
        Binomial.of(20, 0.9),
        Weibull.of(2, 10),
        Empirical.of(3, 1, 4, 1, 5),
        Binomial.of(20, 0.9).times(0.05));
  }

  @Test
  void meetsTheCheckValues() {
    // Recomputed check values of the project, from the closed forms of each law; the tolerances
    // are half a unit of the last digit given.
    Distribution triangular = Triangular.of(8, 10, 15);
    assertThat(triangular.mean()).isCloseTo(11, within(1e-12));
    assertThat(triangular.quantile(percent(5))).isCloseTo(8.8367, within(5e-5));
    assertThat(triangular.quantile(percent(95))).isCloseTo(13.6771, within(5e-5));
    Distribution pert = Pert.of(8, 10, 15);
    assertThat(pert.mean()).isCloseTo(10.5, within(1e-12));
    assertThat(pert.variance()).isCloseTo(1.607143, within(5e-7));
    Distribution price = LogNormal.of(100, 0.3);
    assertThat(price.median()).isCloseTo(95.7826, within(5e-5));
    assertThat(price.quantile(percent(95))).isCloseTo(155.2358, within(5e-5));
    Distribution life = Weibull.of(2, 10);
    assertThat(life.mean()).isCloseTo(8.86227, within(5e-6));
    assertThat(life.quantile(percent(10))).isCloseTo(3.24593, within(5e-6));
  }

  @Test
  void hasTheMomentsOfTheTextbook() {
    assertThat(Rectangular.of(2, 5).variance()).isCloseTo(9 / 12.0, within(1e-12));
    assertThat(LogNormal.of(100, 0.3).mean()).isCloseTo(100, within(1e-9));
    assertThat(LogNormal.of(100, 0.3).standardDeviation()).isCloseTo(30, within(1e-9));
    assertThat(Binomial.of(20, 0.9).mean()).isCloseTo(18, within(1e-12));
    assertThat(Binomial.of(20, 0.9).variance()).isCloseTo(1.8, within(1e-12));
    // A count as a share: mean p, variance p (1 - p) / n.
    assertThat(Binomial.of(20, 0.9).times(0.05).mean()).isCloseTo(0.9, within(1e-12));
    assertThat(Binomial.of(20, 0.9).times(0.05).variance()).isCloseTo(0.0045, within(1e-12));
    // Jeffreys: (17 + 1/2) / (20 + 1).
    assertThat(Beta.ofTried(17, 20).mean()).isCloseTo(17.5 / 21, within(1e-12));
    assertThat(Beta.ofTried(0, 1).mean()).isCloseTo(0.25, within(1e-12));
    assertThat(Beta.ofTried(1, 1).mean()).isCloseTo(0.75, within(1e-12));
    assertThat(Normal.of(60, 5).quantile(ratio(0.975))).isCloseTo(69.79982, within(5e-6));
  }

  @Test
  void drawsObservedValuesAgain() {
    Distribution seen = Empirical.of(3, 1, 4, 1, 5);
    assertThat(seen.mean()).isCloseTo(2.8, within(1e-12));
    assertThat(seen.variance()).isCloseTo(2.56, within(1e-12)); // 52 / 5 - 2.8^2
    assertThat(seen.quantile(percent(40))).isEqualTo(1);
    assertThat(seen.quantile(percent(41))).isEqualTo(3);
    assertThat(seen.shareUpTo(3.5).si()).isEqualTo(0.6);
    assertThat(seen.shareUpTo(0.9).si()).isZero();
  }

  @ParameterizedTest
  @MethodSource("all")
  void drawsWhatItsQuantilesSay(Distribution distribution) {
    int draws = 200_000;
    DoubleSupplier sampler =
        Law.of(distribution).sampler(RandomSource.XO_SHI_RO_256_PP.create(20261125L));
    double sum = 0;
    int belowMedian = 0;
    int belowHigh = 0;
    double median = distribution.median();
    double high = distribution.quantile(percent(90));
    for (int i = 0; i < draws; i++) {
      double value = sampler.getAsDouble();
      sum += value;
      belowMedian += value <= median ? 1 : 0;
      belowHigh += value <= high ? 1 : 0;
    }
    // Five standard errors.
    assertThat(sum / draws)
        .isCloseTo(
            distribution.mean(), within(5 * distribution.standardDeviation() / Math.sqrt(draws)));
    double atMedian = distribution.shareUpTo(median).si();
    double atHigh = distribution.shareUpTo(high).si();
    assertThat(atMedian).isGreaterThan(0.5 - 1e-9);
    assertThat((double) belowMedian / draws).isCloseTo(atMedian, within(0.006));
    assertThat((double) belowHigh / draws).isCloseTo(atHigh, within(0.004));
    assertThat(distribution.text()).isNotBlank();
  }

  @Test
  void saysWhatItIs() {
    assertThat(all())
        .extracting(Distribution::text)
        .containsExactly(
            "normal, mean 60, standard deviation 5",
            "rectangular, 2 to 5",
            "triangular, 8 to 15, most likely 10",
            "PERT, 8 to 15, most likely 10",
            "lognormal, mean 100, coefficient of variation 0.3",
            "beta, alpha 17.5, beta 3.5",
            "binomial, 20 trials of chance 0.9",
            "Weibull, shape 2, scale 10",
            "one of 5 values from 1 to 5",
            "0.05 times binomial, 20 trials of chance 0.9");
  }

  @Test
  void refusesWhatIsNoDistribution() {
    assertThatThrownBy(() -> Normal.of(Double.NaN, 0))
        .hasMessage(
            "normal distribution: mean is NaN; accepted is a finite number; and standard deviation"
                + " is 0; accepted is more than zero");
    assertThatThrownBy(() -> Rectangular.of(5, 2))
        .hasMessage("rectangular distribution: low is 5 and high 2; accepted is low < high");
    assertThatThrownBy(() -> Triangular.of(8, 16, 15))
        .hasMessage("triangular distribution: mode is 16; accepted is from low 8 to high 15");
    assertThatThrownBy(() -> Pert.of(8, 7, 15))
        .hasMessage("PERT distribution: mode is 7; accepted is from low 8 to high 15");
    assertThatThrownBy(() -> LogNormal.of(0, 11))
        .hasMessageContaining("mean is 0; accepted is more than zero")
        .hasMessageContaining("coefficient of variation is 11; accepted is more than zero and up");
    assertThatThrownBy(() -> Beta.of(0, -1))
        .hasMessageContaining("alpha is 0; accepted is more than zero; and beta is -1");
    assertThatThrownBy(() -> Beta.ofTried(3, 2))
        .hasMessage("beta distribution: good is 3; accepted is from 0 to the number tried, 2");
    assertThatThrownBy(() -> Beta.ofTried(-1, 0))
        .hasMessage(
            "beta distribution: tried is 0; accepted is 1 or more; and good is -1; accepted is from"
                + " 0 to the number tried, 0");
    assertThatThrownBy(() -> Binomial.of(0, 1))
        .hasMessageContaining("trials is 0; accepted is 1 or more; and chance is 1");
    assertThatThrownBy(() -> Weibull.of(0, 0)).hasMessageContaining("shape is 0; accepted is more");
    assertThatThrownBy(() -> Empirical.of(List.of()))
        .hasMessage("empirical distribution: there is no value; accepted is one or more");
    assertThatThrownBy(() -> Normal.of(1, 1).times(0))
        .hasMessage("scaled distribution: factor is 0; accepted is more than zero");
    assertThatThrownBy(() -> Normal.of(1, 1).quantile(ratio(1)))
        .hasMessage("quantile: share is 1; accepted is more than 0 and less than 1");
  }
}
