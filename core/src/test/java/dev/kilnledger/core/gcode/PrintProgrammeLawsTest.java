package dev.kilnledger.core.gcode;

import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.SECOND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.Law;
import dev.kilnledger.core.part.Extent;
import dev.kilnledger.core.reading.ByteSource;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;

/**
 * What holds for every print programme: it is read as what was printed into it, however it is
 * written. Positions are whole hundredths of a millimetre and feeds whole thousandths, so that the
 * expected figures are sums of integers.
 */
class PrintProgrammeLawsTest {
  /** Sums of some dozen decimals, each rounded once, over feed rates. */
  private static final double ROUNDING = 1e-9;

  /**
   * One straight motion: to a place in hundredths, feeding thousandths, at millimetres a minute.
   */
  record Move(int x, int y, int z, int feeding, int feedRate) {}

  @Provide
  Arbitrary<List<Move>> moves() {
    Arbitrary<Integer> place = Arbitraries.integers().between(0, 20_000);
    return Combinators.combine(
            place,
            place,
            Arbitraries.integers().between(20, 2_000),
            // Fed on most ways, drawn back on some.
            Arbitraries.integers().between(-3_000, 9_000),
            Arbitraries.integers().between(60, 12_000))
        .as(Move::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(12);
  }

  @Law
  void extrudesWhatWasPrintedIntoIt(@ForAll("moves") List<Move> moves) throws IOException {
    PrintProgramme read = read(relative(moves));
    assertThat(read.netFilament().in(MILLIMETRE)).isCloseTo(net(moves), within(ROUNDING));
    long drawnBack = moves.stream().mapToLong(move -> Math.max(0, -move.feeding())).sum();
    double told = read.tools().stream().mapToDouble(use -> use.drawnBack().in(MILLIMETRE)).sum();
    if (net(moves) > 0) {
      assertThat(told).isCloseTo(drawnBack / 1000.0, within(ROUNDING));
    }
    assertThat(read.unreadLines()).isZero();
  }

  @Law
  void takesAsLongAsItsWaysAtTheirFeedRates(@ForAll("moves") List<Move> moves) throws IOException {
    double seconds = 0;
    Move at = null;
    for (Move move : moves) {
      double way =
          at == null
              ? 0
              : Math.sqrt(
                      Math.pow(move.x() - at.x(), 2)
                          + Math.pow(move.y() - at.y(), 2)
                          + Math.pow(move.z() - at.z(), 2))
                  / 100;
      if (at != null) {
        double length = way == 0 ? Math.abs(move.feeding()) / 1000.0 : way;
        seconds += length / move.feedRate() * 60;
      }
      at = move;
    }
    PrintProgramme read = read(relative(moves));
    assertThat(read.leastTime().in(SECOND)).isCloseTo(seconds, within(ROUNDING * (1 + seconds)));
  }

  @Law
  void tellsTheSameInAbsoluteAndRelativeExtrusion(@ForAll("moves") List<Move> moves)
      throws IOException {
    same(read(absolute(moves)), read(relative(moves)));
  }

  @Law
  void tellsTheSameInInches(@ForAll("moves") List<Move> moves) throws IOException {
    List<String> lines = new ArrayList<>(List.of("G20 G90 M83"));
    for (Move move : moves) {
      lines.add(
          "G1 X"
              + inches(move.x(), 100)
              + " Y"
              + inches(move.y(), 100)
              + " Z"
              + inches(move.z(), 100)
              + " E"
              + inches(move.feeding(), 1000)
              + " F"
              + inches(move.feedRate(), 1));
    }
    // Inches are printed to 16 digits.
    same(read(lines), read(relative(moves)));
  }

  @Law
  void tellsTheSameHoweverItIsWritten(@ForAll("moves") List<Move> moves) throws IOException {
    List<String> loose = new ArrayList<>();
    int number = 0;
    for (String line : relative(moves)) {
      String text = "N" + ++number + " " + line.toLowerCase(Locale.ROOT);
      loose.add(text + checksum(text));
      loose.add("; " + line);
      loose.add("");
      loose.add("(" + line + ")");
    }
    same(read(loose), read(relative(moves)));
    List<String> tight = relative(moves).stream().map(line -> line.replace(" ", "\t ")).toList();
    same(read(tight), read(relative(moves)));
    List<String> close = relative(moves).stream().map(line -> line.replace(" ", "")).toList();
    same(read(close), read(relative(moves)));
  }

  @Law
  void tellsTheSameWithEveryWayCutInTwo(@ForAll("moves") List<Move> moves) throws IOException {
    List<String> lines = new ArrayList<>(List.of("G21 G90 M83"));
    Move at = null;
    for (Move move : moves) {
      if (at != null) {
        lines.add(
            line(
                (at.x() + move.x()) / 200.0,
                (at.y() + move.y()) / 200.0,
                (at.z() + move.z()) / 200.0,
                move.feeding() / 2000.0,
                move.feedRate()));
        lines.add(
            line(
                move.x() / 100.0,
                move.y() / 100.0,
                move.z() / 100.0,
                move.feeding() / 2000.0,
                move.feedRate()));
      } else {
        lines.add(line(move));
      }
      at = move;
    }
    PrintProgramme cut = read(lines);
    PrintProgramme whole = read(relative(moves));
    assertThat(cut.netFilament().in(MILLIMETRE)).isCloseTo(net(moves), within(ROUNDING));
    double seconds = whole.leastTime().in(SECOND);
    assertThat(cut.leastTime().in(SECOND)).isCloseTo(seconds, within(ROUNDING * (1 + seconds)));
    // Where a way makes good what was drawn back, its first half may leave nothing.
    if (cut.extent().isPresent()) {
      assertThat(cut.extent().get().highX().in(MILLIMETRE))
          .isLessThanOrEqualTo(whole.extent().orElseThrow().highX().in(MILLIMETRE) + ROUNDING);
    }
  }

  @Law
  void movesItsExtentWithItsPositions(@ForAll("moves") List<Move> moves) throws IOException {
    List<Move> moved =
        moves.stream()
            .map(m -> new Move(m.x() + 500, m.y() + 700, m.z(), m.feeding(), m.feedRate()))
            .toList();
    PrintProgramme here = read(relative(moves));
    PrintProgramme there = read(relative(moved));
    assertThat(there.extent().isPresent()).isEqualTo(here.extent().isPresent());
    if (here.extent().isPresent()) {
      Extent a = here.extent().get();
      Extent b = there.extent().get();
      assertThat(b.lowX().in(MILLIMETRE) - a.lowX().in(MILLIMETRE)).isCloseTo(5, within(ROUNDING));
      assertThat(b.highY().in(MILLIMETRE) - a.highY().in(MILLIMETRE))
          .isCloseTo(7, within(ROUNDING));
    }
  }

  /** The furthest that the filament ever was fed: what is fed after a retraction makes it good. */
  private static double net(List<Move> moves) {
    long fed = 0;
    long furthest = 0;
    for (Move move : moves) {
      fed += move.feeding();
      furthest = Math.max(furthest, fed);
    }
    return furthest / 1000.0;
  }

  private static void same(PrintProgramme one, PrintProgramme other) {
    assertThat(one.netFilament().in(MILLIMETRE))
        .isCloseTo(other.netFilament().in(MILLIMETRE), within(ROUNDING));
    double seconds = other.leastTime().in(SECOND);
    assertThat(one.leastTime().in(SECOND)).isCloseTo(seconds, within(ROUNDING * (1 + seconds)));
    assertThat(one.unreadLines()).isZero();
    assertThat(one.extent().isPresent()).isEqualTo(other.extent().isPresent());
    if (other.extent().isPresent()) {
      assertThat(one.extent().get().highX().in(MILLIMETRE))
          .isCloseTo(other.extent().get().highX().in(MILLIMETRE), within(ROUNDING));
      assertThat(one.extent().get().lowZ().in(MILLIMETRE))
          .isCloseTo(other.extent().get().lowZ().in(MILLIMETRE), within(ROUNDING));
    }
  }

  private static List<String> relative(List<Move> moves) {
    List<String> lines = new ArrayList<>(List.of("G21 G90 M83"));
    moves.forEach(move -> lines.add(line(move)));
    return lines;
  }

  private static List<String> absolute(List<Move> moves) {
    List<String> lines = new ArrayList<>(List.of("G21 G90 M82", "G92 E0"));
    int fed = 0;
    for (Move move : moves) {
      fed += move.feeding();
      lines.add(
          line(
              move.x() / 100.0, move.y() / 100.0, move.z() / 100.0, fed / 1000.0, move.feedRate()));
    }
    return lines;
  }

  private static String line(Move move) {
    return line(
        move.x() / 100.0,
        move.y() / 100.0,
        move.z() / 100.0,
        move.feeding() / 1000.0,
        move.feedRate());
  }

  private static String line(double x, double y, double z, double e, int f) {
    return "G1 X" + plain(x) + " Y" + plain(y) + " Z" + plain(z) + " E" + plain(e) + " F" + f;
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).toPlainString();
  }

  private static String inches(int number, int parts) {
    return new BigDecimal(number)
        .divide(new BigDecimal("25.4").multiply(new BigDecimal(parts)), MathContext.DECIMAL64)
        .toPlainString();
  }

  private static String checksum(String text) {
    int sum = 0;
    for (byte b : text.getBytes(StandardCharsets.US_ASCII)) {
      sum ^= b;
    }
    return "*" + sum;
  }

  private static PrintProgramme read(List<String> lines) throws IOException {
    byte[] bytes = String.join("\n", lines).getBytes(StandardCharsets.US_ASCII);
    return GCodeReader.standard().read(ByteSource.of(bytes));
  }
}
