package dev.kilnledger.thermal.kinetics;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import java.util.Locale;
import javax.measure.Unit;
import javax.measure.quantity.Frequency;

/** Amounts per time: pre-exponential factors and the rates of reactions. */
public final class Frequencies {
  /** One per second. */
  public static final Unit<Frequency> PER_SECOND = TradeUnits.PER_SECOND;

  // Multiplying it is quick; resolving the unit for every amount is not.
  private static final Amount<Frequency> ONE_PER_SECOND = Amount.of(1, PER_SECOND);

  private Frequencies() {}

  /**
   * A number per second.
   *
   * @param number the number, finite
   * @return the amount
   */
  public static Amount<Frequency> perSecond(double number) {
    return ONE_PER_SECOND.multiply(number);
  }

  /**
   * A number per hour.
   *
   * @param number the number, finite
   * @return the amount, in 1/s
   */
  public static Amount<Frequency> perHour(double number) {
    return ONE_PER_SECOND.multiply(number / 3600);
  }

  /**
   * A rate of conversion for people: {@code "12.5 %/h"}.
   *
   * @param rate the rate
   * @return the text, with three significant digits or more
   */
  public static String percentPerHour(Amount<Frequency> rate) {
    double percent = rate.si() * 360_000;
    return String.format(Locale.ROOT, Math.abs(percent) < 9.995 ? "%.3g" : "%.1f", percent)
        + " %/h";
  }
}
