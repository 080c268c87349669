package dev.kilnledger.units;

import java.math.BigDecimal;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.jspecify.annotations.Nullable;

/**
 * A unit read as amounts of one kind: {@code si = (number + offset) * numerator / denominator}.
 *
 * <p>The factor is kept as a quotient so that a number is divided by 1000 rather than multiplied by
 * an inexact 0.001, and the offset in two parts whose sum is exact to about 32 digits, so that the
 * SI value is the correctly rounded one.
 *
 * <p>A record because the compiler at run time takes the fields of a record that is a constant as
 * constants too: making an amount in a shipped unit is then a single division or multiplication.
 *
 * @param kind what is measured
 * @param unit the unit
 * @param ucum UCUM code, empty where UCUM has none
 * @param symbol symbol for people, such as {@code °C}; empty for a bare ratio
 * @param numerator of the factor
 * @param denominator of the factor
 * @param offset what is added before scaling, zero but for temperature scales
 * @param offsetRest what the offset lost in rounding
 * @param point whether the kind's amounts are points on a scale, kept here to be at hand
 * @param before the scale of the same kind shipped before, the coherent one having none
 */
record UnitScale<Q extends Quantity<Q>>(
    Kind<Q> kind,
    Unit<Q> unit,
    String ucum,
    String symbol,
    double numerator,
    double denominator,
    double offset,
    double offsetRest,
    boolean point,
    @Nullable UnitScale<Q> before) {

  private UnitScale(
      Kind<Q> kind,
      Unit<Q> unit,
      String ucum,
      String symbol,
      double numerator,
      double denominator,
      double offset,
      double offsetRest) {
    this(
        kind,
        unit,
        ucum,
        symbol,
        numerator,
        denominator,
        offset,
        offsetRest,
        kind.isPoint(),
        kind.lastShipped());
  }

  static <Q extends Quantity<Q>> UnitScale<Q> coherent(
      Kind<Q> kind, Unit<Q> unit, String ucum, String symbol) {
    return new UnitScale<>(kind, unit, ucum, symbol, 1, 1, 0, 0);
  }

  static <Q extends Quantity<Q>> UnitScale<Q> proportional(
      Kind<Q> kind,
      Unit<Q> unit,
      String ucum,
      String symbol,
      double numerator,
      double denominator) {
    return new UnitScale<>(kind, unit, ucum, symbol, numerator, denominator, 0, 0);
  }

  /** A temperature scale; {@code offset} is the decimal text of what is added before scaling. */
  static <Q extends Quantity<Q>> UnitScale<Q> shifted(
      Kind<Q> kind,
      Unit<Q> unit,
      String ucum,
      String symbol,
      double numerator,
      double denominator,
      BigDecimal offset) {
    double high = offset.doubleValue();
    double rest = offset.subtract(new BigDecimal(high)).doubleValue();
    return new UnitScale<>(kind, unit, ucum, symbol, numerator, denominator, high, rest);
  }

  /**
   * Reads a unit that is not shipped.
   *
   * @throws IllegalArgumentException if the unit has another dimension or its scale is neither
   *     proportional to the SI unit's nor a temperature scale
   */
  static <Q extends Quantity<Q>> UnitScale<Q> resolve(Unit<?> unit, Kind<Q> kind) {
    UnitConverter converter;
    double zero;
    double one;
    double two;
    try {
      converter = unit.getConverterToAny(kind.siUnit());
      zero = converter.convert(0d);
      one = converter.convert(1d);
      two = converter.convert(2d);
    } catch (NumberFormatException e) {
      // so the units library tells that a logarithm of zero is no number
      throw new IllegalArgumentException(notProportional(unit, kind), e);
    } catch (IncommensurableException
        | UnconvertibleException
        | UnsupportedOperationException
        | ArithmeticException e) {
      throw new IllegalArgumentException(
          "unit "
              + unit
              + " does not measure "
              + kind
              + "; accepted is a unit such as "
              + kind.siUnit(),
          e);
    }
    double factor = one - zero;
    boolean linear = Math.abs(two - one - factor) <= 1e-12 * Math.abs(two);
    if (!linear || factor <= 0 || (zero != 0 && !kind.isPoint())) {
      throw new IllegalArgumentException(notProportional(unit, kind));
    }
    @SuppressWarnings("unchecked") // the conversion above has shown that it measures this kind
    Unit<Q> typed = (Unit<Q>) unit;
    String text = unit.toString();
    if (zero != 0) {
      return new UnitScale<>(kind, typed, "", text, factor, 1, zero / factor, 0);
    }
    // A factor below one is kept as a divisor where that is a whole number.
    double inverse = Math.rint(1 / factor);
    return 1 / inverse == factor
        ? new UnitScale<>(kind, typed, "", text, 1, inverse, 0, 0)
        : new UnitScale<>(kind, typed, "", text, factor, 1, 0, 0);
  }

  /** A scale is equal to itself alone: one unit, one object. */
  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }

  private static String notProportional(Unit<?> unit, Kind<?> kind) {
    return "unit "
        + unit
        + " is not proportional to "
        + kind.siUnit()
        + " and cannot express a "
        + kind
        + "; accepted is a unit that is";
  }

  /** The SI value of a number in this unit. */
  double toSi(double number) {
    // Only points have an offset, and whether it is one has often been asked just before.
    return point ? pointToSi(number) : scaled(number, numerator, denominator);
  }

  /** The number in this unit of an SI value. */
  double fromSi(double si) {
    double scaled = scaled(si, denominator, numerator) + 0.0;
    return point ? (scaled - offset) - offsetRest : scaled;
  }

  private double pointToSi(double number) {
    // Two-sum: the rounding error of the addition is carried along with the rest of the offset.
    double sum = number + offset;
    if (sum == 0) {
      return 0; // absolute zero, where the number and the offset are the same decimal
    }
    double added = sum - number;
    double rest = (number - (sum - added)) + (offset - added) + offsetRest;
    return denominator == 1
        ? sum * numerator + rest * numerator
        : scaledOnce(sum, rest, numerator, denominator);
  }

  /** {@code x * n / d}, rounded once. */
  private static double scaled(double x, double n, double d) {
    if (d == 1) {
      return x * n;
    }
    return n == 1 ? x / d : scaledOnce(x, 0, n, d);
  }

  /**
   * {@code (x + rest) * n / d} for a rest far below x, with the rounding errors of product and
   * quotient added back.
   */
  private static double scaledOnce(double x, double rest, double n, double d) {
    double product = x * n;
    double quotient = product / d;
    if (Double.isInfinite(product)) {
      return x / d * n;
    }
    double lost = Math.fma(x, n, -product) + rest * n;
    double remainder = Math.fma(-quotient, d, product) + lost;
    return quotient + remainder / d;
  }
}
