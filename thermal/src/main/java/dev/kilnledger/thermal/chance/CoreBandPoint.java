package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** Between which temperatures the core probably is at one time. */
@Value.Immutable
@ValueStyle
public interface CoreBandPoint extends Serializable {
  /** {@return the time since the start of the stage} */
  @Value.Parameter
  Amount<Time> time();

  /** {@return the quantiles of the core's temperature at that time} */
  @Value.Parameter
  Quantiles<Temperature> core();
}
