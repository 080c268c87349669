package dev.kilnledger.thermal.kinetics;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MolarEnergy;
import javax.measure.quantity.Time;

/**
 * The integrals of an activation energy E along a temperature history, in closed form on each
 * straight line:
 *
 * <pre>
 * J     = integral of exp(-E / R T) dt          reduced time, in s
 * Theta = integral of exp(-E / R T) / T dt      work of sintering, in s/K
 * </pre>
 *
 * <p>With x = E / R T the antiderivatives along a ramp of rate r are {@code T exp(-x) - (E/R)
 * E1(x)} and {@code E1(x)}, over r (derivable; E1 is the exponential integral). They are taken as
 * natural logarithms, scaled by the exponential at the hotter end, so that nothing underflows:
 * exp(-x) of a binder at room temperature may be 1e-60. On lines so short that the closed form
 * would subtract nearly equal numbers a Gauss-Legendre rule of five points takes over, which there
 * is exact to rounding. Relative error of J and Theta below 1e-13.
 *
 * <p>Example: 150 kJ/mol on a ramp from near absolute zero to 700 K has {@code J r =
 * 1.6203942467302e-10 K}.
 */
public final class ArrheniusIntegral {
  /** The molar gas constant in J/(mol K): CODATA 2018, which is exact, cut to ten digits. */
  public static final double GAS_CONSTANT = 8.314462618;

  private final LineMean mean;
  private final LineMean meanPerKelvin;

  /**
   * The integrals of an activation energy.
   *
   * @param activationEnergy above zero
   * @throws IllegalArgumentException if it is not
   */
  public ArrheniusIntegral(Amount<MolarEnergy> activationEnergy) {
    new Problems("Arrhenius integral")
        .positive("activation energy", activationEnergy)
        .refuseIfAny();
    double kelvin = activationEnergy.si() / GAS_CONSTANT;
    mean = new LineMean(kelvin, false);
    meanPerKelvin = new LineMean(kelvin, true);
  }

  /**
   * E / R T.
   *
   * @param kelvinNow the temperature T, in K
   * @return the exponent x, above zero
   */
  public double exponent(double kelvinNow) {
    return mean.exponent(kelvinNow);
  }

  /**
   * The reduced time J of a whole history.
   *
   * @param history the temperature felt
   * @return J, in s; zero where it is less than the smallest double
   */
  public Amount<Time> reducedTime(TemperatureHistory history) {
    return Amounts.seconds(Math.exp(reducedTimeAlong(history).logAtEnd()));
  }

  /**
   * The reduced time J since the start of a history.
   *
   * @param history the temperature felt
   * @return the integral, as a function of time
   */
  public RunningIntegral reducedTimeAlong(TemperatureHistory history) {
    return new RunningIntegral(mean, history);
  }

  /**
   * The work of sintering Theta since the start of a history.
   *
   * @param history the temperature felt
   * @return the integral, as a function of time
   */
  public RunningIntegral workAlong(TemperatureHistory history) {
    return new RunningIntegral(meanPerKelvin, history);
  }

  /**
   * The mean of exp(-E / R T) on a straight line between two temperatures, in either order.
   *
   * @param from one end, in K, above zero
   * @param to the other end, in K, above zero
   * @return the natural logarithm of the mean
   */
  public double logMean(double from, double to) {
    return mean.log(from, to);
  }

  /**
   * The mean of exp(-E / R T) / T on a straight line between two temperatures, in either order.
   *
   * @param from one end, in K, above zero
   * @param to the other end, in K, above zero
   * @return the natural logarithm of the mean, which is in 1/K
   */
  public double logMeanPerKelvin(double from, double to) {
    return meanPerKelvin.log(from, to);
  }
}
