package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.MolarEnergy;
import java.io.Serializable;
import org.immutables.value.Value;

/** The activation energy at one conversion. */
@Value.Immutable
@ValueStyle
public interface EnergyAtConversion extends Serializable {
  /** {@return the share of the loss that has happened} */
  @Value.Parameter
  Amount<MassFraction> conversion();

  /** {@return the activation energy there, its span being the confidence interval} */
  @Value.Parameter
  Estimate<MolarEnergy> activationEnergy();
}
