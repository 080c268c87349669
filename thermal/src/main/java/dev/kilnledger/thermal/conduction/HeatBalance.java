package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.SpecificEnergy;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** The heat of a charge over a profile, per mass of the charge: a check of the computation. */
@Value.Immutable
@ValueStyle
public interface HeatBalance extends Serializable {
  /** {@return the heat that went in while more went in than out} */
  @Value.Parameter
  Amount<SpecificEnergy> supplied();

  /** {@return the heat that went out while more went out than in, zero or more} */
  @Value.Parameter
  Amount<SpecificEnergy> givenOff();

  /** {@return the enthalpy at the end less that at the start} */
  @Value.Parameter
  Amount<SpecificEnergy> stored();

  /** {@return the heat that does not balance, as a share of all that passed the surface} */
  default Amount<Dimensionless> imbalance() {
    double passed = supplied().si() + givenOff().si();
    double open = supplied().si() - givenOff().si() - stored().si();
    return Amounts.ratio(passed == 0 ? 0 : Math.abs(open) / passed);
  }
}
