package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.resource.Stock;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * The first n good parts: what the first, the second and the last of them cost in cash, all
 * together and on average, what a part uses up, what is left, what has to be bought next, and the
 * caveats. Every figure is the sum of its account's lines; nothing is rounded but by {@link
 * #money}.
 */
@Value.Immutable
@ValueStyle
public interface Statement extends Serializable {
  /** {@return what was counted, and by which rules} */
  LedgerPlan plan();

  /** {@return n, the number of parts, 1 or more} */
  long parts();

  /** {@return the cash for the first part, in whole packs and with everything not owned} */
  Account firstPart();

  /** {@return the cash for the second part} */
  Account secondPart();

  /** {@return the cash for part n} */
  Account lastPart();

  /** {@return the cash for parts 1 to n} */
  Account allParts();

  /** {@return what one part uses up in the long run, at full charges} */
  Account usage();

  /** {@return what was bought and is left, by the plan's rule; without lines if not valued} */
  Account leftovers();

  /** {@return what is left of each resource after part n} */
  List<Stock> stocks();

  /** {@return what is left out or taken for granted, each at most once} */
  @Value.Lazy
  default List<Caveat> caveats() {
    return Caveats.of(this);
  }

  /** {@return the cash for parts 1 to n divided by n; 34 digits where it has no end} */
  default BigMoney average() {
    return perPart(allParts().total());
  }

  /** {@return the cash for parts 1 to n less the leftovers, divided by n; up to 34 digits} */
  default BigMoney averageLessLeftovers() {
    return perPart(allParts().total().minus(leftovers().total()));
  }

  private BigMoney perPart(BigMoney total) {
    return BigMoney.of(
        total.getCurrencyUnit(),
        total.getAmount().divide(BigDecimal.valueOf(parts()), MathContext.DECIMAL128));
  }

  /** {@return what has to be ordered before the first part, in groups with subtotals} */
  default ShoppingList firstShoppingList() {
    return ShoppingList.of(plan(), firstPart());
  }

  /** {@return what is ordered for all n parts, in groups with subtotals} */
  default ShoppingList shoppingList() {
    return ShoppingList.of(plan(), allParts());
  }

  /** {@return the rules by which it was counted, one sentence each} */
  default List<String> rules() {
    LedgerPlan plan = plan();
    return List.of(
        "Packs are bought " + plan.buying().words() + ": " + plan.buying().sentence(),
        "A charge that is not full is counted in " + plan.charging().words() + ".",
        plan.failures().isNone()
            ? "Every part is taken to come out good."
            : "Failures enter as " + plan.failures().rule().words() + ".",
        "Tax: " + plan.tax().rule().words() + ".",
        "Leftovers are "
            + (plan.leftovers().rule() == LeftoverRule.NOT_VALUED ? "" : "valued ")
            + plan.leftovers().rule().words()
            + ".",
        "Sums are rounded once, " + plan.rounding().words() + ".");
  }

  /** {@return the next part after n that makes packs necessary; empty if none will} */
  default Optional<NextPurchase> nextPurchase() {
    return stocks().stream()
        .flatMap(stock -> stock.nextPurchase().stream())
        .min(Long::compare)
        .map(
            part ->
                NextPurchase.of(
                    part,
                    stocks().stream()
                        .filter(stock -> stock.nextPurchase().equals(Optional.of(part)))
                        .map(Stock::item)
                        .toList()));
  }

  /**
   * A sum as an amount that can be paid: rounded once, by the rounding of the plan.
   *
   * @param exact a total or average of this statement
   * @return the amount in whole minor units
   */
  default Money money(BigMoney exact) {
    return plan().rounding().round(exact);
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Statement} values. */
  final class Builder extends ImmutableStatement.Builder {
    Builder() {}
  }
}
