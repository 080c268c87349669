package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** What to buy from whom, what that costs, and what is left over. */
@Value.Immutable
@ValueStyle
public interface PurchasePlan extends Serializable {
  /** {@return the currency of every line} */
  CurrencyUnit currency();

  /** {@return the day whose prices are used} */
  LocalDate asOf();

  /** {@return what is bought, in the order of the needs, then of the price book} */
  List<Purchase> purchases();

  /** {@return the deliveries, one for each supplier whose terms are known, by first purchase} */
  List<Delivery> deliveries();

  /** {@return the needs in the order given, with what is left over of each} */
  List<Covered> covered();

  /** {@return what deserves attention about the prices of what is bought} */
  List<Finding> findings();

  /** {@return the sum of purchases and deliveries, unrounded} */
  @Value.Derived
  default BigMoney total() {
    BigMoney total = BigMoney.zero(currency());
    for (Purchase purchase : purchases()) {
      total = total.plus(purchase.cost());
    }
    for (Delivery delivery : deliveries()) {
      total = total.plus(delivery.charge());
    }
    return total;
  }

  /** {@return the plan for people, one line for each line of it, the total, and the rule} */
  default List<String> explanation() {
    List<String> lines = new ArrayList<>();
    purchases().forEach(purchase -> lines.add(purchase.text()));
    deliveries().forEach(delivery -> lines.add(delivery.text()));
    lines.add("total " + total() + " at the prices of " + asOf());
    covered().forEach(need -> lines.add(need.text()));
    lines.add(
        "No cheaper order covers the needs; among equal ones the least surplus was taken, then"
            + " the fewest packs, then the first in the price book.");
    return List.copyOf(lines);
  }

  /**
   * Starts one.
   *
   * @return a builder; currency and day are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link PurchasePlan} values. */
  final class Builder extends ImmutablePurchasePlan.Builder {
    Builder() {}
  }
}
