package dev.kilnledger.benchmarks;

import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.gcode.PrintProgramme;
import java.io.IOException;
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
}
