package dev.kilnledger.costing.breakeven;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.LedgerPlan;
import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;

/**
 * From how many good parts on one plan costs no more than another. As whole packs are bought, the
 * two can cross several times.
 */
@Value.Immutable
@ValueStyle
public interface Crossing extends Serializable {
  /** {@return the plan that is asked about, such as making the parts} */
  LedgerPlan plan();

  /** {@return the plan it is held against, such as buying them} */
  LedgerPlan other();

  /** {@return what one part uses up in the long run by the plan} */
  Account usage();

  /** {@return what one part uses up in the long run by the other plan} */
  Account otherUsage();

  /** {@return the smallest n for which the plan costs at most as much; empty, for never} */
  Optional<Long> first();

  /** {@return the smallest n from which on that holds for good; empty, for never} */
  Optional<Long> permanent();

  /**
   * {@return the smallest whole n of at least (fixed - other's fixed) / (other's usage - usage),
   * fixed being what does not grow with n: the textbook formula, which knows no packs; empty where
   * the other's usage is not above}
   */
  Optional<Long> smooth();

  /** {@return the cash of the plan up to the first crossing, line by line} */
  Optional<Account> cashAtFirst();

  /** {@return the cash of the other plan up to the first crossing, line by line} */
  Optional<Account> otherAtFirst();

  /** {@return the cash of the plan up to the permanent crossing, line by line} */
  Optional<Account> cashAtPermanent();

  /** {@return the cash of the other plan up to the permanent crossing, line by line} */
  Optional<Account> otherAtPermanent();

  /** {@return the crossing for people, such as {@code "first at 203, for good from 206"}} */
  default String text() {
    return first()
        .map(
            parts ->
                "first at "
                    + parts
                    + permanent().map(from -> ", for good from " + from).orElse(", never for good"))
        .orElse("never");
  }

  /**
   * Starts one.
   *
   * @return a builder; both plans and usages are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Crossing} values. */
  final class Builder extends ImmutableCrossing.Builder {
    Builder() {}
  }
}
