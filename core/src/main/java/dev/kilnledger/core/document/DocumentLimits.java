package dev.kilnledger.core.document;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** How large and deep a document may be that comes from elsewhere. */
@Value.Immutable
@ValueStyle
public interface DocumentLimits extends Serializable {
  /** {@return the most bytes, 32 MiB by default} */
  @Value.Default
  default long bytes() {
    return 32L << 20;
  }

  /** {@return how deep objects and lists may be in each other, 64 by default} */
  @Value.Default
  default int depth() {
    return 64;
  }

  /** {@return the longest text, in characters, 65,536 by default} */
  @Value.Default
  default int textLength() {
    return 1 << 16;
  }

  /** {@return the limits by default} */
  static DocumentLimits standard() {
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

  /** Builds {@link DocumentLimits} values. */
  final class Builder extends ImmutableDocumentLimits.Builder {
    Builder() {}
  }

  /**
   * Refuses limits below 1.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("document limits")
        .require(bytes() >= 1, "bytes is " + bytes() + "; accepted is 1 or more")
        .require(depth() >= 1, "depth is " + depth() + "; accepted is 1 or more")
        .require(textLength() >= 1, "text length is " + textLength() + "; accepted is 1 or more")
        .refuseIfAny();
  }
}
