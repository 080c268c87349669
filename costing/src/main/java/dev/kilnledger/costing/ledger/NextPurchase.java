package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** The next part that makes packs necessary, and of what. */
@Value.Immutable
@ValueStyle
public interface NextPurchase extends Serializable {
  /** {@return the number of the part} */
  @Value.Parameter
  long part();

  /** {@return the items to buy, in the order of the resources} */
  @Value.Parameter
  List<String> items();

  /**
   * A purchase due.
   *
   * @param part the number of the part
   * @param items the items
   * @return the purchase
   */
  static NextPurchase of(long part, List<String> items) {
    return ImmutableNextPurchase.of(part, items);
  }
}
