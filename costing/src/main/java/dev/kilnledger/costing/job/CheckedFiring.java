package dev.kilnledger.costing.job;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.firing.FiringForecast;
import java.io.Serializable;
import org.immutables.value.Value;

/** A firing computed and held against the rules; all jobs that are fired alike may share it. */
@Value.Immutable
@ValueStyle
public interface CheckedFiring extends Serializable {
  /** {@return the firing computed} */
  @Value.Parameter
  FiringForecast forecast();

  /** {@return what the rules find of it} */
  @Value.Parameter
  FiringReport report();

  /**
   * A checked firing.
   *
   * @param forecast the firing computed
   * @param report what the rules find of it
   * @return the checked firing
   */
  static CheckedFiring of(FiringForecast forecast, FiringReport report) {
    return ImmutableCheckedFiring.of(forecast, report);
  }
}
