package dev.kilnledger.core.gcode;

import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.SECOND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Extent;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What blocks do to the state of a machine, each held against arithmetic by hand. */
class MachineTest {
  /** A few roundings of numbers below a hundred. */
  private static final double ROUNDING = 1e-12;

  private static PrintProgramme run(GCodeReader reader, String... lines) throws IOException {
    return reader.read(ByteSource.of(String.join("\n", lines).getBytes(StandardCharsets.US_ASCII)));
  }

  private static PrintProgramme run(String... lines) throws IOException {
    return run(GCodeReader.standard(), lines);
  }

  private static double net(PrintProgramme programme) {
    return programme.netFilament().in(MILLIMETRE);
  }

  private static String why(PrintProgramme programme) {
    return programme.firstUnreadLines().get(0).reason();
  }

  private static double measured(PrintProgramme programme, GCodeFinding code) {
    return programme.findings().stream()
        .filter(finding -> finding.code() == code)
        .findFirst()
        .orElseThrow()
        .measured()
        .orElseThrow()
        .si();
  }

  @Test
  void startsInTheModeThatTheReaderIsGiven() throws IOException {
    String[] lines = {"G1 X1 E1", "G1 X2 E1", "G1 X3 E1"};
    assertThat(net(run(new GCodeReader(Amounts.millimetres(1), ExtrusionMode.RELATIVE), lines)))
        .isEqualTo(3);
    assertThat(net(run(new GCodeReader(Amounts.millimetres(1), ExtrusionMode.ABSOLUTE), lines)))
        .isEqualTo(1);
    assertThat(net(run(new GCodeReader(Amounts.inches(1), ExtrusionMode.ABSOLUTE), lines)))
        .isEqualTo(25.4);
  }

  @Test
  void goesOnFromWhereItIsWhenTheModeChanges() throws IOException {
    assertThat(net(run("M83", "G1 X1 E5", "M82", "G1 X2 E7"))).isEqualTo(7);
  }

  @Test
  void setsPositionsInTheUnitOfTheWays() throws IOException {
    PrintProgramme inches = run("G20 M82", "G92 X1 Y0 Z0 E2", "G1 X2 E3");
    assertThat(net(inches)).isCloseTo(25.4, within(10 * ROUNDING));
    assertThat(inches.extent().orElseThrow().lowX().in(MILLIMETRE)).isEqualTo(25.4);
    // G92 alone sets all axes to zero, with one axis only that one
    PrintProgramme all = run("G21 M82", "G1 X9 Y9 Z9 E9", "G92", "G1 X1 E1");
    assertThat(all.extent().orElseThrow().lowX().in(MILLIMETRE)).isZero();
    assertThat(net(all)).isEqualTo(9 + 1);
    PrintProgramme one = run("G21 M82", "G92 X4 Y0 Z0 E0", "G1 X9 E9", "G92 X0", "G1 X1 E10");
    assertThat(net(one)).isEqualTo(10);
  }

  @Test
  void settingOneAxisLeavesTheFilamentWhereItIs() throws IOException {
    // fed by 5 and 2 it stands at 7, whatever the last word E was
    assertThat(net(run("G21 M83", "G1 X1 E5", "G1 X2 E2", "G92 X0", "M82", "G1 X1 E8")))
        .isEqualTo(8);
    PrintProgramme unset = run("G21 M82", "G92 X0 Y0 Z0", "G1 X1 E1");
    assertThat(
            unset.findings().stream()
                .filter(finding -> finding.code() == GCodeFinding.EXTRUSION_START_SET)
                .map(Finding::severity))
        .containsExactly(Severity.NOTE);
  }

  @Test
  void addsWaysUnderG91() throws IOException {
    PrintProgramme programme =
        run("G21 G91 M83", "G92 X10 Y0 Z0", "G1 X5 E1 F60", "G1 X5 E1", "G1 Y-2 E1");
    Extent extent = programme.extent().orElseThrow();
    assertThat(extent.highX().in(MILLIMETRE)).isEqualTo(20);
    assertThat(extent.lowY().in(MILLIMETRE)).isEqualTo(-2);
    assertThat(programme.leastTime().in(SECOND)).isCloseTo(5 + 5 + 2, within(ROUNDING));
  }

  @Test
  void codesOfTheLineBeforeAreForgotten() throws IOException {
    PrintProgramme programme =
        run("G21 M83", "G92 X0 Y0 Z0", "G0 G91", "G90", "G1 X5 E1", "G1 X7 E1");
    assertThat(programme.extent().orElseThrow().highX().in(MILLIMETRE)).isEqualTo(7);
  }

  @Test
  void aStrandAlongOneAxisHasAnExtent() throws IOException {
    Extent extent = run("G21 M83", "G92 X1 Y0 Z0", "G1 Y5 E1").extent().orElseThrow();
    assertThat(extent.lowX()).isEqualTo(extent.highX());
    assertThat(extent.highY().in(MILLIMETRE)).isEqualTo(5);
  }

  @Test
  void refusesToMoveAndToSetInOneLine() throws IOException {
    PrintProgramme programme = run("M83", "G92 G1 X5 E5");
    assertThat(why(programme)).isEqualTo("G92 and a motion in one line; accepted is one of them");
    assertThat(net(programme)).isZero();
  }

  @Test
  void hasTwoHundredAndFiftySixTools() throws IOException {
    StringBuilder lines = new StringBuilder("M83\n");
    for (int tool = 0; tool < 256; tool++) {
      lines.append("T").append(tool).append("\nG1 X1 E1\n");
    }
    PrintProgramme programme = run(lines.toString());
    assertThat(programme.unreadLines()).isZero();
    assertThat(programme.tools()).hasSize(256);
    assertThat(why(run(lines + "T256")))
        .isEqualTo(
            "there is no tool of that number; accepted are 256 tools of whole numbers from 0 up");
    assertThat(why(run("T1.5"))).startsWith("there is no tool of that number");
  }

  @Test
  void homingLosesTheAxesItNamesOrAll() throws IOException {
    String[] start = {"G21 M83", "G92 X0 Y0 Z0"};
    for (String axis : new String[] {"X", "Y", "Z"}) {
      PrintProgramme programme =
          run(start[0], start[1], "G28 " + axis, "G1 " + axis + "7", "G1 X3 Y3 Z3 E1");
      assertThat(programme.extent()).as(axis).isPresent();
      assertThat(programme.unreadLines()).isZero();
    }
    assertThat(run(start[0], start[1], "G28", "G1 X1 Y1", "G1 X3 E1").extent()).isEmpty();
    assertThat(run(start[0], start[1], "G28", "G1 X1 Z1", "G1 X3 E1").extent()).isEmpty();
    assertThat(run(start[0], start[1], "G28", "G1 Y1 Z1", "G1 Y3 E1").extent()).isEmpty();
    assertThat(run(start[0], start[1], "G28 Z", "G1 X5 E1").extent()).isEmpty();
  }

  @Test
  void countsMotionsWithoutATimeAndWithoutAPlace() throws IOException {
    PrintProgramme programme = run("G21 M83", "G1 X1 E1", "G1 X2 E1", "G1 X3 E1", "G4 P10");
    assertThat(measured(programme, GCodeFinding.MOTION_TIMED)).isEqualTo(3);
    assertThat(measured(programme, GCodeFinding.EXTENT_COMPLETE)).isEqualTo(3);
    assertThat(measured(run("G21", "G1 F60", "G1", "G1 E0"), GCodeFinding.MOTION_TIMED)).isZero();
  }

  @Test
  void turnsCounterclockwiseUnderG3() throws IOException {
    // from (10, 0) about the origin to (0, 10): a quarter one way, three quarters the other
    String[] start = {"G21 M83", "G1 X10 Y0 Z0 F60"};
    assertThat(run(start[0], start[1], "G3 X0 Y10 I-10").leastTime().in(SECOND))
        .isCloseTo(5 * Math.PI, within(100 * ROUNDING));
    assertThat(run(start[0], start[1], "G2 X0 Y10 I-10").leastTime().in(SECOND))
        .isCloseTo(15 * Math.PI, within(100 * ROUNDING));
  }

  /** Each arc's least and greatest x and y by hand, centre (20, 30), radius 10. */
  @ParameterizedTest
  @CsvSource({
    "30, 30, G3, 20, 40, 20, 30, 30, 40", // right to top
    "20, 40, G3, 10, 30, 10, 20, 30, 40", // top to left
    "10, 30, G3, 20, 20, 10, 20, 20, 30", // left to bottom
    "20, 20, G3, 30, 30, 20, 30, 20, 30", // bottom to right
    "30, 30, G2, 20, 40, 10, 30, 20, 40", // right by bottom and left to top
    "20, 40, G2, 10, 30, 10, 30, 20, 40", // top by right and bottom to left
    "10, 30, G2, 20, 20, 10, 30, 20, 40",
    "20, 20, G2, 30, 30, 10, 30, 20, 40",
    "26, 38, G3, 26, 22, 10, 26, 20, 40", // by top, left and bottom: 6, 8, 10
    "26, 38, G2, 26, 22, 26, 30, 22, 38" // by the right
  })
  void arcsReachAsFarAsTheirCircle(
      double fromX,
      double fromY,
      String code,
      double toX,
      double toY,
      double lowX,
      double highX,
      double lowY,
      double highY)
      throws IOException {
    String arc = code + " X" + toX + " Y" + toY + " E1";
    PrintProgramme programme =
        run(
            "G21 M83",
            "G1 X" + fromX + " Y" + fromY + " Z0 F60",
            arc + " I" + (20 - fromX) + " J" + (30 - fromY));
    Extent extent = programme.extent().orElseThrow();
    assertThat(extent.lowX().in(MILLIMETRE)).isCloseTo(lowX, within(1e-9));
    assertThat(extent.highX().in(MILLIMETRE)).isCloseTo(highX, within(1e-9));
    assertThat(extent.lowY().in(MILLIMETRE)).isCloseTo(lowY, within(1e-9));
    assertThat(extent.highY().in(MILLIMETRE)).isCloseTo(highY, within(1e-9));
    // by its radius it is the same arc, below zero where it goes the longer way
    boolean longer = programme.leastTime().in(SECOND) > 10 * Math.PI + 1e-9;
    PrintProgramme byRadius =
        run(
            "G21 M83",
            "G1 X" + fromX + " Y" + fromY + " Z0 F60",
            arc + (longer ? " R-10" : " R10"));
    assertThat(byRadius.leastTime().in(SECOND))
        .isCloseTo(programme.leastTime().in(SECOND), within(1e-9));
    assertThat(byRadius.extent().orElseThrow().lowX().in(MILLIMETRE)).isCloseTo(lowX, within(1e-9));
    assertThat(byRadius.extent().orElseThrow().highY().in(MILLIMETRE))
        .isCloseTo(highY, within(1e-9));
  }

  @Test
  void refusesAnArcThatDoesNotLeadToItsEnd() throws IOException {
    String[] start = {"G21 M83", "G1 X10 Y0 Z0 F60"};
    // 0.009 mm off the circle is four words rounded, 0.011 mm is not; so for half a circle by R
    for (String fits : new String[] {"G3 X0 Y10.009 I-10", "G3 X-10 Y0 R9.996"}) {
      assertThat(run(start[0], start[1], fits).unreadLines()).as(fits).isZero();
    }
    for (String off : new String[] {"G3 X0 Y10.011 I-10", "G3 X-10 Y0 R9.98", "G3 X10 Y0 R10"}) {
      assertThat(why(run(start[0], start[1], off))).as(off).startsWith("no arc leads");
    }
    // an end that misses the start by 0.005 mm, at the same angle, is a whole circle too
    assertThat(run(start[0], start[1], "G3 X10.005 Y0 I-10").leastTime().in(SECOND))
        .isCloseTo(20 * Math.PI, within(1e-9));
    // back to one coordinate of the start is no whole circle
    assertThat(run(start[0], start[1], "G3 X10 Y20 I0 J10").leastTime().in(SECOND))
        .isCloseTo(10 * Math.PI, within(1e-9));
    assertThat(run(start[0], start[1], "G3 X-10 Y0 I-10").leastTime().in(SECOND))
        .isCloseTo(10 * Math.PI, within(1e-9));
  }

  /** Ending where it starts it is once around, however start and offset round to a centre. */
  @Test
  void anArcThatEndsWhereItStartsIsAWholeCircle() throws IOException {
    Random random = new Random(11);
    for (int i = 0; i < 300; i++) {
      double x = random.nextInt(200_000) / 1000.0;
      double y = random.nextInt(200_000) / 1000.0;
      double first = (1 + random.nextInt(50_000)) / 1000.0;
      double second = random.nextInt(50_000) / 1000.0;
      String code = random.nextBoolean() ? "G2" : "G3";
      String arc = code + " X" + x + " Y" + y + " I" + first + " J" + second;
      PrintProgramme programme = run("G21 M83", "G1 X" + x + " Y" + y + " Z0 F60", arc);
      double circle = 2 * Math.PI * Math.hypot(first, second);
      assertThat(programme.leastTime().in(SECOND)).as(arc).isCloseTo(circle, within(1e-9));
    }
  }

  @Test
  void refusesAnArcFromAPlaceThatIsNotKnown() throws IOException {
    for (String line : new String[] {"G3 X0 Y10 I-10", "G3 X0 Y10 R10", "G2 Z5 I-10"}) {
      assertThat(why(run("G21 M83", line))).startsWith("no arc leads to that end");
    }
  }

  @Test
  void takesOffsetsAndRadiiInTheUnitOfTheWays() throws IOException {
    // a quarter of a circle of 1 inch at 1 inch per second
    for (String line : new String[] {"G3 X0 Y1 I-1 J0", "G3 X0 Y1 R1"}) {
      PrintProgramme programme = run("G20 M83", "G1 X1 Y0 Z0 F60", line);
      assertThat(programme.unreadLines()).isZero();
      assertThat(programme.leastTime().in(SECOND)).isCloseTo(Math.PI / 2, within(100 * ROUNDING));
    }
  }

  @Test
  void firstLayerHoldsAllThatLiesLowest() throws IOException {
    Extent first =
        run(
                "G21 M83",
                "G1 X1 Y0 Z0.2",
                "G1 X5 E1",
                "G1 X9 E1",
                "G1 Z0.4",
                "G1 X20 E1",
                "G1 Z0.3 E1")
            .firstLayer()
            .orElseThrow();
    assertThat(first.lowX().in(MILLIMETRE)).isEqualTo(1);
    assertThat(first.highX().in(MILLIMETRE)).isEqualTo(9);
  }
}
