package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * The lines of a shopping list that belong together: by the name that the plan gives the group of
 * an item, and else {@value #EQUIPMENT}, {@value #WEARING}, {@value #MATERIAL} or {@value
 * #SHIPPING}.
 */
@Value.Immutable
@ValueStyle
public interface ShoppingGroup extends Serializable {
  /** The group of what is bought once. */
  String EQUIPMENT = "equipment";

  /** The group of what wears and is replaced. */
  String WEARING = "wearing parts";

  /** The group of what is used up. */
  String MATERIAL = "material";

  /** The group of what suppliers charge for sending. */
  String SHIPPING = "shipping";

  /** {@return the name of the group} */
  @Value.Parameter
  String name();

  /** {@return the currency of every line} */
  @Value.Parameter
  CurrencyUnit currency();

  /** {@return the lines, each with its packs, price and supplier} */
  @Value.Parameter
  List<Line> lines();

  /** {@return the sum of the lines, unrounded} */
  @Value.Derived
  default BigMoney subtotal() {
    BigMoney sum = BigMoney.zero(currency());
    for (Line line : lines()) {
      sum = sum.plus(line.amount());
    }
    return sum;
  }

  /**
   * A group.
   *
   * @param name its name
   * @param currency the currency of every line
   * @param lines its lines
   * @return the group
   */
  static ShoppingGroup of(String name, CurrencyUnit currency, List<Line> lines) {
    return ImmutableShoppingGroup.of(name, currency, lines);
  }
}
