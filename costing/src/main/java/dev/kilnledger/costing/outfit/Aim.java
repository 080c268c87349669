package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.PrintConditions;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Length;
import org.immutables.value.Value;

/** What an outfit is wanted for: a part of some size in a metal. */
@Value.Immutable
@ValueStyle
public interface Aim extends Serializable {
  /** {@return the name; the part's and the feedstock's unless stated} */
  @Value.Default
  default String name() {
    return part().name() + " in " + feedstock().name();
  }

  /** {@return the part wanted} */
  Part part();

  /** {@return what it is printed from} */
  Feedstock feedstock();

  /** {@return how it is printed and fired; {@link PrintConditions#ideal()} unless stated} */
  @Value.Default
  default PrintConditions conditions() {
    return PrintConditions.ideal();
  }

  /** {@return how much packing there must be on every side of a part} */
  Amount<Length> clearance();

  /** {@return how many parts one firing has to hold at least, 1 or more; 1 unless stated} */
  @Value.Default
  default int leastPartsPerFiring() {
    return 1;
  }

  /** {@return whether an outfit is no use without it; false unless stated} */
  @Value.Default
  default boolean required() {
    return false;
  }

  /** {@return the caller's own score for reaching it; 0 unless stated} */
  @Value.Default
  default long score() {
    return 0;
  }

  /**
   * Starts one.
   *
   * @return a builder; part, feedstock and clearance are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Aim} values. */
  final class Builder extends ImmutableAim.Builder {
    Builder() {}
  }

  /**
   * Refuses a blank name, a negative clearance and firings of no part.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("aim " + name())
        .text("name", name())
        .notNegative("clearance", clearance())
        .require(
            leastPartsPerFiring() >= 1,
            "least parts per firing is " + leastPartsPerFiring() + "; accepted is 1 or more")
        .refuseIfAny();
  }
}
