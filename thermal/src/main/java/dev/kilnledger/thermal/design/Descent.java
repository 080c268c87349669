package dev.kilnledger.thermal.design;

import dev.kilnledger.thermal.design.Lever.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Makes a candidate that passes shorter, one stage at a time, without ever leaving what passes.
 *
 * <p>First every lever that shortens is pulled as far as the check lets it: a limit is taken to be
 * broken from some step on, so the last step that keeps it is enclosed, and found by halving. Where
 * no lever can be pulled alone, pairs are: one segment made slower or one corner moved, and a
 * neighbour faster by enough to gain on the whole, in smaller and smaller steps. What is left is
 * the best within those steps, not proven the best of all.
 */
final class Descent {
  /** What a pass over all levers, or a pair of changes, must gain to be worth it, of the time. */
  private static final double GAIN = 0.008;

  /** How far one side of a pair goes: of a segment's time, or of the degrees of a ramp. */
  private static final double[] STRIDES = {0.5, 0.2, 0.06};

  /** Segments shorter than this share of the stage are not worth a pair of changes. */
  private static final double WORTHWHILE = 0.04;

  private static final double ROUNDING = 1e-9;
  private static final int NEIGHBOURS = 3;
  private static final int ROUNDS = 8;

  private final Trials trials;
  private final Tolerance tolerance;
  private final double fastest;
  private Candidate best;

  /**
   * A descent.
   *
   * @param fastest the fastest heating of the kiln, in degrees of the programme an hour: faster is
   *     not even tried
   */
  Descent(Trials trials, Tolerance tolerance, double fastest, Candidate start) {
    this.trials = trials;
    this.tolerance = tolerance;
    this.fastest = fastest;
    this.best = start;
  }

  Candidate best() {
    return best;
  }

  void shorten(int stage) {
    pullAll(stage);
    for (double stride : STRIDES) {
      for (int round = 0; round < ROUNDS && trade(stage, stride); round++) {
        pullFaster(stage);
      }
    }
    join(stage);
    pullAll(stage);
  }

  private void pullAll(int stage) {
    double before;
    do {
      before = programme(stage).minutes();
      // Paces first: a corner between ramps that are not yet as fast as they may be goes astray.
      pullFaster(stage);
      for (Lever lever : Lever.ofHeating(programme(stage))) {
        if (!lever.isPace()) {
          pull(stage, lever);
        }
      }
      pullFaster(stage);
    } while (programme(stage).minutes() < before * (1 - GAIN));
  }

  /** Makes every move as fast as it passes, cooling too. */
  void pullFaster(int stage) {
    for (int move = 0; move < programme(stage).moves().size(); move++) {
      pull(stage, new Lever(Kind.FASTER, move));
    }
  }

  /** Pulls one lever as far as it shortens and passes. */
  private void pull(int stage, Lever lever) {
    Programme base = programme(stage);
    // Whole minutes make a corner between ramps seem to gain where it gains but a rounding.
    double gain =
        lever.isBetweenRamps(base) ? Math.max(2, GAIN / 4 * base.minutes()) : Lever.LEAST_GAIN;
    OptionalInt least = lever.stepsTo(base, base.minutes() - gain);
    if (least.isEmpty() || !accept(stage, lever.pulled(base, least.getAsInt()))) {
      return;
    }
    int good = least.getAsInt();
    int stride = 7 * good;
    while (accept(stage, lever.pulled(base, good + stride))) {
      good += stride;
      stride *= 8;
    }
    int bad = good + stride;
    while (bad - good > 1) {
      int middle = (good + bad) / 2;
      if (accept(stage, lever.pulled(base, middle))) {
        good = middle;
      } else {
        bad = middle;
      }
    }
  }

  private boolean trade(int stage, double stride) {
    Programme base = programme(stage);
    List<Lever> levers = Lever.ofHeating(base);
    List<Lever> worsening = new ArrayList<>(levers);
    worsening.addAll(Lever.handingOver(base));
    double worth = WORTHWHILE * base.minutes();
    for (Lever worse : worsening) {
      int steps = worse.stride(base, stride);
      Optional<Programme> worsened = worse.pulled(base, steps);
      if (worsened.isEmpty()
          || worsened.get().minutes() < base.minutes() * (1 - GAIN)
          || (worse.isPace() && base.minutes(worse.move()) < worth)) {
        continue; // what gains by itself does not pass: it is the other side of a pair
      }
      for (Lever better : levers) {
        boolean near = Math.abs(better.place() - worse.place()) <= NEIGHBOURS;
        boolean worthwhile = !better.isPace() || base.minutes(better.move()) >= worth;
        if (near && worthwhile && !better.undoes(worse) && gains(stage, worsened.get(), better)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Whether a lever, pulled just far enough to gain on the whole, still passes; farther where it
   * does, and the kiln's cooling takes the gain back.
   */
  private boolean gains(int stage, Programme worsened, Lever better) {
    OptionalInt enough = better.stepsTo(worsened, programme(stage).minutes() * (1 - GAIN));
    if (enough.isEmpty()) {
      return false;
    }
    int steps = enough.getAsInt();
    Optional<Programme> pulled = better.pulled(worsened, steps);
    while (pulled.isPresent() && passing(stage, pulled.get()).isPresent()) {
      if (accept(stage, pulled)) {
        return true;
      }
      steps *= 2;
      pulled = better.pulled(worsened, steps);
    }
    return false;
  }

  /** Leaves out holds of no minutes, and makes one of two ramps where that passes as well. */
  private void join(int stage) {
    passing(stage, programme(stage).withoutIdleHolds()).ifPresent(tidy -> best = tidy);
    int move = 0;
    while (move + 1 < programme(stage).moves().size()) {
      Programme base = programme(stage);
      Optional<Candidate> joined =
          base.isHeating(move) && base.isHeating(move + 1)
              ? passing(stage, base.joined(move))
              : Optional.empty();
      if (joined.isPresent()) {
        best = joined.get();
      } else {
        move++;
      }
    }
  }

  /** Takes a programme for a stage where it is shorter and passes. */
  private boolean accept(int stage, Optional<Programme> programme) {
    if (programme.isEmpty() || programme.get().minutes() >= programme(stage).minutes()) {
      return false;
    }
    Optional<Candidate> passing = passing(stage, programme.get());
    if (passing.isPresent() && passing.get().minutes() < best.minutes()) {
      best = passing.get();
      return true;
    }
    return false;
  }

  private Optional<Candidate> passing(int stage, Programme programme) {
    return programme.fastestHeating() > fastest * (1 + ROUNDING)
        ? Optional.empty()
        : candidate(stage, programme).filter(tolerance::isKept);
  }

  private Optional<Candidate> candidate(int stage, Programme programme) {
    List<Programme> changed = new ArrayList<>(best.programmes());
    changed.set(stage, programme);
    return trials.of(List.copyOf(changed));
  }

  private Programme programme(int stage) {
    return best.programmes().get(stage);
  }
}
