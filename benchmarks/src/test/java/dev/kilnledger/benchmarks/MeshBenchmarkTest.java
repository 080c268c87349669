package dev.kilnledger.benchmarks;

import static dev.kilnledger.units.TradeUnits.CUBIC_MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.mesh.MeshSize;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class MeshBenchmarkTest {

  /**
   * Both add the same doubles up, about another origin; and both are near the torus of geometry.
   */
  @Test
  void everyVariantSizesTheSameBody() throws IOException {
    MeshBenchmark benchmark = new MeshBenchmark();
    benchmark.around = 200;
    benchmark.across = 100;
    benchmark.write();
    MeshSize size = benchmark.size();
    MeshSize whole = benchmark.sizeWithSection();
    FacetAdder sums = (FacetAdder) benchmark.sums();
    benchmark.remove();
    assertThat(size.closed()).isTrue();
    assertThat(size.facets()).isEqualTo(40_000);
    double volume = size.volume().orElseThrow().in(CUBIC_MILLIMETRE);
    assertThat(volume).isCloseTo(sums.volume(), within(1e-9 * volume));
    assertThat(whole.volume()).isEqualTo(size.volume());
    assertThat(size.area().si() * 1e6).isCloseTo(sums.area(), within(1e-9 * sums.area()));
    assertThat(size.extent().lowX().in(MILLIMETRE)).isCloseTo(sums.low(0), within(1e-12));
    assertThat(size.extent().highZ().in(MILLIMETRE)).isCloseTo(sums.high(2), within(1e-12));
    // facets lie inside by the square of their angle, 1/6 (2 pi / 100)^2 of the volume at most
    assertThat(volume).isCloseTo(TorusFile.volume(), within(1e-3 * TorusFile.volume()));
    assertThat(sums.area()).isCloseTo(TorusFile.area(), within(1e-3 * TorusFile.area()));
  }
}
