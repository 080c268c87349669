package dev.kilnledger.thermal.internal;

import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Temperature;

/**
 * The last of the longest holds at the peak of a profile, which can be changed; where there is
 * none, one is put in where the peak is first reached.
 */
public final class PeakHold {
  private final Profile profile;
  private final int at; // of the hold, or of the segment after the peak
  private final boolean programmed;

  private PeakHold(Profile profile, int at, boolean programmed) {
    this.profile = profile;
    this.at = at;
    this.programmed = programmed;
  }

  /**
   * The hold of a profile.
   *
   * @param profile any profile
   * @return its hold at the peak, or the place where there is none
   */
  public static PeakHold of(Profile profile) {
    Amount<Temperature> peak = profile.peak();
    List<Segment> segments = profile.segments();
    int longest = -1;
    int reached = segments.get(0).start().equals(peak) ? 0 : -1;
    for (int i = 0; i < segments.size(); i++) {
      Segment segment = segments.get(i);
      if (segment.isHold()
          && segment.start().equals(peak)
          && (longest < 0 || !segment.duration().isLessThan(segments.get(longest).duration()))) {
        longest = i;
      }
      if (reached < 0 && segment.end().equals(peak)) {
        reached = i + 1;
      }
    }
    return longest >= 0
        ? new PeakHold(profile, longest, true)
        : new PeakHold(profile, reached, false);
  }

  /** {@return how long it is, s; zero where there is none} */
  public double seconds() {
    return programmed ? profile.segments().get(at).duration().si() : 0;
  }

  /**
   * The profile with another hold.
   *
   * @param seconds how long; without a hold where it is zero, but for a profile that is nothing
   *     else, which keeps a second of it
   * @return the profile
   */
  public Profile with(double seconds) {
    List<Segment> segments = new ArrayList<>(profile.segments());
    if (programmed) {
      segments.remove(at);
    }
    double time = segments.isEmpty() ? Math.max(1, seconds) : seconds;
    if (time > 0) {
      Amount<Temperature> peak = profile.peak();
      segments.add(at, Segment.of(peak, peak, Amounts.seconds(time).to(TradeUnits.HOUR)));
    }
    return Profile.of(segments);
  }
}
