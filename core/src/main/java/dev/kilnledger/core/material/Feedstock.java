package dev.kilnledger.core.material;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
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
import javax.measure.quantity.Mass;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/**
 * Metal powder in a binder, as filament.
 *
 * <p>Either the metal's mass fraction, the binder's, or the solids loading is stated and the others
 * follow. Where several are stated they must agree; the metal's mass fraction then goes before the
 * binder's, and masses follow the mass fraction, volumes the solids loading. With w the metal's
 * mass fraction, the solids loading is {@code phi = (w / rho_m) / (w / rho_m + (1 - w) / rho_b)},
 * and back {@code w = phi rho_m / (phi rho_m + (1 - phi) rho_b)} (conservation of mass and volume,
 * no voids in the strand; German and Bose, Injection Molding of Metals and Ceramics, from memory).
 * The densities are the alloy's full density and the binder's expected one.
 */
@Value.Immutable
@ValueStyle
public interface Feedstock extends Serializable {
  /**
   * How far a stated fraction may lie from the true one, as data sheets round to whole percents:
   * stated fractions agree if some mixture rounds to all of them.
   */
  double ROUNDING = 0.005;

  /** {@return the name, such as {@code "copper in polylactide, generic"}} */
  String name();

  /** {@return the metal} */
  Alloy alloy();

  /** {@return the binder} */
  Binder binder();

  /** {@return the metal's mass fraction as stated, if it was} */
  Optional<Amount<MassFraction>> statedMetalMassFraction();

  /** {@return the binder's mass fraction as stated, if it was} */
  Optional<Amount<MassFraction>> statedBinderMassFraction();

  /** {@return the solids loading as stated, if it was} */
  Optional<Amount<VolumeFraction>> statedSolidsLoading();

  /**
   * {@return how far the metal's mass fraction may lie from the expected one, from spool to spool
   * or over the products of a class; empty where nothing is known}
   */
  Optional<Sourced<Span<MassFraction>>> metalMassFractionRange();

  /** {@return where the fractions come from} */
  Source source();

  /** {@return whether this stands for a class of products rather than for one; false by default} */
  @Value.Default
  default boolean generic() {
    return false;
  }

  /** {@return the metal's share of the mass} */
  default Amount<MassFraction> metalMassFraction() {
    return statedMass()
        .orElseGet(
            () -> Amounts.massFraction(fractionOf(statedSolidsLoading().orElseThrow().si())));
  }

  /** {@return the binder's share of the mass} */
  default Amount<MassFraction> binderMassFraction() {
    return statedMetalMassFraction().isPresent() || statedBinderMassFraction().isEmpty()
        ? rest(metalMassFraction())
        : statedBinderMassFraction().get();
  }

  /** {@return the range of the binder's share of the mass: what the metal's range leaves} */
  default Optional<Sourced<Span<MassFraction>>> binderMassFractionRange() {
    return metalMassFractionRange()
        .map(
            range ->
                Sourced.of(
                    Span.of(rest(range.value().high()), rest(range.value().low())),
                    range.condition(),
                    range.source()));
  }

  /**
   * {@return the range of the solids loading that follows from that of the metal's mass fraction,
   * with the densities as expected}
   */
  default Optional<Sourced<Span<VolumeFraction>>> solidsLoadingRange() {
    return metalMassFractionRange()
        .map(
            range ->
                Sourced.of(
                    Span.of(
                        Amounts.volumeFraction(loadingOf(range.value().low().si())),
                        Amounts.volumeFraction(loadingOf(range.value().high().si()))),
                    range.condition(),
                    range.source()));
  }

  /** {@return the metal's share of the volume, without voids} */
  default Amount<VolumeFraction> solidsLoading() {
    return statedSolidsLoading()
        .orElseGet(() -> Amounts.volumeFraction(loadingOf(statedMass().orElseThrow().si())));
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

  /**
   * How much filament a mass of feedstock is.
   *
   * @param mass the mass of feedstock, such as that on a spool
   * @param diameter the filament's diameter
   * @return the length of strand
   */
  default Amount<Length> filamentLength(Amount<Mass> mass, Amount<Length> diameter) {
    return Relations.lengthOfStrand(mass, massPerLength(diameter));
  }

  private Optional<Amount<MassFraction>> statedMass() {
    return statedMetalMassFraction().or(() -> statedBinderMassFraction().map(Feedstock::rest));
  }

  private static Amount<MassFraction> rest(Amount<MassFraction> fraction) {
    return Amounts.massFraction(1 - fraction.si());
  }

  private double loadingOf(double metalMassFraction) {
    double solid = metalMassFraction / alloy().fullDensity().value().si();
    double rest = (1 - metalMassFraction) / binder().density().value().expected().si();
    return solid / (solid + rest);
  }

  private double fractionOf(double solidsLoading) {
    double solid = solidsLoading * alloy().fullDensity().value().si();
    double rest = (1 - solidsLoading) * binder().density().value().expected().si();
    return solid / (solid + rest);
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
      return statedBinderMassFraction(fraction);
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
        statedMass().isPresent() || statedSolidsLoading().isPresent(),
        "neither metal mass fraction, binder mass fraction nor solids loading is stated; accepted"
            + " is at least one");
    statedMetalMassFraction().ifPresent(w -> requireShare(problems, "metal mass fraction", w));
    statedBinderMassFraction().ifPresent(w -> requireShare(problems, "binder mass fraction", w));
    statedSolidsLoading().ifPresent(phi -> requireShare(problems, "solids loading", phi));
    problems.refuseIfAny();
    if (statedMetalMassFraction().isPresent() && statedBinderMassFraction().isPresent()) {
      Amount<MassFraction> metal = statedMetalMassFraction().get();
      Amount<MassFraction> rest = statedBinderMassFraction().get();
      problems.require(
          Math.abs(metal.si() + rest.si() - 1) <= 2 * ROUNDING,
          "a metal mass fraction of "
              + metal
              + " and a binder mass fraction of "
              + rest
              + " do not add up to 1; accepted is agreement to whole percents, or one of the two");
    }
    if (statedMass().isPresent() && statedSolidsLoading().isPresent()) {
      Amount<MassFraction> metal = statedMass().get();
      Amount<VolumeFraction> loading = statedSolidsLoading().get();
      problems.require(
          loadingOf(metal.si() - ROUNDING) <= loading.si() + ROUNDING
              && loadingOf(metal.si() + ROUNDING) >= loading.si() - ROUNDING,
          "a metal mass fraction of "
              + metal
              + " means a solids loading of "
              + Amounts.volumeFraction(loadingOf(metal.si())).format(TradeUnits.VOLUME_FRACTION, 4)
              + ", but "
              + loading
              + " is stated; accepted is agreement to whole percents, or one of the two");
    }
    metalMassFractionRange().ifPresent(range -> requireRange(problems, range.value()));
    problems.refuseIfAny();
  }

  private void requireRange(Problems problems, Span<MassFraction> range) {
    requireShare(problems, "lowest metal mass fraction", range.low());
    requireShare(problems, "highest metal mass fraction", range.high());
    Amount<MassFraction> metal = metalMassFraction();
    problems.require(
        range.low().si() <= metal.si() + ROUNDING && range.high().si() >= metal.si() - ROUNDING,
        "the metal mass fraction of "
            + metal.format(TradeUnits.MASS_FRACTION, 4)
            + " lies outside its range of "
            + range.format(TradeUnits.MASS_FRACTION, 4)
            + "; accepted is a range about it");
  }

  private static void requireShare(Problems problems, String where, Amount<?> share) {
    problems.require(
        share.si() > 0 && share.si() < 1,
        where + " is " + share + "; accepted is above 0 and below 1");
  }
}
