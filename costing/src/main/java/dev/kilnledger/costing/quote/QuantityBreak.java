package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** Another uplift from a number of equal parts on, for all of them. */
@Value.Immutable
@ValueStyle
public interface QuantityBreak extends Serializable {
  /** {@return the parts from which it applies, 2 or more} */
  @Value.Parameter
  long fromParts();

  /** {@return the uplift from there on} */
  @Value.Parameter
  Uplift uplift();

  /**
   * A break.
   *
   * @param fromParts the parts from which it applies, 2 or more
   * @param uplift the uplift from there on
   * @return the break
   * @throws IllegalArgumentException if it applies before the second part
   */
  static QuantityBreak of(long fromParts, Uplift uplift) {
    return ImmutableQuantityBreak.of(fromParts, uplift);
  }

  /**
   * Refuses a break before the second part.
   *
   * @throws IllegalArgumentException if it applies before the second part
   */
  @Value.Check
  default void check() {
    new Problems("quantity break")
        .require(fromParts() >= 2, "it is from " + fromParts() + " parts; accepted is 2 or more")
        .refuseIfAny();
  }
}
