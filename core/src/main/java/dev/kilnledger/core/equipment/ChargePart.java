package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Outline;
import dev.kilnledger.core.part.PrintAxis;
import java.io.Serializable;
import java.util.Set;
import org.immutables.value.Value;

/** A part as it is laid into a crucible. */
@Value.Immutable
@ValueStyle
public interface ChargePart extends Serializable {
  /** {@return the smallest box around it, along the axes of its printing; green or brown} */
  Envelope envelope();

  /** {@return what it looks like from above; {@link Outline#RECTANGULAR} unless given} */
  @Value.Default
  default Outline outline() {
    return Outline.RECTANGULAR;
  }

  /**
   * {@return which axes of its printing may point up in the crucible; {@link PrintAxis#Z}, as
   * printed, unless given; turning about the vertical is always allowed}
   */
  @Value.Default
  default Set<PrintAxis> upright() {
    return Set.of(PrintAxis.Z);
  }

  /**
   * A part of any outline that stands as it was printed.
   *
   * @param envelope the smallest box around it
   * @return the part
   */
  static ChargePart of(Envelope envelope) {
    return builder().envelope(envelope).build();
  }

  /**
   * The box around it with one of its printing axes pointing up.
   *
   * @param up the axis
   * @return the box, z upwards
   */
  default Envelope standing(PrintAxis up) {
    return switch (up) {
      case X -> Envelope.of(envelope().y(), envelope().z(), envelope().x());
      case Y -> Envelope.of(envelope().x(), envelope().z(), envelope().y());
      case Z -> envelope();
    };
  }

  /**
   * Starts one.
   *
   * @return a builder; the envelope is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ChargePart} values. */
  final class Builder extends ImmutableChargePart.Builder {
    Builder() {}
  }

  /**
   * Refuses a part that may not stand at all.
   *
   * @throws IllegalArgumentException if no axis may point up
   */
  @Value.Check
  default void check() {
    new Problems("charge part")
        .require(!upright().isEmpty(), "no axis may point up; accepted is at least one")
        .refuseIfAny();
  }
}
