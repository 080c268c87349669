package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Wearing;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * What has to be ordered, in groups with their subtotals: the whole packs of an account and their
 * shipping, without what is paid by measure, charged by depreciation or added as overhead.
 */
@Value.Immutable
@ValueStyle
public interface ShoppingList extends Serializable {
  /** {@return what is bought for, such as "part 1"} */
  @Value.Parameter
  String title();

  /** {@return the currency} */
  @Value.Parameter
  CurrencyUnit currency();

  /** {@return the groups in the order of their first lines; none of them is empty} */
  @Value.Parameter
  List<ShoppingGroup> groups();

  /** {@return the tax on the lines by the policy of the plan, one surcharge or none} */
  @Value.Parameter
  List<Surcharge> tax();

  /** {@return the sum of the subtotals and the tax, unrounded} */
  @Value.Derived
  default BigMoney total() {
    BigMoney total = BigMoney.zero(currency());
    for (ShoppingGroup group : groups()) {
      total = total.plus(group.subtotal());
    }
    for (Surcharge surcharge : tax()) {
      total = total.plus(surcharge.amount());
    }
    return total;
  }

  /**
   * What an account asks to be ordered.
   *
   * @param plan the plan of the account
   * @param account what is paid
   * @return the list
   */
  static ShoppingList of(LedgerPlan plan, Account account) {
    List<Line> ordered =
        account.lines().stream()
            .filter(line -> line.entry() == Entry.BOUGHT || line.entry() == Entry.SHIPPED)
            .toList();
    Map<String, List<Line>> groups = new LinkedHashMap<>();
    for (Line line : ordered) {
      groups.computeIfAbsent(group(plan, line), name -> new ArrayList<>()).add(line);
    }
    return ImmutableShoppingList.of(
        account.title(),
        account.currency(),
        groups.entrySet().stream()
            .map(group -> ShoppingGroup.of(group.getKey(), account.currency(), group.getValue()))
            .toList(),
        Surcharges.tax(ordered, plan));
  }

  private static String group(LedgerPlan plan, Line line) {
    Optional<Resource> resource = plan.resourceOf(line.item());
    String usual = ShoppingGroup.MATERIAL;
    if (resource.isEmpty()) {
      usual = ShoppingGroup.SHIPPING;
    } else if (resource.get() instanceof Durable) {
      usual = ShoppingGroup.EQUIPMENT;
    } else if (resource.get() instanceof Wearing) {
      usual = ShoppingGroup.WEARING;
    }
    return plan.groups().getOrDefault(line.item(), usual);
  }
}
