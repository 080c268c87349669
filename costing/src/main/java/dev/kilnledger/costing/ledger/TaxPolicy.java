package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/**
 * How tax enters a ledger, at one rate. Prices that do not say whether they hold it are never
 * touched.
 */
@Value.Immutable
@ValueStyle
public interface TaxPolicy extends Serializable {
  /** {@return what becomes of the tax} */
  @Value.Parameter
  TaxRule rule();

  /** {@return the rate on prices without tax, 0 to 1} */
  @Value.Parameter
  Amount<Dimensionless> rate();

  /** {@return where the rate comes from} */
  @Value.Parameter
  Source source();

  /**
   * A policy.
   *
   * @param rule what becomes of the tax
   * @param rate the rate on prices without tax, 0 to 1
   * @param source where the rate comes from
   * @return the policy
   * @throws IllegalArgumentException if the rate is out of range
   */
  static TaxPolicy of(TaxRule rule, Amount<Dimensionless> rate, Source source) {
    return ImmutableTaxPolicy.of(rule, rate, source);
  }

  /** {@return prices as they are offered} */
  static TaxPolicy asPriced() {
    return of(TaxRule.AS_PRICED, Amounts.ratio(0), Source.user("no tax policy is stated"));
  }

  /**
   * Whether this policy changes a price.
   *
   * @param tax whether the price holds the tax
   * @return whether tax is added to it or taken out of it
   */
  default boolean touches(Tax tax) {
    return (rule() == TaxRule.ADDED && tax == Tax.EXCLUDED)
        || (rule() == TaxRule.DEDUCTED && tax == Tax.INCLUDED);
  }

  /**
   * Refuses a rate that is none.
   *
   * @throws IllegalArgumentException if the rate is out of range
   */
  @Value.Check
  default void check() {
    new Problems("tax policy")
        .within("rate", rate(), Amounts.ratio(0), Amounts.ratio(1))
        .refuseIfAny();
  }
}
