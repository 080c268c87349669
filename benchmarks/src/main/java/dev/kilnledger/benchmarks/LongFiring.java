package dev.kilnledger.benchmarks;

import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amounts;
import java.util.List;

/** A firing of thirty hours, debinding and sintering in one go, invented. */
final class LongFiring {
  private LongFiring() {}

  static Profile profile() {
    return Profile.from(Amounts.celsius(20))
        .rampOver(Amounts.celsius(250), Amounts.hours(4))
        .hold(Amounts.hours(2))
        .rampOver(Amounts.celsius(450), Amounts.hours(6.5))
        .hold(Amounts.hours(1))
        .rampOver(Amounts.celsius(1050), Amounts.hours(5))
        .hold(Amounts.hours(4))
        .rampOver(Amounts.celsius(600), Amounts.hours(3))
        .rampOver(Amounts.celsius(300), Amounts.hours(4.5))
        .build();
  }

  /** {@return the times of its corners, s} */
  static double[] seconds() {
    List<Segment> segments = profile().segments();
    double[] seconds = new double[segments.size() + 1];
    for (int i = 0; i < segments.size(); i++) {
      seconds[i + 1] = seconds[i] + segments.get(i).duration().si();
    }
    return seconds;
  }

  /** {@return the temperatures at its corners, K} */
  static double[] kelvin() {
    List<Segment> segments = profile().segments();
    double[] kelvin = new double[segments.size() + 1];
    kelvin[0] = profile().start().si();
    for (int i = 0; i < segments.size(); i++) {
      kelvin[i + 1] = segments.get(i).end().si();
    }
    return kelvin;
  }
}
