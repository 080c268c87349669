package dev.kilnledger.thermal.load;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.atmosphere.OxygenBudget;
import dev.kilnledger.thermal.profile.GetterFill;
import java.io.Serializable;
import javax.measure.quantity.Length;
import org.immutables.value.Value;

/** The getter laid over the packing of a stage. */
@Value.Immutable
@ValueStyle
public interface GetterLoad extends Serializable {
  /**
   * {@return the getter and its mass, ash and reserve included; the least there must be where the
   * exchange through lid and packing is not known}
   */
  @Value.Parameter
  GetterFill fill();

  /** {@return the depth of its layer, from the densest to the lightest pouring} */
  @Value.Parameter
  Span<Length> depth();

  /** {@return the oxygen of the firing against this getter, with its own findings} */
  @Value.Parameter
  OxygenBudget budget();

  /** {@return whether the mass is enough, and not just the least there must be} */
  default boolean enough() {
    return budget().exchangeKnown();
  }

  /**
   * A layer of getter.
   *
   * @param fill the getter and its mass
   * @param depth the depth of its layer
   * @param budget the oxygen against it
   * @return the layer
   */
  static GetterLoad of(GetterFill fill, Span<Length> depth, OxygenBudget budget) {
    return ImmutableGetterLoad.of(fill, depth, budget);
  }
}
