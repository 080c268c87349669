package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * A master sintering curve: relative density as a sigmoid of the logarithm of the work of
 * sintering,
 *
 * <pre>
 * Theta = integral of exp(-Q / R T) / T dt, in s/K
 * rho   = rho0 + (rho1 - rho0) / (1 + exp(-(log Theta - a) / b))
 * </pre>
 *
 * <p>(Su and Johnson, J. Am. Ceram. Soc. 79 (1996) 3211, from memory for the form.) The literature
 * writes a and b for natural or for decimal logarithms: which one is kept with the numbers. It
 * holds for one powder, one green density, one atmosphere, one dominant mechanism, and no melt.
 *
 * <p>Example: from 0.6 to 1, a of -8.63 and b of 0.3 in decimal logarithms: a work of 10^-8.62631
 * s/K makes a relative density of 0.8012.
 */
@Value.Immutable
@ValueStyle
public interface SinteringCurve extends Serializable {
  /** The logarithm that a and b are stated for. */
  enum Base {
    /** The natural logarithm. */
    NATURAL(1),
    /** The decimal logarithm. */
    DECIMAL(Math.log(10));

    private final double factor;

    Base(double factor) {
      this.factor = factor;
    }

    /** {@return the natural logarithm of the base} */
    public double factor() {
      return factor;
    }
  }

  /** {@return what it is of: powder, green density, atmosphere} */
  String name();

  /** {@return the apparent activation energy Q, above zero} */
  Amount<MolarEnergy> activationEnergy();

  /** {@return the logarithm that {@link #location()} and {@link #width()} are stated for} */
  Base base();

  /** {@return a, the logarithm of the work (in s/K) at which half of the densification is done} */
  Amount<Dimensionless> location();

  /** {@return b, above zero} */
  Amount<Dimensionless> width();

  /** {@return rho0, the relative density before sintering, above 0} */
  Amount<VolumeFraction> initialDensity();

  /** {@return rho1, the relative density it tends to; 1 by default} */
  @Value.Default
  default Amount<VolumeFraction> finalDensity() {
    return Amounts.volumeFraction(1);
  }

  /** {@return the temperatures at which the powder was observed to densify along it} */
  Span<Temperature> range();

  /** {@return where it comes from} */
  Source source();

  /**
   * The relative density after a work of sintering.
   *
   * @param logWork ln(Theta / (s/K)), the natural logarithm whatever the base; minus infinity
   *     before sintering
   * @return the relative density
   */
  default Amount<VolumeFraction> densityAt(double logWork) {
    double steps = (logWork / base().factor() - location().si()) / width().si();
    double gain = finalDensity().si() - initialDensity().si();
    return Amounts.volumeFraction(initialDensity().si() + gain / (1 + Math.exp(-steps)));
  }

  /**
   * The work of sintering that a relative density takes.
   *
   * @param density above the initial and below the final one
   * @return ln(Theta / (s/K)), the natural logarithm whatever the base
   * @throws IllegalArgumentException if the density is out of range
   */
  default double logWorkFor(Amount<VolumeFraction> density) {
    new Problems("sintering curve of " + name())
        .require(
            density.isGreaterThan(initialDensity()) && density.isLessThan(finalDensity()),
            "a relative density of "
                + density
                + " is asked for; accepted is above "
                + initialDensity()
                + " and below "
                + finalDensity())
        .refuseIfAny();
    double done = density.si() - initialDensity().si();
    double left = finalDensity().si() - density.si();
    return base().factor() * (location().si() + width().si() * Math.log(done / left));
  }

  /**
   * Starts one.
   *
   * @return a builder; all but the final density are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link SinteringCurve} values. */
  final class Builder extends ImmutableSinteringCurve.Builder {
    Builder() {}
  }

  /**
   * Refuses numbers that make no sigmoid.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("sintering curve of " + name())
        .text("name", name())
        .positive("activation energy", activationEnergy())
        .positive("width", width())
        .require(
            initialDensity().si() > 0
                && initialDensity().isLessThan(finalDensity())
                && finalDensity().si() <= 1,
            "the relative density goes from "
                + initialDensity()
                + " to "
                + finalDensity()
                + "; accepted is a rise between 0 and 1")
        .refuseIfAny();
  }
}
