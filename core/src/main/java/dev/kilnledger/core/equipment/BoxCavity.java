package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;

/** A box. */
@Value.Immutable
@ValueStyle
public non-sealed interface BoxCavity extends Cavity {
  /** {@return the inner length} */
  @Value.Parameter
  Amount<Length> length();

  /** {@return the inner width} */
  @Value.Parameter
  Amount<Length> width();

  @Override
  @Value.Parameter
  Amount<Length> height();

  /**
   * A box.
   *
   * @param length the inner length
   * @param width the inner width
   * @param height the inner height
   * @return the cavity
   * @throws IllegalArgumentException if one of them is not above zero
   */
  static BoxCavity of(Amount<Length> length, Amount<Length> width, Amount<Length> height) {
    return ImmutableBoxCavity.of(length, width, height);
  }

  @Override
  default Amount<Volume> volume() {
    return Relations.volumeOfBox(length(), width(), height());
  }

  /**
   * Refuses sizes that are not above zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("box cavity")
        .positive("length", length())
        .positive("width", width())
        .positive("height", height())
        .refuseIfAny();
  }
}
