package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import org.immutables.value.Value;

/** The circuit that feeds a kiln. */
@Value.Immutable
@ValueStyle
public interface SupplyCircuit extends Serializable {
  /** {@return the name, such as {@code "workshop, north wall"}} */
  String name();

  /** {@return the voltage: phase to neutral with one phase, between phases with three} */
  Amount<ElectricPotential> voltage();

  /** {@return the number of phases, 1 or 3} */
  int phases();

  /** {@return the rating of the breaker, per phase} */
  Amount<ElectricCurrent> breakerRating();

  /**
   * {@return the share of the rating that may flow for hours; 0.8 by default, which many codes ask
   * of breakers not rated for continuous load (common practice: the local code decides)}
   */
  @Value.Default
  default Amount<Dimensionless> continuousShare() {
    return Amounts.ratio(0.8);
  }

  /** {@return the current that may flow for hours} */
  default Amount<ElectricCurrent> continuousRating() {
    return breakerRating().multiply(continuousShare().si());
  }

  /**
   * Starts one.
   *
   * @return a builder; name, voltage, phases and breaker rating are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link SupplyCircuit} values. */
  final class Builder extends ImmutableSupplyCircuit.Builder {
    Builder() {}
  }

  /**
   * Refuses impossible circuits.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("supply circuit " + name())
        .text("name", name())
        .positive("voltage", voltage())
        .require(phases() == 1 || phases() == 3, "phases is " + phases() + "; accepted is 1 or 3")
        .positive("breaker rating", breakerRating())
        .require(
            continuousShare().si() > 0 && continuousShare().si() <= 1,
            "continuous share is " + continuousShare() + "; accepted is above 0 and up to 1")
        .refuseIfAny();
  }
}
