package dev.kilnledger.core.material;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.LinearDensity;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/**
 * Metal powder in a binder, as filament.
 *
 * <p>Either the metal's (or the binder's) mass fraction or the solids loading is stated and the
 * other follows; where both are stated they must agree. With w the metal's mass fraction, the
 * solids loading is {@code phi = (w / rho_m) / (w / rho_m + (1 - w) / rho_b)} (conservation of mass
 * and volume, no voids in the strand; German and Bose, Injection Molding of Metals and Ceramics).
 */
@Value.Immutable
@ValueStyle
public interface Feedstock extends Serializable {
  /**
   * How far a stated mass fraction and a stated solids loading may disagree, as a difference of
   * solids loadings: data sheets round both to whole percents.
   */
  double AGREEMENT = 0.01;

  /** {@return the name, such as {@code "copper in polylactide, generic"}} */
  String name();

  /** {@return the metal} */
  Alloy alloy();

  /** {@return the binder} */
  Binder binder();

  /** {@return the metal's mass fraction as stated, if it was} */
  Optional<Amount<MassFraction>> statedMetalMassFraction();

  /** {@return the solids loading as stated, if it was} */
  Optional<Amount<VolumeFraction>> statedSolidsLoading();

  /** {@return where the fractions come from} */
  Source source();

  /** {@return whether this stands for a class of products rather than for one; false by default} */
  @Value.Default
  default boolean generic() {
    return false;
  }

  /** {@return the metal's share of the mass} */
  default Amount<MassFraction> metalMassFraction() {
    return statedMetalMassFraction()
        .orElseGet(() -> fractionOf(statedSolidsLoading().orElseThrow()));
  }

  /** {@return the binder's share of the mass} */
  default Amount<MassFraction> binderMassFraction() {
    return Amounts.massFraction(1 - metalMassFraction().si());
  }

  /** {@return the metal's share of the volume, without voids} */
  default Amount<VolumeFraction> solidsLoading() {
    return statedSolidsLoading()
        .orElseGet(() -> loadingOf(statedMetalMassFraction().orElseThrow()));
  }

  /** {@return the density of the strand, without voids: phi rho_m + (1 - phi) rho_b} */
  default Amount<Density> density() {
    double phi = solidsLoading().si();
    return Amounts.kilogramsPerCubicMetre(
        phi * alloy().fullDensity().value().si()
            + (1 - phi) * binder().density().value().expected().si());
  }

  /**
   * The mass of a metre of filament.
   *
   * @param diameter the filament's diameter
   * @return mass per length of strand
   */
  default Amount<LinearDensity> massPerLength(Amount<Length> diameter) {
    return Relations.linearDensityOf(density(), Relations.areaOfCircle(diameter));
  }

  /**
   * The metal in a metre of filament.
   *
   * @param diameter the filament's diameter
   * @return metal mass per length of strand
   */
  default Amount<LinearDensity> metalPerLength(Amount<Length> diameter) {
    return massPerLength(diameter).multiply(metalMassFraction().si());
  }

  private Amount<VolumeFraction> loadingOf(Amount<MassFraction> metal) {
    double solid = metal.si() / alloy().fullDensity().value().si();
    double rest = (1 - metal.si()) / binder().density().value().expected().si();
    return Amounts.volumeFraction(solid / (solid + rest));
  }

  private Amount<MassFraction> fractionOf(Amount<VolumeFraction> loading) {
    double solid = loading.si() * alloy().fullDensity().value().si();
    double rest = (1 - loading.si()) * binder().density().value().expected().si();
    return Amounts.massFraction(solid / (solid + rest));
  }

  /**
   * Starts a feedstock.
   *
   * @return a builder; name, alloy, binder, source and one of the fractions are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Feedstock} values. */
  final class Builder extends ImmutableFeedstock.Builder {
    Builder() {}

    /**
     * States the metal's share of the mass.
     *
     * @param fraction above 0 and below 1
     * @return this
     */
    public Builder metalMassFraction(Amount<MassFraction> fraction) {
      return statedMetalMassFraction(fraction);
    }

    /**
     * States the binder's share of the mass.
     *
     * @param fraction above 0 and below 1
     * @return this
     */
    public Builder binderMassFraction(Amount<MassFraction> fraction) {
      return statedMetalMassFraction(Amounts.massFraction(1 - fraction.si()));
    }

    /**
     * States the metal's share of the volume.
     *
     * @param loading above 0 and below 1
     * @return this
     */
    public Builder solidsLoading(Amount<VolumeFraction> loading) {
      return statedSolidsLoading(loading);
    }
  }

  /**
   * Refuses fractions that are missing, out of range or contradict each other.
   *
   * @throws IllegalArgumentException with all problems, both numbers where two disagree
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("feedstock " + name()).text("name", name());
    problems.require(
        statedMetalMassFraction().isPresent() || statedSolidsLoading().isPresent(),
        "neither metal mass fraction, binder mass fraction nor solids loading is stated; accepted"
            + " is at least one");
    statedMetalMassFraction()
        .ifPresent(
            w ->
                problems.require(
                    w.si() > 0 && w.si() < 1,
                    "metal mass fraction is " + w + "; accepted is above 0 and below 1"));
    statedSolidsLoading()
        .ifPresent(
            phi ->
                problems.require(
                    phi.si() > 0 && phi.si() < 1,
                    "solids loading is " + phi + "; accepted is above 0 and below 1"));
    problems.refuseIfAny();
    if (statedMetalMassFraction().isPresent() && statedSolidsLoading().isPresent()) {
      Amount<MassFraction> stated = statedMetalMassFraction().get();
      Amount<VolumeFraction> implied = loadingOf(stated);
      Amount<VolumeFraction> loading = statedSolidsLoading().get();
      problems.require(
          Math.abs(implied.si() - loading.si()) <= AGREEMENT,
          "a metal mass fraction of "
              + stated
              + " means a solids loading of "
              + implied.format(TradeUnits.VOLUME_FRACTION, 4)
              + ", but "
              + loading
              + " is stated; accepted is agreement within "
              + AGREEMENT
              + ", or one of the two");
      problems.refuseIfAny();
    }
  }
}
