package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.progress.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Every kiln of a catalogue with every crucible, circuit and getter that may stand beside it, tried
 * once for every aim.
 */
final class FiringTrials {
  /** One setting of the equipment, with its trial for each aim. */
  record Setting(
      Piece<Kiln> kiln,
      Piece<Crucible> crucible,
      Piece<Optional<SupplyCircuit>> circuit,
      Piece<Optional<Getter>> getter,
      List<Trial> trials) {
    FiringPlace place() {
      return FiringPlace.of(kiln.value(), crucible.value(), getter.value());
    }

    boolean isIn(BitSet options) {
      return kiln.isIn(options)
          && crucible.isIn(options)
          && circuit.isIn(options)
          && getter.isIn(options);
    }

    int[] options() {
      return new int[] {kiln.option(), crucible.option(), circuit.option(), getter.option()};
    }
  }

  final List<Setting> settings = new ArrayList<>();
  private final List<Piece<Kiln>> kilns;
  private final List<Piece<Crucible>> crucibles;
  private final List<Piece<Optional<SupplyCircuit>>> circuits;
  private final List<Piece<Optional<Getter>>> getters;

  /** The settings by kiln, crucible, circuit and getter; null where they cannot stand together. */
  private final @Nullable Setting[] table;

  /** For each aim the peaks of all routes that pass, in kelvin. */
  final List<double[]> peaks = new ArrayList<>();

  FiringTrials(Slots slots, List<AimTrials> aims, Progress progress) {
    kilns = Piece.in(slots.options, Option::kiln);
    crucibles = Piece.in(slots.options, Option::crucible);
    circuits = Piece.inOrNone(slots.options, Option::supplyCircuit);
    if (circuits.size() > 1) {
      // Where circuits are to choose from, no circuit means no current.
      circuits.remove(0);
    }
    getters = Piece.inOrNone(slots.options, Option::getter);
    boolean gettersListed = getters.size() > 1;
    table =
        new Setting
            [Math.multiplyExact(
                Math.multiplyExact(kilns.size(), crucibles.size()),
                Math.multiplyExact(circuits.size(), getters.size()))];
    int next = 0;
    for (Piece<Kiln> kiln : kilns) {
      for (Piece<Crucible> crucible : crucibles) {
        for (Piece<Optional<SupplyCircuit>> circuit : circuits) {
          for (Piece<Optional<Getter>> getter : getters) {
            if (slots.together(
                kiln.option(), crucible.option(), circuit.option(), getter.option())) {
              table[next] = tried(kiln, crucible, circuit, getter, aims, gettersListed);
              settings.add(table[next]);
            }
            next++;
            progress.at((double) next / table.length);
          }
        }
      }
    }
    for (int aim = 0; aim < aims.size(); aim++) {
      TreeSet<Double> found = new TreeSet<>();
      for (Setting setting : settings) {
        if (setting.trials().get(aim).passed()) {
          found.add(setting.trials().get(aim).peak());
        }
      }
      peaks.add(found.stream().mapToDouble(Double::doubleValue).toArray());
    }
  }

  private static Setting tried(
      Piece<Kiln> kiln,
      Piece<Crucible> crucible,
      Piece<Optional<SupplyCircuit>> circuit,
      Piece<Optional<Getter>> getter,
      List<AimTrials> aims,
      boolean gettersListed) {
    FiringPlace place = FiringPlace.of(kiln.value(), crucible.value(), getter.value());
    List<Trial> trials = new ArrayList<>();
    for (AimTrials aim : aims) {
      Front.refuseInterrupted();
      trials.add(aim.fire(place, circuit.value(), gettersListed));
    }
    return new Setting(kiln, crucible, circuit, getter, List.copyOf(trials));
  }

  /**
   * What some options can fire: for each aim and each of its peaks the largest part and the most
   * parts of a firing, zero where they fail.
   */
  int[] signature(BitSet options) {
    int[] signature = new int[2 * peaks.stream().mapToInt(each -> each.length).sum()];
    for (int kiln = 0; kiln < kilns.size(); kiln++) {
      if (kilns.get(kiln).isIn(options)) {
        for (int crucible = 0; crucible < crucibles.size(); crucible++) {
          if (crucibles.get(crucible).isIn(options)) {
            addTo(signature, kiln * crucibles.size() + crucible, options);
          }
        }
      }
    }
    return signature;
  }

  private void addTo(int[] signature, int row, BitSet options) {
    for (int circuit = 0; circuit < circuits.size(); circuit++) {
      if (circuits.get(circuit).isIn(options)) {
        for (int getter = 0; getter < getters.size(); getter++) {
          Setting setting = table[(row * circuits.size() + circuit) * getters.size() + getter];
          if (setting != null && getters.get(getter).isIn(options)) {
            addTo(signature, setting);
          }
        }
      }
    }
  }

  private void addTo(int[] signature, Setting setting) {
    int start = 0;
    for (int aim = 0; aim < peaks.size(); aim++) {
      Trial trial = setting.trials().get(aim);
      if (trial.passed()) {
        int at = start + 2 * Arrays.binarySearch(peaks.get(aim), trial.peak());
        signature[at] = Math.max(signature[at], trial.scale());
        signature[at + 1] = Math.max(signature[at + 1], trial.parts());
      }
      start += 2 * peaks.get(aim).length;
    }
  }
}
