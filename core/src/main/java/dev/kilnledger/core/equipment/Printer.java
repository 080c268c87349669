package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.immutables.value.Value;

/** An extrusion printer. */
@Value.Immutable
@ValueStyle
public interface Printer extends Serializable {
  /** {@return the name} */
  String name();

  /** {@return the largest body it prints} */
  Envelope buildVolume();

  /** {@return the diameter of the filament it takes} */
  Amount<Length> filamentDiameter();

  /** {@return the nozzle fitted} */
  Nozzle nozzle();

  /**
   * {@return a device that warms brittle filament before it is bent into the feeder, if there is
   * one}
   */
  Optional<FilamentPreheater> preheater();

  /** {@return what keeps supports from sintering to the part, if it is used} */
  Optional<PartingLayer> partingLayer();

  /**
   * Starts one.
   *
   * @return a builder; name, build volume, filament diameter, nozzle and hottest nozzle are
   *     required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Printer} values. */
  final class Builder extends ImmutablePrinter.Builder {
    Builder() {}
  }

  /**
   * Refuses a filament diameter that is not above zero or not above the nozzle's bore.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("printer " + name())
        .text("name", name())
        .require(
            filamentDiameter().isGreaterThan(nozzle().bore()),
            "filament diameter is "
                + filamentDiameter()
                + " and the nozzle's bore "
                + nozzle().bore()
                + "; accepted is a diameter above the bore")
        .refuseIfAny();
  }
}
