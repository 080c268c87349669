package dev.kilnledger.thermal.profile;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.List;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/** How long straight segments run at or above a temperature: in all, and at a stretch. */
final class TimeAbove {
  private double total;
  private double longest;
  private double stretch;

  private TimeAbove() {}

  static TimeAbove of(List<Segment> segments, Amount<Temperature> temperature) {
    TimeAbove time = new TimeAbove();
    segments.forEach(segment -> time.add(segment, temperature.si()));
    return time;
  }

  Amount<Time> total() {
    return Amounts.seconds(total).to(TradeUnits.HOUR);
  }

  Amount<Time> longest() {
    return Amounts.seconds(longest).to(TradeUnits.HOUR);
  }

  private void add(Segment segment, double limit) {
    double from = segment.start().si();
    double to = segment.end().si();
    if (from < limit) {
      stretch = 0;
    }
    double above = segment.duration().si() * shareAbove(from, to, limit);
    total += above;
    stretch += above;
    longest = Math.max(longest, stretch);
    if (to < limit) {
      stretch = 0;
    }
  }

  private static double shareAbove(double from, double to, double limit) {
    double high = Math.max(from, to);
    double low = Math.min(from, to);
    if (low >= limit) {
      return 1;
    }
    return high <= limit ? 0 : (high - limit) / (high - low);
  }
}
