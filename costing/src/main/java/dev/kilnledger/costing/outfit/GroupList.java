package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import java.util.stream.Collectors;
import org.immutables.value.Value;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What an outfit takes from one group, and what that costs. */
@Value.Immutable
@ValueStyle
public interface GroupList extends Serializable {
  /** {@return the name of the group} */
  @Value.Parameter
  String group();

  /** {@return the currency of the lines} */
  @Value.Parameter
  CurrencyUnit currency();

  /** {@return the options taken, owned ones too, in catalogue order} */
  @Value.Parameter
  List<Option> options();

  /** {@return what is bought for them} */
  @Value.Parameter
  List<OutfitLine> lines();

  /** {@return the sum of the lines} */
  @Value.Derived
  default Money subtotal() {
    return Money.total(currency(), lines().stream().map(OutfitLine::paid).toList());
  }

  /**
   * A list.
   *
   * @param group the name of the group
   * @param currency the currency of the lines
   * @param options the options taken
   * @param lines what is bought for them
   * @return the list
   */
  static GroupList of(
      String group, CurrencyUnit currency, List<Option> options, List<OutfitLine> lines) {
    return ImmutableGroupList.of(group, currency, options, lines);
  }

  /** {@return the list for people: subtotal, what is kept, and each line} */
  default String text() {
    String kept =
        options().stream()
            .filter(Option::owned)
            .map(Option::name)
            .collect(Collectors.joining(", "));
    String bought =
        lines().stream().map(line -> line.purchase().text()).collect(Collectors.joining("; "));
    return group()
        + ", "
        + subtotal()
        + ": "
        + (kept.isEmpty() ? "" : "keep " + kept + (bought.isEmpty() ? "" : "; "))
        + bought;
  }
}
