package dev.kilnledger.costing.yield;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** How much of what enters a stage leaves it good. */
@Value.Immutable
@ValueStyle
public interface StageYield extends Serializable {
  /** {@return the stage} */
  Stage stage();

  /** {@return the share of the parts, taken one by one, that pass; 0.001 to 1, 1 unless stated} */
  @Value.Default
  default Amount<Dimensionless> parts() {
    return Amounts.ratio(1);
  }

  /**
   * {@return the share of the charges that are not lost with every part in them; 0.001 to 1, 1
   * unless stated}
   */
  @Value.Default
  default Amount<Dimensionless> charges() {
    return Amounts.ratio(1);
  }

  /** {@return what becomes of what fails; {@link AfterFailure#SCRAPPED} unless stated} */
  @Value.Default
  default AfterFailure afterFailure() {
    return AfterFailure.SCRAPPED;
  }

  /** {@return where the yields come from} */
  Source source();

  /**
   * Starts one.
   *
   * @return a builder; stage and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link StageYield} values. */
  final class Builder extends ImmutableStageYield.Builder {
    Builder() {}
  }

  /**
   * Refuses yields that are no shares, and charges where there are none.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("yield of " + stage().words())
        .within("parts", parts(), Amounts.ratio(0.001), Amounts.ratio(1))
        .within("charges", charges(), Amounts.ratio(0.001), Amounts.ratio(1))
        .require(
            stage().inCharges() || charges().si() == 1,
            "charges is " + charges() + "; accepted is 1, as parts are printed one by one")
        .refuseIfAny();
  }
}
