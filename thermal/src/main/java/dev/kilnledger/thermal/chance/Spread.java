package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/**
 * How likely which value of an input is. Which form to take is a matter of what is known: limits
 * and nothing else make it rectangular, a mean and a standard uncertainty normal (JCGM 100:2008,
 * 4.3.7 and 4.3.9; JCGM 101:2008, 6.4; from memory); what is known within a factor is so in its
 * logarithm.
 *
 * <p>Example: limits of 6 K either way have a standard uncertainty of 6 / sqrt(3) = 3.46 K, and 95
 * % of the values lie below 5.4 K.
 *
 * @param <Q> the quantity
 */
@Value.Immutable
@ValueStyle
public interface Spread<Q extends Quantity<Q>> extends Serializable {
  /** The form of the law. */
  enum Form {
    /** Anything between limits is as likely as anything else there. */
    RECTANGULAR("rectangular", false, false),
    /** The normal law. */
    NORMAL("normal", true, false),
    /** The logarithm is rectangular. */
    LOG_RECTANGULAR("rectangular in the logarithm", false, true),
    /** The logarithm is normal. */
    LOG_NORMAL("lognormal", true, true);

    private final String words;
    final boolean normal;
    final boolean logarithmic;

    Form(String words, boolean normal, boolean logarithmic) {
      this.words = words;
      this.normal = normal;
      this.logarithmic = logarithmic;
    }

    /** {@return the form in words, lower case} */
    public String words() {
      return words;
    }
  }

  /** {@return the form of the law} */
  Form form();

  /** {@return the limits; of a normal form, one standard deviation below and above its middle} */
  Span<Q> span();

  /** {@return who says so: where limits or deviation come from, and why this form} */
  Source source();

  /**
   * Limits and nothing else.
   *
   * @param <Q> the quantity
   * @param low the lowest value
   * @param high the highest value
   * @param source where they come from
   * @return the rectangular law
   * @throws IllegalArgumentException if low lies above high
   */
  static <Q extends Quantity<Q>> Spread<Q> rectangular(
      Amount<Q> low, Amount<Q> high, Source source) {
    return of(Form.RECTANGULAR, low, high, source);
  }

  /**
   * A mean and its standard uncertainty.
   *
   * @param <Q> the quantity
   * @param mean the mean
   * @param deviation the standard deviation, zero or more
   * @param source where they come from
   * @return the normal law
   * @throws IllegalArgumentException if the deviation is below zero
   */
  static <Q extends Quantity<Q>> Spread<Q> normal(
      Amount<Q> mean, Amount<Q> deviation, Source source) {
    return of(Form.NORMAL, mean.subtract(deviation), mean.add(deviation), source);
  }

  /**
   * Known within a factor, as likely in each part of it.
   *
   * @param <Q> the quantity
   * @param low the lowest value, above zero
   * @param high the highest value
   * @param source where they come from
   * @return the law that is rectangular in the logarithm
   * @throws IllegalArgumentException if low is not above zero or lies above high
   */
  static <Q extends Quantity<Q>> Spread<Q> logRectangular(
      Amount<Q> low, Amount<Q> high, Source source) {
    return of(Form.LOG_RECTANGULAR, low, high, source);
  }

  /**
   * A median and a factor; two thirds of the values lie within the factor.
   *
   * @param <Q> the quantity
   * @param median the median, above zero
   * @param factor the geometric standard deviation, 1 or more
   * @param source where they come from
   * @return the lognormal law
   * @throws IllegalArgumentException if median or factor are out of range
   */
  static <Q extends Quantity<Q>> Spread<Q> logNormal(
      Amount<Q> median, Amount<Dimensionless> factor, Source source) {
    return of(Form.LOG_NORMAL, median.divide(factor.si()), median.multiply(factor.si()), source);
  }

  /**
   * A value taken as certain.
   *
   * @param <Q> the quantity
   * @param value the value
   * @param source where it comes from
   * @return the law without any spread
   */
  static <Q extends Quantity<Q>> Spread<Q> exactly(Amount<Q> value, Source source) {
    return of(Form.RECTANGULAR, value, value, source);
  }

  private static <Q extends Quantity<Q>> Spread<Q> of(
      Form form, Amount<Q> low, Amount<Q> high, Source source) {
    return ImmutableSpread.<Q>builder().form(form).span(Span.of(low, high)).source(source).build();
  }

  /** {@return whether there is only one value} */
  default boolean isExact() {
    return span().low().equals(span().high());
  }

  /**
   * The value that a share of all values does not exceed.
   *
   * @param share the share, more than 0 and less than 1
   * @return the value
   * @throws IllegalArgumentException if the share is out of range
   */
  default Amount<Q> quantile(Amount<Dimensionless> share) {
    new Problems("quantile")
        .require(
            share.si() > 0 && share.si() < 1,
            "share is " + share + "; accepted is more than 0 and less than 1")
        .refuseIfAny();
    Unit<Q> unit = span().low().toSystemUnit().getUnit();
    return Amount.of(Law.of(this).applyAsDouble(share.si()), unit, span().low().kind())
        .to(span().low().getUnit());
  }

  /**
   * Refuses a logarithm of what is not above zero.
   *
   * @throws IllegalArgumentException if the form is of the logarithm and the low end is not
   */
  @Value.Check
  default void check() {
    new Problems(form().words() + " spread")
        .require(
            !form().logarithmic || span().low().si() > 0,
            "it begins at " + span().low() + "; accepted is more than zero")
        .refuseIfAny();
  }
}
