package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.math.BigDecimal;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A figure of a statement with its uncertainty. Draws are numbers; each answer becomes money once,
 * by the rounding of the plan.
 */
@Value.Immutable
@ValueStyle
public interface CashBand extends Serializable {
  /** {@return which figure} */
  @Value.Parameter
  CashFigure figure();

  /** {@return the currency of the draws} */
  @Value.Parameter
  CurrencyUnit currency();

  /** {@return how sums become money} */
  @Value.Parameter
  Rounding rounding();

  /** {@return the draws in units of the currency, for charts and further computation} */
  @Value.Parameter
  Outcome outcome();

  /**
   * A band.
   *
   * @param figure which figure
   * @param currency the currency of the draws
   * @param rounding how sums become money
   * @param outcome the draws
   * @return the band
   */
  static CashBand of(CashFigure figure, CurrencyUnit currency, Rounding rounding, Outcome outcome) {
    return ImmutableCashBand.of(figure, currency, rounding, outcome);
  }

  /** {@return the mean of the draws} */
  default Money mean() {
    return money(outcome().mean());
  }

  /** {@return the standard deviation of the draws} */
  default Money standardDeviation() {
    return money(outcome().standardDeviation());
  }

  /** {@return the sum that half of the draws do not exceed} */
  default Money median() {
    return money(outcome().median());
  }

  /**
   * The sum that a share of the draws does not exceed.
   *
   * @param share the share, more than 0 and up to 1
   * @return the smallest draw of which that holds
   * @throws IllegalArgumentException if the share is out of range
   */
  default Money quantile(Amount<Dimensionless> share) {
    return money(outcome().quantile(share));
  }

  /** {@return the interval from the 5 % to the 95 % quantile} */
  default CashInterval interval() {
    return interval(Amounts.percent(90));
  }

  /**
   * The interval that leaves out as many draws below as above.
   *
   * @param coverage the share of the draws in it, more than 0 and less than 1
   * @return the interval
   * @throws IllegalArgumentException if the share is out of range
   */
  default CashInterval interval(Amount<Dimensionless> coverage) {
    return cash(outcome().interval(coverage));
  }

  /**
   * The shortest interval that holds so many draws.
   *
   * @param coverage the share of the draws in it, more than 0 and less than 1
   * @return the interval
   * @throws IllegalArgumentException if the share is out of range
   */
  default CashInterval shortestInterval(Amount<Dimensionless> coverage) {
    return cash(outcome().shortestInterval(coverage));
  }

  private CashInterval cash(CoverageInterval interval) {
    return CashInterval.of(money(interval.low()), money(interval.high()), interval.coverage());
  }

  /**
   * The probability of staying in a budget.
   *
   * @param budget the budget, in the currency of the draws
   * @return the share of the draws that do not exceed it, to a millionth of a minor unit
   * @throws IllegalArgumentException if it is in another currency
   */
  default Amount<Dimensionless> probabilityWithin(BigMoney budget) {
    new Problems("budget")
        .require(
            budget.getCurrencyUnit().equals(currency()),
            "budget is " + budget + "; accepted is the currency " + currency())
        .refuseIfAny();
    // Sums in doubles may miss the budget they equal by their last digit.
    double slack = 1e-6 * Math.pow(10, -currency().getDecimalPlaces());
    return outcome().probabilityUpTo(budget.getAmount().doubleValue() + slack);
  }

  private Money money(double sum) {
    return rounding().round(BigMoney.of(currency(), BigDecimal.valueOf(sum)));
  }

  /** {@return the band for people: {@code "all parts: median EUR 10.00, 5 to 95 % EUR 8 to 12"}} */
  default String text() {
    CashInterval interval = interval();
    return figure().words()
        + ": median "
        + median()
        + ", 5 to 95 % "
        + interval.low()
        + " to "
        + interval.high().getAmount().toPlainString();
  }
}
