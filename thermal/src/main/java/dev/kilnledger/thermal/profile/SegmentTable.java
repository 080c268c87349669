package dev.kilnledger.thermal.profile;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatingRate;
import java.util.List;
import java.util.Locale;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/** Lays out a segment table as plain text. */
final class SegmentTable {
  private SegmentTable() {}

  static String text(List<SegmentRow> rows, Unit<Temperature> unit) {
    StringBuilder text = new StringBuilder(line("no.", "from", "to", "rate", "takes", "until"));
    for (SegmentRow row : rows) {
      text.append(
          line(
              Integer.toString(row.number()),
              row.start().format(unit, 0),
              row.end().format(unit, 0),
              row.segment().isHold() ? "hold" : rate(row.rate(), unit),
              hoursAndMinutes(row.duration()),
              hoursAndMinutes(row.elapsed())));
    }
    return text.toString();
  }

  static String bothScales(List<SegmentRow> rows) {
    StringBuilder text =
        new StringBuilder(
            both("no.", "from", "to", "rate", "from", "to", "rate", "takes", "until"));
    for (SegmentRow row : rows) {
      boolean hold = row.segment().isHold();
      text.append(
          both(
              Integer.toString(row.number()),
              row.start().format(TradeUnits.CELSIUS, 0),
              row.end().format(TradeUnits.CELSIUS, 0),
              hold ? "hold" : row.rate().format(TradeUnits.KELVIN_PER_HOUR, 1),
              row.start().format(TradeUnits.FAHRENHEIT, 0),
              row.end().format(TradeUnits.FAHRENHEIT, 0),
              hold ? "hold" : row.rate().format(TradeUnits.FAHRENHEIT_PER_HOUR, 1),
              hoursAndMinutes(row.duration()),
              hoursAndMinutes(row.elapsed())));
    }
    return text.toString();
  }

  private static String line(Object... cells) {
    return String.format(Locale.ROOT, "%3s %9s %9s %11s %8s %8s", cells) + "\n";
  }

  private static String both(Object... cells) {
    return String.format(Locale.ROOT, "%3s %8s %8s %11s %8s %8s %12s %8s %8s", cells) + "\n";
  }

  private static String rate(Amount<HeatingRate> rate, Unit<Temperature> unit) {
    return rate.format(
        unit.equals(TradeUnits.FAHRENHEIT)
            ? TradeUnits.FAHRENHEIT_PER_HOUR
            : TradeUnits.KELVIN_PER_HOUR,
        0);
  }

  private static String hoursAndMinutes(Amount<Time> time) {
    long minutes = Math.round(time.in(TradeUnits.MINUTE));
    return String.format(Locale.ROOT, "%d:%02d h", minutes / 60, minutes % 60);
  }
}
