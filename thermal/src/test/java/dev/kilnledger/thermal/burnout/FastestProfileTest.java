package dev.kilnledger.thermal.burnout;

import static dev.kilnledger.thermal.kinetics.Frequencies.perHour;
import static dev.kilnledger.thermal.kinetics.Frequencies.perSecond;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Profile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FastestProfileTest {
  private static final FastestProfile FASTEST = FastestProfile.standard();

  private static WallRateLimit limit(double percentPerHour) {
    return WallRateLimit.builder()
        .wall(millimetres(3))
        .knownWall(millimetres(3))
        .knownRate(perHour(percentPerHour / 100))
        .source(Source.user("invented for the tests"))
        .build();
  }

  private static DebindingTask.Builder task(double percentPerHour) {
    return DebindingTask.builder()
        .kinetics(BurnOutTest.FIRST_ORDER)
        .limit(limit(percentPerHour))
        .start(celsius(20))
        .end(celsius(430))
        .fastestHeating(kelvinPerHour(300));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void itKeepsTheLimitAndConvertsEnough(int ramps) {
    DebindingProposal proposal = FASTEST.of(task(20).ramps(ramps).build());
    assertThat(proposal.check().exceeding()).isEmpty();
    // It goes up to the limit, but for what it keeps in hand between its samples.
    assertThat(
            proposal.check().segments().stream().mapToDouble(s -> s.use().si()).max().orElseThrow())
        .isBetween(0.99, 1.0);
    assertThat(
            BurnOut.standard()
                .along(BurnOutTest.FIRST_ORDER, TemperatureHistory.of(proposal.profile()))
                .end()
                .conversion()
                .si())
        .isGreaterThanOrEqualTo(0.99 - 1e-9);
    assertThat(proposal.profile().duration()).isGreaterThanOrEqualTo(proposal.floor());
    assertThat(proposal.setBy()).hasSameSizeAs(proposal.profile().segments());
  }

  @Test
  void moreRampsAreFasterDownToTheFloor() {
    double before = Double.POSITIVE_INFINITY;
    for (int ramps = 1; ramps <= 4; ramps++) {
      double hours = FASTEST.of(task(20).ramps(ramps).build()).profile().duration().in(HOUR);
      assertThat(hours).isLessThan(before);
      before = hours;
    }
    // 99 % at 20 %/h take 4.95 h at the least, and getting hot enough to lose that much 0.9 h.
    assertThat(FASTEST.of(task(20).build()).floor().in(HOUR)).isCloseTo(4.95, within(1e-9));
    assertThat(before).isLessThan(1.6 * 4.95);
  }

  // Exhaustive search over both rates and the corner, on a grid of its own. Rates are looked at
  // every 3 K only, so it lets through some that are a little too fast: all the stricter.
  @Tag("sampled")
  @Test
  void noTwoRampsAreMoreThanFivePercentFaster() {
    DebindingTask task = task(30).ramps(2).build();
    double found = FASTEST.of(task).profile().duration().in(HOUR);
    for (double corner = 230; corner <= 400; corner += 10) {
      for (double first = 20; first <= 300; first *= 1.15) {
        for (double second = 3; second <= 300; second *= 1.15) {
          double hours = (corner - 20) / first + (430 - corner) / second;
          if (hours < found / 1.05) {
            assertThat(keeps(task, corner, first, second))
                .as("%s h by %s K/h to %s and %s K/h", hours, first, corner, second)
                .isFalse();
          }
        }
      }
    }
  }

  private static boolean keeps(DebindingTask task, double corner, double first, double second) {
    TemperatureHistory history =
        TemperatureHistory.of(
            Profile.from(task.start())
                .rampTo(celsius(corner), kelvinPerHour(first))
                .rampTo(task.end(), kelvinPerHour(second))
                .build());
    double atCorner = (corner - 20) / first;
    double allowed = task.limit().allowedAt(kelvin(600)).si();
    for (double celsius = 260; celsius < 430; celsius += 3) {
      double hours =
          celsius < corner ? (celsius - 20) / first : atCorner + (celsius - corner) / second;
      if (BurnOut.standard().at(task.kinetics(), history, hours(hours)).rate().si() > allowed) {
        return false;
      }
    }
    BurnOutPoint end = BurnOut.standard().at(task.kinetics(), history, history.end().time());
    return end.conversion().si() >= task.conversion().si();
  }

  @Test
  void twoStepsAndAKilnThatIsSlowAreRespected() {
    DebindingTask task =
        task(25)
            .kinetics(
                BurnOutTest.kinetics(
                    DecompositionStep.of(
                        kilojoulesPerMole(90),
                        ReactionOrder.first(perSecond(2e5)),
                        massFraction(0.6)),
                    DecompositionStep.of(
                        kilojoulesPerMole(220),
                        ReactionOrder.of(perSecond(1e15), ratio(0.5)),
                        massFraction(0.4))))
            .fastestHeating(kelvinPerHour(60))
            .build();
    DebindingProposal proposal = FASTEST.of(task);
    assertThat(proposal.check().exceeding()).isEmpty();
    assertThat(proposal.profile().fastestHeating().orElseThrow().si())
        .isLessThanOrEqualTo(kelvinPerHour(60).si() * (1 + 1e-12));
    assertThat(proposal.setBy()).contains(DebindingProposal.SetBy.LOSS_RATE);
  }

  @Test
  void whereTheLimitIsHighTheKilnSetsThePaceAndWhereTheEndIsCoolAHoldDoes() {
    DebindingProposal proposal = FASTEST.of(task(10_000).end(celsius(330)).build());
    assertThat(proposal.setBy().get(0)).isEqualTo(DebindingProposal.SetBy.KILN);
    assertThat(proposal.setBy().get(proposal.setBy().size() - 1))
        .isEqualTo(DebindingProposal.SetBy.CONVERSION);
    assertThat(proposal.profile().segments().get(proposal.profile().segments().size() - 1).isHold())
        .isTrue();
    // held just as long as it takes
    assertThat(
            BurnOut.standard()
                .along(BurnOutTest.FIRST_ORDER, TemperatureHistory.of(proposal.profile()))
                .end()
                .conversion()
                .si())
        .isCloseTo(0.99, within(1e-9));
    // and not at all where the ramps have done it
    assertThat(FASTEST.of(task(20).end(kelvin(720)).ramps(1).build()).setBy())
        .containsExactly(DebindingProposal.SetBy.LOSS_RATE);
  }

  /**
   * What is found is a local optimum: no corner can be moved by a kelvin or five, each ramp as fast
   * as the limit lets it and 0.1 % kept in hand, and gain more than the corners, found to 0.25 K,
   * leave over: a thousandth.
   */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void noCornerCanBeMovedToGain(int ramps) {
    DebindingTask task = task(20).ramps(ramps).build();
    Profile found = FASTEST.of(task).profile();
    double[] corners =
        found.segments().stream()
            .filter(segment -> !segment.isHold())
            .mapToDouble(segment -> segment.end().si())
            .toArray();
    double best = found.duration().si();
    assertThat(seconds(task, corners)).isCloseTo(best, within(1e-6 * best));
    for (int i = 0; i < corners.length - 1; i++) {
      for (double way : new double[] {-5, -1, 1, 5}) {
        double[] moved = corners.clone();
        moved[i] += way;
        assertThat(seconds(task, moved)).isGreaterThan(best * 0.999);
      }
    }
  }

  private static double seconds(DebindingTask task, double[] corners) {
    RampState state = new RampState(task.kinetics(), task.limit(), task.start().si());
    double fastest = task.fastestHeating().si();
    double seconds = 0;
    for (double corner : corners) {
      RampState.Ramp ramp = state.rampTo(corner);
      double highest = ramp.fastest(fastest);
      double rate = highest == fastest ? fastest : 0.999 * highest;
      seconds += ramp.kelvin() / rate;
      state = ramp.end(rate);
    }
    return seconds + state.holdUntil(1 - task.conversion().si());
  }

  /**
   * Where the end lies in the midst of the loss the last corners come near to it, and stay below.
   */
  @ParameterizedTest
  @ValueSource(ints = {300, 325, 340, 355, 370})
  void onlyHeatsWhereverItEnds(int celsius) {
    DebindingTask task = task(20).end(celsius(celsius)).ramps(4).build();
    DebindingProposal proposal = FASTEST.of(task);
    assertThat(proposal.profile().segments())
        .allSatisfy(segment -> assertThat(segment.isCooling()).isFalse());
    assertThat(proposal.profile().peak()).isEqualTo(task.end());
    assertThat(proposal.check().exceeding()).isEmpty();
  }

  /** Where the binder leaves too fast from the start, no rate keeps the limit. */
  @Test
  void noRampKeepsALimitThatIsExceededAtItsStart() {
    DebindingTask task = task(20).build();
    RampState hot = new RampState(task.kinetics(), task.limit(), 700);
    assertThat(hot.use()).isGreaterThan(1);
    assertThat(hot.rampTo(720).fastest(1)).isZero();
  }

  @Test
  void aTaskThatCannotBeDoneIsRefused() {
    assertThatThrownBy(() -> FASTEST.of(task(20).start(celsius(400)).build()))
        .hasMessageContaining("at the start at 400 °C the binder would leave")
        .hasMessageContaining("accepted is a colder start");
    assertThatThrownBy(
            () ->
                task(20)
                    .end(celsius(10))
                    .fastestHeating(kelvinPerHour(0))
                    .conversion(massFraction(1))
                    .ramps(9)
                    .build())
        .hasMessageContaining("it goes from 20 °C to 10 °C")
        .hasMessageContaining("fastest heating is 0 K/h")
        .hasMessageContaining("conversion is 1 kg/kg")
        .hasMessageContaining("ramps are 9; accepted is from 1 to 5");
    assertThatThrownBy(() -> task(20).start(kelvin(0)).conversion(massFraction(0)).build())
        .hasMessage(
            "debinding task: it goes from 0 K to 430 °C; accepted is a higher temperature; and"
                + " conversion is 0 kg/kg; accepted is above 0 and below 1");
  }

  @Test
  void saysWhatSetsASegment() {
    assertThat(DebindingProposal.SetBy.values())
        .extracting(DebindingProposal.SetBy::words)
        .containsExactly(
            "the kiln's fastest heating",
            "the limit on the rate of loss",
            "the binder that is still to leave");
  }
}
