package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** One bar of a histogram. */
@Value.Immutable
@ValueStyle
public interface HistogramBar extends Serializable {
  /** {@return where it begins} */
  @Value.Parameter
  double low();

  /** {@return where it ends} */
  @Value.Parameter
  double high();

  /** {@return how many values it holds} */
  @Value.Parameter
  int count();

  /**
   * A bar.
   *
   * @param low where it begins
   * @param high where it ends
   * @param count how many values it holds
   * @return the bar
   */
  static HistogramBar of(double low, double high, int count) {
    return ImmutableHistogramBar.of(low, high, count);
  }
}
