package dev.kilnledger.examples;

import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.gcode.GCodeReader;
import dev.kilnledger.core.gcode.PrintProgramme;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PricedPrintTest {
  @TempDir private Path directory;

  /** Layers of 30 x 20 mm, 6 mm high, with lines of 0.6 mm, layers of 0.3 mm and 5 % of voids. */
  private static String block(String end) {
    StringBuilder text = new StringBuilder("; a block" + end + "G21" + end + "G90" + end);
    text.append("M83" + end + "M104 S200" + end + "G92 X0 Y0 Z0 E0" + end);
    double filament = 0.95 * 0.6 * 0.3 * 30 / (Math.PI * 1.75 * 1.75 / 4);
    for (int layer = 1; layer <= 20; layer++) {
      text.append(String.format(Locale.ROOT, "G1 Z%.1f F1800%s", 0.3 * layer, end));
      for (int line = 0; line < 33; line++) {
        text.append(
            String.format(
                Locale.ROOT,
                "G1 X%d Y%.1f%sG1 X%d E%.6f%s",
                line % 2 == 0 ? 0 : 30,
                0.6 * line,
                end,
                line % 2 == 0 ? 30 : 0,
                filament,
                end));
      }
    }
    return text.append("M117 fertig é").append(end).toString();
  }

  private Path written(String text) throws IOException {
    return Files.writeString(directory.resolve("block.gcode"), text, StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n"})
  void theProgrammeStaysAsItWasBehindItsComments(String end) throws IOException {
    Path from = written(block(end));
    Path to = directory.resolve("priced.gcode");
    PricedPrint.main(new String[] {from.toString(), to.toString(), "4"});
    byte[] before = Files.readAllBytes(from);
    byte[] after = Files.readAllBytes(to);
    assertThat(Arrays.copyOfRange(after, after.length - before.length, after.length))
        .isEqualTo(before);
    String comments = new String(after, 0, after.length - before.length, StandardCharsets.UTF_8);
    assertThat(comments).endsWith(end);
    assertThat(comments.split(end, -1))
        .allMatch(line -> line.isEmpty() || line.startsWith("; kilnledger: "));
    assertThat(comments).contains("first part EUR 2247.91").contains("(invented prices)");
    PrintProgramme again = GCodeReader.standard().read(ByteSource.of(to));
    assertThat(again.netFilament())
        .isEqualTo(GCodeReader.standard().read(ByteSource.of(from)).netFilament());
  }

  @Test
  void thePartIsWhatTheFilamentMakes() throws IOException {
    PrintProgramme programme = GCodeReader.standard().read(ByteSource.of(written(block("\n"))));
    Job job = PricedPrint.job(programme, WindowWorkshop.latchCams(2), Amounts.millimetres(4));
    // 20 layers of 33 lines, each 0.6 x 0.3 x 30 mm less 5 % of voids, of which the metal stays
    double cubicMillimetres = 0.95 * 20 * 33 * 0.6 * 0.3 * 30;
    double metal =
        cubicMillimetres
            * job.feedstock().density().si()
            / 1e6
            * job.feedstock().metalMassFraction().si();
    assertThat(job.part().finishedMass().orElseThrow().in(GRAM)).isCloseTo(metal, within(1e-4));
    // 30 mm and a strand of 0.6 mm, shrunk; the workshop's cams are printed 1.198 times as large
    assertThat(job.part().envelope().x().in(MILLIMETRE)).isCloseTo(30.6 / 1.198, within(0.02));
    assertThat(job.part().envelope().z().in(MILLIMETRE)).isCloseTo(6 / 1.198, within(0.01));
  }

  @Test
  void programmesOfSeveralToolsAndWrongArgumentsAreRefused() throws IOException {
    Path two = written("M83\nG92 X0 Y0 Z0\nG1 X1 Y1 Z1 E1\nT1\nG1 X2 E1\n");
    PrintProgramme programme = GCodeReader.standard().read(ByteSource.of(two));
    Job workshop = WindowWorkshop.latchCams(2);
    assertThatThrownBy(() -> PricedPrint.job(programme, workshop, Amounts.millimetres(4)))
        .hasMessageContaining("2 tools extrude; accepted is one");
    assertThatThrownBy(() -> PricedPrint.main(new String[0]))
        .hasMessageContaining("accepted are three");
  }
}
