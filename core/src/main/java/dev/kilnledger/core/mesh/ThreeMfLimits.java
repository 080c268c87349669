package dev.kilnledger.core.mesh;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** How much a 3MF file may hold: it is compressed, and a small one can unfold without end. */
@Value.Immutable
@ValueStyle
public interface ThreeMfLimits extends Serializable {
  /** {@return the most bytes that all parts of the file may unfold to; 4 GiB by default} */
  @Value.Default
  default long unfoldedBytes() {
    return 1L << 32;
  }

  /** {@return the most corners of one object, which are kept in memory; 10 million by default} */
  @Value.Default
  default int corners() {
    return 10_000_000;
  }

  /** {@return the most objects; 10,000 by default} */
  @Value.Default
  default int objects() {
    return 10_000;
  }

  /** {@return the most copies that items and components make of objects; 100,000 by default} */
  @Value.Default
  default int copies() {
    return 100_000;
  }

  /** {@return the limits by default} */
  static ThreeMfLimits standard() {
    return builder().build();
  }

  /**
   * Starts one.
   *
   * @return a builder; nothing is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ThreeMfLimits} values. */
  final class Builder extends ImmutableThreeMfLimits.Builder {
    Builder() {}
  }

  /**
   * Refuses limits below 1.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("3MF limits")
        .require(
            unfoldedBytes() >= 1 && corners() >= 1 && objects() >= 1 && copies() >= 1,
            "bytes, corners, objects and copies are "
                + unfoldedBytes()
                + ", "
                + corners()
                + ", "
                + objects()
                + " and "
                + copies()
                + "; accepted is 1 or more of each")
        .refuseIfAny();
  }
}
