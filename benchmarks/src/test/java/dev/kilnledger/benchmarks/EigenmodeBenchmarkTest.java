package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.thermal.conduction.CoreHistory;
import dev.kilnledger.thermal.conduction.EnthalpyConduction;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amounts;
import org.junit.jupiter.api.Test;

class EigenmodeBenchmarkTest {
  private final EigenmodeBenchmark benchmark = new EigenmodeBenchmark();

  private static double[] atEnds(CoreHistory history) {
    Profile core = history.core();
    double[] seconds = LongFiring.seconds();
    double[] kelvin = new double[seconds.length - 1];
    for (int i = 0; i < kelvin.length; i++) {
      double within = Math.min(seconds[i + 1], core.duration().si());
      kelvin[i] = core.temperatureAt(Amounts.seconds(within)).si();
    }
    return kelvin;
  }

  /**
   * The finite volumes are of second order in space and time, so a grid twice as fine with an
   * eighth of the error in a step has a quarter of the error: a sequence of them ends where both
   * agree.
   */
  @Test
  void theEigenmodesAreWhatTheFiniteVolumesConvergeTo() {
    double[] found =
        benchmark.eigenmodes().stream().mapToDouble(temperature -> temperature.si()).toArray();
    double coarse = PackedCylinder.error(atEnds(benchmark.finiteVolumes()), found);
    double fine =
        PackedCylinder.error(
            atEnds(
                EnthalpyConduction.adaptive(120, Amounts.kelvinDifference(1.25e-4))
                    .forecast(PackedCylinder.constant(), LongFiring.profile())),
            found);
    assertThat(coarse).isBetween(0.005, 0.02);
    assertThat(fine).isBetween(coarse / 6, coarse / 3);
  }

  /** The history's lines are within 0.002 K of the curve, and its modes within 1e-5 K. */
  @Test
  void theHistoryIsTheSame() {
    double[] found =
        benchmark.eigenmodes().stream().mapToDouble(temperature -> temperature.si()).toArray();
    assertThat(PackedCylinder.error(atEnds(benchmark.eigenmodeHistory()), found)).isLessThan(1e-5);
  }
}
