package dev.kilnledger.benchmarks;

import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.gcode.GCodeReader;
import dev.kilnledger.core.gcode.PrintProgramme;
import dev.kilnledger.core.reading.ByteSource;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class PrintProgrammeBenchmarkTest {

  /** E is relative, and what is drawn back is made good, so its words add up to the filament. */
  @Test
  void bothReadTheSameWords() throws IOException {
    PrintProgrammeBenchmark benchmark = new PrintProgrammeBenchmark();
    benchmark.megabytes = 1;
    benchmark.write();
    PrintProgramme programme = benchmark.programme();
    WordCounter words = (WordCounter) benchmark.words();
    benchmark.remove();
    assertThat(programme.lines()).isEqualTo(words.lines()).isGreaterThan(30_000);
    assertThat(programme.comments()).isEqualTo(words.comments());
    assertThat(programme.unreadLines()).isZero();
    assertThat(words.words()).isGreaterThan(3 * words.lines());
    assertThat(programme.tools()).hasSize(1);
    assertThat(programme.tools().get(0).netFilament().in(MILLIMETRE))
        .isCloseTo(words.sum('E'), within(1e-9 * words.sum('E')));
  }

  /**
   * White space anywhere, letters of both sizes, comments of both kinds, line ends of all three.
   */
  @Test
  void bothReadAllFormsOfALine() throws IOException {
    byte[] text =
        "M83\r\ng0 x 1 0.5(in)y+2z.2\r\rG1\tX-1.25 e1. 5 (one) (two)\n;\r\nG1 Y-3E0.25 ; end\rG1 X4 E2"
            .getBytes(StandardCharsets.US_ASCII);
    WordCounter words = new WordCounter();
    words.read(new ByteArrayInputStream(text));
    PrintProgramme programme = GCodeReader.standard().read(ByteSource.of(text));
    assertThat(words.lines()).isEqualTo(7).isEqualTo(programme.lines());
    assertThat(words.comments()).isEqualTo(5).isEqualTo(programme.comments());
    assertThat(programme.unreadLines()).isZero();
    assertThat(words.words()).isEqualTo(14);
    assertThat(words.sum('X')).isEqualTo(10.5 - 1.25 + 4);
    assertThat(words.sum('Y')).isEqualTo(2.0 - 3.0);
    assertThat(words.sum('E')).isEqualTo(1.5 + 0.25 + 2);
    assertThat(programme.tools().get(0).netFilament().in(MILLIMETRE))
        .isCloseTo(1.5 + 0.25 + 2, within(1e-12));
  }
}
