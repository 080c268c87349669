package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.Law;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for every distribution that an input may have. */
class DistributionLawsTest {
  @Provide
  Arbitrary<Distribution> any() {
    Arbitrary<Double> low = number(0.1, 50);
    Arbitrary<Double> wide = number(0.1, 50);
    return Arbitraries.oneOf(
        Combinators.combine(low, wide, number(0, 1))
            .as((a, b, at) -> (Distribution) Triangular.of(a, a + at * b, a + b)),
        Combinators.combine(low, wide, number(0, 1))
            .as((a, b, at) -> (Distribution) Pert.of(a, a + at * b, a + b)),
        Combinators.combine(low, wide).as((a, b) -> (Distribution) Rectangular.of(a, a + b)),
        Combinators.combine(low, wide).as((a, b) -> (Distribution) Normal.of(a, b)),
        Combinators.combine(low, number(0.05, 1)).as((a, b) -> (Distribution) LogNormal.of(a, b)),
        Combinators.combine(number(0.7, 6), wide).as((a, b) -> (Distribution) Weibull.of(a, b)));
  }

  private static Arbitrary<Double> number(double low, double high) {
    return Arbitraries.doubles().between(low, high).ofScale(3);
  }

  @Law
  void leadsFromAShareToItsQuantileAndBack(
      @ForAll("any") Distribution distribution,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    double value = distribution.quantile(ratio(share));
    // The beta of a PERT is inverted by iteration.
    assertThat(distribution.shareUpTo(value).si()).isCloseTo(share, within(1e-6));
  }

  @Law
  void hasQuantilesInOrder(
      @ForAll("any") Distribution distribution,
      @ForAll @DoubleRange(min = 0.01, max = 0.98) double share,
      @ForAll @DoubleRange(min = 0.01, max = 0.9) double more) {
    double higher = Math.min(0.99, share + more);
    assertThat(distribution.quantile(ratio(higher)))
        .isGreaterThanOrEqualTo(distribution.quantile(ratio(share)));
    assertThat(distribution.shareUpTo(distribution.median()).si()).isCloseTo(0.5, within(1e-6));
  }

  @Law
  void scalesItsMomentsAndQuantiles(
      @ForAll("any") Distribution distribution,
      @ForAll @DoubleRange(min = 0.1, max = 100) double factor,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    Distribution scaled = distribution.times(factor);
    assertThat(scaled.mean())
        .isCloseTo(factor * distribution.mean(), within(1e-9 * Math.abs(scaled.mean())));
    assertThat(scaled.standardDeviation())
        .isCloseTo(
            factor * distribution.standardDeviation(), within(1e-9 * scaled.standardDeviation()));
    double quantile = factor * distribution.quantile(ratio(share));
    assertThat(scaled.quantile(ratio(share)))
        .isCloseTo(quantile, within(1e-9 * (1 + Math.abs(quantile))));
  }

  /** Chebyshev: no more than 1/k² of any distribution lies k standard deviations off its mean. */
  @Law
  void liesAroundItsMean(
      @ForAll("any") Distribution distribution, @ForAll @DoubleRange(min = 1.1, max = 5) double k) {
    double off = k * distribution.standardDeviation();
    double inside =
        distribution.shareUpTo(distribution.mean() + off).si()
            - distribution.shareUpTo(distribution.mean() - off).si();
    assertThat(1 - inside).isLessThanOrEqualTo(1 / (k * k) + 1e-9);
  }
}
