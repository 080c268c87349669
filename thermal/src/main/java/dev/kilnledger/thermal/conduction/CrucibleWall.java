package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.equipment.BoxCavity;
import dev.kilnledger.core.equipment.Cavity;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.util.Optional;

/**
 * The wall of a crucible as the outermost layer of a body: as thick as it is, and of a density that
 * puts the whole mass of the crucible, lid and bottom too, into the layer. SI units.
 */
final class CrucibleWall {
  /** So good a conductor that a wall of some millimetres is no resistance beside powder. */
  private static final double NO_RESISTANCE = 10_000; // W/(m K)

  private static final int HALVINGS = 100;

  private final Crucible crucible;
  private final double density; // of the massive wall

  CrucibleWall(Crucible crucible, double density) {
    this.crucible = crucible;
    this.density = density;
  }

  /** How thick the wall is in the way of the heat: by the outside where known, else by the mass. */
  double thickness(BodyShape shape) {
    return crucible
        .outside()
        .map(outside -> (across(outside, shape) - across(shape)) / 2)
        .orElseGet(this::thicknessByMass);
  }

  private double across(BodyShape shape) {
    Cavity cavity = crucible.cavity();
    if (cavity instanceof RoundCavity round) {
      return shape == BodyShape.CYLINDER ? round.diameter().si() : round.height().si();
    }
    BoxCavity box = (BoxCavity) cavity;
    return Math.min(box.height().si(), Math.min(box.length().si(), box.width().si()));
  }

  private double across(Envelope outside, BodyShape shape) {
    double height = crucible.cavity().height().si();
    boolean upright =
        shape == BodyShape.SLAB
            && (crucible.cavity() instanceof RoundCavity || across(shape) == height);
    return upright ? outside.z().si() : Math.min(outside.x().si(), outside.y().si());
  }

  /** An even wall all around, bottom and lid too. */
  private double thicknessByMass() {
    double volume = crucible.mass().si() / density;
    double low = 0;
    double high = Math.cbrt(volume);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (shell(middle) > volume) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return (low + high) / 2;
  }

  private double shell(double thickness) {
    Cavity cavity = crucible.cavity();
    double height = cavity.height().si() + 2 * thickness;
    if (cavity instanceof RoundCavity round) {
      double radius = round.diameter().si() / 2 + thickness;
      return Math.PI * radius * radius * height - cavity.volume().si();
    }
    BoxCavity box = (BoxCavity) cavity;
    return (box.length().si() + 2 * thickness) * (box.width().si() + 2 * thickness) * height
        - cavity.volume().si();
  }

  /** The layer around a body of a half size. */
  ChargeLayer layer(
      BodyShape shape, double size, Optional<Sourced<Estimate<ThermalConductivity>>> known) {
    double thickness = thickness(shape);
    // as the layer's volume is to that of the body, so is the crucible's to that of its cavity
    double share = shape.volume(size, size + thickness) / shape.volume(0, size);
    ChargeMaterial wall =
        ChargeMaterial.builder()
            .name(crucible.material().name() + " of the crucible")
            .density(
                Amounts.kilogramsPerCubicMetre(
                    crucible.mass().si() / (share * crucible.cavity().volume().si())))
            .conductivity(
                PropertyCurve.constant(
                    known
                        .map(fact -> fact.value().expected())
                        .orElse(Amounts.wattsPerMetreKelvin(NO_RESISTANCE))))
            .conductivityFactor(Amounts.ratio(known.map(fact -> factor(fact.value())).orElse(1.0)))
            .conductivityKnown(known.isPresent())
            .heatCapacity(PropertyCurve.constant(crucible.heatCapacity().value()))
            .source(known.map(Sourced::source).orElse(crucible.heatCapacity().source()))
            .build();
    return ChargeLayer.of(wall, Amounts.metres(thickness).to(TradeUnits.MILLIMETRE));
  }

  private static double factor(Estimate<ThermalConductivity> conductivity) {
    return Math.max(
        conductivity.span().high().ratio(conductivity.expected()),
        conductivity.expected().ratio(conductivity.span().low()));
  }
}
