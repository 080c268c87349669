package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.thermal.conduction.EnthalpyConduction;
import dev.kilnledger.units.Amounts;
import org.junit.jupiter.api.Test;

/** Errors of the core at every quarter of an hour against four times the cells and short steps. */
class ConductionBenchmarkTest {
  private static final double[] REFERENCE =
      PackedCylinder.quarterly(
          EnthalpyConduction.adaptive(4 * PackedCylinder.CELLS, Amounts.kelvinDifference(1e-4))
              .forecast(PackedCylinder.charge(), LongFiring.profile()));

  private final ConductionBenchmark benchmark = new ConductionBenchmark();

  /** Half a kelvin is asked, and the peers are not held to more than the library keeps. */
  @Test
  void everyVariantKeepsHalfAKelvinAndThePeersNoMore() {
    double own =
        PackedCylinder.error(PackedCylinder.quarterly(benchmark.finiteVolumes()), REFERENCE);
    double stiff = PackedCylinder.error(benchmark.stiffIntegrator(), REFERENCE);
    double explicit = PackedCylinder.error(benchmark.explicitIntegrator(), REFERENCE);
    assertThat(stiff).isLessThan(0.5);
    assertThat(explicit).isLessThan(0.5);
    assertThat(own).isLessThanOrEqualTo(Math.min(stiff, explicit));
  }

  /** With short steps the same cells lead to the same: what is left is how faces are averaged. */
  @Test
  void thePeerSolvesTheSameEquations() {
    double[] peer = new ConductionBenchmark(1e-3).stiffIntegrator();
    double[] same =
        PackedCylinder.quarterly(
            EnthalpyConduction.adaptive(PackedCylinder.CELLS, Amounts.kelvinDifference(1e-4))
                .forecast(PackedCylinder.charge(), LongFiring.profile()));
    assertThat(PackedCylinder.error(peer, same)).isLessThan(0.03);
  }
}
