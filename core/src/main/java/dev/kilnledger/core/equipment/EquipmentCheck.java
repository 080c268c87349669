package dev.kilnledger.core.equipment;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;

/** Holds printer and crucible against a part's passage, by rules of the trade and by geometry. */
public final class EquipmentCheck {
  private static final Amount<Dimensionless> HARDNESS_RATIO = Amounts.ratio(3);
  private static final Source HARDNESS_BASIS =
      Source.commonPractice(
          "nozzle about 3 times as hard as the powder or more; oxidised and ceramic grains wear it"
              + " faster than the metal does");
  private static final Amount<Length> SMALLEST_BORE = Amounts.millimetres(0.4);
  private static final Source BORE_BASIS =
      Source.commonPractice("bore of 0.4 mm or more for filled filament, which clogs finer ones");
  private static final Source GEOMETRY = Source.recomputed("envelope against space");
  private static final Source BRITTLENESS_BASIS =
      Source.commonPractice("filament full of powder breaks when it is bent cold");
  private static final Source PARTING_BASIS =
      Source.commonPractice("supports of the same feedstock sinter to the part where they touch");
  private static final EquipmentCheck STANDARD = new EquipmentCheck();

  private EquipmentCheck() {}

  /** {@return the check} */
  public static EquipmentCheck standard() {
    return STANDARD;
  }

  /**
   * Checks a printer.
   *
   * @param passage the part's passage
   * @param printer the printer
   * @param sinteringPeak the peak that a parting layer has to stand
   * @return one finding each on hardness and bore of the nozzle, build volume, preheater and
   *     parting layer
   */
  public List<Finding> printing(
      Passage passage, Printer printer, Amount<Temperature> sinteringPeak) {
    return List.of(
        hardness(passage, printer),
        bore(printer),
        buildVolume(passage, printer),
        preheater(printer),
        partingLayer(printer, sinteringPeak));
  }

  /**
   * Checks a crucible. That one part fits is certain; of several parts only their volume is
   * compared, each with its packing shared halfway, so a charge may pass and yet not be arranged.
   *
   * @param passage the part's passage
   * @param crucible the crucible
   * @param clearance how much packing there must be on every side
   * @param parts how many parts one charge is to hold, 1 or more
   * @return whether the green parts, which the brown ones equal in size, fit in
   * @throws IllegalArgumentException if the clearance is negative or there is no part
   */
  public Finding charging(Passage passage, Crucible crucible, Amount<Length> clearance, int parts) {
    new Problems("charging of " + crucible.name())
        .notNegative("clearance", clearance)
        .require(parts >= 1, "parts is " + parts + "; accepted is 1 or more")
        .refuseIfAny();
    Envelope green = passage.green().envelope();
    double gap = clearance.si();
    double needed =
        parts * (green.x().si() + gap) * (green.y().si() + gap) * (green.z().si() + gap);
    boolean one = crucible.cavity().holds(green, clearance);
    boolean all = one && (parts == 1 || needed <= crucible.cavity().volume().si());
    return Finding.builder()
        .code(EquipmentFinding.CRUCIBLE_SPACE)
        .severity(!all ? Severity.STOP : parts == 1 ? Severity.PASSED : Severity.NOTE)
        .subject(crucible.name())
        .message(
            (parts == 1 ? "the green part, " : parts + " green parts, each ")
                + green.format()
                + ", with "
                + clearance
                + " of packing on every side "
                + (parts == 1 ? (all ? "fits" : "does not fit") : (all ? "fit" : "do not fit"))
                + " into the crucible as it stands"
                + (all && parts > 1 ? " by volume; how to arrange them is not checked" : ""))
        .basis(GEOMETRY)
        .build();
  }

  /**
   * Checks a kiln's chamber.
   *
   * @param kiln the kiln
   * @param crucible the crucible
   * @return whether the crucible fits in, upright; undetermined where its outside is not known
   */
  public Finding loading(Kiln kiln, Crucible crucible) {
    Finding.Builder finding =
        Finding.builder().code(EquipmentFinding.KILN_SPACE).subject(kiln.name()).basis(GEOMETRY);
    if (crucible.outside().isEmpty()) {
      return finding
          .severity(Severity.UNDETERMINED)
          .message("the outer size of the crucible " + crucible.name() + " is not stated")
          .build();
    }
    Envelope outside = crucible.outside().get();
    boolean fits = outside.fitsIn(kiln.chamber());
    return finding
        .severity(fits ? Severity.PASSED : Severity.STOP)
        .message(
            "the crucible "
                + crucible.name()
                + ", "
                + outside.format()
                + ", "
                + (fits ? "fits" : "does not fit")
                + " into the chamber of "
                + kiln.chamber().format())
        .build();
  }

  private static Finding hardness(Passage passage, Printer printer) {
    Span<Dimensionless> nozzle = printer.nozzle().material().hardness().value();
    Span<Dimensionless> powder = passage.feedstock().alloy().powderHardness().value();
    Amount<Dimensionless> worst = Amounts.ratio(nozzle.low().ratio(powder.high()));
    Amount<Dimensionless> best = Amounts.ratio(nozzle.high().ratio(powder.low()));
    boolean always = !worst.isLessThan(HARDNESS_RATIO);
    boolean never = best.isLessThan(HARDNESS_RATIO);
    return Finding.builder()
        .code(EquipmentFinding.NOZZLE_HARDNESS)
        .severity(always ? Severity.PASSED : never ? Severity.WARNING : Severity.NOTE)
        .subject(printer.name())
        .message(
            "the nozzle of "
                + printer.nozzle().material().name()
                + " is "
                + Span.of(worst, best).format(TradeUnits.ONE, 1)
                + " times as hard as the powder"
                + (always
                    ? ""
                    : never
                        ? ": it wears, and its bore widens"
                        : ": whether it wears depends on the powder"))
        .measured(worst)
        .limit(HARDNESS_RATIO)
        .basis(HARDNESS_BASIS)
        .build();
  }

  private static Finding bore(Printer printer) {
    Amount<Length> bore = printer.nozzle().bore();
    boolean fine = bore.isLessThan(SMALLEST_BORE);
    return Finding.builder()
        .code(EquipmentFinding.NOZZLE_BORE)
        .severity(fine ? Severity.WARNING : Severity.PASSED)
        .subject(printer.name())
        .message(
            "the nozzle's bore is "
                + bore
                + (fine ? ": filled filament may clog it" : ", wide enough for filled filament"))
        .measured(bore)
        .limit(SMALLEST_BORE)
        .basis(BORE_BASIS)
        .build();
  }

  private static Finding buildVolume(Passage passage, Printer printer) {
    Envelope green = passage.green().envelope();
    boolean fits = green.fitsIn(printer.buildVolume());
    return Finding.builder()
        .code(EquipmentFinding.BUILD_VOLUME)
        .severity(fits ? Severity.PASSED : Severity.STOP)
        .subject(printer.name())
        .message(
            "the green part, "
                + green.format()
                + (fits ? ", fits into " : ", does not fit into ")
                + printer.buildVolume().format())
        .basis(GEOMETRY)
        .build();
  }

  private static Finding preheater(Printer printer) {
    boolean there = printer.preheater().isPresent();
    return Finding.builder()
        .code(EquipmentFinding.FILAMENT_PREHEATER)
        .severity(there ? Severity.PASSED : Severity.NOTE)
        .subject(printer.name())
        .message(
            there
                ? "the filament is warmed before it is bent into the feeder"
                : "nothing warms the filament before it is bent into the feeder: it may break"
                    + " where it is brittle")
        .basis(BRITTLENESS_BASIS)
        .build();
  }

  private static Finding partingLayer(Printer printer, Amount<Temperature> peak) {
    Finding.Builder finding =
        Finding.builder()
            .code(EquipmentFinding.PARTING_LAYER)
            .subject(printer.name())
            .measured(peak);
    if (printer.partingLayer().isEmpty()) {
      return finding
          .severity(Severity.NOTE)
          .message("there is no parting layer: supports that touch the part sinter to it")
          .basis(PARTING_BASIS)
          .build();
    }
    PartingLayer layer = printer.partingLayer().get();
    Amount<Temperature> limit = layer.temperatureLimit().value();
    boolean stands = !peak.isGreaterThan(limit);
    return finding
        .severity(stands ? Severity.PASSED : Severity.WARNING)
        .message(
            "the parting layer of "
                + layer.material()
                + " parts up to "
                + limit
                + ", the sintering peak is "
                + peak
                + (stands ? "" : ": supports may sinter to the part"))
        .limit(limit)
        .basis(layer.temperatureLimit().source())
        .build();
  }
}
