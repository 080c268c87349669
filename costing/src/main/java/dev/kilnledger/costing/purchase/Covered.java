package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import org.immutables.value.Value;

/** A need and what a purchase plan leaves over. */
@Value.Immutable
@ValueStyle
public interface Covered extends Serializable {
  /** {@return the need} */
  @Value.Parameter
  Need need();

  /** {@return what is bought beyond the need, zero or more, in its unit} */
  @Value.Parameter
  Amount<?> surplus();

  /** {@return the line for people: {@code "filament: need 600 g, surplus 150 g"}} */
  default String text() {
    return need().item() + ": need " + need().amount() + ", surplus " + surplus();
  }

  /**
   * A covered need.
   *
   * @param need the need
   * @param surplus what is bought beyond it
   * @return the line
   */
  static Covered of(Need need, Amount<?> surplus) {
    return ImmutableCovered.of(need, surplus);
  }
}
