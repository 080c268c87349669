package dev.kilnledger.thermal.firing;

import dev.kilnledger.thermal.conduction.CoreHistory;
import dev.kilnledger.thermal.conduction.CorePoint;
import dev.kilnledger.thermal.kiln.KilnPoint;
import dev.kilnledger.thermal.kiln.KilnRun;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A computed temperature over time as a profile of few segments: of its points those are left out
 * that lie within a tolerance of the line between the ones kept, so that what follows a programme
 * exactly comes back as that programme, and a curve as a few dozen lines.
 */
final class Course {
  /** For what the kiln does, K: far below what a thermocouple tells. */
  private static final double OF_KILN = 0.05;

  /** For what the core feels, K: 0.02 K are 0.05 % of a rate at 300 kJ/mol and 1300 °C. */
  private static final double OF_CORE = 0.02;

  /** Points nearer than that are one, s: the last of a cooling may fall on the one before. */
  private static final double AT_ONCE = 1e-3;

  private final double tolerance;
  private final List<Segment> segments = new ArrayList<>();
  private double anchorTime;
  private double anchor;
  private double lastTime;
  private double last;
  private double steepest = Double.POSITIVE_INFINITY;
  private double flattest = Double.NEGATIVE_INFINITY;

  private Course(double tolerance, double time, double kelvin) {
    this.tolerance = tolerance;
    this.anchorTime = time;
    this.anchor = kelvin;
    this.lastTime = time;
    this.last = kelvin;
  }

  /** What a kiln does from the start of the programme until it may be opened. */
  static Profile of(KilnRun run) {
    KilnPoint start = run.points().get(0);
    Course course = new Course(OF_KILN, start.time().si(), start.actual().si());
    Stream.concat(run.points().stream().skip(1), run.coolingPoints().stream().skip(1))
        .forEach(point -> course.add(point.time().si(), point.actual().si()));
    return course.profile();
  }

  /** What the core of a charge feels. */
  static Profile of(CoreHistory history) {
    CorePoint start = history.points().get(0);
    Course course = new Course(OF_CORE, start.time().si(), start.core().si());
    history.points().stream()
        .skip(1)
        .forEach(point -> course.add(point.time().si(), point.core().si()));
    return course.profile();
  }

  private void add(double time, double kelvin) {
    if (time - lastTime < AT_ONCE) {
      return;
    }
    double slope = (kelvin - anchor) / (time - anchorTime);
    if (slope > steepest || slope < flattest) {
      close();
      slope = (kelvin - anchor) / (time - anchorTime);
    }
    double slack = tolerance / (time - anchorTime);
    steepest = Math.min(steepest, slope + slack);
    flattest = Math.max(flattest, slope - slack);
    lastTime = time;
    last = kelvin;
  }

  /** Ends a segment at the last point, which begins the next. */
  private void close() {
    segments.add(
        Segment.of(
            Amounts.kelvin(anchor).to(TradeUnits.CELSIUS),
            Amounts.kelvin(last).to(TradeUnits.CELSIUS),
            Amounts.hours((lastTime - anchorTime) / 3600)));
    anchorTime = lastTime;
    anchor = last;
    steepest = Double.POSITIVE_INFINITY;
    flattest = Double.NEGATIVE_INFINITY;
  }

  private Profile profile() {
    close();
    return Profile.of(segments);
  }
}
