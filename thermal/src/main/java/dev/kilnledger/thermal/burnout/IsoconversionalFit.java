package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** The activation energy at several conversions, without assuming an order. */
@Value.Immutable
@ValueStyle
public interface IsoconversionalFit extends Serializable {
  /** {@return the energies, at 10, 20 ... 90 % conversion} */
  @Value.Parameter
  List<EnergyAtConversion> energies();

  /** {@return the confidence of the intervals} */
  @Value.Parameter
  Amount<Dimensionless> confidence();

  /** {@return whether one energy describes the whole loss} */
  @Value.Parameter
  Finding finding();

  /** {@return whether the approximation of the method is good enough} */
  @Value.Parameter
  Finding range();
}
