package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** Equal parts that are quoted together, and what one of them costs at that quantity. */
@Value.Immutable
@ValueStyle
public interface QuoteItem extends Serializable {
  /** {@return what the parts are called in the quote} */
  @Value.Parameter
  String name();

  /** {@return how many parts, 1 or more} */
  @Value.Parameter
  long parts();

  /** {@return what one part costs to make at this quantity, unrounded, zero or more} */
  @Value.Parameter
  BigMoney costPerPart();

  /**
   * Parts to quote.
   *
   * @param name what they are called
   * @param parts how many, 1 or more
   * @param costPerPart what one costs to make, zero or more
   * @return the item
   * @throws IllegalArgumentException with all problems
   */
  static QuoteItem of(String name, long parts, BigMoney costPerPart) {
    return ImmutableQuoteItem.of(name, parts, costPerPart);
  }

  /**
   * Refuses no parts and a negative cost.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("quote of " + name())
        .text("name", name())
        .require(parts() >= 1, "parts is " + parts() + "; accepted is 1 or more")
        .require(
            !costPerPart().isNegative(),
            "cost per part is " + costPerPart() + "; accepted is zero or more")
        .refuseIfAny();
  }
}
