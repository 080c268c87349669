package dev.kilnledger.thermal.design;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.kiln.KilnRun;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Time;

/**
 * Holds programmes against the check, each once, and counts. Stops where the thread is interrupted
 * or the evaluations are used up.
 */
final class Trials {
  /** Ends a search from within; what was found so far is kept by the search. */
  static final class Stopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String why;

    Stopped(String why) {
      super(why, null, false, false);
      this.why = why;
    }

    String why() {
      return why;
    }
  }

  /** How many trials a phase takes, as a rule. */
  private static final double EXPECTED = 40;

  private final DesignTask task;
  private final FiringCheck check;
  private final Demands demands;
  private final Progress progress;
  private final Map<List<Programme>, Optional<Candidate>> tried = new LinkedHashMap<>();
  private FiringForecast forecast;
  private int evaluations;
  private double done;
  private double phaseEnd;
  private double left;

  Trials(DesignTask task, FiringCheck check, Demands demands, Progress progress) {
    this.task = task;
    this.check = check;
    this.demands = demands;
    this.progress = progress;
    this.forecast = FiringForecast.of(task.setup());
  }

  /**
   * What the check says of programmes.
   *
   * @return the candidate, none where the programmes make no route
   * @throws Stopped where no more may be tried
   */
  Optional<Candidate> of(List<Programme> programmes) {
    Optional<Candidate> before = tried.get(programmes);
    if (before != null) {
      return before;
    }
    if (evaluations > 0 && Thread.currentThread().isInterrupted()) {
      throw new Stopped("interrupted");
    }
    if (evaluations >= task.mostEvaluations()) {
      throw new Stopped("no evaluations left of " + task.mostEvaluations());
    }
    Optional<Candidate> candidate =
        isRoute(programmes) ? Optional.of(checked(programmes)) : Optional.empty();
    tried.put(programmes, candidate);
    return candidate;
  }

  private boolean isRoute(List<Programme> programmes) {
    int hottestDebinding = Integer.MIN_VALUE;
    int coolestSintering = Integer.MAX_VALUE;
    List<FiringStage> stages = task.setup().route().stages();
    for (int i = 0; i < stages.size(); i++) {
      int peak = programmes.get(i).peak();
      if (stages.get(i).purpose() == FiringStage.Purpose.DEBINDING) {
        hottestDebinding = Math.max(hottestDebinding, peak);
      } else {
        coolestSintering = Math.min(coolestSintering, peak);
      }
    }
    return hottestDebinding < coolestSintering;
  }

  private Candidate checked(List<Programme> programmes) {
    FiringRoute route = route(programmes);
    // Mostly one stage differs from the trial before.
    forecast = forecast.forRoute(route);
    FiringReport report = demands.report(check, forecast);
    double minutes =
        forecast.stages().stream()
            .mapToDouble(stage -> untilOpening(stage).in(TradeUnits.MINUTE))
            .sum();
    evaluations++;
    // A phase has no end that could be known: each trial takes a share of what is left of it.
    left *= 1 - 1 / EXPECTED;
    progress.at(Math.max(done, phaseEnd - left));
    return new Candidate(programmes, route, report, minutes);
  }

  private static Amount<Time> untilOpening(StageForecast stage) {
    return stage
        .kiln()
        .map(KilnRun::untilOpening)
        .orElseGet(() -> stage.stage().profile().duration());
  }

  private FiringRoute route(List<Programme> programmes) {
    List<FiringStage> stages = new ArrayList<>();
    for (int i = 0; i < programmes.size(); i++) {
      stages.add(
          FiringStage.sintering()
              .from(task.setup().route().stages().get(i))
              .profile(programmes.get(i).profile())
              .build());
    }
    return FiringRoute.of(stages);
  }

  int evaluations() {
    return evaluations;
  }

  List<Candidate> all() {
    return tried.values().stream().flatMap(Optional::stream).toList();
  }

  /** Begins a phase, which ends at a share of the whole search. */
  void phase(double end) {
    done = phaseEnd;
    phaseEnd = end;
    left = end - done;
  }

  /** Ends the search. */
  void finish() {
    progress.at(1);
  }
}
