package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** How likely each event of a firing has to be; below it is a warning, and far below a stop. */
@Value.Immutable
@ValueStyle
public interface ChanceLimits extends Serializable {
  /** {@return from which probability on an event counts as sure enough} */
  @Value.Parameter
  Amount<Dimensionless> sureFrom();

  /** {@return below which probability the firing should not be run} */
  @Value.Parameter
  Amount<Dimensionless> stopBelow();

  /** {@return who asks for it} */
  @Value.Parameter
  Source source();

  /**
   * Limits.
   *
   * @param sureFrom from which probability on an event counts as sure enough, up to 1
   * @param stopBelow below which the firing should not be run, no more than the first
   * @param source who asks for it
   * @return the limits
   * @throws IllegalArgumentException if they are out of range or order
   */
  static ChanceLimits of(
      Amount<Dimensionless> sureFrom, Amount<Dimensionless> stopBelow, Source source) {
    return ImmutableChanceLimits.of(sureFrom, stopBelow, source);
  }

  /** {@return 95 % and 50 %, common practice} */
  static ChanceLimits usual() {
    return of(
        Amounts.percent(95),
        Amounts.percent(50),
        Source.commonPractice("95 % is sure enough, less than 50 % is not worth a firing"));
  }

  /**
   * Refuses what is no probability, or out of order.
   *
   * @throws IllegalArgumentException if they are out of range or order
   */
  @Value.Check
  default void check() {
    new Problems("limits of chance")
        .require(
            stopBelow().si() >= 0 && stopBelow().si() <= sureFrom().si() && sureFrom().si() <= 1,
            "sure is from "
                + sureFrom()
                + " on and a stop below "
                + stopBelow()
                + "; accepted is 0 <= stop <= sure <= 1")
        .refuseIfAny();
  }
}
