package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.Money;

/** Something bought once and used for years: what it cost, and what it will still be worth. */
@Value.Immutable
@ValueStyle
public interface Asset extends Serializable {
  /** {@return what it is, such as "kiln"} */
  @Value.Parameter
  String name();

  /** {@return what it cost} */
  @Value.Parameter
  Money cost();

  /** {@return what it is worth at the end of its life, from zero to the cost} */
  @Value.Parameter
  Money salvage();

  /** {@return what its use has to earn back: cost - salvage} */
  default Money depreciable() {
    return cost().minus(salvage());
  }

  /**
   * An asset.
   *
   * @param name what it is
   * @param cost what it cost
   * @param salvage what it is worth at the end of its life, from zero to the cost
   * @return the asset
   * @throws IllegalArgumentException with all problems
   */
  static Asset of(String name, Money cost, Money salvage) {
    return ImmutableAsset.of(name, cost, salvage);
  }

  /**
   * Refuses a salvage value below zero or above the cost.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("asset " + name())
        .text("name", name())
        .require(
            salvage().getCurrencyUnit().equals(cost().getCurrencyUnit())
                && !salvage().isNegative()
                && !salvage().isGreaterThan(cost()),
            "salvage value is " + salvage() + "; accepted is from zero to the cost of " + cost())
        .refuseIfAny();
  }
}
