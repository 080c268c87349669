package dev.kilnledger.core.source;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import org.immutables.value.Value;

/** A figure that enters a formula, by the name it has there. */
@Value.Immutable
@ValueStyle
public interface Input extends Serializable {
  /** {@return the name in the formula} */
  @Value.Parameter
  String name();

  /** {@return the figure; a number of pieces, parts or firings is a ratio} */
  @Value.Parameter
  Amount<?> value();

  /** {@return where the figure comes from} */
  @Value.Parameter
  Source source();

  /**
   * A named figure.
   *
   * @param name the name in the formula
   * @param value the figure
   * @param source where it comes from
   * @return the input
   */
  static Input of(String name, Amount<?> value, Source source) {
    return ImmutableInput.of(name, value, source);
  }
}
