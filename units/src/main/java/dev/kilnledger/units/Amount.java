package dev.kilnledger.units;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serial;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * An immutable amount of one kind of quantity: the number and unit it was given in, and beside them
 * the correctly rounded value in the coherent SI unit.
 *
 * <p>Reading in the unit given is exact: {@code celsius(820).in(CELSIUS)} is 820. Equality, hash
 * and order stand on kind and SI value, so 1000 g equals 1 kg; JSR 385 keeps that for {@link
 * #isEquivalentTo}, and this class deviates on purpose so that amounts may be keys. NaN and
 * infinity are refused everywhere, and -0.0 is kept as 0.0.
 *
 * <p>Temperatures are points on a scale: they have an order and a {@linkplain Relations#difference
 * difference}, but adding, scaling, negating or inverting them is refused with an {@link
 * UnsupportedOperationException}. Temperatures below 0 K do not exist here.
 *
 * <p>An {@code Amount<Mass>} is a JSR 385 {@code Quantity<Mass>} (not a {@code Mass}) and can be
 * handed to every consumer of one. Serialized as number, UCUM code and kind.
 *
 * @param <Q> the JSR 385 quantity, such as {@code Mass}
 */
public final class Amount<Q extends Quantity<Q>>
    implements Quantity<Q>, Comparable<Amount<Q>>, Serializable {
  @Serial private static final long serialVersionUID = 1L;

  // The serial form is AmountForm; the fields are transient because it alone is written.
  private final transient double si;
  private final transient double given;
  private final transient UnitScale<Q> scale;

  Amount(double number, UnitScale<Q> scale) {
    double value = scale.toSi(number);
    // The SI value is finite only if the number is.
    if (!Double.isFinite(value) || (value < 0 && scale.point())) {
      throw refused(number, value, scale);
    }
    this.si = value + 0.0;
    this.given = number + 0.0;
    this.scale = scale;
  }

  private Amount(double number, double si, UnitScale<Q> scale) {
    if (!Double.isFinite(si) || !Double.isFinite(number) || (si < 0 && scale.point())) {
      throw refused(number, si, scale);
    }
    this.si = si + 0.0;
    this.given = number + 0.0;
    this.scale = scale;
  }

  // Apart from what is done for each amount, so that that is short enough to be compiled inline.
  private static IllegalArgumentException refused(double number, double si, UnitScale<?> scale) {
    return new IllegalArgumentException(
        Double.isFinite(number) && Double.isFinite(si)
            ? "a temperature of "
                + number
                + " "
                + scale.symbol()
                + " is below absolute zero; accepted are temperatures from 0 K (-273.15 °C) up"
            : "a "
                + scale.kind()
                + " of "
                + number
                + " "
                + scale.symbol()
                + " is refused; accepted are finite numbers");
  }

  /**
   * An amount of a number of units. A unit that several kinds share is read as the first of them:
   * {@code KELVIN} as a temperature, {@code ONE} as a ratio; see {@link #of(double, Unit, Kind)}.
   *
   * @param <Q> the quantity
   * @param number the number of units, finite
   * @param unit any JSR 385 unit whose scale is proportional to the SI unit's, or a temperature
   *     scale
   * @return the amount
   * @throws IllegalArgumentException for NaN, infinity, a temperature below 0 K, or a logarithmic
   *     unit
   */
  public static <Q extends Quantity<Q>> Amount<Q> of(double number, Unit<Q> unit) {
    return new Amount<>(number, UnitScales.of(unit));
  }

  /**
   * An amount of a stated kind.
   *
   * @param <Q> the quantity
   * @param number the number of units, finite
   * @param unit any unit of the kind's dimension
   * @param kind what the amount is an amount of
   * @return the amount
   * @throws IllegalArgumentException if the unit cannot express the kind (another dimension, or a
   *     temperature scale with an offset for a difference), or the number is refused
   */
  public static <Q extends Quantity<Q>> Amount<Q> of(double number, Unit<?> unit, Kind<Q> kind) {
    return new Amount<>(number, UnitScales.of(unit, kind));
  }

  /**
   * The amount that any JSR 385 quantity stands for.
   *
   * @param <Q> the quantity
   * @param quantity a quantity of any implementation; an {@code Amount} is returned as it is
   * @return the amount, in the unit of the quantity
   * @throws IllegalArgumentException as {@link #of(double, Unit)}, and if the quantity is a
   *     temperature with {@linkplain javax.measure.Quantity.Scale#RELATIVE relative} scale, which
   *     is a difference
   */
  public static <Q extends Quantity<Q>> Amount<Q> of(Quantity<Q> quantity) {
    return quantity instanceof Amount<Q> amount ? amount : ofOther(quantity);
  }

  private static <Q extends Quantity<Q>> Amount<Q> ofOther(Quantity<Q> quantity) {
    UnitScale<Q> scale = UnitScales.of(quantity.getUnit());
    if (scale.point() && quantity.getScale() == Quantity.Scale.RELATIVE) {
      throw new IllegalArgumentException(
          quantity
              + " is marked as relative and is a temperature difference, not a temperature;"
              + " accepted is Amount.of(number, unit, Kind.TEMPERATURE_DIFFERENCE)");
    }
    return new Amount<>(quantity.getValue().doubleValue(), scale);
  }

  /**
   * The number of the given units in this amount.
   *
   * @param unit any unit of this amount's dimension
   * @return the number, exact in the unit this amount was given in
   * @throws IllegalArgumentException if the unit measures something else
   */
  public double in(Unit<Q> unit) {
    return unit == scale.unit() ? given : UnitScales.of(unit, scale.kind()).fromSi(si);
  }

  /**
   * The decimal number of the given units, for exact bookkeeping: the number given is read as the
   * shortest decimal that stands for it (0.1 is one tenth), and converted without going through
   * binary fractions.
   *
   * @param unit a unit without offset, of this amount's dimension
   * @return the decimal number; where the conversion has no finite decimal, 34 significant digits
   * @throws IllegalArgumentException if the unit measures something else
   * @throws UnsupportedOperationException for a temperature
   */
  public BigDecimal decimalIn(Unit<Q> unit) {
    refusePoint("counted in decimals");
    BigDecimal number = BigDecimal.valueOf(given);
    if (unit == scale.unit()) {
      return number;
    }
    UnitScale<Q> target = UnitScales.of(unit, scale.kind());
    BigDecimal dividend =
        number
            .multiply(BigDecimal.valueOf(scale.numerator()))
            .multiply(BigDecimal.valueOf(target.denominator()));
    BigDecimal divisor =
        BigDecimal.valueOf(scale.denominator()).multiply(BigDecimal.valueOf(target.numerator()));
    return dividend.divide(divisor, MathContext.DECIMAL128);
  }

  /**
   * The value in the coherent SI unit, such as kilogram or kelvin per second.
   *
   * @return the value, finite
   */
  public double si() {
    return si;
  }

  /**
   * What this is an amount of.
   *
   * @return the kind
   */
  public Kind<Q> kind() {
    return scale.kind();
  }

  /** The number as given, as a {@link Double}. */
  @Override
  public Number getValue() {
    return given;
  }

  /** The unit the amount was given in. */
  @Override
  public Unit<Q> getUnit() {
    return scale.unit();
  }

  /** {@code RELATIVE} for a temperature difference, {@code ABSOLUTE} for all else. */
  @Override
  public Quantity.Scale getScale() {
    return scale.kind().equals(Kind.TEMPERATURE_DIFFERENCE)
        ? Quantity.Scale.RELATIVE
        : Quantity.Scale.ABSOLUTE;
  }

  /**
   * The same amount in another unit; equal to this one.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  @Override
  public Amount<Q> to(Unit<Q> unit) {
    if (unit == scale.unit()) {
      return this;
    }
    UnitScale<Q> target = UnitScales.of(unit, scale.kind());
    return new Amount<>(target.fromSi(si), si, target);
  }

  /** The same amount in the coherent SI unit. */
  @Override
  public Amount<Q> toSystemUnit() {
    return to(scale.kind().siUnit());
  }

  /**
   * The sum, in this amount's unit.
   *
   * @throws UnsupportedOperationException for temperatures, which are points on a scale
   * @throws IllegalArgumentException if the other quantity is of another kind
   */
  @Override
  public Amount<Q> add(Quantity<Q> augend) {
    refusePoint("added");
    Amount<Q> that = sameKind(augend);
    return that.scale.equals(scale)
        ? new Amount<>(given + that.given, scale)
        : new Amount<>(scale.fromSi(si + that.si), si + that.si, scale);
  }

  /**
   * The difference, in this amount's unit.
   *
   * @throws UnsupportedOperationException for temperatures; see {@link Relations#difference}
   * @throws IllegalArgumentException if the other quantity is of another kind
   */
  @Override
  public Amount<Q> subtract(Quantity<Q> subtrahend) {
    refusePoint("subtracted within their own kind");
    Amount<Q> that = sameKind(subtrahend);
    return that.scale.equals(scale)
        ? new Amount<>(given - that.given, scale)
        : new Amount<>(scale.fromSi(si - that.si), si - that.si, scale);
  }

  /**
   * This amount times a number.
   *
   * @param factor the factor, finite
   * @return the product, in this amount's unit
   * @throws UnsupportedOperationException for temperatures
   */
  public Amount<Q> multiply(double factor) {
    refusePoint("scaled");
    return new Amount<>(given * factor, scale);
  }

  /**
   * This amount divided by a number.
   *
   * @param divisor the divisor, finite and not zero
   * @return the quotient, in this amount's unit
   * @throws UnsupportedOperationException for temperatures
   * @throws IllegalArgumentException if the divisor is zero
   */
  public Amount<Q> divide(double divisor) {
    refusePoint("scaled");
    return new Amount<>(given / divisor, scale);
  }

  @Override
  public Amount<Q> multiply(Number multiplicand) {
    return multiply(multiplicand.doubleValue());
  }

  @Override
  public Amount<Q> divide(Number divisor) {
    return divide(divisor.doubleValue());
  }

  /**
   * The product with a quantity of any kind. Slow, as its unit has to be composed; the formulas of
   * the trade are in {@link Relations}. Where kelvins remain they are a temperature difference.
   *
   * @throws UnsupportedOperationException if either is a temperature
   */
  @Override
  public Amount<?> multiply(Quantity<?> multiplicand) {
    Amount<?> that = any(multiplicand);
    refusePoint("multiplied");
    that.refusePoint("multiplied");
    return composed(given * that.given, scale.unit().multiply(that.scale.unit()));
  }

  /**
   * The quotient with a quantity of any kind. Slow, as its unit has to be composed; see {@link
   * #ratio} and {@link Relations}. Where kelvins remain they are a temperature difference.
   *
   * @throws UnsupportedOperationException if either is a temperature
   * @throws IllegalArgumentException if the divisor is zero
   */
  @Override
  public Amount<?> divide(Quantity<?> divisor) {
    Amount<?> that = any(divisor);
    refusePoint("divided");
    that.refusePoint("divided");
    return composed(given / that.given, scale.unit().divide(that.scale.unit()));
  }

  /**
   * One over this amount.
   *
   * @throws UnsupportedOperationException for temperatures
   * @throws IllegalArgumentException if this amount is zero
   */
  @Override
  public Amount<?> inverse() {
    refusePoint("inverted");
    return composed(1 / given, scale.unit().inverse());
  }

  /**
   * This amount with the opposite sign.
   *
   * @throws UnsupportedOperationException for temperatures
   */
  @Override
  public Amount<Q> negate() {
    refusePoint("negated");
    return new Amount<>(-given, scale);
  }

  /**
   * How many times the other amount this one is.
   *
   * @param other an amount of the same kind, not zero
   * @return the ratio of the SI values
   * @throws IllegalArgumentException if the other amount is zero or of another kind
   */
  public double ratio(Amount<Q> other) {
    sameKind(other);
    if (other.si == 0) {
      throw new IllegalArgumentException(
          "the ratio of " + this + " to " + other + " does not exist; accepted is any but zero");
    }
    return si / other.si;
  }

  /**
   * Whether this amount is smaller than the other.
   *
   * @param other an amount of the same kind
   * @return true if the SI value is smaller
   */
  public boolean isLessThan(Amount<Q> other) {
    return compareTo(other) < 0;
  }

  /**
   * Whether this amount is larger than the other.
   *
   * @param other an amount of the same kind
   * @return true if the SI value is larger
   */
  public boolean isGreaterThan(Amount<Q> other) {
    return compareTo(other) > 0;
  }

  /** Orders by SI value. */
  @Override
  public int compareTo(Amount<Q> other) {
    sameKind(other);
    return Double.compare(si, other.si);
  }

  /** Whether the other quantity, of any implementation, has the same SI value and kind. */
  @Override
  public boolean isEquivalentTo(Quantity<Q> that) {
    return equals(of(that));
  }

  /**
   * This amount as another generic type, unchanged.
   *
   * @throws ClassCastException if the amount's kind is known and is not of the given type
   */
  @Override
  @SuppressWarnings("unchecked") // checked by the unit, which knows the dimension of each type
  public <T extends Quantity<T>> Amount<T> asType(Class<T> type) {
    scale.unit().asType(type);
    return (Amount<T>) this;
  }

  /** Equal when kind and SI value are equal; the unit given plays no part. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Amount<?> that
            && si == that.si
            && scale.kind().equals(that.scale.kind()));
  }

  @Override
  public int hashCode() {
    return 31 * scale.kind().hashCode() + Double.hashCode(si);
  }

  /**
   * Text for people in another unit, rounded half up to a number of decimals, with the unit's usual
   * symbol: {@code "4.83 g/cm³"}. Not meant to be read back; see {@link UcumText}.
   *
   * @param unit any unit of this amount's dimension
   * @param decimals decimals to show, from 0 up
   * @return the text, the same in every locale
   */
  public String format(Unit<Q> unit, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(in(unit)).setScale(decimals, RoundingMode.HALF_UP);
    return withSymbol(rounded.toPlainString(), UnitScales.of(unit, scale.kind()).symbol());
  }

  /** Number and unit as given, for people: {@code "820 °C"}. */
  @Override
  public String toString() {
    return withSymbol(DecimalText.of(given), scale.symbol());
  }

  private static String withSymbol(String number, String symbol) {
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  UnitScale<Q> scale() {
    return scale;
  }

  double given() {
    return given;
  }

  private void refusePoint(String what) {
    if (scale.point()) {
      throw pointRefused(what);
    }
  }

  private UnsupportedOperationException pointRefused(String what) {
    return new UnsupportedOperationException(
        "temperatures are points on a scale and cannot be "
            + what
            + " ("
            + this
            + "); accepted are Relations.difference and Relations.shifted, with a"
            + " TemperatureDifference");
  }

  private Amount<Q> sameKind(Quantity<Q> other) {
    Amount<Q> that = of(other);
    if (!that.scale.kind().equals(scale.kind())) {
      throw kindRefused(that);
    }
    return that;
  }

  private IllegalArgumentException kindRefused(Amount<Q> that) {
    return new IllegalArgumentException(
        that
            + " is a "
            + that.scale.kind()
            + " and does not go with "
            + this
            + "; accepted is a "
            + scale.kind());
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the wildcard only says that the kind is not known
  private static Amount<?> any(Quantity<?> quantity) {
    return of((Quantity) quantity);
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // likewise: the unit tells the kind
  private static Amount<?> composed(double number, Unit<?> unit) {
    UnitScale<?> scale = UnitScales.of((Unit) unit);
    // No product is a point on a scale: kelvin per hour times hours are kelvins of difference.
    return scale.point()
        ? of(number, unit, Kind.TEMPERATURE_DIFFERENCE)
        : new Amount<>(number, scale);
  }

  /** {@return what is written instead of this amount: number, UCUM code and kind} */
  @Serial
  private Object writeReplace() {
    return AmountForm.of(this);
  }

  /**
   * Refuses to read what was not written by {@link #writeReplace}.
   *
   * @param in not read
   * @throws InvalidObjectException always
   */
  @Serial
  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an Amount is written and read through its AmountForm");
  }
}
