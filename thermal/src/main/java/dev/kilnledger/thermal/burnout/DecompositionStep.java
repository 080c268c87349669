package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.MolarEnergy;
import java.io.Serializable;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * One decomposition reaction: {@code d alpha / dt = exp(-E / R T) d alpha / dJ}.
 *
 * <p>Example: 191 kJ/mol and a fastest loss at 606.92 K on a ramp of 1 K/min make a factor of
 * 2.85e13 1/s.
 */
@Value.Immutable
@ValueStyle
public interface DecompositionStep extends Serializable {
  /** {@return the activation energy E, above zero} */
  @Value.Parameter
  Amount<MolarEnergy> activationEnergy();

  /** {@return how conversion follows from the reduced time} */
  @Value.Parameter
  ConversionCurve curve();

  /** {@return its share of the binder that leaves, above 0 and up to 1} */
  @Value.Parameter
  Amount<MassFraction> massShare();

  /**
   * A step that a part of the binder takes.
   *
   * @param activationEnergy above zero
   * @param curve how conversion follows from the reduced time
   * @param massShare its share of the binder that leaves, above 0 and up to 1
   * @return the step
   * @throws IllegalArgumentException if energy or share are out of range
   */
  static DecompositionStep of(
      Amount<MolarEnergy> activationEnergy, ConversionCurve curve, Amount<MassFraction> massShare) {
    return ImmutableDecompositionStep.of(activationEnergy, curve, massShare);
  }

  /**
   * A step that all of the binder takes.
   *
   * @param activationEnergy above zero
   * @param curve how conversion follows from the reduced time
   * @return the step, of share 1
   * @throws IllegalArgumentException if the energy is not above zero
   */
  static DecompositionStep of(Amount<MolarEnergy> activationEnergy, ConversionCurve curve) {
    return of(activationEnergy, curve, Amounts.massFraction(1));
  }

  /**
   * The step of first order, of share 1, that is fastest at a given temperature on a given ramp:
   * {@code A = r E / (R Tp²) exp(E / R Tp)} (Kissinger, Anal. Chem. 29 (1957) 1702; derivable).
   *
   * @param activationEnergy E, above zero
   * @param peak the temperature Tp of the fastest loss
   * @param heatingRate the rate r of the ramp, above zero
   * @return the step
   * @throws IllegalArgumentException if energy or rate are not above zero, or A is not finite
   */
  static DecompositionStep ofPeak(
      Amount<MolarEnergy> activationEnergy,
      Amount<Temperature> peak,
      Amount<HeatingRate> heatingRate) {
    new Problems("decomposition step")
        .positive("activation energy", activationEnergy)
        .positive("heating rate", heatingRate)
        .refuseIfAny();
    double exponent = activationEnergy.si() / (ArrheniusIntegral.GAS_CONSTANT * peak.si());
    Amount<Frequency> factor =
        Frequencies.perSecond(heatingRate.si() * exponent / peak.si() * Math.exp(exponent));
    return of(activationEnergy, ReactionOrder.first(factor));
  }

  /**
   * Refuses an energy that is not above zero and a share outside 0 to 1.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("decomposition step")
        .positive("activation energy", activationEnergy())
        .require(
            massShare().si() > 0 && massShare().si() <= 1,
            "mass share is " + massShare() + "; accepted is above 0 and up to 1")
        .refuseIfAny();
  }
}
