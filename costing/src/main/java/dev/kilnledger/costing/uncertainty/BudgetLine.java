package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** What one input adds to a combined standard uncertainty. */
@Value.Immutable
@ValueStyle
public interface BudgetLine extends Serializable {
  /** {@return the input} */
  UncertainInput input();

  /** {@return x, its mean} */
  double estimate();

  /** {@return u(x), its standard deviation} */
  double standardUncertainty();

  /** {@return c, by how much the result changes with the input: the derivative} */
  double sensitivity();

  /** {@return |c| u(x)} */
  default double contribution() {
    return Math.abs(sensitivity()) * standardUncertainty();
  }

  /**
   * {@return how far from a straight line the result is over the input's spread: |f(x + u) + f(x -
   * u) - 2 f(x)| over |f(x + u) - f(x - u)|; 0 for a straight line}
   */
  double bend();

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link BudgetLine} values. */
  final class Builder extends ImmutableBudgetLine.Builder {
    Builder() {}
  }
}
