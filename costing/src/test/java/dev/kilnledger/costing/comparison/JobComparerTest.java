package dev.kilnledger.costing.comparison;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.PartFinding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.document.Jobs;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * A job against two others that differ in one thing each: the part has twice the volume, or the
 * firing holds an hour longer. What must follow is worked out beside each check.
 */
class JobComparerTest {
  private static final Job JOB = Jobs.plain();
  private static final JobAnswer ANSWER = WholeJob.standard().answer(JOB);
  private static final JobAnswer LARGER = WholeJob.standard().answer(larger());
  private static final JobAnswer LONGER = WholeJob.standard().answer(longer());

  private final JobComparison comparison =
      JobComparer.standard()
          .compare(
              List.of(
                  Scenario.of("as it is", ANSWER),
                  Scenario.of("larger", LARGER),
                  Scenario.of("longer", LONGER),
                  Scenario.of("again", ANSWER)));

  private static Job larger() {
    return Job.builder()
        .from(JOB)
        .part(Part.builder().from(JOB.part()).finishedVolume(cubicCentimetres(4)).build())
        .build();
  }

  private static Job longer() {
    FiringStage sintering =
        FiringStage.sintering()
            .from(JOB.route().stages().get(1))
            .profile(
                Profile.from(celsius(20))
                    .rampTo(celsius(820), kelvinPerHour(150))
                    .hold(hours(4))
                    .build())
            .build();
    return Job.builder()
        .from(JOB)
        .route(FiringRoute.of(JOB.route().stages().get(0), sintering))
        .build();
  }

  private static Change change(List<Change> changes, String what) {
    return changes.stream()
        .filter(change -> change.what().equals(what))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + what));
  }

  private static double si(Optional<Explanation> figure) {
    return ((Amount<?>) figure.orElseThrow().value()).si();
  }

  /** Twice the volume is twice each mass of the part, and twice the filament. */
  @Test
  void everyFigureOfThePassageDoublesWithTheVolume() {
    List<Change> passage = comparison.changes("larger").passage();
    assertThat(passage)
        .extracting(Change::what)
        .contains("green mass", "binder", "brown mass", "sintered mass", "filament length");
    assertThat(passage)
        .allSatisfy(
            change -> {
              assertThat(change.where()).isEqualTo("passage");
              // A few roundings of doubles.
              assertThat(si(change.after()) / si(change.before())).isCloseTo(2, within(1e-12));
            });
    Change green = change(passage, "green mass");
    assertThat(comparison.text())
        .contains(
            "\n  green mass: from "
                + green.before().orElseThrow().shown()
                + " to "
                + green.after().orElseThrow().shown()
                + "\n");
    // Shrinkage and densities do not depend on the size.
    assertThat(passage).extracting(Change::what).doesNotContain("shrinkage along x", "packing");
  }

  @Test
  void theFactBehindIsToldOnceAndWhereItEnters() {
    assertThat(change(comparison.changes("larger").facts(), "sintered volume").text())
        .isEqualTo(
            "part and material, sintered volume: from 2 cm³ to 4 cm³, both as entered with the part"
                + " (stated by the user)");
    assertThat(comparison.costs().changes().get(0).inputs())
        .extracting(Change::text)
        .contains(
            "bronze filament: green volume, sintered volume: from 2 cm³ to 4 cm³, both as entered"
                + " with the part (stated by the user)");
    assertThat(comparison.text())
        .contains("  bronze filament: green volume, sintered volume: from 2 cm³ to 4 cm³, both")
        .doesNotContain("part and material, sintered volume");
  }

  /** 800 K at 150 K/h and 3 h are 8.33 h; with the 17.33 h of debinding 25.67 h. */
  @Test
  void anHourMoreOfHoldingIsAnHourMoreOfFiring() {
    JobChanges changes = comparison.changes("longer");
    assertThat(changes.passage()).isEmpty();
    assertThat(changes.facts())
        .singleElement()
        .extracting(Change::text)
        .isEqualTo(
            "firing: duration of the programmes, bronze firing: from 8.33333 h to 9.33333 h, both"
                + " the route (stated by the user)");
    Change duration = change(changes.firing(), "duration of the programmes");
    assertThat(si(duration.after()) - si(duration.before())).isCloseTo(3600, within(1e-6));
    assertThat(comparison.text())
        .contains("  duration of the programmes: from 25.6667 h to 26.6667 h\n");
  }

  /** The walls lose more in the longer stage, and what they lose in the other stays. */
  @Test
  void aFiringIsComparedStageByStageAndLineByLine() {
    List<Change> firing = comparison.changes("longer").firing();
    assertThat(firing)
        .extracting(Change::what)
        .contains(
            "energy of the route",
            "energy of the route, bronze firing",
            "energy of the route, bronze firing, wall loss, front loader")
        .doesNotContain("energy of the route, debinding");
    Change route = change(firing, "energy of the route");
    Change stage = change(firing, "energy of the route, bronze firing");
    assertThat(si(route.after()) - si(route.before()))
        .isCloseTo(si(stage.after()) - si(stage.before()), within(1e-6));
    assertThat(firing)
        .allSatisfy(
            change -> {
              assertThat(change.before().orElseThrow().formula()).isPresent();
              assertThat(change.before().orElseThrow().shown())
                  .isNotEqualTo(change.after().orElseThrow().shown());
            });
    assertThat(comparison.text())
        .contains("  energy of the route, bronze firing: from 3.")
        .contains(
            "  firing: duration of the programmes, bronze firing: from 8.33333 h to 9.33333 h");
  }

  @Test
  void whatPassedAndStillPassesIsKeptButNotRead() {
    assertThat(comparison.changes("longer").findings())
        .extracting(FindingChange::text)
        .anyMatch(text -> text.startsWith("now passed: "))
        .anyMatch(text -> text.startsWith("now note: "));
    assertThat(comparison.text()).contains("\n  now note: ").doesNotContain("now passed: ");
  }

  /** A firing that was measured has no stages; what was forecast for them is no longer told. */
  @Test
  void aMeasuredFiringHasNoLines() {
    Job measured =
        Job.builder()
            .from(JOB)
            .measuredFiring(
                FiringUse.builder()
                    .duration(hours(26))
                    .energy(kilowattHours(7))
                    .getter(grams(60))
                    .partsPerCharge(3)
                    .source(Jobs.INVENTED)
                    .build())
            .build();
    JobComparison both =
        JobComparer.standard()
            .compare(
                List.of(
                    Scenario.of("forecast", ANSWER),
                    Scenario.of("measured", WholeJob.standard().answer(measured))));
    Change debinding = change(both.changes("measured").firing(), "energy of the route, debinding");
    assertThat(debinding.after()).isEmpty();
    assertThat(debinding.text()).startsWith("firing, energy of the route, debinding: no longer, ");
    assertThat(both.text())
        .contains(
            "  energy of the route, debinding: from "
                + debinding.before().orElseThrow().shown()
                + " to none\n");
  }

  @Test
  void theSameAnswerHasNoChanges() {
    JobChanges none = comparison.changes("again");
    assertThat(none.facts()).isEmpty();
    assertThat(none.passage()).isEmpty();
    assertThat(none.firing()).isEmpty();
    assertThat(none.findings()).isEmpty();
    assertThat(comparison.text())
        .endsWith("\nagain against as it is\n  Nothing was changed.\n")
        .containsOnlyOnce("Nothing was changed.");
    assertThatThrownBy(() -> comparison.changes("other"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no scenario \"other\"; accepted is one of [larger, longer, again]");
  }

  /** Four scenarios are one block; 34.8 g of 500 g at 80 are 5.568 instead of 2.784. */
  @Test
  void readsCostsFirst() {
    String text = comparison.text();
    assertThat(text)
        .startsWith(
            " ".repeat(38) + "as it is            larger            longer             again\n")
        .contains("\nlarger against as it is\n", "\nlonger against as it is\n");
    assertThat(Pattern.compile("(?m)^first part  ").matcher(text).results()).hasSize(1);
    ComparedLine filament =
        comparison.costs().line("larger", StatementFigure.USAGE, "bronze filament");
    assertThat(text).contains("    bronze filament: EUR 5.568, EUR 2.784 more: quantity plus");
    assertThat(filament.effects()).containsOnlyKeys(Effect.CONSUMPTION);
  }

  private static Finding finding(PartFinding code, Severity severity, String subject) {
    return Finding.builder()
        .code(code)
        .severity(severity)
        .subject(subject)
        .message("the knob is thick")
        .basis(Source.user("invented"))
        .build();
  }

  private static List<String> texts(List<Finding> before, List<Finding> after) {
    return FindingChange.between(before, after).stream().map(FindingChange::text).toList();
  }

  @Test
  void pairsFindingsByCodeAndSubject() {
    PartFinding code = PartFinding.SOLIDS_LOADING;
    PartFinding other = PartFinding.DENSIFICATION;
    Finding note = finding(code, Severity.NOTE, "knob");
    Finding warning = finding(code, Severity.WARNING, "knob");
    Finding lid = finding(code, Severity.NOTE, "lid");
    Finding second = finding(other, Severity.NOTE, "knob");
    assertThat(texts(List.of(note), List.of(note))).isEmpty();
    assertThat(texts(List.of(note), List.of(warning)))
        .containsExactly("was note, now warning: the knob is thick");
    assertThat(FindingChange.between(List.of(note), List.of(warning)).get(0).severityChanged())
        .isTrue();
    assertThat(texts(List.of(), List.of(lid))).containsExactly("new: note: lid: the knob is thick");
    assertThat(texts(List.of(note), List.of())).containsExactly("gone: note: the knob is thick");
    // The subject decides which of two is the same, wherever it stands.
    assertThat(texts(List.of(note, lid), List.of(lid, warning)))
        .containsExactly("was note, now warning: the knob is thick");
    // Where none has the subject the code decides, and never another code.
    assertThat(texts(List.of(note), List.of(second, lid)))
        .containsExactly("now note: lid: the knob is thick", "new: note: the knob is thick");
    assertThat(FindingChange.between(List.of(note), List.of(second, lid)))
        .noneMatch(FindingChange::severityChanged);
  }

  @Test
  void namesBothSourcesWhereTheyDiffer() {
    Explanation first = Explanation.given("life", "6", Source.user("a guess"));
    Explanation second = Explanation.given("life", "12", Source.user("a count"));
    assertThat(Change.of("crucible", Optional.of(first), Optional.of(second)).text())
        .isEqualTo(
            "crucible, life: from 6, a guess (stated by the user), to 12, a count (stated by the"
                + " user)");
    assertThat(Change.of("crucible", Optional.of(first), Optional.empty()).text())
        .isEqualTo("crucible, life: no longer, 6, a guess (stated by the user)");
    assertThat(Change.of("crucible", Optional.empty(), Optional.of(second)).text())
        .isEqualTo("crucible, life: new, 12, a count (stated by the user)");
  }
}
