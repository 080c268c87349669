package dev.kilnledger.core.equipment;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.watts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.CrucibleMaterial;
import dev.kilnledger.core.material.NozzleMaterial;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.part.PrintAxis;
import dev.kilnledger.core.part.TestStock;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.core.source.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EquipmentCheckTest {
  private static final EquipmentCheck CHECK = EquipmentCheck.standard();

  /** A powder of 40 to 60 HV; 20 x 20 x 30 mm finished, and green 1.2004 times that. */
  private static final Passage PASSAGE =
      MassBalancePassage.standard()
          .passage(
              TestStock.part().finishedVolume(cubicCentimetres(5)).build(),
              TestStock.loaded(0.55, 0.9514));

  static NozzleMaterial nozzleOf(double low, double high) {
    return NozzleMaterial.builder()
        .name("test alloy")
        .hardness(TestStock.sourced(Span.of(ratio(low), ratio(high))))
        .build();
  }

  static Printer.Builder printer(double bore) {
    return Printer.builder()
        .name("bench")
        .buildVolume(EquipmentTest.box(200, 200, 200))
        .filamentDiameter(millimetres(1.75))
        .nozzle(Nozzle.of(nozzleOf(650, 800), millimetres(bore)));
  }

  static Crucible.Builder crucible(Envelope inside) {
    return Crucible.builder()
        .name("box")
        .material(
            CrucibleMaterial.builder()
                .name("test steel")
                .serviceLimit(TestStock.sourced(celsius(1100)))
                .remark("")
                .build())
        .cavity(BoxCavity.of(inside.x(), inside.y(), inside.z()))
        .mass(kilograms(2))
        .heatCapacity(joulesPerKilogramKelvin(500));
  }

  private static Finding of(Printer printer, EquipmentFinding code) {
    return CHECK.printing(PASSAGE, printer, celsius(1030)).stream()
        .filter(finding -> finding.code() == code)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void passesAFittingPrinter() {
    Printer printer =
        printer(0.6)
            .preheater(FilamentPreheater.of("tube", celsius(45), watts(20)))
            .partingLayer(PartingLayer.of("alumina paste", TestStock.sourced(celsius(1600))))
            .build();
    assertThat(CHECK.printing(PASSAGE, printer, celsius(1030)))
        .hasSize(5)
        .allSatisfy(finding -> assertThat(finding.severity()).isEqualTo(Severity.PASSED))
        .extracting(Finding::message)
        .containsExactly(
            "the nozzle of test alloy is 10.8 to 20.0 times as hard as the powder",
            "the nozzle's bore is 0.6 mm, wide enough for filled filament",
            "the green part, 24.0 mm x 24.0 mm x 36.0 mm, fits into 200.0 mm x 200.0 mm x 200.0 mm",
            "the filament is warmed before it is bent into the feeder",
            "the parting layer of alumina paste parts up to 1600 °C, the sintering peak is 1030 °C");
  }

  /** Three times as hard or more, common practice; the powder has 40 to 60 HV. */
  @ParameterizedTest
  @CsvSource({"180, 200, PASSED", "110, 140, NOTE", "100, 119, WARNING"})
  void holdsTheNozzlesHardnessAgainstThePowders(double low, double high, Severity severity) {
    Printer printer = printer(0.4).nozzle(Nozzle.of(nozzleOf(low, high), millimetres(0.4))).build();
    Finding finding = of(printer, EquipmentFinding.NOZZLE_HARDNESS);
    assertThat(finding.severity()).isEqualTo(severity);
    assertThat(finding.limit()).contains(ratio(3));
    assertThat(finding.message())
        .endsWith(
            switch (severity) {
              case PASSED -> "times as hard as the powder";
              case NOTE -> ": whether it wears depends on the powder";
              default -> ": it wears, and its bore widens";
            });
    assertThat(finding.basis().standing()).isEqualTo(Standing.COMMON_PRACTICE);
  }

  /** 0.4 mm or more for filled filament, common practice. */
  @Test
  void warnsOfAFineBore() {
    assertThat(of(printer(0.4).build(), EquipmentFinding.NOZZLE_BORE).severity())
        .isEqualTo(Severity.PASSED);
    Finding fine = of(printer(0.25).build(), EquipmentFinding.NOZZLE_BORE);
    assertThat(fine.severity()).isEqualTo(Severity.WARNING);
    assertThat(fine.message())
        .isEqualTo("the nozzle's bore is 0.25 mm: filled filament may clog it");
  }

  @Test
  void stopsWhereTheGreenPartIsLargerThanTheBuildVolume() {
    // The finished part would fit, the green one of 36 mm does not.
    Finding finding =
        of(
            printer(0.4).buildVolume(EquipmentTest.box(30, 30, 33)).build(),
            EquipmentFinding.BUILD_VOLUME);
    assertThat(finding.severity()).isEqualTo(Severity.STOP);
    assertThat(finding.message())
        .isEqualTo(
            "the green part, 24.0 mm x 24.0 mm x 36.0 mm, does not fit into 30.0 mm x 30.0 mm x"
                + " 33.0 mm");
  }

  @Test
  void notesMissingPreheaterAndPartingLayer() {
    Printer bare = printer(0.4).build();
    assertThat(of(bare, EquipmentFinding.FILAMENT_PREHEATER).severity()).isEqualTo(Severity.NOTE);
    assertThat(of(bare, EquipmentFinding.FILAMENT_PREHEATER).message())
        .startsWith("nothing warms the filament before it is bent into the feeder");
    assertThat(of(bare, EquipmentFinding.PARTING_LAYER).severity()).isEqualTo(Severity.NOTE);
  }

  @Test
  void warnsOfAPartingLayerThatSintersToo() {
    Printer printer =
        printer(0.4)
            .partingLayer(PartingLayer.of("talc paste", TestStock.sourced(celsius(800))))
            .build();
    Finding finding = of(printer, EquipmentFinding.PARTING_LAYER);
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(finding.message())
        .isEqualTo(
            "the parting layer of talc paste parts up to 800 °C, the sintering peak is 1030 °C:"
                + " supports may sinter to the part");
  }

  @Test
  void stopsWhereTheCrucibleLeavesNoRoomForPacking() {
    Crucible crucible = crucible(EquipmentTest.box(45, 45, 60)).build();
    assertThat(CHECK.charging(PASSAGE, crucible, millimetres(10), 1).severity())
        .isEqualTo(Severity.PASSED);
    Finding tight = CHECK.charging(PASSAGE, crucible, millimetres(15), 1);
    assertThat(tight.severity()).isEqualTo(Severity.STOP);
    assertThat(tight.message())
        .isEqualTo(
            "the green part, 24.0 mm x 24.0 mm x 36.0 mm, with 15 mm of packing on every side does"
                + " not fit into the crucible as printed");
    assertThatThrownBy(() -> CHECK.charging(PASSAGE, crucible, millimetres(-1), 1))
        .hasMessage("charging of box: clearance is -1 mm; accepted is zero or more");
    assertThatThrownBy(() -> CHECK.charging(PASSAGE, crucible, millimetres(10), 0))
        .hasMessage("charging of box: parts is 0; accepted is 1 or more");
  }

  @Test
  void stopsWhereTheChamberIsTooSmallForTheCrucible() {
    Kiln kiln = EquipmentTest.kiln().chamber(EquipmentTest.box(200, 150, 150)).build();
    Crucible.Builder crucible = crucible(EquipmentTest.box(90, 90, 90));
    assertThat(CHECK.loading(kiln, crucible.build()).severity()).isEqualTo(Severity.UNDETERMINED);
    Crucible turned = crucible.outside(EquipmentTest.box(140, 190, 150)).build();
    assertThat(CHECK.loading(kiln, turned).severity()).isEqualTo(Severity.PASSED);
    assertThat(CHECK.loading(kiln, turned).message())
        .isEqualTo(
            "the crucible box, 140.0 mm x 190.0 mm x 150.0 mm, fits into the chamber of 200.0 mm x"
                + " 150.0 mm x 150.0 mm");
    Finding tall = CHECK.loading(kiln, crucible.outside(EquipmentTest.box(140, 190, 151)).build());
    assertThat(tall.severity()).isEqualTo(Severity.STOP);
    assertThat(tall.message())
        .isEqualTo(
            "the crucible box, 140.0 mm x 190.0 mm x 151.0 mm, does not fit into the chamber of"
                + " 200.0 mm x 150.0 mm x 150.0 mm");
  }

  /**
   * By hand: parts of 24 x 24 x 36 mm, 10 mm of packing. In a box of 113 x 79 mm, (113 - 20 + 10) /
   * 34 = 3 along and (79 - 20 + 10) / 34 = 2 across stand in a layer; 103 mm of height hold (103 -
   * 20 + 10) / 46 = 2 layers.
   */
  @Test
  void tellsHowManyPartsThereIsRoomFor() {
    Crucible crucible = crucible(EquipmentTest.box(113, 79, 103)).build();
    Finding all = CHECK.charging(PASSAGE, crucible, millimetres(10), 12);
    assertThat(all.severity()).isEqualTo(Severity.PASSED);
    assertThat(all.message())
        .isEqualTo(
            "12 green parts, each 24.0 mm x 24.0 mm x 36.0 mm, with 10 mm of packing on every side"
                + " fit into the crucible as printed: there is room for 12, in 2 layers of 6");
    // by area (93 x 59 + 10 x 152 + 78.5) / (24 x 24 + 10 x 48 + 78.5) = 6.2 to a layer
    Finding oneMore = CHECK.charging(PASSAGE, crucible, millimetres(10), 13);
    assertThat(oneMore.severity()).isEqualTo(Severity.STOP);
    assertThat(oneMore.message()).endsWith("as printed: there is room for 12, in 2 layers of 6");
  }

  /**
   * Three squares with rounded gaps of 1134.5 mm2 would have room by area in 60 x 60 mm, (40 + 10)
   * x (40 + 10) less corners, but rows hold one: neither found nor ruled out are two.
   */
  @Test
  void warnsWhereAnArrangementIsNeitherFoundNorRuledOut() {
    Crucible crucible = crucible(EquipmentTest.box(60, 60, 60)).build();
    Finding finding = CHECK.charging(PASSAGE, crucible, millimetres(10), 2);
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(finding.message())
        .endsWith(
            "there is room for 1, in 1 layer of 1 as far as found; only more than 2 are ruled out");
  }

  /** The part of 36 mm lies down in 60 mm of width, 24 mm high, where 55 mm are too low for it. */
  @Test
  void laysPartsOnTheirSideWhereThatIsAllowed() {
    Crucible low = crucible(EquipmentTest.box(60, 60, 45)).build();
    ChargePart.Builder part = ChargePart.builder().envelope(PASSAGE.green().envelope());
    Spacing spacing =
        Spacing.builder().from(Spacing.of(millimetres(10))).cover(millimetres(8)).build();
    assertThat(CHECK.charging(part.build(), low, spacing, 1).severity()).isEqualTo(Severity.STOP);
    Finding lying =
        CHECK.charging(part.addUpright(PrintAxis.X, PrintAxis.Y).build(), low, spacing, 1);
    assertThat(lying.severity()).isEqualTo(Severity.PASSED);
    assertThat(lying.message())
        .isEqualTo(
            "the green part, 24.0 mm x 24.0 mm x 36.0 mm, with packing of 10 mm to the wall, 10 mm"
                + " between parts, 10 mm under, 10 mm between layers and 8 mm over them fits into"
                + " the crucible on any side allowed: there is room for 1, in 1 layer of 1");
  }
}
