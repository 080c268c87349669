package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.finding.Finding;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Reads the trials for people: which setting is best, and what stands in the way of which. */
final class Verdicts {
  /** The settings that fire the most parts of an aim, and the best figures of all settings. */
  record Best(
      FiringTrials.@Nullable Setting fired,
      PrintingTrials.@Nullable Setting printed,
      int scale,
      int parts) {}

  private final PrintingTrials printing;
  private final FiringTrials firing;

  Verdicts(PrintingTrials printing, FiringTrials firing) {
    this.printing = printing;
    this.firing = firing;
  }

  /** The best that some options do at an aim; no settings where they fail. */
  Best best(int aim, BitSet options) {
    Best best = new Best(null, null, 0, 0);
    for (FiringTrials.Setting fired : firing.settings) {
      Trial trial = fired.trials().get(aim);
      if (!fired.isIn(options) || !trial.passed()) {
        continue;
      }
      int at = place(aim, trial.peak());
      for (PrintingTrials.Setting printed : printing.settings) {
        int scale = Math.min(printed.trials().get(at).scale(), trial.scale());
        if (printed.isIn(options) && scale > 0) {
          boolean more = trial.parts() > best.parts();
          best =
              new Best(
                  more ? fired : best.fired(),
                  more ? printed : best.printed(),
                  Math.max(best.scale(), scale),
                  Math.max(best.parts(), trial.parts()));
        }
      }
    }
    return best;
  }

  /** Whether an option takes part in a setting that passes, on its side, at an aim. */
  boolean passes(int option, int aim) {
    return firing.settings.stream()
            .anyMatch(
                setting -> holds(setting.options(), option) && setting.trials().get(aim).passed())
        || printing.settings.stream()
            .anyMatch(
                setting ->
                    holds(setting.options(), option)
                        && Arrays.stream(places(aim))
                            .anyMatch(at -> setting.trials().get(at).passed()));
  }

  /** What stands in the way of an option at an aim, in the setting that comes closest. */
  List<Finding> blocking(int option, int aim) {
    return closest(
            aim,
            setting -> holds(setting.options(), option),
            setting -> holds(setting.options(), option))
        .map(Trial::blocking)
        .orElse(List.of());
  }

  /** What stands in the way of some options at an aim that they do not reach. */
  List<Finding> blocking(int aim, BitSet options) {
    boolean fires =
        firing.settings.stream().anyMatch(s -> s.isIn(options) && s.trials().get(aim).passed());
    return closest(aim, s -> !fires && s.isIn(options), s -> fires && s.isIn(options))
        .map(Trial::blocking)
        .orElse(List.of());
  }

  private Optional<Trial> closest(
      int aim, Predicate<FiringTrials.Setting> fired, Predicate<PrintingTrials.Setting> printed) {
    @Nullable Trial closest = null;
    for (FiringTrials.Setting setting : firing.settings) {
      if (fired.test(setting)) {
        closest = closer(setting.trials().get(aim), closest);
      }
    }
    for (PrintingTrials.Setting setting : printing.settings) {
      if (printed.test(setting)) {
        for (int at : places(aim)) {
          closest = closer(setting.trials().get(at), closest);
        }
      }
    }
    return Optional.ofNullable(closest);
  }

  private static @Nullable Trial closer(Trial trial, @Nullable Trial closest) {
    return !trial.passed() && (closest == null || trial.closerThan(closest)) ? trial : closest;
  }

  private static boolean holds(int[] options, int option) {
    return IntStream.of(options).anyMatch(each -> each == option);
  }

  private int place(int aim, double peak) {
    return places(aim)[Arrays.binarySearch(firing.peaks.get(aim), peak)];
  }

  /** Where the trials of an aim stand in a setting of the printer. */
  private int[] places(int aim) {
    int start = firing.peaks.subList(0, aim).stream().mapToInt(each -> each.length).sum();
    return IntStream.range(start, start + firing.peaks.get(aim).length).toArray();
  }
}
