package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.PrintAxis;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Length;
import org.immutables.value.Value;

/**
 * Parts in a crucible, in layers that are all alike, the lowest ones full: what a loading card or a
 * drawing needs.
 */
@Value.Immutable
@ValueStyle
public interface Arrangement extends Serializable {
  /** How good an arrangement is. */
  enum Optimality {
    /** No arrangement in layers holds more. */
    PROVEN,
    /** None is known to hold more. */
    BEST_KNOWN,
    /** The best of the patterns tried; others may hold more. */
    LOWER_BOUND
  }

  /** {@return the crucible's inside} */
  Cavity cavity();

  /** {@return the part} */
  ChargePart part();

  /** {@return the packing kept around the parts} */
  Spacing spacing();

  /** {@return which axis of the printing points up} */
  PrintAxis up();

  /** {@return where the parts of a full layer stand, from the middle outwards} */
  List<Place> places();

  /** {@return how many layers the height holds, 1 or more} */
  int layersAtMost();

  /** {@return how many parts are laid in, 1 or more, no more than all layers hold} */
  int parts();

  /** {@return how many parts cannot be exceeded by any arrangement in layers that are all alike} */
  int atMost();

  /** {@return how good the arrangement is} */
  Optimality optimality();

  /** {@return the pattern of a layer and where it comes from} */
  Source basis();

  /** {@return the box around a part as it stands, z upwards} */
  default Envelope standingEnvelope() {
    return part().standing(up());
  }

  /** {@return the parts of a full layer} */
  default int perLayer() {
    return places().size();
  }

  /** {@return the parts that all layers hold} */
  default int capacity() {
    return perLayer() * layersAtMost();
  }

  /** {@return the layers that are laid in, the highest one perhaps not full} */
  default int layers() {
    return (parts() + perLayer() - 1) / perLayer();
  }

  /**
   * The parts of one layer.
   *
   * @param layer the layer, 0 the lowest
   * @return where they stand: the innermost places, a single part in the middle
   * @throws IllegalArgumentException if there is no such layer
   */
  default List<Place> layer(int layer) {
    new Problems("arrangement")
        .require(
            layer >= 0 && layer < layers(),
            "layer is " + layer + "; accepted is from 0 to " + (layers() - 1))
        .refuseIfAny();
    int left = Math.min(perLayer(), parts() - layer * perLayer());
    return left == 1
        ? List.of(
            Place.of(Amounts.millimetres(0), Amounts.millimetres(0), places().get(0).turned()))
        : places().subList(0, left);
  }

  /**
   * The height of a layer's underside over the cavity's floor.
   *
   * @param layer the layer, 0 the lowest
   * @return the height
   */
  default Amount<Length> underside(int layer) {
    double step = standingEnvelope().z().si() + spacing().betweenLayers().si();
    return millimetres(spacing().floor().si() + layer * step);
  }

  /** {@return the height of the packing over the cavity's floor, the cover included} */
  default Amount<Length> fillHeight() {
    return millimetres(
        underside(layers() - 1).si() + standingEnvelope().z().si() + spacing().cover().si());
  }

  /** {@return what is left over the packing up to the cavity's rim} */
  default Amount<Length> freeHeight() {
    return millimetres(Math.max(0, cavity().height().si() - fillHeight().si()));
  }

  /**
   * The same arrangement with fewer parts.
   *
   * @param parts how many, from 1 to {@link #capacity()}
   * @return the arrangement
   * @throws IllegalArgumentException if it does not hold so many
   */
  default Arrangement with(int parts) {
    return builder().from(this).parts(parts).build();
  }

  private static Amount<Length> millimetres(double metres) {
    return Amounts.metres(metres).to(TradeUnits.MILLIMETRE);
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Arrangement} values. */
  final class Builder extends ImmutableArrangement.Builder {
    Builder() {}
  }

  /**
   * Refuses counts that contradict each other.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("arrangement")
        .require(!places().isEmpty(), "a layer holds no part; accepted is 1 or more")
        .require(layersAtMost() >= 1, "layers are " + layersAtMost() + "; accepted is 1 or more")
        .require(
            parts() >= 1 && parts() <= capacity(),
            "parts are " + parts() + "; accepted is from 1 to " + capacity())
        .refuseIfAny();
  }
}
