package dev.kilnledger.costing.document;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.Statement;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** A sum of money, exact and as it can be paid. */
@Value.Immutable
@ValueStyle
public interface Sum extends Serializable {
  /** {@return the sum to its last digit; 34 digits where it has no end} */
  @Value.Parameter
  BigMoney exact();

  /** {@return the sum in whole minor units, rounded by the rule of the job} */
  @Value.Parameter
  Money rounded();

  /**
   * A sum.
   *
   * @param exact the sum to its last digit
   * @param rounded the sum in whole minor units
   * @return the sum
   * @throws IllegalArgumentException if the currencies are two
   */
  static Sum of(BigMoney exact, Money rounded) {
    return ImmutableSum.of(exact, rounded);
  }

  /**
   * A sum of a statement.
   *
   * @param statement the statement, by whose rule it is rounded
   * @param exact the sum to its last digit
   * @return the sum
   */
  static Sum of(Statement statement, BigMoney exact) {
    return of(exact, statement.money(exact));
  }

  /**
   * Refuses two currencies.
   *
   * @throws IllegalArgumentException if the currencies are two
   */
  @Value.Check
  default void check() {
    new Problems("sum")
        .require(
            exact().getCurrencyUnit().equals(rounded().getCurrencyUnit()),
            "it is " + exact() + " and " + rounded() + "; accepted is one currency")
        .refuseIfAny();
  }
}
