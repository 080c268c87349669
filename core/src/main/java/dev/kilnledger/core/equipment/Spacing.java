package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Length;
import org.immutables.value.Value;

/** How much packing there must be at least around the parts of a charge. */
@Value.Immutable
@ValueStyle
public interface Spacing extends Serializable {
  /** {@return between a part and the wall} */
  Amount<Length> wall();

  /** {@return between two parts of a layer} */
  Amount<Length> betweenParts();

  /** {@return under the lowest layer} */
  Amount<Length> floor();

  /** {@return between two layers} */
  Amount<Length> betweenLayers();

  /** {@return over the highest layer} */
  Amount<Length> cover();

  /** {@return what is kept free over the packing, for the getter and the lid; none unless given} */
  @Value.Default
  default Amount<Length> headroom() {
    return Amounts.millimetres(0);
  }

  /**
   * The same on every side of every part, and no headroom.
   *
   * @param everywhere how much packing
   * @return the spacing
   * @throws IllegalArgumentException if it is negative
   */
  static Spacing of(Amount<Length> everywhere) {
    return builder()
        .wall(everywhere)
        .betweenParts(everywhere)
        .floor(everywhere)
        .betweenLayers(everywhere)
        .cover(everywhere)
        .build();
  }

  /**
   * Starts one.
   *
   * @return a builder; all but the headroom is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Spacing} values. */
  final class Builder extends ImmutableSpacing.Builder {
    Builder() {}
  }

  /**
   * Refuses negative depths.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("spacing")
        .notNegative("wall", wall())
        .notNegative("between parts", betweenParts())
        .notNegative("floor", floor())
        .notNegative("between layers", betweenLayers())
        .notNegative("cover", cover())
        .notNegative("headroom", headroom())
        .refuseIfAny();
  }
}
