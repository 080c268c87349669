package dev.kilnledger.benchmarks;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import si.uom.quantity.Density;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * The mass in gram of a volume in millilitre, one gram added: with doubles in a record, with {@link
 * Amount}, and with the quantities of the JSR 385 reference implementation.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class AmountBenchmark {
  /** The baseline: a value object around a double. */
  record Kilograms(double value) {}

  double millilitres = 12.5;
  double density = 5.5;

  /** {@return the mass in gram by plain arithmetic} */
  @Benchmark
  public double recordOfDouble() {
    Kilograms mass = new Kilograms(millilitres * 1e-6 * (density * 1000));
    return new Kilograms(mass.value + 0.001).value * 1000;
  }

  /** {@return the mass in gram by typed amounts} */
  @Benchmark
  public double amount() {
    Amount<Volume> volume = Amounts.millilitres(millilitres);
    Amount<Mass> mass = Relations.massOf(Amounts.gramsPerCubicCentimetre(density), volume);
    return mass.add(Amounts.grams(1)).in(TradeUnits.GRAM);
  }

  /** {@return the mass in gram by the quantities of the reference implementation} */
  @Benchmark
  public double referenceImplementation() {
    Quantity<Volume> volume = Quantities.getQuantity(millilitres, TradeUnits.MILLILITRE);
    Quantity<Density> perVolume =
        Quantities.getQuantity(density, TradeUnits.GRAM_PER_CUBIC_CENTIMETRE);
    Quantity<Mass> mass = volume.multiply(perVolume).asType(Mass.class);
    return mass.add(Quantities.getQuantity(1, Units.GRAM)).to(Units.GRAM).getValue().doubleValue();
  }
}
