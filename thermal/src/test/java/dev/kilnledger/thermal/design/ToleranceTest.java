package dev.kilnledger.thermal.design;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.minutes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.energy.EnergyFinding;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ToleranceTest {
  private enum Code implements FindingCode {
    A,
    B,
    C;

    @Override
    public String code() {
      return "made-for-the-tests-" + name();
    }
  }

  private static Finding.Builder builder(FindingCode code, Severity severity) {
    return Finding.builder()
        .code(code)
        .subject("kiln")
        .severity(severity)
        .message(code + " is " + severity)
        .basis(Source.user("made for the tests"));
  }

  private static Finding finding(FindingCode code, Severity severity) {
    return builder(code, severity).build();
  }

  /** So many minutes against a limit of 100. */
  private static Finding measured(FindingCode code, Severity severity, double measured) {
    return builder(code, severity).measured(minutes(measured)).limit(minutes(100)).build();
  }

  private static Candidate candidate(Finding... findings) {
    return new Candidate(
        List.of(), Workbench.route(1000), FiringReport.of(List.of(findings), Set.of()), 0);
  }

  @ParameterizedTest
  @EnumSource(names = "STOP", mode = EnumSource.Mode.EXCLUDE)
  void allowsUpToWhatIsAccepted(Severity accepted) {
    for (Severity severity : Severity.values()) {
      assertThat(Tolerance.of(accepted).isKept(candidate(finding(Code.A, severity))))
          .isEqualTo(severity.compareTo(accepted) <= 0);
    }
  }

  @Test
  void tellsFindingsApartByCodeSubjectAndOrder() {
    Finding first = finding(Code.A, PASSED);
    Finding second = finding(Code.A, WARNING);
    Finding other = builder(Code.A, NOTE).subject("crucible").build();
    assertThat(Tolerance.byKey(List.of(first, second, other, finding(Code.B, STOP))))
        .containsEntry(new Tolerance.Key(Code.A, "kiln", 0), first)
        .containsEntry(new Tolerance.Key(Code.A, "kiln", 1), second)
        .containsEntry(new Tolerance.Key(Code.A, "crucible", 0), other)
        .containsEntry(new Tolerance.Key(Code.B, "kiln", 0), finding(Code.B, STOP))
        .hasSize(4);
    assertThat(Tolerance.of(NOTE).violated(candidate(first, second, other)))
        .containsOnlyKeys(new Tolerance.Key(Code.A, "kiln", 1));
  }

  @Test
  void countsTheWorstFirst() {
    Tolerance tolerance = Tolerance.of(NOTE);
    Candidate stop = candidate(finding(Code.A, STOP));
    Candidate warnings = candidate(finding(Code.A, WARNING), finding(Code.B, WARNING));
    Candidate open =
        candidate(
            finding(Code.A, UNDETERMINED), finding(Code.B, UNDETERMINED), finding(Code.C, NOTE));
    assertThat(tolerance.distance(stop)).isGreaterThan(1000 * tolerance.distance(warnings));
    assertThat(tolerance.distance(warnings)).isGreaterThan(1000 * tolerance.distance(open));
    assertThat(tolerance.distance(open)).isEqualTo(2);
    assertThat(tolerance.distance(candidate(finding(Code.A, PASSED)))).isZero();
  }

  /** A programme that the kiln cannot cool by is none, whatever is accepted, and none mends it. */
  @Test
  void neverAllowsCoolingThatTheKilnCannotFollow() {
    Candidate fast = candidate(finding(EnergyFinding.COOLS_AS_PROGRAMMED, NOTE));
    assertThat(Tolerance.of(WARNING).isKept(fast)).isFalse();
    assertThat(Tolerance.of(WARNING).liftedTo(List.of(fast)).isKept(fast)).isFalse();
    assertThat(
            Tolerance.of(NOTE)
                .isKept(candidate(finding(EnergyFinding.COOLS_AS_PROGRAMMED, PASSED))))
        .isTrue();
  }

  /**
   * What none of the candidates does better at is allowed; what one of them was not asked is not.
   */
  @Test
  void liftsWhatNoneDoesBetterAt() {
    Candidate one =
        candidate(finding(Code.A, STOP), finding(Code.B, WARNING), finding(Code.C, WARNING));
    Candidate other = candidate(finding(Code.A, WARNING), finding(Code.B, STOP));
    Tolerance lifted = Tolerance.of(NOTE).liftedTo(List.of(one, other));
    assertThat(lifted.isKept(candidate(finding(Code.A, WARNING)))).isTrue();
    assertThat(lifted.isKept(candidate(finding(Code.B, WARNING)))).isTrue();
    assertThat(lifted.isKept(candidate(finding(Code.A, STOP)))).isFalse();
    assertThat(lifted.isKept(candidate(finding(Code.C, WARNING)))).isFalse();
    assertThat(lifted.liftedIn(one))
        .containsExactly(finding(Code.A, STOP), finding(Code.B, WARNING));
    // what was lifted before stays so
    Tolerance twice = lifted.liftedTo(List.of(candidate(finding(Code.C, STOP))));
    assertThat(twice.isKept(candidate(finding(Code.A, WARNING), finding(Code.C, STOP)))).isTrue();
  }

  @Test
  void liftsNothingThatIsAllowedAnyway() {
    Candidate fine = candidate(finding(Code.A, NOTE), finding(Code.B, PASSED));
    Tolerance tolerance = Tolerance.of(NOTE).liftedTo(List.of(fine));
    assertThat(tolerance.liftedIn(fine)).isEmpty();
    assertThat(tolerance.isKept(candidate(finding(Code.B, NOTE)))).isTrue();
  }

  /** 120 min against 100 are a fifth beyond; so far and no farther. */
  @Test
  void bindsWhatIsLiftedToWhereItStands() {
    Candidate stands = candidate(measured(Code.A, WARNING, 120));
    Tolerance lifted = Tolerance.of(NOTE).liftedTo(List.of(stands));
    assertThat(lifted.isKept(candidate(measured(Code.A, WARNING, 1000)))).isTrue();
    Tolerance bound = lifted.boundBy(stands);
    for (double minutes : new double[] {80, 90, 119, 120}) {
      assertThat(bound.isKept(candidate(measured(Code.A, WARNING, minutes)))).isTrue();
    }
    for (double minutes : new double[] {79, 121, 1000}) {
      assertThat(bound.isKept(candidate(measured(Code.A, WARNING, minutes)))).isFalse();
    }
    assertThat(bound.isKept(candidate(measured(Code.A, PASSED, 1000)))).isTrue();
  }

  /** Where nothing was beyond, or nothing is lifted, there is nothing to bind. */
  @Test
  void bindsNothingElse() {
    Candidate stands = candidate(finding(Code.A, WARNING), measured(Code.B, NOTE, 120));
    Tolerance bound = Tolerance.of(NOTE).liftedTo(List.of(stands)).boundBy(stands);
    assertThat(bound.isKept(candidate(measured(Code.A, WARNING, 1000)))).isTrue();
    assertThat(bound.isKept(candidate(measured(Code.B, NOTE, 1000)))).isTrue();
  }

  @Test
  void sumsWhatIsBeyondTheLimitsThatAreLifted() {
    Candidate stands =
        candidate(
            measured(Code.A, WARNING, 120), measured(Code.B, STOP, 70), finding(Code.C, STOP));
    Tolerance lifted = Tolerance.of(NOTE).liftedTo(List.of(stands));
    assertThat(lifted.excess(stands)).isCloseTo(0.2 + 0.3, within(1e-12));
    assertThat(Tolerance.of(NOTE).excess(stands)).isZero();
    // nothing is told by what is not determined, has no measure, or no limit but zero
    Candidate silent =
        candidate(
            measured(Code.A, UNDETERMINED, 120),
            builder(Code.B, STOP).limit(minutes(100)).build(),
            builder(Code.C, STOP).measured(minutes(5)).limit(minutes(0)).build());
    assertThat(lifted.excess(silent)).isZero();
    Candidate unlike =
        candidate(
            builder(Code.A, STOP).measured(minutes(5)).build(),
            builder(Code.B, STOP).measured(celsius(500)).limit(kelvinDifference(100)).build());
    assertThat(lifted.excess(unlike)).as("no limit; another kind of quantity").isZero();
  }
}
