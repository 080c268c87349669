package dev.kilnledger.core.part;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.immutables.value.Value;

/**
 * A part's passage from green over brown to sintered, as {@link MassBalancePassage} works it out.
 *
 * <p>The stages hold the expected figures. The band of the relative density shows in the shrinkage,
 * in the oversize and in how far the finished lengths may deviate, not in the masses: once printed,
 * a part keeps its metal whether it shrinks much or little.
 */
@Value.Immutable
@ValueStyle
public interface Passage extends Serializable {
  /** {@return the part wanted} */
  @Value.Parameter
  Part part();

  /** {@return what it is printed from} */
  @Value.Parameter
  Feedstock feedstock();

  /** {@return how it is printed and fired} */
  @Value.Parameter
  PrintConditions conditions();

  /** {@return as printed} */
  @Value.Parameter
  Stage green();

  /** {@return with the binder burnt out, char left, not yet shrunk} */
  @Value.Parameter
  Stage brown();

  /** {@return as wanted: metal and char} */
  @Value.Parameter
  Stage sintered();

  /** {@return the metal in it, the same at every stage} */
  @Value.Parameter
  Amount<Mass> metal();

  /** {@return the binder in the green part} */
  @Value.Parameter
  Amount<Mass> binder();

  /** {@return the char that the binder leaves, in the brown and in the sintered part} */
  @Value.Parameter
  Amount<Mass> residue();

  /** {@return the linear shrinkage from green to sintered} */
  @Value.Parameter
  LinearShrinkage shrinkage();

  /** {@return the share of the green volume that metal fills} */
  default Amount<VolumeFraction> metalInGreen() {
    return Amounts.volumeFraction(MassBalancePassage.metalInGreen(feedstock(), conditions()));
  }

  /** {@return the share of the sintered volume that metal fills, at most 1} */
  @Value.Parameter
  Amount<VolumeFraction> metalInSintered();

  /** {@return where the band of the shrinkage comes from} */
  @Value.Lazy
  default Source shrinkageSource() {
    return conditions()
        .measuredShrinkage()
        .map(Sourced::source)
        .orElseGet(
            () ->
                Source.recomputed(
                    "from the span of the relative density: "
                        + expectedRelativeDensity().source().cite()));
  }

  /**
   * {@return every figure with the formula and the facts it was computed from: solids loading,
   * shrinkage and oversize along each axis, volumes, masses, porosities and lengths to print, named
   * as {@code "green mass"} or {@code "oversize along x"}; put together of the figures of this
   * passage when first asked for}
   */
  @Value.Lazy
  default List<Explanation> lines() {
    return PassageLines.of(this);
  }

  /** {@return what the passage means for the part, told when first asked for} */
  @Value.Lazy
  default List<Finding> findings() {
    return PassageFindings.of(this);
  }

  /** {@return the relative density expected: as stated with the conditions, or the alloy's} */
  default Sourced<Estimate<VolumeFraction>> expectedRelativeDensity() {
    return conditions()
        .finalRelativeDensity()
        .orElse(feedstock().alloy().expectedRelativeDensity());
  }

  /**
   * A figure with all it stands on.
   *
   * @param what its name among the {@link #lines}
   * @return the figure
   * @throws IllegalArgumentException if there is none of that name; the message lists what there is
   */
  default Explanation line(String what) {
    return lines().stream()
        .filter(line -> line.what().equals(what))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no figure \""
                        + what
                        + "\"; accepted is one of "
                        + lines().stream().map(Explanation::what).toList()));
  }

  /** {@return the binder that leaves, as vapour and gas} */
  default Amount<Mass> binderBurnt() {
    return green().mass().subtract(brown().mass());
  }

  /** {@return what to multiply the finished lengths by for printing} */
  default PerAxis<Estimate<Dimensionless>> oversize() {
    return shrinkage().oversize();
  }

  /**
   * {@return how far the finished lengths may lie from those wanted when printed with the expected
   * oversize: derived from the band of the shrinkage alone; what the printer itself misses, and
   * sagging and warping in the kiln, come on top}
   */
  default PerAxis<Span<Length>> deviation() {
    return shrinkage().deviation(part().envelope());
  }

  /** {@return the filament in the green part; supports, purging and waste come on top} */
  default Amount<Mass> filamentMass() {
    return green().mass();
  }

  /**
   * The filament in the green part as a length; supports, purging and waste come on top.
   *
   * @param diameter the filament's diameter, such as 1.75 or 2.85 mm
   * @return the length: mass / (density x pi d2 / 4)
   * @throws IllegalArgumentException if the diameter is zero
   */
  default Amount<Length> filamentLength(Amount<Length> diameter) {
    return Relations.lengthOfStrand(filamentMass(), feedstock().massPerLength(diameter));
  }

  /**
   * The length of filament with all it stands on.
   *
   * @param diameter the filament's diameter
   * @param source where the diameter comes from
   * @return {@link #filamentLength} as a tree
   */
  default Explanation filamentLengthLine(Amount<Length> diameter, Source source) {
    Explanation mass = line("green mass");
    return Explanation.computed(
        "filament length",
        filamentLength(diameter),
        "green mass / (strand density x pi / 4 x diameter x diameter)",
        mass,
        Explanation.computed(
            "strand density",
            feedstock().density(),
            "solids loading x full density + (1 - solids loading) x binder density",
            line("solids loading"),
            mass.at("metal", "full density"),
            mass.at("binder", "binder density")),
        Explanation.given("diameter", diameter, source));
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Passage} values. */
  final class Builder extends ImmutablePassage.Builder {
    Builder() {}
  }
}
