package dev.kilnledger.core.part;

import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;

/** Fractions of any kind as percents, for messages that say of what. */
final class Percent {
  private Percent() {}

  static String of(Amount<?> fraction) {
    return Amounts.ratio(fraction.si()).format(TradeUnits.PERCENT, 1);
  }

  static String of(Span<?> fractions) {
    String low = of(fractions.low());
    String high = of(fractions.high());
    return low.equals(high) ? low : low + " to " + high;
  }
}
