package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** An amount without tax, and the tax on it. */
@Value.Immutable
@ValueStyle
public interface TaxedAmount extends Serializable {
  /** {@return the amount without tax} */
  @Value.Parameter
  Money net();

  /** {@return the tax} */
  @Value.Parameter
  Money tax();

  /** {@return net and tax together} */
  default Money gross() {
    return net().plus(tax());
  }

  /**
   * An amount and its tax.
   *
   * @param net the amount without tax
   * @param tax the tax
   * @return the taxed amount
   */
  static TaxedAmount of(Money net, Money tax) {
    return ImmutableTaxedAmount.of(net, tax);
  }

  /**
   * Puts the tax on a net amount.
   *
   * @param net the amount without tax
   * @param rate the tax rate, zero or more
   * @param rounding how net x rate becomes money
   * @return the taxed amount
   * @throws IllegalArgumentException if the rate is negative
   */
  static TaxedAmount ofNet(Money net, Amount<Dimensionless> rate, Rounding rounding) {
    refuse(rate);
    BigMoney tax = net.toBigMoney().multipliedBy(rate.decimalIn(TradeUnits.ONE));
    return of(net, rounding.round(tax));
  }

  /**
   * Takes the tax out of a gross amount: the net is rounded, and the tax is what is left.
   *
   * @param gross the amount with tax
   * @param rate the tax rate, zero or more
   * @param rounding how gross / (1 + rate) becomes money
   * @return the taxed amount, whose gross is the one given
   * @throws IllegalArgumentException if the rate is negative
   */
  static TaxedAmount ofGross(Money gross, Amount<Dimensionless> rate, Rounding rounding) {
    refuse(rate);
    BigDecimal factor = BigDecimal.ONE.add(rate.decimalIn(TradeUnits.ONE));
    Money net =
        rounding.round(
            BigMoney.of(
                gross.getCurrencyUnit(), gross.getAmount().divide(factor, MathContext.DECIMAL128)));
    return of(net, gross.minus(net));
  }

  private static void refuse(Amount<Dimensionless> rate) {
    new Problems("tax").notNegative("rate", rate).refuseIfAny();
  }
}
