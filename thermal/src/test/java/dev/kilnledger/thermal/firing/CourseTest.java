package dev.kilnledger.thermal.firing;

import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.seconds;
import static dev.kilnledger.units.Amounts.watts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.kiln.KilnPoint;
import dev.kilnledger.thermal.kiln.KilnRun;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines through points drawn by hand, of which those within 0.05 K of a line are left out. */
class CourseTest {
  private static final KilnRun RUN =
      FiringForecast.of(setup(copper(), 1000).build()).debinding().get(0).kiln().orElseThrow();

  /** Times in s and temperatures in K. */
  private static List<KilnPoint> points(double... timeAndKelvin) {
    List<KilnPoint> points = new ArrayList<>();
    for (int i = 0; i < timeAndKelvin.length; i += 2) {
      points.add(
          KilnPoint.builder()
              .time(seconds(timeAndKelvin[i]))
              .programmed(kelvin(0))
              .actual(kelvin(timeAndKelvin[i + 1]))
              .skin(kelvin(293))
              .power(watts(0))
              .build());
    }
    return points;
  }

  private static Profile course(double... timeAndKelvin) {
    return course(points(timeAndKelvin), List.of());
  }

  private static Profile course(List<KilnPoint> programme, List<KilnPoint> cooling) {
    return Course.of(KilnRun.builder().from(RUN).points(programme).coolingPoints(cooling).build());
  }

  private static void assertSegments(Profile course, double... secondsAndKelvin) {
    List<Segment> segments = course.segments();
    assertThat(segments).hasSize(secondsAndKelvin.length / 2);
    double before = course.start().si();
    for (int i = 0; i < segments.size(); i++) {
      assertThat(segments.get(i).start().si()).isCloseTo(before, within(1e-9));
      assertThat(segments.get(i).duration().si()).isCloseTo(secondsAndKelvin[2 * i], within(1e-9));
      before = secondsAndKelvin[2 * i + 1];
      assertThat(segments.get(i).end().si()).isCloseTo(before, within(1e-9));
    }
  }

  /** A line of 10 K a minute from 300 K; at its first point 0.04 K or 0.06 K beside it. */
  @Test
  void leavesOutWhatLiesWithinTheToleranceOfTheLine() {
    assertSegments(course(0, 300, 60, 310, 120, 320), 120, 320);
    assertSegments(course(0, 300, 60, 310.04, 120, 320), 120, 320);
    assertSegments(course(0, 300, 60, 309.96, 120, 320), 120, 320);
    assertSegments(course(0, 300, 60, 310.06, 120, 320), 60, 310.06, 60, 320);
    assertSegments(course(0, 300, 60, 309.94, 120, 320), 60, 309.94, 60, 320);
  }

  /** The same after a hold of an hour, where the next line starts. */
  @Test
  void measuresFromTheCornerBefore() {
    assertSegments(
        course(0, 300, 1800, 300, 3600, 300, 3660, 310.04, 3720, 320), 3600, 300, 120, 320);
    assertSegments(
        course(0, 300, 1800, 300, 3600, 300, 3660, 310.06, 3720, 320),
        3600,
        300,
        60,
        310.06,
        60,
        320);
  }

  /**
   * At 180 s the line passes 0.05 K and less beside every point; to 240 s it would pass 0.06 K
   * beside that at 60 s, however near the last ones are.
   */
  @Test
  void keepsEveryPointInMindUntilTheNextCorner() {
    assertSegments(
        course(0, 300, 60, 310.06, 120, 320.06, 180, 330.035, 240, 340), 180, 330.035, 60, 340);
    assertSegments(
        course(0, 300, 60, 309.94, 120, 319.94, 180, 329.965, 240, 340), 180, 329.965, 60, 340);
  }

  /** What follows within a millisecond is the same point told again. */
  @Test
  void takesPointsAtOnceForOne() {
    assertSegments(course(0, 300, 0.0009, 400, 60, 310), 60, 310);
    assertSegments(course(0, 300, 0.001, 400, 60.001, 400), 0.001, 400, 60, 400);
    assertSegments(course(0, 300, 60, 310, 60.0005, 500), 60, 310);
  }

  /** The first point of the cooling is the last of the programme. */
  @Test
  void goesOnWithTheCooling() {
    Profile course =
        course(points(0, 300, 60, 310, 120, 310), points(120, 310, 180, 305, 240, 300));
    assertSegments(course, 60, 310, 60, 310, 120, 300);
  }
}
