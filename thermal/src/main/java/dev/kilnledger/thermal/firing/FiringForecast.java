package dev.kilnledger.thermal.firing;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/**
 * A firing computed, stage by stage. Each part is computed when it is first asked for, and once: who
 * asks for tables alone pays for nothing else, and all who ask share one computation.
 */
@Value.Immutable
@ValueStyle
public interface FiringForecast extends Serializable {
  /** {@return the firing} */
  @Value.Parameter
  FiringSetup setup();

  /**
   * The forecast of a firing.
   *
   * @param setup the firing
   * @return its forecast, nothing of it computed yet
   */
  static FiringForecast of(FiringSetup setup) {
    return ImmutableFiringForecast.of(setup);
  }

  /** {@return the stages in the order of the route} */
  @Value.Lazy
  default List<StageForecast> stages() {
    return setup().route().stages().stream()
        .<StageForecast>map(stage -> ImmutableStageForecast.of(setup(), stage))
        .toList();
  }
}
