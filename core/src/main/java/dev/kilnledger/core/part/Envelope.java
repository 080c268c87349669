package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;

/** The smallest box around a body, along the printer's axes: x and y in the layer, z upwards. */
@Value.Immutable
@ValueStyle
public interface Envelope extends Serializable {
  /** {@return the extent along x, above zero} */
  @Value.Parameter
  Amount<Length> x();

  /** {@return the extent along y, above zero} */
  @Value.Parameter
  Amount<Length> y();

  /** {@return the extent along z, across the layers, above zero} */
  @Value.Parameter
  Amount<Length> z();

  /**
   * A box.
   *
   * @param x the extent along x
   * @param y the extent along y
   * @param z the extent along z
   * @return the envelope
   * @throws IllegalArgumentException if an extent is not above zero
   */
  static Envelope of(Amount<Length> x, Amount<Length> y, Amount<Length> z) {
    return ImmutableEnvelope.of(x, y, z);
  }

  /** {@return the volume of the box} */
  default Amount<Volume> volume() {
    return Relations.volumeOfBox(x(), y(), z());
  }

  /** {@return the smallest of the three extents} */
  default Amount<Length> smallestSide() {
    Amount<Length> smallest = x();
    if (y().isLessThan(smallest)) {
      smallest = y();
    }
    return z().isLessThan(smallest) ? z() : smallest;
  }

  /**
   * Whether this box fits into another with z upwards, as it stands or turned about z by a quarter.
   *
   * @param space the box to fit into
   * @return true if no extent is larger than the space's
   */
  default boolean fitsIn(Envelope space) {
    boolean straight = !x().isGreaterThan(space.x()) && !y().isGreaterThan(space.y());
    boolean turned = !x().isGreaterThan(space.y()) && !y().isGreaterThan(space.x());
    return (straight || turned) && !z().isGreaterThan(space.z());
  }

  /**
   * The three extents for people: {@code "12.0 mm x 8.0 mm x 30.0 mm"}.
   *
   * @return the text, millimetres with one decimal
   */
  default String format() {
    return Stream.of(x(), y(), z())
        .map(side -> side.format(TradeUnits.MILLIMETRE, 1))
        .collect(Collectors.joining(" x "));
  }

  /**
   * Refuses extents that are not above zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("envelope").positive("x", x()).positive("y", y()).positive("z", z()).refuseIfAny();
  }
}
