package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/**
 * A firing, and what of it is not known exactly.
 *
 * <p>Kiln and thermocouple are the same for all stages of the route: their errors are drawn once
 * for a whole firing. A kiln that follows brings the charge to the programmed temperature plus the
 * offset, less what the thermocouple reads too high. The spread of the sintering curve comes from
 * the covariance of the setup's {@code FittedSinteringCurve}, and the choice among kinetics from
 * the setup's list of them, each as likely as the others.
 *
 * <pre>{@code
 * UncertainFiring.builder()
 *     .setup(setup)
 *     .kilnOffset(Spread.normal(kelvinDifference(-4), kelvinDifference(3), survey))
 *     .build();
 * }</pre>
 */
@Value.Immutable
@ValueStyle
public interface UncertainFiring extends Serializable {
  /** {@return the firing, as expected} */
  FiringSetup setup();

  /**
   * {@return how much hotter the charge's place is than that of the thermocouple, the same at all
   * temperatures; 10 K either way unless stated, which is a guess}
   */
  Optional<Spread<TemperatureDifference>> kilnOffset();

  /**
   * {@return how much too high the thermocouple reads when new, as a share of the tolerance of its
   * type, which grows with temperature; anything within the tolerance unless stated. Without effect
   * where the setup does not state the type}
   */
  @Value.Default
  default Spread<Dimensionless> thermocoupleError() {
    return Spread.rectangular(
        Amounts.ratio(-1),
        Amounts.ratio(1),
        Source.fromMemory(
            "IEC 60584-1 states limits and nothing else: rectangular by JCGM 100:2008, 4.3.7"));
  }

  /** {@return how much higher it reads than when it was new; nothing unless stated} */
  Optional<Spread<TemperatureDifference>> drift();

  /**
   * {@return the conductivity of the packing over the one expected; unless stated anything within
   * the factor to which the charge knows it, even in the logarithm}
   */
  Optional<Spread<Dimensionless>> packingConductivity();

  /** {@return the metal's share of the feedstock's mass; as the feedstock states unless given} */
  Optional<Spread<MassFraction>> metalShare();

  /**
   * {@return the activation energy of the binder over the one of its kinetics, the temperature of
   * the fastest loss staying where it is. Unless stated within 12 % either way for kinetics of the
   * user, and as it is for published ones, whose choice is the spread}
   */
  Optional<Spread<Dimensionless>> binderEnergy();

  /**
   * {@return the heating rate at which the temperature of the fastest loss stays where it is: that
   * of the thermogravimetry; 10 K/min unless stated}
   */
  @Value.Default
  default Amount<HeatingRate> thermogravimetryRate() {
    return Amounts.kelvinPerMinute(10);
  }

  /**
   * {@return the activation energy of sintering where the setup has no sintering curve; unless
   * stated anything in the range published for the metal}
   */
  Optional<Spread<MolarEnergy>> sinteringEnergy();

  /** {@return how likely each event has to be; 95 % and 50 % unless stated} */
  @Value.Default
  default ChanceLimits limits() {
    return ChanceLimits.usual();
  }

  /**
   * Starts one.
   *
   * @return a builder; the setup is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link UncertainFiring} values. */
  final class Builder extends ImmutableUncertainFiring.Builder {
    Builder() {}
  }

  /**
   * Refuses factors that are not above zero, and shares of metal that are none.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("uncertain firing").positive("thermogravimetry rate", thermogravimetryRate());
    packingConductivity().ifPresent(s -> Inputs.positive("packing conductivity", s, problems));
    binderEnergy().ifPresent(s -> Inputs.positive("binder energy", s, problems));
    sinteringEnergy().ifPresent(s -> Inputs.positive("sintering energy", s, problems));
    metalShare()
        .ifPresent(
            s -> {
              Inputs.positive("metal share", s, problems);
              Amount<MassFraction> most = s.quantile(Inputs.HIGHEST);
              problems.require(
                  most.si() < 1, "metal share goes up to " + most + "; accepted is below 1");
            });
    problems.refuseIfAny();
  }
}
