package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.equipment.FilamentPreheater;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.PartingLayer;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Every printer of a catalogue with every nozzle, preheater and parting layer that may be fitted to
 * it, tried once for every aim and every peak at which the aim can be fired.
 */
final class PrintingTrials {
  /** One setting of the printer, with its trials for each aim and peak, all in a row. */
  record Setting(
      Piece<Printer> printer,
      Piece<Optional<Nozzle>> nozzle,
      Piece<Optional<FilamentPreheater>> preheater,
      Piece<Optional<PartingLayer>> partingLayer,
      List<Trial> trials) {
    boolean isIn(BitSet options) {
      return printer.isIn(options)
          && nozzle.isIn(options)
          && preheater.isIn(options)
          && partingLayer.isIn(options);
    }

    int[] options() {
      return new int[] {
        printer.option(), nozzle.option(), preheater.option(), partingLayer.option()
      };
    }

    boolean fits() {
      return nozzle
          .value()
          .filter(other -> !printer.value().filamentDiameter().isGreaterThan(other.bore()))
          .isEmpty();
    }

    /** The printer with what is fitted to it, where the nozzle fits. */
    Printer fitted() {
      Printer.Builder builder = Printer.builder().from(printer.value());
      nozzle.value().ifPresent(builder::nozzle);
      preheater.value().ifPresent(builder::preheater);
      partingLayer.value().ifPresent(builder::partingLayer);
      return builder.build();
    }
  }

  final List<Setting> settings = new ArrayList<>();
  private final int length;

  PrintingTrials(Slots slots, List<AimTrials> aims, List<double[]> peaks) {
    length = peaks.stream().mapToInt(each -> each.length).sum();
    for (Piece<Printer> printer : Piece.in(slots.options, Option::printer)) {
      for (Piece<Optional<Nozzle>> nozzle : Piece.inOrNone(slots.options, Option::nozzle)) {
        for (Piece<Optional<FilamentPreheater>> preheater :
            Piece.inOrNone(slots.options, Option::preheater)) {
          for (Piece<Optional<PartingLayer>> layer :
              Piece.inOrNone(slots.options, Option::partingLayer)) {
            if (slots.together(
                printer.option(), nozzle.option(), preheater.option(), layer.option())) {
              Front.refuseInterrupted();
              settings.add(tried(printer, nozzle, preheater, layer, aims, peaks));
            }
          }
        }
      }
    }
  }

  private static Setting tried(
      Piece<Printer> printer,
      Piece<Optional<Nozzle>> nozzle,
      Piece<Optional<FilamentPreheater>> preheater,
      Piece<Optional<PartingLayer>> layer,
      List<AimTrials> aims,
      List<double[]> peaks) {
    Setting setting = new Setting(printer, nozzle, preheater, layer, List.of());
    List<Trial> trials = new ArrayList<>();
    for (int aim = 0; aim < aims.size(); aim++) {
      for (double peak : peaks.get(aim)) {
        trials.add(
            setting.fits()
                ? aims.get(aim).print(setting.fitted(), Amounts.kelvin(peak))
                : AimTrials.misfit(printer.value(), nozzle.value().orElseThrow().bore()));
      }
    }
    return new Setting(printer, nozzle, preheater, layer, List.copyOf(trials));
  }

  /** What some options can print: for each aim and peak the largest part, zero where they fail. */
  int[] signature(BitSet options) {
    int[] signature = new int[length];
    for (Setting setting : settings) {
      if (setting.isIn(options)) {
        for (int i = 0; i < length; i++) {
          signature[i] = Math.max(signature[i], setting.trials().get(i).scale());
        }
      }
    }
    return signature;
  }
}
