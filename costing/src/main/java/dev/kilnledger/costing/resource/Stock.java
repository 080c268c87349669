package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;

/** What is left of one resource after a number of parts, and when it has to be bought again. */
@Value.Immutable
@ValueStyle
public interface Stock extends Serializable {
  /** {@return the item} */
  String item();

  /** {@return how many parts have been made} */
  long parts();

  /** {@return what can still be used, in use and on the shelf} */
  Amount<?> left();

  /** {@return what {@link #left} counts, in the singular, such as "firing"; empty for a measure} */
  String counted();

  /** {@return what lies in tails too small to use, those of packs in use included} */
  Optional<Amount<?>> stranded();

  /** {@return the part for which the next pack has to be bought; empty if none will be} */
  Optional<Long> nextPurchase();

  /** {@return how many more parts it lasts; empty if for good} */
  default Optional<Long> furtherParts() {
    return nextPurchase().map(next -> next - parts() - 1);
  }

  /** {@return what is left, for people: {@code "5 firings"}} */
  default String text() {
    if (counted().isEmpty()) {
      return left().toString();
    }
    return left() + " " + counted() + (left().si() == 1 ? "" : "s");
  }

  /**
   * Starts one.
   *
   * @return a builder; item, parts, left and counted are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Stock} values. */
  final class Builder extends ImmutableStock.Builder {
    Builder() {}
  }
}
