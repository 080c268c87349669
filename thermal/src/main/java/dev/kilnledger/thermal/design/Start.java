package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/**
 * Looks for a candidate that passes, wherever it lies, and finds out what no candidate passes.
 *
 * <p>Careful guesses are tried one after the other. A finding that none of them does better at is
 * one that no profile mends: it is tolerated as it is at best. Where two limits still contradict,
 * one asking for more of a hold or peak and one for less, the place between is looked for by
 * halving; where there is none, what the best candidate breaks is tolerated and told.
 */
final class Start {
  private static final double[] HOLD_FACTORS = {0.1, 0.3, 1, 3, 10};
  private static final int[] PEAK_SHIFTS = {-100, -50, -25, -10, 0, 10, 25, 50, 100};

  private final Trials trials;
  private Tolerance tolerance;
  private List<Contradiction> contradictions = List.of();
  private Candidate best;

  /** Tries a first candidate, which is the best until there is another. */
  Start(Trials trials, Tolerance tolerance, List<Programme> first) {
    this.trials = trials;
    this.tolerance = tolerance;
    this.best = trials.of(first).orElseThrow();
  }

  Tolerance tolerance() {
    return tolerance;
  }

  List<Contradiction> contradictions() {
    return contradictions;
  }

  Candidate best() {
    return best;
  }

  void find(List<List<Supplier<Programme>>> guesses, List<Programme> own) {
    if (passes()) {
      return;
    }
    Optional<Candidate> users = trials.of(own).filter(tolerance::isKept);
    if (users.isPresent()) {
      best = users.get();
      return;
    }
    List<Candidate> guessed = new ArrayList<>(List.of(best));
    for (int stage = 0; stage < guesses.size(); stage++) {
      for (Supplier<Programme> guess : guesses.get(stage)) {
        tried(best.programmes(), stage, Optional.of(guess.get())).ifPresent(guessed::add);
        if (passes()) {
          return;
        }
      }
    }
    tolerance = tolerance.liftedTo(guessed);
    best =
        guessed.stream()
            .min(
                Comparator.comparingLong(tolerance::distance)
                    .thenComparingDouble(tolerance::excess))
            .orElseThrow();
    for (int stage = 0; stage < guesses.size() && !passes(); stage++) {
      lookBetween(stage);
    }
    if (!passes()) {
      contradictions = contradict();
      tolerance = tolerance.liftedTo(List.of(best));
    }
    tolerance = tolerance.boundBy(best);
  }

  private boolean passes() {
    return tolerance.isKept(best);
  }

  private void lookBetween(int stage) {
    Programme base = best.programmes().get(stage);
    int ramp = lastHeating(base);
    if (ramp < 0) {
      return;
    }
    halve(stage, PEAK_SHIFTS, shift -> base.shifted(ramp, shift));
    int hold = ramp + 1;
    if (!passes() && hold < base.moves().size() && base.isHold(hold)) {
      int minutes = Math.max(1, base.moves().get(hold).pace());
      int[] levels = new int[HOLD_FACTORS.length];
      for (int i = 0; i < levels.length; i++) {
        levels[i] = (int) Math.round(HOLD_FACTORS[i] * minutes);
      }
      halve(stage, levels, level -> base.faster(hold, base.moves().get(hold).pace() - level));
    }
  }

  private static int lastHeating(Programme programme) {
    int last = -1;
    for (int move = 0; move < programme.moves().size(); move++) {
      last = programme.isHeating(move) ? move : last;
    }
    return last;
  }

  /** Between neighbouring levels that break different limits there may be one that breaks none. */
  private void halve(int stage, int[] levels, IntFunction<Optional<Programme>> at) {
    List<Programme> base = best.programmes();
    int before = 0;
    Optional<Candidate> low = Optional.empty();
    for (int level : levels) {
      Optional<Candidate> high = tried(base, stage, at.apply(level));
      if (low.isPresent() && high.isPresent() && differ(low.get(), high.get())) {
        halve(base, stage, before, level, low.get(), at);
      }
      if (passes()) {
        return;
      }
      before = level;
      low = high;
    }
  }

  private void halve(
      List<Programme> base,
      int stage,
      int from,
      int to,
      Candidate atFrom,
      IntFunction<Optional<Programme>> at) {
    int low = from;
    int high = to;
    while (high - low > 1 && !passes()) {
      int middle = (low + high) / 2;
      Optional<Candidate> candidate = tried(base, stage, at.apply(middle));
      if (candidate.isEmpty()) {
        return;
      }
      if (differ(atFrom, candidate.get())) {
        high = middle;
      } else {
        low = middle;
      }
    }
  }

  private Optional<Candidate> tried(
      List<Programme> base, int stage, Optional<Programme> programme) {
    if (programme.isEmpty()) {
      return Optional.empty();
    }
    List<Programme> changed = new ArrayList<>(base);
    changed.set(stage, programme.get());
    Optional<Candidate> tried = trials.of(List.copyOf(changed));
    if (tried.isPresent() && tolerance.distance(tried.get()) < tolerance.distance(best)) {
      best = tried.get();
    }
    return tried;
  }

  private boolean differ(Candidate one, Candidate other) {
    return !tolerance.violated(one).keySet().equals(tolerance.violated(other).keySet());
  }

  /** For each limit that the best candidate breaks: what breaks where it is kept. */
  private List<Contradiction> contradict() {
    List<Contradiction> found = new ArrayList<>();
    for (Map.Entry<Tolerance.Key, Finding> broken : tolerance.violated(best).entrySet()) {
      trials.all().stream()
          .filter(candidate -> !tolerance.violated(candidate).containsKey(broken.getKey()))
          .min(Comparator.comparingLong(tolerance::distance))
          .ifPresent(
              keeping ->
                  found.add(
                      Contradiction.of(
                          broken.getValue(), List.copyOf(tolerance.violated(keeping).values()))));
    }
    return List.copyOf(found);
  }
}
