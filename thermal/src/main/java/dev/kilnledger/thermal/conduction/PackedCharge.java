package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.equipment.BoxCavity;
import dev.kilnledger.core.equipment.Cavity;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.ThermalConductivity;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/**
 * A crucible filled with packing powder around metal parts, as a body of three layers: the metal
 * gathered in the middle, the powder around it, the crucible's wall outside.
 *
 * <p>A round cavity becomes an endless cylinder, or a slab of its height where that is the quicker
 * way to the core; a box becomes a slab of its smallest side. Heat from the other sides is left
 * out, and the whole mass of the crucible, lid and bottom too, lies in the way of the heat: the
 * safe side. The wall is as thick as the outside leaves beside the cavity, or as the mass makes an
 * even wall all around. Where its conductivity is not known its heat is counted, its resistance is
 * not, and a finding says so. Metal in the middle is as far from the surface as can be: the safe
 * side for parts that lie off the centre.
 *
 * <p>Example: a round cavity of 100 mm by 120 mm with 500 g of copper of 8900 kg/m3, 0.6 dense, in
 * a powder of 1250 kg/m3, in a crucible of 1 kg: 15.76 mm of metal, 34.24 mm of powder and 6.63 mm
 * of wall at 2500 kg/m3.
 *
 * <p>Properties are constant means unless a curve is given, the powder's conductivity known within
 * a factor of 1.5.
 */
@Value.Immutable
@ValueStyle
public interface PackedCharge extends Serializable {
  /** {@return the crucible} */
  Crucible crucible();

  /** {@return the packing powder, taken at the middle of its tap density} */
  PackingPowder powder();

  /** {@return the metal of the parts} */
  Alloy alloy();

  /** {@return the mass of metal in all parts, above zero and no more than fits} */
  Amount<Mass> metal();

  /** {@return the relative density of the parts, above 0 up to 1; 0.6 unless given, as debound} */
  @Value.Default
  default Amount<VolumeFraction> relativeDensity() {
    return Amounts.volumeFraction(0.6);
  }

  /**
   * {@return the conductivity of the packing, for instance by {@link ZehnerBauerSchluender}; 0.3
   * W/(m K) unless given, the middle of what loose powders in air are measured with}
   */
  @Value.Default
  default PropertyCurve<ThermalConductivity> packingConductivity() {
    return PropertyCurve.constant(Amounts.wattsPerMetreKelvin(0.3));
  }

  /**
   * {@return the factor by which that may well be higher or lower, 1 or more; 1.5 unless given, 1
   * where it was measured}
   */
  @Value.Default
  default Amount<Dimensionless> packingConductivityFactor() {
    return Amounts.ratio(1.5);
  }

  /** {@return where the conductivity of the packing comes from} */
  @Value.Default
  default Source packingConductivitySource() {
    return Source.commonPractice(
        "conductivity of packed powder, an estimate: instrument makers state 0.1 to 0.5 W/(m K) for"
            + " loose powders in air");
  }

  /**
   * {@return the conductivity of the parts; 5 W/(m K) unless given, low for a porous metal: next to
   * the powder it makes little difference}
   */
  @Value.Default
  default PropertyCurve<ThermalConductivity> partConductivity() {
    return PropertyCurve.constant(Amounts.wattsPerMetreKelvin(5));
  }

  /**
   * {@return the conductivity of the crucible's wall with its range; taken to be without resistance
   * where empty, which it is by default}
   */
  Optional<Sourced<Estimate<ThermalConductivity>>> crucibleConductivity();

  /**
   * {@return the density of the crucible's wall, by which its thickness follows from the mass where
   * the outside is not known; 2500 kg/m3 unless given, of fired clay and mullite (common practice)}
   */
  @Value.Default
  default Amount<Density> crucibleDensity() {
    return Amounts.kilogramsPerCubicMetre(2500);
  }

  /** {@return how the crucible takes up heat; without resistance unless given} */
  @Value.Default
  default SurfaceContact contact() {
    return SurfaceContact.perfect();
  }

  /** {@return the charge for a model of conduction} */
  default Charge charge() {
    BodyShape shape = shape(crucible().cavity());
    double size = halfSize(crucible().cavity());
    double share = metalShare();
    double inner = size * (shape == BodyShape.SLAB ? share : Math.sqrt(share));
    Span<Density> tap = powder().tapDensity().value();
    ChargeMaterial parts =
        ChargeMaterial.builder()
            .name(alloy().name())
            .density(alloy().fullDensity().value().multiply(relativeDensity().si()))
            .conductivity(partConductivity())
            .conductivityFactor(Amounts.ratio(1.5))
            .heatCapacity(PropertyCurve.constant(alloy().hotHeatCapacity().value()))
            .source(alloy().hotHeatCapacity().source())
            .build();
    ChargeMaterial packing =
        ChargeMaterial.builder()
            .name(powder().name())
            .density(Amounts.kilogramsPerCubicMetre((tap.low().si() + tap.high().si()) / 2))
            .conductivity(packingConductivity())
            .conductivityFactor(packingConductivityFactor())
            .heatCapacity(PropertyCurve.constant(powder().heatCapacity().value()))
            .source(packingConductivitySource())
            .build();
    return Charge.builder()
        .name(crucible().name())
        .shape(shape)
        .layers(
            List.of(
                ChargeLayer.of(parts, millimetres(inner)),
                ChargeLayer.of(packing, millimetres(size - inner)),
                wall().layer(shape, size, crucibleConductivity())))
        .contact(contact())
        .build();
  }

  private CrucibleWall wall() {
    return new CrucibleWall(crucible(), crucibleDensity().si());
  }

  private double metalShare() {
    double volume = metal().si() / (alloy().fullDensity().value().si() * relativeDensity().si());
    return volume / crucible().cavity().volume().si();
  }

  /** The lag of a cylinder is R2/4a, that of a slab of the height H (H/2)2/2a. */
  private static BodyShape shape(Cavity cavity) {
    return cavity instanceof RoundCavity round
            && round.diameter().si() <= Math.sqrt(2) * round.height().si()
        ? BodyShape.CYLINDER
        : BodyShape.SLAB;
  }

  private static double halfSize(Cavity cavity) {
    double height = cavity.height().si();
    if (cavity instanceof RoundCavity round) {
      return (shape(cavity) == BodyShape.CYLINDER ? round.diameter().si() : height) / 2;
    }
    BoxCavity box = (BoxCavity) cavity;
    return Math.min(height, Math.min(box.length().si(), box.width().si())) / 2;
  }

  private static Amount<Length> millimetres(double metres) {
    return Amounts.metres(metres).to(TradeUnits.MILLIMETRE);
  }

  /**
   * Starts one.
   *
   * @return a builder; crucible, powder, alloy and metal are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link PackedCharge} values. */
  final class Builder extends ImmutablePackedCharge.Builder {
    Builder() {}
  }

  /**
   * Refuses metal that is none or does not fit in, and a crucible without a wall.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("packed charge in " + crucible().name());
    crucibleConductivity()
        .ifPresent(
            known ->
                problems.positive(
                    "lowest conductivity of the crucible", known.value().span().low()));
    crucible().outside().ifPresent(outside -> requireWall(problems, outside));
    problems
        .positive("crucible density", crucibleDensity())
        .positive("metal", metal())
        .require(
            relativeDensity().si() > 0 && relativeDensity().si() <= 1,
            "relative density is " + relativeDensity() + "; accepted is above 0 up to 1")
        .require(
            !(metalShare() >= 1),
            String.format(
                Locale.ROOT,
                "%s of metal would fill %.0f %% of the cavity; accepted is less than 100 %%",
                metal(),
                100 * metalShare()))
        .refuseIfAny();
  }

  private void requireWall(Problems problems, Envelope outside) {
    double thickness = wall().thickness(shape(crucible().cavity()));
    problems.require(
        thickness > 0,
        String.format(
            Locale.ROOT,
            "the crucible's outside of %s leaves a wall of %.1f mm beside its cavity; accepted is an"
                + " outside larger than the cavity",
            outside,
            1000 * thickness));
  }
}
