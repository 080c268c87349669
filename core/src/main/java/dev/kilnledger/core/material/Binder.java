package dev.kilnledger.core.material;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.quantity.MassFraction;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/** The polymer or wax that holds the powder together until it is burnt out. */
@Value.Immutable
@ValueStyle
public interface Binder extends Serializable {
  /** {@return the name, such as {@code "polylactide"}} */
  String name();

  /** {@return the density at room temperature} */
  Sourced<Estimate<Density>> density();

  /** {@return the temperatures between which it decomposes or evaporates when heated slowly} */
  Sourced<Span<Temperature>> decomposition();

  /** {@return the share of its mass that stays behind as char, fired under packing} */
  Sourced<Estimate<MassFraction>> residue();

  /** {@return what it gives off that can hurt, in plain words} */
  List<String> hazardousProducts();

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Binder} values. */
  final class Builder extends ImmutableBinder.Builder {
    Builder() {}
  }

  /**
   * Refuses a density of zero or a residue outside 0 to 1.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("binder " + name())
        .text("name", name())
        .positive("lowest density", density().value().span().low())
        .require(
            residue().value().span().low().si() >= 0 && residue().value().span().high().si() < 1,
            "residue spans "
                + residue().value().span().low()
                + " to "
                + residue().value().span().high()
                + "; accepted is from 0 to less than 1")
        .refuseIfAny();
  }
}
