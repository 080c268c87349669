package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/**
 * The weighings of a sintered part in air and in water, which give its density (ISO 2738).
 *
 * <p>With A the dry mass in air, B the mass in air after its open pores were filled with oil or
 * wax, F the mass read in water and rho_w the water's density, the density is {@code A rho_w / (B -
 * F)}. A part without open pores needs no filling: {@code A rho_w / (A - F)}; used on a part with
 * open pores, that form reads too high, as water fills them. The lift of the air is left out, about
 * 0.1 % of the water's.
 */
@Value.Immutable
@ValueStyle
public interface ArchimedesWeighing extends Serializable {
  /** {@return what was weighed} */
  String specimen();

  /** {@return A, the mass in air, dry and clean} */
  Amount<Mass> dryInAir();

  /** {@return B, the mass in air with the open pores filled, if they were} */
  Optional<Amount<Mass>> impregnatedInAir();

  /** {@return F, the reading in water, with the open pores filled if B is given} */
  Amount<Mass> inWater();

  /** {@return the density of the water, such as {@link WaterDensity} gives it} */
  Amount<Density> waterDensity();

  /** {@return the density of what fills the open pores; required with B} */
  Optional<Amount<Density>> impregnantDensity();

  /** {@return the standard uncertainty of every single weighing, if it is known} */
  Optional<Amount<Mass>> balanceUncertainty();

  /** {@return the density: A rho_w / (B - F), or A rho_w / (A - F) without B} */
  default Amount<Density> density() {
    return Amounts.kilogramsPerCubicMetre(dryInAir().si() * waterDensity().si() / displacedWater());
  }

  /**
   * The density as a share of the alloy's full density.
   *
   * @param alloy what the specimen is made of
   * @return the relative density; above 1 where weighings and alloy contradict each other
   */
  default Amount<VolumeFraction> relativeDensity(Alloy alloy) {
    return Relations.relativeDensityOf(density(), alloy.fullDensity().value());
  }

  /**
   * {@return the share of the volume that is open pores: (B - A) rho_w / ((B - F) rho_oil); empty
   * without B}
   */
  default Optional<Amount<VolumeFraction>> openPorosity() {
    return impregnatedInAir()
        .map(
            filled ->
                Amounts.volumeFraction(
                    (filled.si() - dryInAir().si())
                        * waterDensity().si()
                        / (displacedWater() * impregnantDensity().orElseThrow().si())));
  }

  /**
   * {@return the standard uncertainty of the density that comes from the balance, to first order
   * with independent weighings (JCGM 100); empty without the balance's}
   */
  default Optional<Amount<Density>> densityUncertainty() {
    return balanceUncertainty().map(this::propagated);
  }

  private double displacedWater() {
    return impregnatedInAir().orElse(dryInAir()).si() - inWater().si();
  }

  private Amount<Density> propagated(Amount<Mass> balance) {
    double displaced = displacedWater();
    double dry = dryInAir().si();
    // Per mass, of rho / rho_w: towards A, and together towards the other weighings.
    double own;
    double others;
    if (impregnatedInAir().isPresent()) {
      own = 1 / displaced;
      others = Math.sqrt(2) * dry / (displaced * displaced);
    } else {
      own = inWater().si() / (displaced * displaced);
      others = dry / (displaced * displaced);
    }
    return Amounts.kilogramsPerCubicMetre(
        waterDensity().si() * balance.si() * Math.hypot(own, others));
  }

  /**
   * Starts one.
   *
   * @return a builder; specimen, dry mass, mass in water and the water's density are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ArchimedesWeighing} values. */
  final class Builder extends ImmutableArchimedesWeighing.Builder {
    Builder() {}
  }

  /**
   * Refuses weighings that no body shows.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("weighing of " + specimen())
            .text("specimen", specimen())
            .positive("dry mass A", dryInAir())
            .notNegative("mass in water F", inWater())
            .positive("density of the water", waterDensity())
            .require(
                impregnatedInAir().isPresent() == impregnantDensity().isPresent(),
                "impregnated mass B and density of the impregnant are stated one without the other;"
                    + " accepted are both or neither");
    balanceUncertainty()
        .ifPresent(uncertainty -> problems.notNegative("balance uncertainty", uncertainty));
    impregnantDensity()
        .ifPresent(density -> problems.positive("density of the impregnant", density));
    impregnatedInAir()
        .ifPresent(
            filled ->
                problems
                    .require(
                        !filled.isLessThan(dryInAir()),
                        "impregnated mass B is "
                            + filled
                            + "; accepted is the dry mass A or more, "
                            + dryInAir())
                    .require(
                        inWater().isLessThan(filled),
                        "mass in water F is "
                            + inWater()
                            + "; accepted is less than the impregnated mass B, "
                            + filled));
    if (impregnatedInAir().isEmpty()) {
      problems.require(
          inWater().isLessThan(dryInAir()),
          "mass in water F is "
              + inWater()
              + "; accepted is less than the dry mass A, "
              + dryInAir());
    }
    problems.refuseIfAny();
    openPorosity()
        .ifPresent(
            open ->
                problems.require(
                    open.si() < 1,
                    "the weighings mean open pores of "
                        + open
                        + " of the volume; accepted is less than 1"));
    problems.refuseIfAny();
  }
}
