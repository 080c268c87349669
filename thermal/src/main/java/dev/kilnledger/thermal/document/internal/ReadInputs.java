package dev.kilnledger.thermal.document.internal;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.firing.FiringInputs;
import org.immutables.value.Value;

/** The inputs of a firing as read, until the object is built that they belong to. */
@Value.Immutable
@ValueStyle
interface ReadInputs extends FiringInputs {
  /** Starts some. */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ReadInputs} values. */
  final class Builder extends ImmutableReadInputs.Builder {
    Builder() {}
  }
}
