package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;

/** A cylinder standing on its end. */
@Value.Immutable
@ValueStyle
public non-sealed interface RoundCavity extends Cavity {
  /** {@return the inner diameter} */
  @Value.Parameter
  Amount<Length> diameter();

  @Override
  @Value.Parameter
  Amount<Length> height();

  /**
   * A cylinder.
   *
   * @param diameter the inner diameter
   * @param height the inner height
   * @return the cavity
   * @throws IllegalArgumentException if either is not above zero
   */
  static RoundCavity of(Amount<Length> diameter, Amount<Length> height) {
    return ImmutableRoundCavity.of(diameter, height);
  }

  @Override
  default Amount<Volume> volume() {
    return Relations.volumeOfPrism(Relations.areaOfCircle(diameter()), height());
  }

  /**
   * Refuses sizes that are not above zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("round cavity")
        .positive("diameter", diameter())
        .positive("height", height())
        .refuseIfAny();
  }
}
