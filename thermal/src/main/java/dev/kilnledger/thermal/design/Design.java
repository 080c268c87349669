package dev.kilnledger.thermal.design;

import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.design.Lever.Kind;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.SegmentRow;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import javax.measure.quantity.Temperature;

/** One design, from the task to the result. */
final class Design {
  private static final Source SEARCH =
      Source.recomputed("search among the programmes that the controller takes");

  private final DesignTask task;
  private final Trials trials;
  private final List<List<SegmentReason>> reasons = new ArrayList<>();
  private final List<Optional<Finding>> peaks = new ArrayList<>();
  private Tolerance tolerance;
  private List<Contradiction> contradictions = List.of();
  private String stopped = "";

  Design(DesignTask task, FiringCheck check, Progress progress) {
    this.task = task;
    this.trials = new Trials(task, check, new Demands(task), progress);
    this.tolerance = Tolerance.of(task.accepted());
  }

  ProfileDesign run() {
    List<FiringStage> stages = task.setup().route().stages();
    List<Programme> own = new ArrayList<>();
    List<List<Supplier<Programme>>> guesses = new ArrayList<>();
    FirstGuess guess = new FirstGuess(task);
    for (FiringStage stage : stages) {
      guesses.add(guess.of(stage));
      own.add(guess.own(stage));
    }
    trials.phase(0.2);
    Start start =
        new Start(trials, tolerance, guesses.stream().map(all -> all.get(0).get()).toList());
    try {
      start.find(guesses, List.copyOf(own));
    } catch (Trials.Stopped e) {
      stopped = e.why();
    }
    tolerance = start.tolerance();
    contradictions = start.contradictions();
    Candidate best = stopped.isEmpty() ? shortened(start.best(), own) : start.best();
    trials.finish();
    return result(best);
  }

  private Candidate shortened(Candidate start, List<Programme> own) {
    int stages = start.programmes().size();
    Descent descent = new Descent(trials, tolerance, fastest(), start);
    try {
      for (int stage = 0; stage < stages; stage++) {
        trials.phase(0.2 + 0.7 * (stage + 1) / stages);
        descent.shorten(stage);
      }
      trials.phase(1);
      descent = fromOwn(descent, own);
      explain(descent);
    } catch (Trials.Stopped e) {
      stopped = e.why();
    }
    return descent.best();
  }

  private double fastest() {
    return task.form()
        .scale()
        .degreesPerHour(task.setup().kiln().fastestHeating().orElse(Demands.ASSUMED));
  }

  /** The user's own profile is worth a search of its own where it passes and is about as short. */
  private Descent fromOwn(Descent descent, List<Programme> own) {
    for (int stage = 0; stage < own.size(); stage++) {
      List<Programme> mixed = new ArrayList<>(descent.best().programmes());
      mixed.set(stage, own.get(stage));
      Optional<Candidate> passing =
          trials.of(List.copyOf(mixed)).filter(candidate -> tolerance.isKept(candidate));
      if (passing.isPresent() && passing.get().minutes() < descent.best().minutes()) {
        descent = new Descent(trials, tolerance, fastest(), passing.get());
        descent.shorten(stage);
      }
    }
    return descent;
  }

  /** Tries every segment one step faster; what passes after all is taken. */
  private void explain(Descent descent) {
    int stages = descent.best().programmes().size();
    Candidate before;
    do {
      before = descent.best();
      for (int stage = 0; stage < stages; stage++) {
        descent.pullFaster(stage);
      }
    } while (descent.best().minutes() < before.minutes());
    for (int stage = 0; stage < stages; stage++) {
      Programme programme = descent.best().programmes().get(stage);
      List<SegmentRow> rows = programme.profile().rows();
      List<SegmentReason> found = new ArrayList<>();
      for (int move = 0; move < programme.moves().size(); move++) {
        if (programme.isSegment(move)) {
          found.add(
              SegmentReason.of(
                  rows.get(found.size()),
                  forbids(descent.best(), stage, new Lever(Kind.FASTER, move))));
        }
      }
      reasons.add(found);
      peaks.add(forbids(descent.best(), stage, new Lever(Kind.COLDER, peakRamp(programme))));
    }
  }

  private static int peakRamp(Programme programme) {
    int ramp = 0;
    while (programme.moves().get(ramp).target() < programme.peak()) {
      ramp++;
    }
    return ramp;
  }

  private Optional<Finding> forbids(Candidate best, int stage, Lever lever) {
    List<Programme> programmes = new ArrayList<>(best.programmes());
    Programme base = programmes.get(stage);
    OptionalInt step = lever.stepsTo(base, base.minutes() - Lever.LEAST_GAIN);
    if (step.isEmpty()) {
      return Optional.empty();
    }
    programmes.set(stage, lever.pulled(base, step.getAsInt()).orElseThrow());
    return trials
        .of(List.copyOf(programmes))
        .flatMap(
            candidate ->
                tolerance.violated(candidate).values().stream()
                    .max(Comparator.comparing(Finding::severity)));
  }

  private ProfileDesign result(Candidate best) {
    List<StageDesign> stages = new ArrayList<>();
    for (int stage = 0; stage < best.programmes().size(); stage++) {
      FiringStage designed = best.route().stages().get(stage);
      stages.add(
          StageDesign.of(
              designed,
              stage < reasons.size() ? reasons.get(stage) : unexplained(designed),
              stage < peaks.size() ? peaks.get(stage) : Optional.empty()));
    }
    List<Finding> broken = contradictions.stream().map(Contradiction::broken).toList();
    return ProfileDesign.builder()
        .task(task)
        .addAllStages(stages)
        .report(best.report())
        .addAllUnmended(
            tolerance.liftedIn(best).stream()
                .filter(finding -> broken.stream().noneMatch(b -> b.code() == finding.code()))
                .toList())
        .addAllContradictions(contradictions)
        .addAllNotes(notes(best))
        .untilOpening(Amounts.hours(best.minutes() / 60))
        .evaluations(trials.evaluations())
        .finished(stopped.isEmpty())
        .build();
  }

  private static List<SegmentReason> unexplained(FiringStage stage) {
    return stage.profile().rows().stream()
        .map(row -> SegmentReason.of(row, Optional.empty()))
        .toList();
  }

  private List<Finding> notes(Candidate best) {
    List<Finding> notes = new ArrayList<>();
    notes.add(
        DesignFinding.SEARCH_ENDED
            .about("design")
            .severity(stopped.isEmpty() ? Severity.PASSED : Severity.UNDETERMINED)
            .message(
                stopped.isEmpty()
                    ? "no segment passes one step faster"
                    : "the search was ended early, " + stopped + ": a faster route may exist")
            .basis(SEARCH)
            .build());
    for (FiringStage stage : best.route().stages()) {
      if (stage.profile().end().isGreaterThan(task.coolTo())) {
        notes.add(
            DesignFinding.COOLING_NOT_PROGRAMMED
                .about(stage.name())
                .severity(Severity.NOTE)
                .message(
                    "the "
                        + stage.name()
                        + " programme ends at "
                        + stage.profile().end().format(CELSIUS, 0)
                        + (task.setup().kiln().wall().isEmpty()
                            ? ": how the kiln cools is not known, as its wall is not stated"
                            : ", from where the kiln cools by itself")
                        + "; open it only when cold")
                .basis(SEARCH)
                .build());
      }
    }
    Span<Temperature> window = task.setup().alloy().sinteringWindow().value();
    Amount<Temperature> peak = best.route().peak();
    if (task.peak().isEmpty() && peak.si() - window.low().si() < 1) {
      notes.add(
          DesignFinding.PEAK_FOR_SPEED
              .about(task.setup().alloy().name())
              .severity(Severity.NOTE)
              .measured(peak)
              .limit(window.low())
              .message(
                  "nothing but the sintering window, from "
                      + window.format(CELSIUS, 0)
                      + ", holds the peak up: where a density is wanted, state it with a sintering"
                      + " curve, or ask for a peak")
              .basis(task.setup().alloy().sinteringWindow().source())
              .build());
    }
    return notes;
  }
}
