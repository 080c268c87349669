package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * A life that is spread by Weibull's distribution: the share R(t) = exp(-(t / eta)^beta) of the
 * pieces lasts longer than t.
 *
 * <p>Age replacement (Barlow and Proschan, Mathematical Theory of Reliability, 1965, chapter 4;
 * from memory): a piece is replaced when it fails or at age T, whichever comes first. Its mean life
 * is the integral of R from 0 to T, and its expected cost per use is (p R(T) + f (1 - R(T))) over
 * that, p being the cost of a planned replacement and f that of a failure.
 */
@Value.Immutable
@ValueStyle
public interface WeibullLife extends Serializable {
  /** {@return beta, from 0.1 to 100; above 1 where pieces wear out} */
  @Value.Parameter
  double shape();

  /** {@return eta, which 36.8 % of the pieces outlast: a number of uses or a measure} */
  @Value.Parameter
  Amount<?> scale();

  /** {@return where shape and scale come from} */
  @Value.Parameter
  Source source();

  /**
   * A life.
   *
   * @param shape beta, from 0.1 to 100
   * @param scale eta, more than zero, as a number of uses (a ratio) or a measure
   * @param source where they come from
   * @return the life
   * @throws IllegalArgumentException with all problems
   */
  static WeibullLife of(double shape, Amount<?> scale, Source source) {
    return ImmutableWeibullLife.of(shape, scale, source);
  }

  /** {@return the mean life, eta Gamma(1 + 1 / beta)} */
  default Amount<?> mean() {
    return like(distribution().getMean());
  }

  /**
   * The age that a share of the pieces outlasts; at 90 % it is called B10.
   *
   * @param share the share, 0.000001 to 0.999999
   * @return the age
   * @throws IllegalArgumentException if the share is out of range
   */
  default Amount<?> outlastedBy(Amount<Dimensionless> share) {
    new Problems("Weibull life")
        .within("share", share, Amounts.ratio(0.000001), Amounts.ratio(0.999999))
        .refuseIfAny();
    return like(distribution().inverseSurvivalProbability(share.si()));
  }

  /** {@return the mean life of pieces that are replaced when they fail} */
  default PlannedLife toFailure() {
    return planned(LifeRule.AT_FAILURE, Optional.empty());
  }

  /**
   * The mean life of pieces that are replaced when they fail, or at an age.
   *
   * @param interval the age, more than zero, in the measure of the life
   * @return the mean life under this rule
   * @throws IllegalArgumentException if the age is not positive or of another measure
   */
  default PlannedLife replacedAt(Amount<?> interval) {
    refuse(interval);
    return planned(LifeRule.AT_AGE, Optional.of(interval));
  }

  /**
   * The age of planned replacement that makes each use cheapest on average, if there is one: with
   * beta above 1 and a failure dearer than a planned replacement, the expected cost per use has one
   * minimum, where h(T) M(T) - F(T) = p / (f - p), h being the hazard rate and M the mean life.
   *
   * @param planned p, what a planned replacement costs, more than zero
   * @param failure f, what a failure costs with all it spoils, in the same currency
   * @return the mean life under this rule; that to failure where no planned replacement pays
   * @throws IllegalArgumentException if the costs cannot be compared
   */
  default PlannedLife replacedAtCheapest(BigMoney planned, BigMoney failure) {
    refuse(planned, failure);
    if (shape() <= 1 || !failure.isGreaterThan(planned)) {
      return planned(LifeRule.AT_CHEAPEST_AGE, Optional.empty());
    }
    double p = planned.getAmount().doubleValue();
    double f = failure.getAmount().doubleValue();
    double wanted = p / (f - p);
    // The left side rises from 0; in units of eta it is beta t^(beta - 1) M(t) - F(t).
    double low = 0;
    double high = 1;
    while (steepness(high) < wanted && high < 1000) {
      high *= 2;
    }
    if (steepness(high) < wanted) {
      return planned(LifeRule.AT_CHEAPEST_AGE, Optional.empty());
    }
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      if (steepness(middle) < wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return planned(LifeRule.AT_CHEAPEST_AGE, Optional.of(like(high * eta())));
  }

  /**
   * The expected cost per use, or per unit of its measure in the unit of the scale.
   *
   * @param life a life of this distribution
   * @param planned what a planned replacement costs, more than zero
   * @param failure what a failure costs with all it spoils, in the same currency
   * @return (planned x lasting + failure x failing) / mean life, of 34 digits
   * @throws IllegalArgumentException if the costs cannot be compared
   */
  default BigMoney costPerUse(PlannedLife life, BigMoney planned, BigMoney failure) {
    refuse(planned, failure);
    BigDecimal failing = Decimals.si(life.failing());
    BigDecimal cost =
        planned
            .getAmount()
            .multiply(BigDecimal.ONE.subtract(failing))
            .add(failure.getAmount().multiply(failing));
    return BigMoney.of(
        planned.getCurrencyUnit(),
        cost.divide(BigDecimal.valueOf(number(life.life())), MathContext.DECIMAL128));
  }

  private double steepness(double t) {
    double hazard = shape() * Math.pow(t, shape() - 1);
    return hazard * meanUpTo(t) + Math.expm1(-Math.pow(t, shape()));
  }

  /**
   * The integral of R from 0 to t, in units of eta: with x = (t / eta)^beta it is the mean life
   * times the regularized incomplete gamma function P(1 / beta, x).
   */
  private double meanUpTo(double t) {
    double a = 1 / shape();
    return WeibullDistribution.of(shape(), 1).getMean()
        * GammaDistribution.of(a, 1).cumulativeProbability(Math.pow(t, shape()));
  }

  private PlannedLife planned(LifeRule rule, Optional<Amount<?>> interval) {
    PlannedLife.Builder life = PlannedLife.builder().rule(rule).interval(interval);
    if (interval.isPresent()) {
      double age = number(interval.get());
      life.life(like(meanUpTo(age / eta()) * eta()))
          .failing(Amounts.ratio(distribution().cumulativeProbability(age)));
    } else {
      life.life(mean()).failing(Amounts.ratio(1));
    }
    String until = interval.map(age -> ", replaced at " + age).orElse("");
    return life.source(
            Source.of(
                "mean of a Weibull life of shape "
                    + shape()
                    + " and scale "
                    + scale()
                    + until
                    + " ("
                    + rule.words()
                    + "); "
                    + source().text(),
                source().standing()))
        .build();
  }

  private WeibullDistribution distribution() {
    return WeibullDistribution.of(shape(), eta());
  }

  private double eta() {
    return scale().getValue().doubleValue();
  }

  /** The number of an amount in the unit of the scale. */
  private double number(Amount<?> amount) {
    return amount.si() / scale().si() * eta();
  }

  /** An amount in the unit of the scale, of six digits: no life is known better. */
  private Amount<?> like(double number) {
    return rounded(scale(), new BigDecimal(number).round(new MathContext(6, RoundingMode.HALF_UP)));
  }

  private static <Q extends Quantity<Q>> Amount<Q> rounded(Amount<Q> sample, BigDecimal number) {
    return Amount.of(number.doubleValue(), sample.getUnit(), sample.kind());
  }

  private void refuse(Amount<?> interval) {
    new Problems("Weibull life")
        .positive("interval", interval)
        .require(
            interval.kind().equals(scale().kind()),
            "interval is " + interval + "; accepted is a measure of " + scale().kind())
        .refuseIfAny();
  }

  private static void refuse(BigMoney planned, BigMoney failure) {
    new Problems("Weibull life")
        .require(
            planned.isPositive(),
            "planned replacement costs " + planned + "; accepted is more than zero")
        .require(
            planned.getCurrencyUnit().equals(failure.getCurrencyUnit()) && !failure.isNegative(),
            "a failure costs "
                + failure
                + "; accepted is zero or more in the currency of "
                + planned)
        .refuseIfAny();
  }

  /**
   * Refuses what is no life.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("Weibull life")
        .require(
            shape() >= 0.1 && shape() <= 100, "shape is " + shape() + "; accepted is 0.1 to 100")
        .positive("scale", scale())
        .refuseIfAny();
  }
}
