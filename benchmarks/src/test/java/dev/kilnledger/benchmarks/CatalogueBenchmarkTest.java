package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class CatalogueBenchmarkTest {

  @Test
  void batchAndLoopUseUpTheSame() throws IOException {
    CatalogueBenchmark benchmark = new CatalogueBenchmark();
    benchmark.rows = 20;
    benchmark.write();
    var summary = benchmark.batch();
    assertThat(summary.priced()).isEqualTo(20);
    assertThat(summary.usage()).isEqualTo(benchmark.loop());
  }
}
