package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.Money;

/** So many parts of a line at one and the same amount. */
@Value.Immutable
@ValueStyle
public interface PartShare extends Serializable {
  /** {@return how many parts, 1 or more} */
  @Value.Parameter
  long parts();

  /** {@return the amount for each of them} */
  @Value.Parameter
  Money each();

  /**
   * Parts at one amount.
   *
   * @param parts how many, 1 or more
   * @param each the amount for each of them
   * @return the share
   */
  static PartShare of(long parts, Money each) {
    return ImmutablePartShare.of(parts, each);
  }
}
