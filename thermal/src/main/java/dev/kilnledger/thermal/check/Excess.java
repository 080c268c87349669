package dev.kilnledger.thermal.check;

import dev.kilnledger.units.Amount;
import javax.measure.Quantity;

/** Comparison of computed amounts, which carry rounding errors, with a limit. */
final class Excess {
  /** Far above the rounding of a sum of segments, far below anything a kiln could tell. */
  private static final double ROUNDING = 1e-9;

  private Excess() {}

  /** Whether an amount lies above a limit by more than rounding. */
  static <Q extends Quantity<Q>> boolean exceeds(Amount<Q> amount, Amount<Q> limit) {
    return amount.si() > limit.si() * (1 + ROUNDING);
  }
}
