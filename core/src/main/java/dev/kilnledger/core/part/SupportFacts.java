package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Pressure;
import org.immutables.value.Value;

/**
 * What is known of how a part is held while its binder is soft and while it is gone: lengths of the
 * finished part as it lies in the crucible.
 */
@Value.Immutable
@ValueStyle
public interface SupportFacts extends Serializable {
  /** What lies under the part's overhangs and spans. */
  enum Bed {
    /** Nothing: the part stands on a plate. */
    NONE,
    /** Packing powder, poured. */
    POURED,
    /** Packing powder, tapped or vibrated into every hollow. */
    TAPPED
  }

  /** {@return the overhang with the greatest length squared over thickness, if any is known} */
  Optional<SelfWeightBeam> overhang();

  /** {@return the unsupported span with the greatest length squared over thickness, if known} */
  Optional<SelfWeightBeam> span();

  /**
   * {@return whether nothing hangs free that is worse than what is stated, or nothing at all where
   * nothing is; false unless given}
   */
  @Value.Default
  default boolean complete() {
    return false;
  }

  /** {@return what lies under it; {@link Bed#NONE} unless given} */
  @Value.Default
  default Bed bed() {
    return Bed.NONE;
  }

  /** {@return the powder of the bed, if there is one and it is known} */
  Optional<PackingPowder> powder();

  /**
   * {@return the stress at which the green body begins to yield where its binder is softest, before
   * it leaves; empty where it was not measured}
   */
  Optional<Sourced<Span<Pressure>>> softenedStrength();

  /**
   * {@return the bending strength of the brown body, before its grains sinter together; empty where
   * it was not measured}
   */
  Optional<Sourced<Span<Pressure>>> brownStrength();

  /** {@return nothing at all: not even whether anything hangs free} */
  static SupportFacts unknown() {
    return builder().build();
  }

  /**
   * Starts some.
   *
   * @return a builder; nothing is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link SupportFacts} values. */
  final class Builder extends ImmutableSupportFacts.Builder {
    Builder() {}
  }

  /**
   * Refuses overhangs given as spans, spans as overhangs, and strengths that are not above zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("support facts");
    overhang()
        .ifPresent(
            beam ->
                problems.require(
                    beam.held() == SelfWeightBeam.Held.OVERHANG,
                    "overhang is held at both ends; accepted is an overhang"));
    span()
        .ifPresent(
            beam ->
                problems.require(
                    beam.held() == SelfWeightBeam.Held.SPAN,
                    "span is held at one end; accepted is a span"));
    softenedStrength()
        .ifPresent(s -> problems.positive("lowest softened strength", s.value().low()));
    brownStrength().ifPresent(s -> problems.positive("lowest brown strength", s.value().low()));
    problems.refuseIfAny();
  }
}
