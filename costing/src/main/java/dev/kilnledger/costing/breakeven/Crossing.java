package dev.kilnledger.costing.breakeven;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.Account;
import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * From how many parts on making them costs no more than buying them. As whole packs are bought, the
 * two can cross several times.
 */
@Value.Immutable
@ValueStyle
public interface Crossing extends Serializable {
  /** {@return what one part costs outside} */
  BigMoney outsidePrice();

  /** {@return what one part uses up in the long run when it is made} */
  Account usage();

  /** {@return the smallest n whose cash is at most n times the outside price; empty if never} */
  Optional<Long> first();

  /**
   * {@return the smallest n from which on that holds for good; empty, for never, where the usage
   * per part is not below the outside price}
   */
  Optional<Long> permanent();

  /**
   * {@return the smallest whole n of at least fixed / (outside price - usage), fixed being what is
   * bought once: the textbook formula, which knows no packs; empty where permanent is}
   */
  Optional<Long> smooth();

  /** {@return the cash up to the first crossing, line by line} */
  Optional<Account> cashAtFirst();

  /** {@return the cash up to the permanent crossing, line by line} */
  Optional<Account> cashAtPermanent();

  /**
   * Starts one.
   *
   * @return a builder; outside price and usage are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Crossing} values. */
  final class Builder extends ImmutableCrossing.Builder {
    Builder() {}
  }
}
