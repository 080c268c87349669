package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/** A species at a temperature and 1 bar. */
@Value.Immutable
@ValueStyle
public interface StandardState extends Serializable {
  /** {@return the species} */
  Species species();

  /** {@return the temperature} */
  Amount<Temperature> temperature();

  /** {@return the heat capacity per mass; times the molar mass it is the Cp of tables} */
  Amount<SpecificHeatCapacity> heatCapacity();

  /** {@return H, counted from the elements at 298.15 K} */
  Amount<MolarEnergy> enthalpy();

  /** {@return H(T) - H(298.15 K), transitions included} */
  Amount<MolarEnergy> heating();

  /** {@return T S, the share of the entropy in the Gibbs energy} */
  Amount<MolarEnergy> entropyTerm();

  /** {@return G = H - T S} */
  default Amount<MolarEnergy> gibbsEnergy() {
    return enthalpy().subtract(entropyTerm());
  }

  /** {@return the report the polynomial is from} */
  Source source();

  /**
   * Starts a state.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link StandardState} values. */
  final class Builder extends ImmutableStandardState.Builder {
    Builder() {}
  }
}
