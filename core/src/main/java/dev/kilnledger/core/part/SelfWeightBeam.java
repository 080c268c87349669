package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/**
 * A horizontal piece of a part that nothing holds from below, as a beam under its own weight.
 *
 * <p>Elementary bending of a rectangular section of thickness h and any width: the weight of a
 * length is rho g h per width, its section modulus h2/6 and its second moment h3/12 per width.
 * (Timoshenko; Roark's Formulas for Stress and Strain, beams under uniform load, from memory.)
 *
 * <ul>
 *   <li>Overhang, fixed at one end: moment w L2/2, stress 3 rho g L2/h, sag w L4/(8 E I) = 3/2 rho
 *       g L4/(E h2).
 *   <li>Span, resting on both ends: moment w L2/8, stress 3/4 rho g L2/h, sag 5 w L4/(384 E I) =
 *       5/32 rho g L4/(E h2). Ends that are grown on hold it better: the safe side.
 * </ul>
 *
 * <p>A body that creeps sags in proportion to L4/h2 just as well: half the length sags a sixteenth,
 * twice the thickness a quarter.
 *
 * <p>Example: an overhang 20 mm long and 4 mm thick, of 5500 kg/m3, bends with 3 x 5500 x 9.80665 x
 * 0.02^2 / 0.004 = 16 181 Pa; a span of that size with a quarter of it.
 */
@Value.Immutable
@ValueStyle
public interface SelfWeightBeam extends Serializable {
  /** How it is held. */
  enum Held {
    /** At one end. */
    OVERHANG(3, 1.5),
    /** At both ends. */
    SPAN(0.75, 5.0 / 32);

    private final double bending;
    private final double sagging;

    Held(double bending, double sagging) {
      this.bending = bending;
      this.sagging = sagging;
    }
  }

  /** The standard acceleration of free fall, m/s2 (ISO 80000-3). */
  double GRAVITY = 9.80665;

  /** {@return how it is held} */
  @Value.Parameter
  Held held();

  /** {@return the length that hangs free, above zero} */
  @Value.Parameter
  Amount<Length> length();

  /** {@return its least thickness, measured upwards, above zero} */
  @Value.Parameter
  Amount<Length> thickness();

  /**
   * An overhang.
   *
   * @param length how far it hangs out
   * @param thickness its least thickness, measured upwards
   * @return the beam
   * @throws IllegalArgumentException if one of them is not above zero
   */
  static SelfWeightBeam overhang(Amount<Length> length, Amount<Length> thickness) {
    return ImmutableSelfWeightBeam.of(Held.OVERHANG, length, thickness);
  }

  /**
   * A span.
   *
   * @param length the distance between what holds it
   * @param thickness its least thickness, measured upwards
   * @return the beam
   * @throws IllegalArgumentException if one of them is not above zero
   */
  static SelfWeightBeam span(Amount<Length> length, Amount<Length> thickness) {
    return ImmutableSelfWeightBeam.of(Held.SPAN, length, thickness);
  }

  /**
   * The bending stress at the outermost fibre.
   *
   * @param density the bulk density of the body
   * @return the stress
   */
  default Amount<Pressure> stress(Amount<Density> density) {
    double length = length().si();
    return Amounts.pascals(
        held().bending * density.si() * GRAVITY * length * length / thickness().si());
  }

  /**
   * How far it sags.
   *
   * @param density the bulk density of the body
   * @param modulus its modulus of elasticity, above zero
   * @return the elastic sag at the free end, or in the middle of a span
   */
  default Amount<Length> sag(Amount<Density> density, Amount<Pressure> modulus) {
    return Amounts.metres(
            held().sagging * density.si() * GRAVITY / modulus.si() * lengthOverThickness())
        .to(TradeUnits.MILLIMETRE);
  }

  /**
   * How much more it sags than another one of the same body, elastic or creeping.
   *
   * @param other the other one
   * @return the ratio of the sags
   */
  default double sagAgainst(SelfWeightBeam other) {
    return held().sagging
        * lengthOverThickness()
        / (other.held().sagging * other.lengthOverThickness());
  }

  /**
   * The longest beam of this thickness that a strength holds.
   *
   * @param density the bulk density of the body
   * @param strength the stress it stands
   * @return the length at which the stress reaches the strength
   */
  default Amount<Length> longest(Amount<Density> density, Amount<Pressure> strength) {
    return Amounts.metres(
            Math.sqrt(strength.si() * thickness().si() / (held().bending * density.si() * GRAVITY)))
        .to(TradeUnits.MILLIMETRE);
  }

  /** L4/h2 in m2. */
  private double lengthOverThickness() {
    return Math.pow(length().si(), 4) / Math.pow(thickness().si(), 2);
  }

  /**
   * Refuses sizes that are not above zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("self-weight beam")
        .positive("length", length())
        .positive("thickness", thickness())
        .refuseIfAny();
  }
}
