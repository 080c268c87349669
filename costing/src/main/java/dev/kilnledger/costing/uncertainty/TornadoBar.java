package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** How far one input alone moves a figure. */
@Value.Immutable
@ValueStyle
public interface TornadoBar extends Serializable {
  /** {@return the input that is moved, all others standing at their medians} */
  UncertainInput input();

  /** {@return its low value} */
  double low();

  /** {@return its high value} */
  double high();

  /** {@return the figure with the low value} */
  double atLow();

  /** {@return the figure with the high value} */
  double atHigh();

  /** {@return the width of the bar, zero or more} */
  default double swing() {
    return Math.abs(atHigh() - atLow());
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link TornadoBar} values. */
  final class Builder extends ImmutableTornadoBar.Builder {
    Builder() {}
  }
}
