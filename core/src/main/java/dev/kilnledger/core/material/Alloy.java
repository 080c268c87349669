package dev.kilnledger.core.material;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.LinearExpansion;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/** A metal or alloy as a filament may hold it and a kiln may sinter it. */
@Value.Immutable
@ValueStyle
public interface Alloy extends Serializable {
  /** {@return the name by which it is called, such as {@code "tin bronze 90/10"}} */
  String name();

  /** {@return what it is made of} */
  Composition composition();

  /** {@return the density without pores, about 20 to 25 °C} */
  Sourced<Amount<Density>> fullDensity();

  /** {@return where melting begins} */
  Sourced<Amount<Temperature>> solidus();

  /** {@return where melting is complete; equal to the solidus for a pure metal} */
  Sourced<Amount<Temperature>> liquidus();

  /** {@return the temperatures at which it is sintered} */
  Sourced<Span<Temperature>> sinteringWindow();

  /**
   * {@return the peak usually chosen within the window, below the solidus unless the condition says
   * that liquid is meant to form; empty where nothing is known}
   */
  Optional<Sourced<Amount<Temperature>>> usualPeak();

  /** {@return the usual hold at the peak} */
  Sourced<Span<Time>> sinteringHold();

  /** {@return the relative density to expect after sintering, with its range} */
  Sourced<Estimate<VolumeFraction>> expectedRelativeDensity();

  /** {@return the mean linear expansion near room temperature, its range in the condition} */
  Sourced<Amount<LinearExpansion>> linearExpansion();

  /** {@return the specific heat capacity at 25 °C} */
  Sourced<Amount<SpecificHeatCapacity>> heatCapacity();

  /**
   * {@return the mean specific heat capacity between room and sintering temperature, for the heat a
   * charge takes up}
   */
  Sourced<Amount<SpecificHeatCapacity>> hotHeatCapacity();

  /** {@return how hard its powder is, as a Vickers number, for the wear of a nozzle} */
  Sourced<Span<Dimensionless>> powderHardness();

  /** {@return what carbon as getter does for it} */
  CarbonProtection carbonProtection();

  /**
   * {@return how far the inverse rule of mixtures may lie from the full density, and why; empty
   * where no tolerance has been stated}
   */
  Optional<Sourced<Amount<Dimensionless>>> mixtureTolerance();

  /** {@return the hazards that its powder or heat brings beyond those of every firing} */
  Set<dev.kilnledger.core.finding.Caution> cautions();

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Alloy} values. */
  final class Builder extends ImmutableAlloy.Builder {
    Builder() {}
  }

  /**
   * Refuses facts that contradict each other.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("alloy " + name())
        .text("name", name())
        .positive("full density", fullDensity().value())
        .require(
            !solidus().value().isGreaterThan(liquidus().value()),
            "solidus is "
                + solidus().value()
                + " and liquidus "
                + liquidus().value()
                + "; accepted is a solidus up to the liquidus")
        .require(
            sinteringWindow().value().low().isLessThan(liquidus().value()),
            "the sintering window begins at "
                + sinteringWindow().value().low()
                + "; accepted is below the liquidus "
                + liquidus().value())
        .require(
            usualPeak().map(peak -> sinteringWindow().value().contains(peak.value())).orElse(true),
            "usual peak is "
                + usualPeak().map(peak -> peak.value().toString()).orElse("none")
                + "; accepted is in the sintering window, "
                + sinteringWindow().value().low()
                + " to "
                + sinteringWindow().value().high())
        .positive("shortest sintering hold", sinteringHold().value().low())
        .require(
            expectedRelativeDensity().value().span().low().si() > 0
                && expectedRelativeDensity().value().span().high().si() <= 1,
            "expected relative density spans "
                + expectedRelativeDensity().value().span().low()
                + " to "
                + expectedRelativeDensity().value().span().high()
                + "; accepted is above 0 and up to 1")
        .positive("heat capacity", heatCapacity().value())
        .positive("hot heat capacity", hotHeatCapacity().value())
        .positive("lowest powder hardness", powderHardness().value().low())
        .refuseIfAny();
  }
}
