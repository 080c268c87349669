package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * How a binder decomposes: one or several steps side by side, {@code alpha = sum of w alpha_step}.
 * It tells of the mass that leaves; char that stays is no part of it.
 */
@Value.Immutable
@ValueStyle
public interface BinderKinetics extends Serializable {
  /** How far the shares may add up to another sum than 1, as they are given in rounded percents. */
  double ROUNDING = 1e-9;

  /** {@return the name, such as {@code "poly(methyl methacrylate), one laboratory"}} */
  String name();

  /** {@return the steps, one or more, their shares adding up to 1} */
  List<DecompositionStep> steps();

  /** {@return the temperatures between which the loss was observed that it was fitted to} */
  Span<Temperature> range();

  /** {@return under which conditions it holds: gas, neat or filled, heating rates} */
  String condition();

  /** {@return where it comes from} */
  Source source();

  /**
   * Starts one.
   *
   * @return an empty builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link BinderKinetics} values. */
  final class Builder extends ImmutableBinderKinetics.Builder {
    Builder() {}
  }

  /**
   * Refuses shares that do not add up and blank texts.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    double sum = steps().stream().mapToDouble(step -> step.massShare().si()).sum();
    new Problems("kinetics of " + name())
        .text("name", name())
        .text("condition", condition())
        .require(
            Math.abs(sum - 1) <= ROUNDING,
            "the mass shares of "
                + steps().size()
                + " steps add up to "
                + sum
                + "; accepted are one or more steps that add up to 1")
        .refuseIfAny();
  }
}
