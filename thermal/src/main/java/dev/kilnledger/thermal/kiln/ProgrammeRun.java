package dev.kilnledger.thermal.kiln;

import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;

/** A programme as the kiln runs it, step by step; in SI units. */
final class ProgrammeRun {
  /** How long a controller waits before it gives up, s. */
  private static final double LONGEST_WAIT = 24 * 3600.0;

  private final double ratedPower;
  private final double step;
  private final double waitingBand;
  private final List<KilnPoint> points = new ArrayList<>();
  private final List<Segment> asRun = new ArrayList<>();
  private HeatedWall wall;
  private double time;
  private double waited;
  private boolean gaveUp;
  private double peakPower;

  /** When the elements last gave heat, and the wall then. */
  private double poweredUntil;

  private HeatedWall whenPowerEnded;

  ProgrammeRun(
      HeatedWall wall, double ratedPower, double step, double waitingBand, double programmed) {
    this.wall = wall;
    this.whenPowerEnded = wall.copy();
    this.ratedPower = ratedPower;
    this.step = step;
    this.waitingBand = waitingBand;
    record(programmed, 0);
  }

  void add(Segment segment) {
    // a rounding error above a whole number of steps is no step more
    int steps = (int) Math.max(1, Math.ceil(segment.duration().si() / step - 1e-9));
    double from = segment.start().si();
    double to = segment.end().si();
    double length = segment.duration().si() / steps;
    for (int i = 1; i <= steps; i++) {
      advance(i == steps ? to : from + (to - from) * i / steps, length);
    }
    double waitedBefore = waited;
    if (segment.isHeating()) {
      awaitArrival(to);
    }
    asRun.add(
        waited == waitedBefore
            ? segment
            : Segment.of(
                segment.start(),
                segment.end(),
                segment.duration().add(Amounts.seconds(waited - waitedBefore))));
  }

  private void awaitArrival(double target) {
    double since = time;
    while (target - wall.chamber() > waitingBand) {
      if (time - since >= LONGEST_WAIT) {
        gaveUp = true;
        return;
      }
      advance(target, step);
      waited += step;
    }
  }

  private void advance(double programmed, double length) {
    HeatedWall before = wall.copy();
    double power = wall.lead(programmed, length);
    if (power > ratedPower || power < 0) {
      power = power < 0 ? 0 : ratedPower;
      wall = before.copy();
      wall.heat(power, length);
    }
    time += length;
    peakPower = Math.max(peakPower, power);
    if (power > 0) {
      poweredUntil = time;
    } else if (before.energyIn() > whenPowerEnded.energyIn()) {
      whenPowerEnded = before;
    }
    record(programmed, power);
  }

  private void record(double programmed, double power) {
    points.add(
        KilnPoint.builder()
            .time(Amounts.hours(time / 3600))
            .programmed(Amounts.kelvin(programmed))
            .actual(Amounts.kelvin(wall.chamber()))
            .skin(Amounts.kelvin(wall.skin()))
            .power(Amounts.watts(power))
            .build());
  }

  List<KilnPoint> points() {
    return points;
  }

  List<Segment> asRun() {
    return asRun;
  }

  /** At the end of the programme. */
  HeatedWall wall() {
    return wall;
  }

  HeatedWall whenPowerEnded() {
    return wall.energyIn() > whenPowerEnded.energyIn() ? wall : whenPowerEnded;
  }

  double poweredUntil() {
    return poweredUntil;
  }

  double peakPower() {
    return peakPower;
  }

  double waited() {
    return waited;
  }

  boolean gaveUp() {
    return gaveUp;
  }
}
