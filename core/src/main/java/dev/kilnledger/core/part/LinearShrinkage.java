package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.immutables.value.Value;

/**
 * How much shorter a body gets from green to sintered, as a share of its green length, along each
 * axis: {@code Y = (green - sintered) / green}. Negative where it swells.
 */
@Value.Immutable
@ValueStyle
public interface LinearShrinkage extends Serializable {
  /** {@return the shrinkage along x, below 1} */
  @Value.Parameter
  Estimate<Dimensionless> x();

  /** {@return the shrinkage along y, below 1} */
  @Value.Parameter
  Estimate<Dimensionless> y();

  /** {@return the shrinkage along z, across the layers, below 1} */
  @Value.Parameter
  Estimate<Dimensionless> z();

  /**
   * Shrinkage along each axis, with its band.
   *
   * @param x along x
   * @param y along y
   * @param z along z
   * @return the shrinkage
   * @throws IllegalArgumentException if one of them reaches 1
   */
  static LinearShrinkage of(
      Estimate<Dimensionless> x, Estimate<Dimensionless> y, Estimate<Dimensionless> z) {
    return ImmutableLinearShrinkage.of(x, y, z);
  }

  /**
   * Shrinkage along each axis, taken as it is, without a band.
   *
   * @param x along x
   * @param y along y
   * @param z along z
   * @return the shrinkage
   * @throws IllegalArgumentException if one of them reaches 1
   */
  static LinearShrinkage exactly(
      Amount<Dimensionless> x, Amount<Dimensionless> y, Amount<Dimensionless> z) {
    return of(Estimate.exactly(x), Estimate.exactly(y), Estimate.exactly(z));
  }

  /**
   * The same shrinkage along every axis.
   *
   * @param every along x, y and z
   * @return the shrinkage
   * @throws IllegalArgumentException if it reaches 1
   */
  static LinearShrinkage uniform(Estimate<Dimensionless> every) {
    return of(every, every, every);
  }

  /**
   * {@return what the finished lengths are multiplied by to get the lengths to print, along each
   * axis: 1 / (1 - Y), with the band that the shrinkage's band gives}
   */
  default PerAxis<Estimate<Dimensionless>> oversize() {
    Estimate<Dimensionless> alongX = oversizeOf(x());
    // Most shrink alike along all axes.
    return PerAxis.of(
        alongX,
        y().equals(x()) ? alongX : oversizeOf(y()),
        z().equals(x()) ? alongX : oversizeOf(z()));
  }

  /** {@return the sintered volume as a share of the green one: the product of all 1 - Y} */
  default Amount<Dimensionless> volumeRatio() {
    return Amounts.ratio(
        (1 - x().expected().si()) * (1 - y().expected().si()) * (1 - z().expected().si()));
  }

  /**
   * The box to print for a box that is wanted.
   *
   * @param sintered the envelope after sintering
   * @return the green envelope: each extent times its expected oversize factor
   */
  default Envelope greenOf(Envelope sintered) {
    return Envelope.of(
        sintered.x().divide(1 - x().expected().si()),
        sintered.y().divide(1 - y().expected().si()),
        sintered.z().divide(1 - z().expected().si()));
  }

  /**
   * How far the sintered lengths may lie from those wanted, when the part is printed with the
   * expected oversize and shrinks by any amount in the band: {@code L ((1 - Y) / (1 - Yexpected) -
   * 1)}.
   *
   * @param sintered the envelope wanted after sintering
   * @return along each axis from shortest (zero or below) to longest (zero or above)
   */
  default PerAxis<Span<Length>> deviation(Envelope sintered) {
    return PerAxis.of(
        deviationOf(sintered.x(), x()),
        deviationOf(sintered.y(), y()),
        deviationOf(sintered.z(), z()));
  }

  private static Estimate<Dimensionless> oversizeOf(Estimate<Dimensionless> shrinkage) {
    return Estimate.of(
        factor(shrinkage.span().low()),
        factor(shrinkage.expected()),
        factor(shrinkage.span().high()));
  }

  private static Amount<Dimensionless> factor(Amount<Dimensionless> shrinkage) {
    return Amounts.ratio(1 / (1 - shrinkage.si()));
  }

  private static Span<Length> deviationOf(
      Amount<Length> length, Estimate<Dimensionless> shrinkage) {
    double expected = 1 - shrinkage.expected().si();
    return Span.of(
        length.multiply((1 - shrinkage.span().high().si()) / expected - 1),
        length.multiply((1 - shrinkage.span().low().si()) / expected - 1));
  }

  /**
   * Refuses shrinkage by the whole length or more.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("linear shrinkage");
    refuseWhole(problems, "x", x());
    refuseWhole(problems, "y", y());
    refuseWhole(problems, "z", z());
    problems.refuseIfAny();
  }

  private static void refuseWhole(
      Problems problems, String axis, Estimate<Dimensionless> shrinkage) {
    Amount<Dimensionless> highest = shrinkage.span().high();
    problems.require(
        highest.si() < 1,
        () ->
            axis + " is up to " + highest + "; accepted is below 1, the share of the green length");
  }
}
