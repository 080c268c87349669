package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.benchmarks.PassageBenchmark.Figures;
import java.util.Comparator;
import org.junit.jupiter.api.Test;

class PassageBenchmarkTest {
  private final PassageBenchmark benchmark = new PassageBenchmark();

  /** The same formulas, so alike but for rounding: some fifty operations of half a last place. */
  @Test
  void givesTheSameFiguresInBothVariants() {
    Comparator<Double> alike =
        (a, b) -> Math.abs(a - b) <= 1e-14 * Math.max(Math.abs(b), 1e-3) ? 0 : Double.compare(a, b);
    for (int i = 0; i < PassageBenchmark.COUNT; i++) {
      Figures typed = benchmark.figures(benchmark.parts[i], benchmark.feedstocks[i]);
      Figures byHand = PassageBenchmark.figures(benchmark.wanted[i], benchmark.stocks[i]);
      assertThat(typed)
          .usingRecursiveComparison()
          .withComparatorForType(alike, Double.class)
          .isEqualTo(byHand);
    }
  }

  /** Conservation of mass: the metal's volume is the sintered volume less its pores. */
  @Test
  void keepsTheMetal() {
    Figures figures = benchmark.figures(benchmark.parts[0], benchmark.feedstocks[0]);
    double solid = benchmark.wanted[0].volume() * (1 - figures.sinteredPorosity());
    assertThat(figures.metal() / benchmark.stocks[0].metalDensity())
        .isCloseTo(solid, within(1e-14 * solid));
  }
}
