package dev.kilnledger.benchmarks;

import dev.kilnledger.thermal.conduction.Charge;
import dev.kilnledger.thermal.conduction.CoreHistory;
import dev.kilnledger.thermal.conduction.EigenmodeConduction;
import dev.kilnledger.thermal.conduction.EnthalpyConduction;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Temperature;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The core of a {@link PackedCylinder} of constant properties at the end of each segment of {@link
 * LongFiring}: by eigenmodes, which are found anew each time, and by the standard finite volumes,
 * which are 0.012 K off there where the eigenmodes are exact to rounding. The whole history by
 * eigenmodes stands beside them.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class EigenmodeBenchmark {
  private final Charge charge = PackedCylinder.constant();
  private final Profile profile = LongFiring.profile();

  /** {@return the core at the ends of the segments by eigenmodes} */
  @Benchmark
  public List<Amount<Temperature>> eigenmodes() {
    return EigenmodeConduction.standard().coreAtEnds(charge, profile);
  }

  /** {@return the whole history by eigenmodes} */
  @Benchmark
  public CoreHistory eigenmodeHistory() {
    return EigenmodeConduction.standard().forecast(charge, profile);
  }

  /** {@return the history by finite volumes} */
  @Benchmark
  public CoreHistory finiteVolumes() {
    return EnthalpyConduction.standard().forecast(charge, profile);
  }
}
