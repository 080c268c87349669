package dev.kilnledger.thermal.chance;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** The quantile function of a spread, in SI units, for inner loops. */
final class Law {
  static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private Law() {}

  static DoubleUnaryOperator of(Spread<?> spread) {
    double low = spread.span().low().si();
    double high = spread.span().high().si();
    if (low == high) {
      return share -> low;
    }
    if (spread.form().logarithmic) {
      DoubleUnaryOperator law = between(spread.form(), Math.log(low), Math.log(high));
      return share -> Math.exp(law.applyAsDouble(share));
    }
    return between(spread.form(), low, high);
  }

  private static DoubleUnaryOperator between(Spread.Form form, double low, double high) {
    double middle = (low + high) / 2;
    double half = (high - low) / 2;
    return form.normal
        ? share -> middle + half * NORMAL.inverseCumulativeProbability(share)
        : share -> low + (high - low) * share;
  }
}
