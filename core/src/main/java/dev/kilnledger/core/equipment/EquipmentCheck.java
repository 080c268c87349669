package dev.kilnledger.core.equipment;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.part.PrintAxis;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
  private static final Amount<Length> NOTHING = Amounts.millimetres(0);
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
   * Checks a crucible for green parts of any outline that stand as they were printed, with the same
   * packing on every side.
   *
   * @param passage the part's passage
   * @param crucible the crucible
   * @param clearance how much packing there must be on every side
   * @param parts how many parts one charge is to hold, 1 or more
   * @return as {@link #charging(ChargePart, Crucible, Spacing, int)}
   * @throws IllegalArgumentException if the clearance is negative or there is no part
   */
  public Finding charging(Passage passage, Crucible crucible, Amount<Length> clearance, int parts) {
    new Problems("charging of " + crucible.name())
        .notNegative("clearance", clearance)
        .refuseIfAny();
    return charging(
        ChargePart.of(passage.green().envelope()), crucible, Spacing.of(clearance), parts);
  }

  /**
   * Checks a crucible by arranging the parts in it.
   *
   * @param part the green part, which the brown one equals in size
   * @param crucible the crucible
   * @param spacing the packing to keep around it
   * @param parts how many parts one charge is to hold, 1 or more
   * @return passed if an arrangement of them is found; stop if none can hold as many in layers that
   *     are all alike; a warning where none is found and none ruled out
   * @throws IllegalArgumentException if there is no part
   */
  public Finding charging(ChargePart part, Crucible crucible, Spacing spacing, int parts) {
    new Problems("charging of " + crucible.name())
        .require(parts >= 1, "parts is " + parts + "; accepted is 1 or more")
        .refuseIfAny();
    Optional<Arrangement> most = PatternArranger.standard().most(crucible.cavity(), part, spacing);
    int found = most.map(Arrangement::capacity).orElse(0);
    int atMost = most.map(Arrangement::atMost).orElse(0);
    return Finding.builder()
        .code(EquipmentFinding.CRUCIBLE_SPACE)
        .severity(
            parts <= found ? Severity.PASSED : parts > atMost ? Severity.STOP : Severity.WARNING)
        .subject(crucible.name())
        .message(
            (parts == 1 ? "the green part, " : parts + " green parts, each ")
                + part.envelope().format()
                + ", with "
                + packing(spacing)
                + (parts <= found
                    ? parts == 1 ? " fits" : " fit"
                    : parts == 1 ? " does not fit" : " do not fit")
                + " into the crucible "
                + (part.upright().equals(Set.of(PrintAxis.Z))
                    ? "as printed"
                    : "on any side allowed")
                + most.map(arrangement -> room(arrangement, parts)).orElse(""))
        .measured(Amounts.ratio(parts))
        .limit(Amounts.ratio(found))
        .basis(most.map(Arrangement::basis).orElse(GEOMETRY))
        .build();
  }

  private static String packing(Spacing spacing) {
    Amount<Length> wall = spacing.wall();
    return Spacing.of(wall).equals(Spacing.builder().from(spacing).headroom(NOTHING).build())
        ? wall + " of packing on every side"
        : "packing of "
            + wall
            + " to the wall, "
            + spacing.betweenParts()
            + " between parts, "
            + spacing.floor()
            + " under, "
            + spacing.betweenLayers()
            + " between layers and "
            + spacing.cover()
            + " over them";
  }

  private static String room(Arrangement most, int parts) {
    String room =
        ": there is room for "
            + most.capacity()
            + ", in "
            + (most.layersAtMost() == 1 ? "1 layer" : most.layersAtMost() + " layers")
            + " of "
            + most.perLayer();
    return parts > most.capacity() && parts <= most.atMost()
        ? room + " as far as found; only more than " + most.atMost() + " are ruled out"
        : room;
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
