package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;

/**
 * The part wanted, as it comes out of the last firing. Its size is told by its volume, by its mass,
 * or by both; whether both agree is known once the alloy is, in its {@linkplain MassBalancePassage
 * passage}.
 */
@Value.Immutable
@ValueStyle
public interface Part extends Serializable {
  /** {@return the name, such as {@code "latch cam"}} */
  String name();

  /** {@return the volume after sintering, pores included, if it is known} */
  Optional<Amount<Volume>> finishedVolume();

  /** {@return the mass after sintering, if it is known} */
  Optional<Amount<Mass>> finishedMass();

  /** {@return the smallest box around it after sintering} */
  Envelope envelope();

  /**
   * {@return the thickest section after sintering: the diameter of the largest ball that fits
   * inside, through which binder has to find its way out}
   */
  Amount<Length> thickestSection();

  /**
   * Starts one.
   *
   * @return a builder; name, envelope, thickest section, and volume or mass are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Part} values. */
  final class Builder extends ImmutablePart.Builder {
    Builder() {}
  }

  /**
   * Refuses sizes that are missing or do not fit into each other.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems(() -> ("part " + name()).strip()).text("name", name());
    problems.require(
        finishedVolume().isPresent() || finishedMass().isPresent(),
        "neither finished volume nor finished mass is stated; accepted is at least one");
    finishedMass().ifPresent(mass -> problems.positive("finished mass", mass));
    finishedVolume().ifPresent(volume -> problems.positive("finished volume", volume));
    finishedVolume().ifPresent(volume -> BoxLimit.require(problems, volume, envelope()));
    Amount<Length> side = envelope().smallestSide();
    problems
        .positive("thickest section", thickestSection())
        .require(
            !thickestSection().isGreaterThan(side),
            () ->
                "thickest section is "
                    + thickestSection()
                    + "; accepted is up to the envelope's smallest side, "
                    + side)
        .refuseIfAny();
  }
}
