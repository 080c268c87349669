package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** Which share of the variance of a figure one input is the cause of. */
@Value.Immutable
@ValueStyle
public interface SobolIndex extends Serializable {
  /** {@return the input} */
  UncertainInput input();

  /**
   * {@return the first-order index: the share of the variance that would go if this input were
   * known and nothing else; an estimate, which can come out a little below 0}
   */
  double firstOrder();

  /** {@return the standard error of {@link #firstOrder}} */
  double firstOrderError();

  /**
   * {@return the total index: the share that would stay if everything but this input were known; it
   * exceeds the first-order index by what the input does together with others}
   */
  double total();

  /** {@return the standard error of {@link #total}} */
  double totalError();

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link SobolIndex} values. */
  final class Builder extends ImmutableSobolIndex.Builder {
    Builder() {}
  }
}
