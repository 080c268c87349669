package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/**
 * A result with its combined and expanded uncertainty, and the lines that these are computed from.
 * Figures of a plan are in units of its currency.
 */
@Value.Immutable
@ValueStyle
public interface UncertaintyBudget extends Serializable {
  /** {@return what was computed, for people} */
  String figure();

  /** {@return y, the result with every input at its mean} */
  double estimate();

  /** {@return the inputs with what each of them adds, in their order} */
  List<BudgetLine> lines();

  /** {@return u_c(y), the root of the sum of the squared contributions (JCGM 100, 5.1.2)} */
  @Value.Derived
  default double combinedStandardUncertainty() {
    return Math.sqrt(
        lines().stream().mapToDouble(line -> line.contribution() * line.contribution()).sum());
  }

  /**
   * {@return the effective degrees of freedom by Welch and Satterthwaite, u_c^4 / sum (c u)^4 / nu
   * (JCGM 100, G.4.1); infinite where every standard deviation is taken to be known}
   */
  @Value.Derived
  default double effectiveDegreesOfFreedom() {
    double sum =
        lines().stream()
            .mapToDouble(line -> Math.pow(line.contribution(), 4) / line.input().degreesOfFreedom())
            .sum();
    return sum == 0 ? Double.POSITIVE_INFINITY : Math.pow(combinedStandardUncertainty(), 4) / sum;
  }

  /** {@return p, the level of confidence of the expanded uncertainty} */
  Amount<Dimensionless> coverage();

  /**
   * {@return k, the quantile of Student's t distribution for p and the effective degrees of
   * freedom, which are rounded down (JCGM 100, G.4.2, G.6.4)}
   */
  double coverageFactor();

  /** {@return U = k u_c(y): y lies in y - U to y + U with confidence p} */
  default double expandedUncertainty() {
    return coverageFactor() * combinedStandardUncertainty();
  }

  /**
   * {@return whether each input may be taken for linear over its spread; an input that may not has
   * a finding that says so, and calls for Monte Carlo}
   */
  List<Finding> findings();

  /**
   * The share of the combined variance that one line is.
   *
   * @param line one of the lines
   * @return its squared contribution over the sum of all; 0 where nothing varies
   */
  default double share(BudgetLine line) {
    double all = combinedStandardUncertainty();
    return all == 0 ? 0 : line.contribution() * line.contribution() / (all * all);
  }

  /**
   * Starts one.
   *
   * @return a builder; figure, estimate, lines, coverage, factor and findings are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link UncertaintyBudget} values. */
  final class Builder extends ImmutableUncertaintyBudget.Builder {
    Builder() {}
  }
}
