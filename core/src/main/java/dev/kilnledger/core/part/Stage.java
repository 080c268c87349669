package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/** A part at one stage of its passage: green, brown or sintered. */
@Value.Immutable
@ValueStyle
public interface Stage extends Serializable {
  /** {@return the mass} */
  @Value.Parameter
  Amount<Mass> mass();

  /** {@return the volume, pores included} */
  @Value.Parameter
  Amount<Volume> volume();

  /** {@return the smallest box around it} */
  @Value.Parameter
  Envelope envelope();

  /**
   * {@return the share of the volume that holds neither metal nor binder, from 0 to less than 1;
   * char is counted with the pores it lies in}
   */
  @Value.Parameter
  Amount<VolumeFraction> porosity();

  /** {@return the bulk density: mass / volume} */
  default Amount<Density> density() {
    return Relations.densityOf(mass(), volume());
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Stage} values. */
  final class Builder extends ImmutableStage.Builder {
    Builder() {}
  }

  /**
   * Refuses sizes that are not above zero and impossible porosities.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("stage")
        .positive("mass", mass())
        .positive("volume", volume())
        .require(
            porosity().si() >= 0 && porosity().si() < 1,
            () -> "porosity is " + porosity() + "; accepted is from 0 to less than 1")
        .refuseIfAny();
  }
}
