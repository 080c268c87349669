package dev.kilnledger.core.gcode;

import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.SECOND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Extent;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GCodeReaderTest {
  /** Sums of some thousand decimals, each rounded once. */
  private static final double ROUNDING = 1e-9;

  private static PrintProgramme read(String... lines) throws IOException {
    return read(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
  }

  private static PrintProgramme read(byte[] bytes) throws IOException {
    return GCodeReader.standard().read(ByteSource.of(bytes));
  }

  private static double net(PrintProgramme programme) {
    return programme.netFilament().in(MILLIMETRE);
  }

  private static Severity severity(PrintProgramme programme, GCodeFinding code) {
    return programme.findings().stream()
        .filter(finding -> finding.code() == code)
        .findFirst()
        .orElseThrow()
        .severity();
  }

  @Test
  void javadocExampleComesOutAsStated() throws IOException {
    PrintProgramme programme =
        read("G21 M83", "G1 X0 Y0 Z0.2 F1200", "G1 X10 E0.5", "G1 E-2", "G1 E2", "G1 X20 E0.5");
    assertThat(net(programme)).isEqualTo(1);
    Extent extent = programme.extent().orElseThrow();
    assertThat(extent.lowX().in(MILLIMETRE)).isEqualTo(0);
    assertThat(extent.highX().in(MILLIMETRE)).isEqualTo(20);
    assertThat(programme.leastTime().in(SECOND)).isCloseTo(1.2, within(ROUNDING));
    assertThat(programme.tools().get(0).retractions()).isEqualTo(1);
    assertThat(programme.tools().get(0).drawnBack().in(MILLIMETRE)).isEqualTo(2);
    assertThat(programme.unreadLines()).isZero();
  }

  @Test
  void absoluteAndRelativeExtrusionTellTheSame() throws IOException {
    PrintProgramme absolute =
        read("G21", "M82", "G92 E0", "G1 X1 E5", "G1 E3", "G1 E5", "G92 E0", "G1 X2 E2.5");
    PrintProgramme relative = read("G21", "M83", "G1 X1 E5", "G1 E-2", "G1 E2", "G1 X2 E2.5");
    assertThat(net(absolute)).isEqualTo(7.5);
    assertThat(net(relative)).isEqualTo(7.5);
  }

  @Test
  void filamentDrawnBackAtTheEndHasLeftTheNozzleBefore() throws IOException {
    assertThat(net(read("M83", "G1 X5 E4", "G1 E-1"))).isEqualTo(4);
  }

  @Test
  void filamentThatIsOnlyPartlyMadeGoodIsNotCountedTwice() throws IOException {
    assertThat(net(read("M83", "G1 X5 E4", "G1 E-2", "G1 X9 E1.5", "G1 X12 E1.5"))).isEqualTo(5);
  }

  @Test
  void underG91TheFilamentMovesLikeTheOtherAxesUnlessM82SaysOtherwise() throws IOException {
    // RS274/NGC 3.5.19: G91 makes all axes incremental; M82 is of extruding machines.
    assertThat(net(read("G91", "G1 X1 E1", "G1 X1 E1"))).isEqualTo(2);
    assertThat(net(read("M82", "G91", "G1 X1 E1", "G1 X1 E2"))).isEqualTo(2);
  }

  @Test
  void inchesAreTwentyFivePointFourMillimetres() throws IOException {
    // exact since the international yard of 1959
    PrintProgramme programme = read("G20 M83", "G1 X0 Y0 Z0 F60", "G1 X1 E0.5", "G21", "G1 X50.8");
    assertThat(net(programme)).isEqualTo(12.7);
    assertThat(programme.extent().orElseThrow().highX().in(MILLIMETRE)).isEqualTo(25.4);
    assertThat(programme.leastTime().in(SECOND)).isCloseTo(2, within(ROUNDING));
  }

  /** The example of RS274/NGC section 3.5.3.2, from memory: centre (10, 11), radius 5. */
  @Test
  void arcAboutItsCentreIsThatOfTheStandard() throws IOException {
    PrintProgramme programme =
        read("G21 M83", "G0 X7 Y7 Z9 F60", "G17 G2 x 10 y 16 i 3 j 4 z 9 E1");
    // clockwise from the lower left, where tan = 4/3, over 180 degrees to the top
    double length = 5 * (Math.PI + Math.atan2(4, 3) - Math.PI / 2);
    assertThat(programme.leastTime().in(SECOND)).isCloseTo(length, within(ROUNDING));
    Extent extent = programme.extent().orElseThrow();
    assertThat(extent.lowX().in(MILLIMETRE)).isCloseTo(5, within(ROUNDING));
    assertThat(extent.highX().in(MILLIMETRE)).isCloseTo(10, within(ROUNDING));
    assertThat(extent.highY().in(MILLIMETRE)).isCloseTo(16, within(ROUNDING));
  }

  @Test
  void arcByItsRadiusGoesTheShorterWayAndTheLongerOneIfTheRadiusIsNegative() throws IOException {
    // a quarter and three quarters of a circle of radius 10 (geometry)
    double quarter = read("M83", "G1 X10 Y0 Z0 F60", "G3 X0 Y10 R10").leastTime().in(SECOND);
    double rest = read("M83", "G1 X10 Y0 Z0 F60", "G3 X0 Y10 R-10").leastTime().in(SECOND);
    assertThat(quarter).isCloseTo(5 * Math.PI, within(ROUNDING));
    assertThat(rest).isCloseTo(15 * Math.PI, within(ROUNDING));
  }

  @Test
  void helixIsAsLongAsItsDevelopedTriangle() throws IOException {
    // one turn of radius 3 rising by 8: hypot(6 pi, 8)
    double seconds = read("M83", "G1 X3 Y0 Z0 F60", "G2 X3 Y0 Z8 I-3 J0").leastTime().in(SECOND);
    assertThat(seconds).isCloseTo(Math.hypot(6 * Math.PI, 8), within(ROUNDING));
  }

  @Test
  void wholeCircleReachesAllFourSides() throws IOException {
    Extent extent = read("M83", "G1 X10 Y0 Z1", "G3 I-10 E5").extent().orElseThrow();
    assertThat(extent.lowX().in(MILLIMETRE)).isCloseTo(-10, within(ROUNDING));
    assertThat(extent.highX().in(MILLIMETRE)).isCloseTo(10, within(ROUNDING));
    assertThat(extent.lowY().in(MILLIMETRE)).isCloseTo(-10, within(ROUNDING));
    assertThat(extent.highY().in(MILLIMETRE)).isCloseTo(10, within(ROUNDING));
  }

  @Test
  void arcsLieInTheChosenPlane() throws IOException {
    // in G18 from Z to X: a quarter about (0, y, 0) reaches Z 4 and X 4 only
    PrintProgramme programme = read("M83", "G1 X4 Y2 Z0 F60", "G18 G2 X0 Z4 I-4 K0 E1");
    assertThat(programme.unreadLines()).isZero();
    assertThat(programme.leastTime().in(SECOND)).isCloseTo(2 * Math.PI, within(ROUNDING));
  }

  @Test
  void whiteSpaceMayStandAnywhere() throws IOException {
    // RS274/NGC section 3.3 gives this very pair of lines (from memory)
    PrintProgramme loose = read("M83", "G1 X0 Y0 Z0", "g1x +0. 12 34y 7 E1");
    PrintProgramme tight = read("M83", "G1 X0 Y0 Z0", "g1 x+0.1234 y7 E1");
    assertThat(loose.extent()).isEqualTo(tight.extent());
    assertThat(loose.extent().orElseThrow().highX().in(MILLIMETRE)).isEqualTo(0.1234);
  }

  @Test
  void firstLayerIsWhatLiesLowest() throws IOException {
    PrintProgramme programme =
        read(
            "M83",
            "G1 X0 Y0 Z0.4",
            "G1 X90 E1",
            "G1 Z0.2",
            "G1 X10 Y20",
            "G1 X30 E1",
            "G1 Z0.6",
            "G1 X99 E1");
    Extent first = programme.firstLayer().orElseThrow();
    assertThat(first.lowX().in(MILLIMETRE)).isEqualTo(10);
    assertThat(first.highX().in(MILLIMETRE)).isEqualTo(30);
    assertThat(first.highZ().in(MILLIMETRE)).isEqualTo(0.2);
  }

  @Test
  void eachToolHasItsOwnFilament() throws IOException {
    PrintProgramme programme = read("M83", "G1 X1 E3", "T1", "G1 X2 E4", "T0", "G1 X3 E1");
    assertThat(programme.tools()).extracting(ToolUse::tool).containsExactly(0, 1);
    assertThat(programme.tools())
        .extracting(tool -> tool.netFilament().in(MILLIMETRE))
        .containsExactly(4.0, 4.0);
  }

  @Test
  void aKilogramIsAsLongAsItsDensitySays() throws IOException {
    // reference: 1 kg of 1.24 g/cm3 in 1.75 mm is 335.28 m, so a metre is 2.98258 g
    var feedstock = MaterialLibrary.standard().feedstock("copper in polylactide, generic");
    ToolUse use = read("M83", "G1 X1 E1000").tools().get(0);
    double cubic = Math.PI * 1.75 * 1.75 / 4 * 1000;
    assertThat(
            use.volume(Amounts.millimetres(1.75))
                .in(dev.kilnledger.units.TradeUnits.CUBIC_MILLIMETRE))
        .isCloseTo(cubic, within(1e-9 * cubic));
    assertThat(use.mass(feedstock, Amounts.millimetres(1.75)).in(GRAM))
        .isCloseTo(cubic * feedstock.density().si() / 1e6, within(1e-9 * 30));
  }

  @Test
  void linesThatCannotBeUnderstoodAreToldWithNumberAndReason() throws IOException {
    PrintProgramme programme =
        read(
            "G21 ; fine",
            "G1 X1 X2",
            "G1 Xfast",
            "G1 G2 X1",
            "X5 Y5",
            "G1 X1 (open",
            "/G1 X9 E9",
            "G2 X5 Y5 I1 J1",
            "G5 X1 E4",
            "M200 D1.75",
            "T-1",
            "&");
    assertThat(programme.unreadLines()).isEqualTo(11);
    assertThat(programme.firstUnreadLines())
        .extracting(UnreadLine::number)
        .containsExactly(2L, 3L, 4L, 5L, 6L, 7L, 8L, 9L, 10L, 11L, 12L);
    assertThat(programme.firstUnreadLines())
        .extracting(UnreadLine::reason)
        .satisfiesExactly(
            reason -> assertThat(reason).contains("X stands twice"),
            reason -> assertThat(reason).contains("no number after X"),
            reason -> assertThat(reason).contains("two motions"),
            reason -> assertThat(reason).contains("without a motion"),
            reason -> assertThat(reason).contains("not closed"),
            reason -> assertThat(reason).contains("optional block"),
            reason -> assertThat(reason).contains("no arc leads"),
            reason -> assertThat(reason).contains("E with a code"),
            reason -> assertThat(reason).contains("volume"),
            reason -> assertThat(reason).contains("no tool"),
            reason -> assertThat(reason).contains("no word begins with '&'"));
    assertThat(severity(programme, GCodeFinding.LINES_UNDERSTOOD)).isEqualTo(Severity.WARNING);
    assertThat(net(programme)).isZero();
  }

  @Test
  void checksumIsTheExclusiveOrOfTheBytesBeforeIt() throws IOException {
    String line = "N3 G1 X5 E1";
    int sum = 0;
    for (byte b : line.getBytes(StandardCharsets.US_ASCII)) {
      sum ^= b;
    }
    assertThat(read("M83", line + "*" + sum).unreadLines()).isZero();
    PrintProgramme wrong = read("M83", line + "*" + (sum + 1));
    assertThat(wrong.firstUnreadLines().get(0).reason())
        .isEqualTo("the checksum does not fit; accepted is " + sum);
    assertThat(net(wrong)).isZero();
  }

  @Test
  void otherWordsArePassedOverAndCounted() throws IOException {
    PrintProgramme programme =
        read(
            "M104 S210",
            "M104 S0",
            "M117 G1 X5 E9",
            "START_PRINT BED=60",
            "G40 G21",
            "G29 X5 Y5",
            "M83 (mode) ; comment",
            "G1 X1 E2");
    assertThat(programme.passedOver())
        .containsEntry("M104", 2L)
        .containsEntry("M117", 1L)
        .containsEntry("START_PRINT", 1L)
        .containsEntry("G40", 1L)
        .containsEntry("G29", 1L)
        .hasSize(5);
    assertThat(programme.comments()).isEqualTo(2);
    assertThat(programme.unreadLines()).isZero();
    assertThat(net(programme)).isEqualTo(2);
  }

  @Test
  void aThousandDifferentWordsAreCountedByNameAndTheRestTogether() throws IOException {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < 1003; i++) {
      lines.add("WORD_" + i);
    }
    lines.add("WORD_999");
    lines.add("WORD_1002");
    PrintProgramme programme = read(lines.toArray(String[]::new));
    assertThat(programme.passedOver())
        .hasSize(1001)
        .containsEntry("WORD_0", 1L)
        .containsEntry("WORD_999", 2L)
        .containsEntry("other", 4L)
        .doesNotContainKey("WORD_1000");
  }

  @Test
  void whatIsTakenForGrantedIsSaid() throws IOException {
    PrintProgramme bare = read("G1 X1 E1");
    assertThat(severity(bare, GCodeFinding.LENGTH_UNIT_STATED)).isEqualTo(Severity.NOTE);
    assertThat(severity(bare, GCodeFinding.EXTRUSION_MODE_STATED)).isEqualTo(Severity.NOTE);
    assertThat(severity(bare, GCodeFinding.EXTRUSION_START_SET)).isEqualTo(Severity.NOTE);
    assertThat(severity(bare, GCodeFinding.MOTION_TIMED)).isEqualTo(Severity.NOTE);
    assertThat(severity(bare, GCodeFinding.EXTENT_COMPLETE)).isEqualTo(Severity.UNDETERMINED);
    PrintProgramme full = read("G21 M82", "G92 X0 Y0 Z0 E0", "G1 X1 E1 F600");
    assertThat(full.findings()).allMatch(finding -> finding.severity() == Severity.PASSED);
    assertThat(full.findings())
        .extracting(Finding::message)
        .containsExactly(
            "every line is understood, or passed over as nothing of motion",
            "the unit is stated",
            "what E means is stated",
            "the filament's position is set, or not needed",
            "the least time holds every motion",
            "all that is extruded lies within the extent");
    assertThat(bare.findings())
        .extracting(Finding::message)
        .containsExactly(
            "every line is understood, or passed over as nothing of motion",
            "neither G20 nor G21 says the unit; a 1 is taken to be 1 mm",
            "E stands where neither M82 nor M83 has said what it means; it is taken as a position,"
                + " or as a way under G91",
            "the filament's position is used before G92 has set it; it is taken to start at zero",
            "motions without a feed rate or from an unknown position, not in the least time: 1",
            "motions that extrude at an unknown position, not in the extent: 1");
    PrintProgramme relative =
        new GCodeReader(Amounts.inches(1), ExtrusionMode.RELATIVE)
            .read(ByteSource.of("G1 X1 E1".getBytes(StandardCharsets.US_ASCII)));
    assertThat(relative.findings())
        .extracting(Finding::message)
        .contains(
            "neither G20 nor G21 says the unit; a 1 is taken to be 1 in",
            "E stands where neither M82 nor M83 has said what it means; it is taken as a way");
    assertThat(read("&").findings().get(0).message())
        .isEqualTo(
            "lines that could not be understood: 1, the first is line 1 (no word begins with '&';"
                + " accepted is a letter and a number); they are not counted");
  }

  @Test
  void codesOfFindingsStayWhatTheyAre() throws IOException {
    assertThat(read("G21").findings())
        .extracting(finding -> finding.code().code())
        .containsExactly(
            "lines-understood",
            "length-unit-stated",
            "extrusion-mode-stated",
            "extrusion-start-set",
            "motion-timed",
            "extent-complete");
  }

  @Test
  void firstHundredLinesAreToldByTheirBeginning() throws IOException {
    PrintProgramme programme = read("& ~\u00e4\t\u007f" + "x".repeat(80) + "\n&\n".repeat(120));
    assertThat(programme.unreadLines()).isEqualTo(121);
    assertThat(programme.firstUnreadLines()).hasSize(100);
    // 60 characters, those beyond ASCII as ?; the umlaut is two bytes
    assertThat(programme.firstUnreadLines().get(0).beginning())
        .isEqualTo("& ~????" + "x".repeat(53));
    assertThat(programme.firstUnreadLines().get(1).beginning()).isEqualTo("&");
  }

  @Test
  void retractionsAreCountedByWhatIsDrawnBackAtOnce() throws IOException {
    // drawn back twice in a row, made good in part, drawn back again: one retraction of 2.5 mm
    ToolUse one = read("M83", "G1 X1 E5", "G1 E-1", "G1 E-1", "G1 E1", "G1 E-0.5").tools().get(0);
    assertThat(one.retractions()).isEqualTo(1);
    assertThat(one.drawnBack().in(MILLIMETRE)).isEqualTo(2.5);
    // made good and more, then drawn back again: another
    ToolUse two = read("M83", "G1 X1 E5", "G1 E-1", "G1 E1.5", "G1 E-1").tools().get(0);
    assertThat(two.retractions()).isEqualTo(2);
    assertThat(two.netFilament().in(MILLIMETRE)).isEqualTo(5.5);
    assertThat(read("M83", "G1 E-3").tools()).isEmpty();
  }

  @Test
  void whatIsOnlyMadeGoodExtrudesNothing() throws IOException {
    PrintProgramme programme =
        read("G21 M83", "G92 X0 Y0 Z0", "G1 X1 E1", "G1 X9 E-0.3", "G1 X5 E0.1", "G1 X7 E0.2");
    assertThat(programme.extent().orElseThrow().highX().in(MILLIMETRE)).isEqualTo(1);
    // 0.1 + 0.2 is not 0.3, but what is over is no filament
    assertThat(net(programme)).isCloseTo(1, within(1e-9));
  }

  @Test
  void homingMakesThePositionUnknown() throws IOException {
    PrintProgramme programme =
        read("M83", "G92 X0 Y0 Z0", "G28 X", "G1 Y5 E1 F60", "G1 X2", "G1 X3 E1");
    assertThat(severity(programme, GCodeFinding.EXTENT_COMPLETE)).isEqualTo(Severity.UNDETERMINED);
    assertThat(programme.extent().orElseThrow().lowX().in(MILLIMETRE)).isEqualTo(2);
  }

  /** What is extruded next starts from 50 mm, where nothing was extruded before. */
  @Test
  void extentHoldsWhereAPositionWasSet() throws IOException {
    Extent extent =
        read("M83", "G1 X0 Y0 Z1", "G1 X10 E1", "G92 X50", "G1 X20 E1").extent().orElseThrow();
    assertThat(extent.lowX().in(MILLIMETRE)).isEqualTo(0);
    assertThat(extent.highX().in(MILLIMETRE)).isEqualTo(50);
  }

  /** The way to -5 mm comes from an unknown place and is left out, the way from there is not. */
  @Test
  void extentHoldsWhereTheWayIsKnownAgain() throws IOException {
    Extent extent =
        read("M83", "G1 X0 Y0 Z1", "G1 X10 E1", "G28 X", "G1 X-5 E1", "G1 X3 E1")
            .extent()
            .orElseThrow();
    assertThat(extent.lowX().in(MILLIMETRE)).isEqualTo(-5);
    assertThat(extent.highX().in(MILLIMETRE)).isEqualTo(10);
  }

  @Test
  void waitsCountAsMillisecondsAfterPAndSecondsAfterS() throws IOException {
    assertThat(read("G4 P1500", "G4 S2").leastTime().in(SECOND)).isCloseTo(3.5, within(ROUNDING));
  }

  @Test
  void lineEndsOfAllSystemsAreTheSame() throws IOException {
    for (String end : List.of("\n", "\r\n", "\r")) {
      PrintProgramme programme =
          read(
              ("M83" + end + "G1 X1 E1" + end + end + "&" + end)
                  .getBytes(StandardCharsets.US_ASCII));
      assertThat(programme.lines()).isEqualTo(4);
      assertThat(net(programme)).isEqualTo(1);
      assertThat(programme.firstUnreadLines().get(0).number()).isEqualTo(4);
    }
  }

  @Test
  void longLinesAndBinaryRubbishAreToldAndPassed() throws IOException {
    byte[] rubbish = new byte[300_000];
    new Random(7).nextBytes(rubbish);
    assertThat(read(rubbish).unreadLines()).isPositive();
    String line = "M83\nG1 X1 E1 ;" + "x".repeat(200_000) + "\nG1 X2 E1\n";
    PrintProgramme programme = read(line.getBytes(StandardCharsets.US_ASCII));
    assertThat(programme.firstUnreadLines().get(0).reason()).contains("longer than");
    assertThat(programme.lines()).isEqualTo(3);
    assertThat(net(programme)).isEqualTo(1);
  }

  @Test
  void linesOfUpTo8192CharactersAreRead() throws IOException {
    String most = "G1 X1 E1 ;" + "x".repeat(8192 - 10);
    assertThat(read("M83", most, "G1 X2 E1").unreadLines()).isZero();
    PrintProgramme longer = read("M83", most + "x", "G1 X2 E1");
    assertThat(longer.firstUnreadLines().get(0).reason()).isEqualTo("longer than 8192 characters");
    assertThat(net(longer)).isEqualTo(1);
    // across the reader's own portions of 65 536 bytes
    PrintProgramme many = read(("G1 X1 E1;" + "y".repeat(8000) + "\n").repeat(50).split("\n"));
    assertThat(many.lines()).isEqualTo(50);
    assertThat(many.unreadLines()).isZero();
    assertThat(many.comments()).isEqualTo(50);
  }

  /** Lines of 16 bytes each, of which 4096 are the reader's own portion of 65 536. */
  private static String linesOfSixteen(int count) {
    return "M83;56789012345\n" + ";23456789012345\n".repeat(count - 1);
  }

  @Test
  void aLineEndMayLieAcrossTwoPortions() throws IOException {
    String text = linesOfSixteen(4095) + "G1 X1 E1;789012\r" + "\nG1 X2 E1";
    PrintProgramme programme = read(text.getBytes(StandardCharsets.US_ASCII));
    assertThat(programme.lines()).isEqualTo(4097);
    assertThat(net(programme)).isEqualTo(2);
  }

  @Test
  void aLineOf8192CharactersMayEndWithItsPortion() throws IOException {
    String longest = "G1 X1 E1;" + "x".repeat(8192 - 9);
    String text = linesOfSixteen(4096 - 8192 / 16) + longest + "\nG1 X2 E1";
    PrintProgramme programme = read(text.getBytes(StandardCharsets.US_ASCII));
    assertThat(programme.unreadLines()).isZero();
    assertThat(net(programme)).isEqualTo(2);
  }

  @Test
  void aLineIsNotTooLongForTheOneAfterItIs() throws IOException {
    // the first byte of the second portion ends a line, none other in it does
    String text = linesOfSixteen(4095) + "G1 X1 E1;7890123" + "\n;" + "x".repeat(70_000);
    PrintProgramme programme = read((text + "\nG1 X2 E1").getBytes(StandardCharsets.US_ASCII));
    assertThat(programme.lines()).isEqualTo(4098);
    assertThat(programme.firstUnreadLines()).extracting(UnreadLine::number).containsExactly(4097L);
    assertThat(net(programme)).isEqualTo(2);
  }

  /** Held against a reader that splits text and knows nothing of bytes and buffers. */
  @Test
  void longProgrammeIsWhatASimplerReaderFinds() throws IOException {
    Random random = new Random(42);
    List<String> lines = new ArrayList<>(List.of("G21", "M82", "G90", "G92 E0", "G1 Z0.2 F1800"));
    double e = 0;
    for (int i = 0; i < 40_000; i++) {
      if (i % 50 == 0) {
        e = 0;
        lines.add("G92 E0 ; again");
      }
      e += random.nextInt(9) == 0 ? -0.8 : random.nextDouble();
      lines.add(
          String.format(
              Locale.ROOT,
              "G1 X%.3f Y%.3f E%.5f%s",
              random.nextDouble() * 200,
              random.nextDouble() * 200,
              e,
              random.nextInt(5) == 0 ? " F" + (600 + random.nextInt(3000)) : ""));
    }
    double fed = 0;
    double furthest = 0;
    double last = 0;
    double x = Double.NaN;
    double y = Double.NaN;
    double feed = 1800;
    double seconds = 0;
    for (String line : lines) {
      if (line.startsWith("G92")) {
        last = 0;
      }
      if (!line.startsWith("G1 X")) {
        continue;
      }
      String[] words = line.split(" ", -1);
      double toX = Double.parseDouble(words[1].substring(1));
      double toY = Double.parseDouble(words[2].substring(1));
      double toE = Double.parseDouble(words[3].substring(1));
      feed = words.length > 4 ? Double.parseDouble(words[4].substring(1)) : feed;
      fed += toE - last;
      last = toE;
      furthest = Math.max(furthest, fed);
      if (!Double.isNaN(x)) {
        seconds += Math.hypot(toX - x, toY - y) / feed * 60;
      }
      x = toX;
      y = toY;
    }
    PrintProgramme programme = read(lines.toArray(String[]::new));
    assertThat(programme.unreadLines()).isZero();
    assertThat(net(programme)).isCloseTo(furthest, within(1e-11 * furthest));
    assertThat(programme.leastTime().in(SECOND)).isCloseTo(seconds, within(1e-11 * seconds));
  }

  @Test
  void interruptionStopsAtOnceAndKeepsWhatWasRead() throws IOException {
    byte[] start = "M83\nG1 X1 E1\n".getBytes(StandardCharsets.US_ASCII);
    InputStream endless =
        new InputStream() {
          private int at;

          @Override
          public int read() {
            return at < start.length ? start[at++] : '\n';
          }

          @Override
          public int read(byte[] into, int from, int length) {
            if (at > start.length + 1_000_000) {
              Thread.currentThread().interrupt();
            }
            for (int i = 0; i < length; i++) {
              into[from + i] = at < start.length ? start[at] : (byte) '\n';
              at++;
            }
            return length;
          }
        };
    PrintProgramme programme = GCodeReader.standard().read(() -> endless);
    assertThat(Thread.interrupted()).isTrue();
    assertThat(programme.complete()).isFalse();
    assertThat(programme.findings().get(0).message())
        .isEqualTo("the reading was interrupted: all figures are of its beginning only");
    assertThat(net(programme)).isEqualTo(1);
    assertThat(severity(programme, GCodeFinding.LINES_UNDERSTOOD)).isEqualTo(Severity.WARNING);
  }

  @Test
  void progressGoesFromNothingToAll() throws IOException {
    List<Double> heard = new ArrayList<>();
    byte[] bytes = "G1 X1 E1\n".repeat(50_000).getBytes(StandardCharsets.US_ASCII);
    GCodeReader.standard().read(ByteSource.of(bytes), heard::add);
    assertThat(heard).isSorted().hasSizeGreaterThan(5);
    assertThat(heard.get(heard.size() - 1)).isEqualTo(1);
    // 450 000 bytes, the first portion of 65 536
    assertThat(heard.get(0)).isCloseTo(65_536 / 450_000.0, within(1e-12));
    List<Double> unknown = new ArrayList<>();
    GCodeReader.standard().read(() -> ByteSource.of(bytes).open(), unknown::add);
    // some file systems call files empty that are not
    GCodeReader.standard().read(saidToBeEmpty(bytes), unknown::add);
    assertThat(unknown).isEmpty();
  }

  private static ByteSource saidToBeEmpty(byte[] bytes) {
    return new ByteSource() {
      @Override
      public InputStream open() throws IOException {
        return ByteSource.of(bytes).open();
      }

      @Override
      public long size() {
        return 0;
      }
    };
  }

  @Test
  void feedRatesOfZeroAndWaitsBelowItTakeNoTime() throws IOException {
    PrintProgramme programme =
        read("G21 M83", "G1 X0 Y0 Z0 F0", "G1 X10 E1", "G4 P-5000", "G4 S-1");
    assertThat(programme.leastTime().si()).isZero();
    assertThat(severity(programme, GCodeFinding.MOTION_TIMED)).isEqualTo(Severity.NOTE);
    assertThat(net(programme)).isEqualTo(1);
  }

  @Test
  void numbersBeyondAnyMachineAreTold() throws IOException {
    PrintProgramme programme =
        read("G21 M83", "G1 X" + "9".repeat(400) + " E1", "G1 E1000000000001", "G1 E2");
    assertThat(programme.unreadLines()).isEqualTo(2);
    assertThat(programme.firstUnreadLines().get(0).reason())
        .isEqualTo("X is larger than any machine; accepted is up to 1e12");
    assertThat(net(programme)).isEqualTo(2);
  }
}
