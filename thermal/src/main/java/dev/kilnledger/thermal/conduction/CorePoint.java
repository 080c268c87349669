package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** The temperatures of kiln and charge at one time. */
@Value.Immutable
@ValueStyle
public interface CorePoint extends Serializable {
  /** {@return the time since the start of the profile} */
  @Value.Parameter
  Amount<Time> time();

  /** {@return the temperature of the kiln} */
  @Value.Parameter
  Amount<Temperature> kiln();

  /** {@return the temperature of the charge's surface} */
  @Value.Parameter
  Amount<Temperature> surface();

  /** {@return the temperature where the innermost layer ends: the surface of the part} */
  @Value.Parameter
  Amount<Temperature> innermostFace();

  /** {@return the temperature at the centre, the mid-plane or the back} */
  @Value.Parameter
  Amount<Temperature> core();

  /** {@return how far the core is behind the kiln; below zero where it is hotter, as on cooling} */
  default Amount<TemperatureDifference> lag() {
    return Relations.difference(core(), kiln());
  }
}
