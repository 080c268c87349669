package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class AmountBenchmarkTest {

  /** 12.5 mL times 5.5 g/mL plus 1 g, by hand; the variants differ in rounding only. */
  @Test
  void doesTheSameWorkInEveryVariant() {
    AmountBenchmark benchmark = new AmountBenchmark();
    assertThat(benchmark.recordOfDouble()).isCloseTo(69.75, within(1e-12));
    assertThat(benchmark.amount()).isCloseTo(69.75, within(1e-12));
    assertThat(benchmark.referenceImplementation()).isCloseTo(69.75, within(1e-12));
  }
}
