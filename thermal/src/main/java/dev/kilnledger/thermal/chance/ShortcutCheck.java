package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.io.Serializable;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** How far the quick model is from the full one, by draws that were computed by both. */
@Value.Immutable
@ValueStyle
public interface ShortcutCheck extends Serializable {
  /** {@return how many draws were computed by both} */
  @Value.Parameter
  int draws();

  /** {@return the largest difference of the core's temperature, at any time of any stage} */
  @Value.Parameter
  Amount<TemperatureDifference> core();

  /** {@return the largest difference of the core's highest temperature} */
  @Value.Parameter
  Amount<TemperatureDifference> corePeak();

  /** {@return the largest difference of the soak} */
  @Value.Parameter
  Amount<Time> soak();
}
