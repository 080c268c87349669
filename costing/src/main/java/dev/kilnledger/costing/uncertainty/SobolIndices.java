package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import org.immutables.value.Value;

/** Which shares of the variance of a figure its inputs are the cause of, alone and together. */
@Value.Immutable
@ValueStyle
public interface SobolIndices extends Serializable {
  /** {@return what varies, for people} */
  String figure();

  /**
   * {@return how many rows of inputs were drawn; each takes a value of the figure per input, and
   * two}
   */
  TrialRecord trials();

  /** {@return the variance of the figure; in squared units of the currency for a plan} */
  double variance();

  /** {@return an index for each input, in the order of the inputs; 0 where nothing varies} */
  List<SobolIndex> indices();

  /** {@return the indices, the largest total first} */
  default List<SobolIndex> byTotal() {
    return indices().stream()
        .sorted(Comparator.comparingDouble(SobolIndex::total).reversed())
        .toList();
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link SobolIndices} values. */
  final class Builder extends ImmutableSobolIndices.Builder {
    Builder() {}
  }
}
