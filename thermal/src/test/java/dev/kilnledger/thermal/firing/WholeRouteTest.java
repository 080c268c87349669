package dev.kilnledger.thermal.firing;

import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.kinetics.TemperaturePoint;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A pre-debinding of 2 h and a debinding of 3 h, then sintering. */
class WholeRouteTest {
  private static final FiringRoute ROUTE =
      FiringRoute.of(
          List.of(
              debinding()
                  .name("first")
                  .profile(
                      Profile.from(celsius(20)).rampTo(celsius(220), kelvinPerHour(100)).build())
                  .build(),
              debinding()
                  .name("second")
                  .profile(
                      Profile.from(celsius(30))
                          .rampTo(celsius(230), kelvinPerHour(100))
                          .hold(hours(1))
                          .build())
                  .build(),
              sintering(1000).getter(carbon(), grams(300)).build()));

  /** Without a wall nothing is known of the cooling; without parts the core is packing. */
  private final List<StageForecast> bare =
      FiringForecast.of(
              setup(copper(), 1000)
                  .partsVolume(Optional.empty())
                  .kiln(kiln(1300).wall(List.of()).build())
                  .route(ROUTE)
                  .build())
          .stages();

  private final List<StageForecast> cooled =
      FiringForecast.of(setup(copper(), 1000).partsVolume(Optional.empty()).route(ROUTE).build())
          .stages();

  /** 7200 s, a second, 10800 s, a second, and the hours of sintering. */
  @Test
  void joinsWhatTheCoreFeelsWithASecondInBetween() {
    List<TemperaturePoint> points = WholeRoute.felt(bare).points();
    double sintering = ROUTE.stages().get(2).profile().duration().si();
    assertThat(points.get(points.size() - 1).time().si())
        .isCloseTo(7200 + 1 + 10800 + 1 + sintering, within(1e-6));
    for (double start : new double[] {0, 7201, 18002}) {
      assertThat(points)
          .as("a stage starts after " + start + " s")
          .anySatisfy(
              point -> {
                assertThat(point.time().si()).isCloseTo(start, within(1e-6));
                assertThat(point.temperature().si())
                    .isCloseTo(start == 7201 ? 303.15 : 293.15, within(1e-9));
              });
    }
    assertThat(WholeRoute.felt(bare.subList(0, 1)).points())
        .extracting(point -> point.time().si())
        .last()
        .satisfies(time -> assertThat(time).isCloseTo(7200, within(1e-6)));
  }

  @Test
  void joinsTheSegmentsWithASecondInBetween() {
    Profile programme = WholeRoute.programme(bare);
    assertThat(programme.segments()).hasSize(1 + 1 + 2 + 1 + 5);
    assertThat(programme.segments().get(1))
        .isEqualTo(Segment.of(celsius(220), celsius(30), hours(1 / 3600.0)));
    assertThat(programme.segments().subList(2, 4))
        .isEqualTo(ROUTE.stages().get(1).profile().segments());
  }

  /** Each stage is followed by its cooling, as long as the kiln takes. */
  @Test
  void countsTheCoolingToTheStage() {
    Profile programme = WholeRoute.programme(cooled);
    assertThat(programme.segments()).hasSize(2 + 1 + 3 + 1 + 6);
    double seconds = 2;
    for (StageForecast stage : cooled) {
      seconds += stage.course().duration().si();
    }
    assertThat(programme.duration().si()).isCloseTo(seconds, within(1e-6));
    Segment cooling = programme.segments().get(1);
    StageForecast first = cooled.get(0);
    assertThat(cooling.start()).isEqualTo(first.programme().end());
    assertThat(cooling.end()).isEqualTo(first.course().end());
    assertThat(cooling.duration().si())
        .isCloseTo(first.course().duration().si() - 7200, within(1e-6));
  }

  @Test
  void namesEverySegmentThatIsJoined() {
    assertThat(places(bare, 10))
        .containsExactly(
            "segment 1 of the first stage",
            "cooling after the first stage",
            "segment 1 of the second stage",
            "segment 2 of the second stage",
            "cooling after the second stage",
            "segment 1 of the sintering stage",
            "segment 2 of the sintering stage",
            "segment 3 of the sintering stage",
            "segment 4 of the sintering stage",
            "segment 5 of the sintering stage");
    assertThat(places(cooled, 13))
        .startsWith(
            "segment 1 of the first stage",
            "cooling after the first stage",
            "cooling after the first stage",
            "segment 1 of the second stage",
            "segment 2 of the second stage",
            "cooling after the second stage",
            "cooling after the second stage",
            "segment 1 of the sintering stage")
        .endsWith("segment 5 of the sintering stage", "cooling after the sintering stage");
  }

  private static List<String> places(List<StageForecast> stages, int segments) {
    return IntStream.rangeClosed(1, segments)
        .mapToObj(number -> WholeRoute.place(stages, number))
        .toList();
  }

  @Test
  void knowsOfNoOtherSegment() {
    for (int none : new int[] {-1, 0, 14, 15}) {
      assertThatThrownBy(() -> WholeRoute.place(cooled, none))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("segment " + none + " is none of the route's");
    }
    assertThatThrownBy(() -> WholeRoute.place(bare, 11))
        .hasMessage("segment 11 is none of the route's");
  }
}
