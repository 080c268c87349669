package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import javax.measure.quantity.Volume;

/** No body is larger than the box around it. */
final class BoxLimit {
  /** For the rounding of a product of three lengths, so that a box fills its own envelope. */
  private static final double ROUNDING = 1e-9;

  private BoxLimit() {}

  static void require(Problems problems, Amount<Volume> volume, Envelope envelope) {
    Amount<Volume> box = envelope.volume();
    problems.require(
        volume.si() <= box.si() * (1 + ROUNDING),
        () ->
            "finished volume is "
                + volume.format(TradeUnits.CUBIC_CENTIMETRE, 4)
                + "; accepted is up to the envelope's volume, "
                + box.format(TradeUnits.CUBIC_CENTIMETRE, 4));
  }
}
