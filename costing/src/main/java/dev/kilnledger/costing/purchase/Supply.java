package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.offer.Offer;
import java.io.Serializable;
import java.math.BigDecimal;
import org.immutables.value.Value;

/** An offer, and how much of what is wanted one of its packs holds. */
@Value.Immutable
@ValueStyle
public interface Supply extends Serializable {
  /** {@return the offer, in whole packs} */
  @Value.Parameter
  Offer offer();

  /** {@return what one pack holds, more than zero, in the measure of what is wanted} */
  @Value.Parameter
  BigDecimal holds();

  /**
   * A supply.
   *
   * @param offer the offer
   * @param holds what one pack holds, more than zero
   * @return the supply
   * @throws IllegalArgumentException if a pack holds nothing, or the offer is sold by measure
   */
  static Supply of(Offer offer, BigDecimal holds) {
    return ImmutableSupply.of(offer, holds);
  }

  /**
   * Refuses empty packs and what comes in none.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems(() -> "supply of " + offer().item())
        .require(
            holds().signum() > 0,
            () -> "a pack holds " + holds().toPlainString() + "; accepted is more than zero")
        .require(!offer().metered(), "it is sold by measure; accepted are whole packs")
        .refuseIfAny();
  }
}
