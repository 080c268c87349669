package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Length;
import org.immutables.value.Value;

/** A box somewhere in space, along the axes: from its low corner to its high one. */
@Value.Immutable
@ValueStyle
public interface Extent extends Serializable {
  /** {@return the low end along x} */
  Amount<Length> lowX();

  /** {@return the low end along y} */
  Amount<Length> lowY();

  /** {@return the low end along z} */
  Amount<Length> lowZ();

  /** {@return the high end along x} */
  Amount<Length> highX();

  /** {@return the high end along y} */
  Amount<Length> highY();

  /** {@return the high end along z} */
  Amount<Length> highZ();

  /**
   * {@return the size of the box}
   *
   * @throws IllegalArgumentException if it is flat along an axis
   */
  default Envelope envelope() {
    return Envelope.of(side(lowX(), highX()), side(lowY(), highY()), side(lowZ(), highZ()));
  }

  private static Amount<Length> side(Amount<Length> low, Amount<Length> high) {
    return Amounts.metres(high.si() - low.si()).to(low.getUnit());
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Extent} values. */
  final class Builder extends ImmutableExtent.Builder {
    Builder() {}
  }

  /**
   * Refuses a low end above its high end.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("extent");
    require(problems, "x", lowX(), highX());
    require(problems, "y", lowY(), highY());
    require(problems, "z", lowZ(), highZ());
    problems.refuseIfAny();
  }

  private static void require(
      Problems problems, String axis, Amount<Length> low, Amount<Length> high) {
    problems.require(
        !low.isGreaterThan(high),
        axis + " goes from " + low + " to " + high + "; accepted is a low end up to the high end");
  }
}
