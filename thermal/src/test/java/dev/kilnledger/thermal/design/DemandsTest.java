package dev.kilnledger.thermal.design;

import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.energy.EnergyFinding;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.KilnFinding;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DemandsTest {
  private static final FiringCheck NOTHING = new FiringCheck(List.of());

  private static FiringSetup firing(Kiln.Builder kiln) {
    return setup(copper(), 1000).kiln(kiln.build()).build();
  }

  private static List<Finding> findings(DesignTask.Builder task, FiringCheck check) {
    DesignTask built = task.build();
    return new Demands(built).report(check, FiringForecast.of(built.setup())).findings();
  }

  private static DesignTask.Builder task(Kiln.Builder kiln) {
    return DesignTask.builder().setup(firing(kiln));
  }

  @Test
  void asksNothingOfAKilnOfWhichNothingIsKnown() {
    assertThat(findings(task(kiln(1300).wall(List.of())), NOTHING)).isEmpty();
  }

  /** That the kiln gets there and follows, stage by stage, and cools as programmed. */
  @Test
  void asksThatTheKilnFollowsWhereTheCheckDoesNot() {
    List<Finding> asked = findings(task(kiln(1300)), NOTHING);
    assertThat(asked)
        .extracting(Finding::code)
        .containsOnly(
            KilnFinding.REACHES_PEAK,
            KilnFinding.FOLLOWS_PROGRAMME,
            EnergyFinding.COOLS_AS_PROGRAMMED)
        .hasSize(6);
    assertThat(asked.subList(0, 3))
        .allSatisfy(f -> assertThat(f.message()).startsWith("debinding: "));
    assertThat(asked.subList(3, 6))
        .allSatisfy(f -> assertThat(f.message()).startsWith("sintering: "));
    Finding answer =
        Finding.builder()
            .from(asked.get(0))
            .code(KilnFinding.FOLLOWS_PROGRAMME)
            .message("asked already")
            .build();
    FiringCheck check = new FiringCheck(List.of(forecast -> List.of(answer)));
    assertThat(findings(task(kiln(1300)), check))
        .startsWith(answer)
        .extracting(Finding::code)
        .hasSize(5)
        .containsOnlyOnce(KilnFinding.FOLLOWS_PROGRAMME);
  }

  @Test
  void asksForThePeakThatIsWanted() {
    Kiln.Builder kiln = kiln(1300).wall(List.of());
    Finding within =
        findings(task(kiln).peak(Span.of(celsius(1000), celsius(1010))), NOTHING).get(0);
    assertThat(within.severity()).isEqualTo(Severity.PASSED);
    assertThat(within.message())
        .isEqualTo("the peak of 1000 °C lies in the span asked for, 1000 to 1010 °C");
    Finding below =
        findings(task(kiln).peak(Span.of(celsius(1005), celsius(1010))), NOTHING).get(0);
    assertThat(below.severity()).isEqualTo(Severity.STOP);
    assertThat(below.message())
        .isEqualTo("the peak of 1000 °C does not lie in the span asked for, 1005 to 1010 °C");
    assertThat(below.measured()).contains(celsius(1000));
    assertThat(below.limit()).contains(celsius(1005));
    Finding above = findings(task(kiln).peak(Span.of(celsius(980), celsius(990))), NOTHING).get(0);
    assertThat(above.severity()).isEqualTo(Severity.STOP);
    assertThat(above.limit()).contains(celsius(990));
  }

  /** 300 K/h are assumed: just so much passes, the fastest ramp of any stage counts. */
  @Test
  void asksForAModerateRateWhereTheMakerStatesNone() {
    Finding kept = heating(300);
    assertThat(kept.severity()).isEqualTo(Severity.PASSED);
    assertThat(kept.limit()).contains(kelvinPerHour(300));
    Finding broken = heating(301);
    assertThat(broken.severity()).isEqualTo(Severity.WARNING);
    assertThat(broken.measured().orElseThrow().si() * 3600).isBetween(300.99, 301.01);
    assertThat(broken.message())
        .isEqualTo(
            "heated at up to 301 K/h, and up to 300 K/h are assumed as the kiln's maker states"
                + " nothing");
    assertThat(broken.basis().standing()).isEqualTo(Standing.COMMON_PRACTICE);
    assertThat(findings(task(kiln(1300).wall(List.of())), NOTHING)).as("stated").isEmpty();
  }

  private static Finding heating(double rate) {
    FiringSetup setup =
        FiringSetup.builder()
            .from(firing(kiln(1300).wall(List.of()).fastestHeating(Optional.empty())))
            .route(
                FiringRoute.of(
                    Workbench.debinding().build(),
                    Workbench.sintering(1000)
                        .profile(
                            Profile.from(celsius(20))
                                .rampTo(celsius(1000), kelvinPerHour(rate))
                                .hold(hours(1))
                                .build())
                        .build()))
            .build();
    List<Finding> findings = findings(DesignTask.builder().setup(setup), NOTHING);
    assertThat(findings).extracting(Finding::code).containsExactly(DesignFinding.HEATING_ASSUMED);
    return findings.get(0);
  }
}
