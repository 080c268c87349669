package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MassFraction;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.immutables.value.Value;

/** A part weighed before and after debinding, with what else may have changed its mass. */
@Value.Immutable
@ValueStyle
public interface DebindingWeighing extends Serializable {
  /** {@return what was weighed} */
  String specimen();

  /** {@return the mass before debinding} */
  Amount<Mass> greenMass();

  /** {@return the mass after debinding} */
  Amount<Mass> brownMass();

  /** {@return how far either weighing may be off, up or down} */
  Amount<Mass> balanceUncertainty();

  /**
   * {@return the metal's share of the green mass, where it is known to a range; by default the
   * feedstock's single figure}
   */
  Optional<Span<MassFraction>> metalMassFraction();

  /**
   * {@return the oxygen the metal may have taken up, as a share of the metal's mass; not stated
   * means that it is not known, which is not zero}
   */
  Optional<Span<MassFraction>> oxidationGain();

  /**
   * {@return the packing powder that may still stick to the part, below zero where grains of the
   * part fell off; not stated means that it is not known, which is not zero}
   */
  Optional<Span<Mass>> adheringPowder();

  /**
   * Starts one.
   *
   * @return a builder; specimen, both masses and the balance's uncertainty are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link DebindingWeighing} values. */
  final class Builder extends ImmutableDebindingWeighing.Builder {
    Builder() {}
  }

  /**
   * Refuses impossible masses and shares.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("debinding of " + specimen())
            .text("specimen", specimen())
            .positive("green mass", greenMass())
            .positive("brown mass", brownMass())
            .require(
                balanceUncertainty().si() >= 0
                    && balanceUncertainty().isLessThan(greenMass())
                    && balanceUncertainty().isLessThan(brownMass()),
                "balance uncertainty is "
                    + balanceUncertainty()
                    + "; accepted is from zero to less than either mass");
    metalMassFraction()
        .ifPresent(
            metal ->
                problems.require(
                    metal.low().si() > 0 && metal.high().si() < 1,
                    "metal mass fraction spans "
                        + metal.low()
                        + " to "
                        + metal.high()
                        + "; accepted is above 0 and below 1"));
    oxidationGain().ifPresent(gain -> problems.notNegative("lowest oxidation gain", gain.low()));
    problems.refuseIfAny();
  }
}
