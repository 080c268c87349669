package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.io.Serializable;
import org.immutables.value.Value;

/** How well a powder bed conducts at one temperature. */
@Value.Immutable
@ValueStyle
public interface BedConductivity extends Serializable {
  /** {@return the effective conductivity, in a span of a factor of 1.5 either way} */
  @Value.Parameter
  Estimate<ThermalConductivity> conductivity();

  /** {@return whether the bed lies in the range of the correlation} */
  @Value.Parameter
  Finding range();
}
