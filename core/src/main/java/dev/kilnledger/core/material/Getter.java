package dev.kilnledger.core.material;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/** The carbon laid over the packing to take the oxygen of the crucible's air. */
@Value.Immutable
@ValueStyle
public interface Getter extends Serializable {
  /** The grain of a getter. */
  enum Grain {
    /** Grains of about a millimetre or more. */
    GRANULAR,
    /** Fine powder: quicker, and its dust can explode. */
    POWDERED
  }

  /** {@return the name, such as {@code "granular activated carbon"}} */
  String name();

  /** {@return the grain} */
  Grain grain();

  /** {@return the bulk density, over the usual grades} */
  Sourced<Span<Density>> bulkDensity();

  /** {@return the ash that stays behind, as a share of its mass} */
  Sourced<Span<MassFraction>> ash();

  /** {@return where it begins to burn in air} */
  Sourced<Span<Temperature>> oxidationOnset();

  /**
   * {@return the mean specific heat capacity between room and firing temperature, for the heat a
   * charge takes up; that of graphite by default, 1530 J/(kg K) from 25 to 1000 °C}
   */
  @Value.Default
  default Sourced<Amount<SpecificHeatCapacity>> heatCapacity() {
    return References.GRAPHITE_HOT_HEAT;
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Getter} values. */
  final class Builder extends ImmutableGetter.Builder {
    Builder() {}
  }

  /**
   * Refuses a density or heat capacity of zero, or an ash share outside 0 to 1.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("getter " + name())
        .text("name", name())
        .positive("lowest bulk density", bulkDensity().value().low())
        .require(
            ash().value().low().si() >= 0 && ash().value().high().si() < 1,
            "ash spans "
                + ash().value().low()
                + " to "
                + ash().value().high()
                + "; accepted is from 0 to less than 1")
        .positive("heat capacity", heatCapacity().value())
        .refuseIfAny();
  }
}
