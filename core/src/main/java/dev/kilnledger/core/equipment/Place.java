package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Length;
import org.immutables.value.Value;

/** Where a part of a layer stands, seen from above. */
@Value.Immutable
@ValueStyle
public interface Place extends Serializable {
  /** {@return its middle along the cavity's length, from the cavity's middle} */
  @Value.Parameter
  Amount<Length> x();

  /** {@return its middle across the cavity, from the cavity's middle} */
  @Value.Parameter
  Amount<Length> y();

  /** {@return whether it is turned about the vertical by a quarter, its y along the length} */
  @Value.Parameter
  boolean turned();

  /**
   * A place.
   *
   * @param x along the cavity's length, from its middle
   * @param y across it, from its middle
   * @param turned whether the part is turned by a quarter
   * @return the place
   */
  static Place of(Amount<Length> x, Amount<Length> y, boolean turned) {
    return ImmutablePlace.of(x, y, turned);
  }
}
