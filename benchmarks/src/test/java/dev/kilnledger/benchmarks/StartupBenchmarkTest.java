package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class StartupBenchmarkTest {
  private final StartupBenchmark benchmark = new StartupBenchmark();

  @BeforeEach
  void start() throws IOException, InterruptedException {
    benchmark.start();
  }

  @AfterEach
  void end() throws IOException {
    benchmark.end();
  }

  /** What is read from the archive computes the same, and {@code -Xshare:on} fails without one. */
  @Test
  void everyProgramRunsToItsResult() throws IOException, InterruptedException {
    String result = benchmark.firstProgram();
    assertThat(result.lines()).hasSize(2);
    assertThat(result).startsWith("print it ").contains("times as large", "in the long run EUR");
    assertThat(benchmark.firstProgramShared()).isEqualTo(result);
    assertThat(benchmark.emptyMain().strip()).isEqualTo("nothing");
    assertThat(benchmark.emptyMainAfterOneSecond().strip()).isEqualTo("nothing");
  }
}
