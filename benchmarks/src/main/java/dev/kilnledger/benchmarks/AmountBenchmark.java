package dev.kilnledger.benchmarks;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import si.uom.quantity.Density;
import tech.units.indriya.ComparableQuantity;
import tech.units.indriya.quantity.Quantities;

/**
 * One operation on each of a thousand masses: create, convert, read, add, compare, and a chain of
 * them (the mass of a volume in millilitre, one gram added, read in gram). With {@link Amount},
 * with a record around a double in kilogram, and with the quantities of the JSR 385 reference
 * implementation.
 *
 * <p>The record divides by 1000 where the amount does, so that both round alike. Inputs are walked
 * over and every object made is kept from the compiler's reach; only in the chain may it leave out
 * those in between. What was given in kilogram is converted to gram and read in gram; gram is
 * compared with kilogram.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 5, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@OperationsPerInvocation(AmountBenchmark.COUNT)
public class AmountBenchmark {
  static final int COUNT = 1000;

  /** The baseline: a value object around a double. */
  record Kilograms(double value) {}

  /** The same in another unit. */
  record Grams(double value) {}

  final double[] grams = numbers(1, 1, 500);
  final double[] millilitres = numbers(2, 1, 100);
  final double[] densities = numbers(3, 2, 8);
  final double[] others = numbers(4, 1, 500);

  final Kilograms[] records = new Kilograms[COUNT];
  final Kilograms[] otherRecords = new Kilograms[COUNT];
  final Amount<Mass>[] inGrams = amounts();
  final Amount<Mass>[] othersInGrams = amounts();
  final Amount<Mass>[] inKilograms = amounts();
  final Amount<Mass>[] othersInKilograms = amounts();
  final ComparableQuantity<Mass>[] quantities = quantities();
  final ComparableQuantity<Mass>[] otherQuantities = quantities();
  final ComparableQuantity<Mass>[] quantitiesInKilograms = quantities();
  final ComparableQuantity<Mass>[] otherQuantitiesInKilograms = quantities();

  /** Makes the inputs of all variants from the same numbers. */
  public AmountBenchmark() {
    for (int i = 0; i < COUNT; i++) {
      records[i] = new Kilograms(grams[i] / 1000);
      otherRecords[i] = new Kilograms(others[i] / 1000);
      inGrams[i] = Amounts.grams(grams[i]);
      othersInGrams[i] = Amounts.grams(others[i]);
      inKilograms[i] = Amounts.kilograms(grams[i] / 1000);
      othersInKilograms[i] = Amounts.kilograms(others[i] / 1000);
      quantities[i] = Quantities.getQuantity(grams[i], TradeUnits.GRAM);
      otherQuantities[i] = Quantities.getQuantity(others[i], TradeUnits.GRAM);
      quantitiesInKilograms[i] = Quantities.getQuantity(grams[i] / 1000, TradeUnits.KILOGRAM);
      otherQuantitiesInKilograms[i] = Quantities.getQuantity(others[i] / 1000, TradeUnits.KILOGRAM);
    }
  }

  /**
   * Masses from grams.
   *
   * @param kept takes them
   */
  @Benchmark
  public void createAmount(Blackhole kept) {
    for (double number : grams) {
      kept.consume(Amounts.grams(number));
    }
  }

  /**
   * Masses from grams.
   *
   * @param kept takes them
   */
  @Benchmark
  public void createRecord(Blackhole kept) {
    for (double number : grams) {
      kept.consume(new Kilograms(number / 1000));
    }
  }

  /**
   * Masses from grams, converted to kilogram as in the other variants.
   *
   * @param kept takes them
   */
  @Benchmark
  public void createQuantity(Blackhole kept) {
    for (double number : grams) {
      kept.consume(Quantities.getQuantity(number, TradeUnits.GRAM).toSystemUnit());
    }
  }

  /**
   * Number and unit only, which the reference implementation converts whenever it is asked.
   *
   * @param kept takes them
   */
  @Benchmark
  public void wrapQuantity(Blackhole kept) {
    for (double number : grams) {
      kept.consume(Quantities.getQuantity(number, TradeUnits.GRAM));
    }
  }

  /**
   * Masses given in kilogram, in gram.
   *
   * @param kept takes them
   */
  @Benchmark
  public void convertAmount(Blackhole kept) {
    for (Amount<Mass> mass : inKilograms) {
      kept.consume(mass.to(TradeUnits.GRAM));
    }
  }

  /**
   * Masses given in kilogram, in gram.
   *
   * @param kept takes them
   */
  @Benchmark
  public void convertRecord(Blackhole kept) {
    for (Kilograms mass : records) {
      kept.consume(new Grams(mass.value * 1000));
    }
  }

  /**
   * Masses given in kilogram, in gram.
   *
   * @param kept takes them
   */
  @Benchmark
  public void convertQuantity(Blackhole kept) {
    for (ComparableQuantity<Mass> mass : quantitiesInKilograms) {
      kept.consume(mass.to(TradeUnits.GRAM));
    }
  }

  /** {@return the sum of kilograms read in gram} */
  @Benchmark
  public double readAmount() {
    double sum = 0;
    for (Amount<Mass> mass : inKilograms) {
      sum += mass.in(TradeUnits.GRAM);
    }
    return sum;
  }

  /** {@return the sum of kilograms read in gram} */
  @Benchmark
  public double readRecord() {
    double sum = 0;
    for (Kilograms mass : records) {
      sum += mass.value * 1000;
    }
    return sum;
  }

  /** {@return the sum of kilograms read in gram} */
  @Benchmark
  public double readQuantity() {
    double sum = 0;
    for (Quantity<Mass> mass : quantitiesInKilograms) {
      sum += mass.to(TradeUnits.GRAM).getValue().doubleValue();
    }
    return sum;
  }

  /**
   * Sums of two masses.
   *
   * @param kept takes them
   */
  @Benchmark
  public void addAmount(Blackhole kept) {
    for (int i = 0; i < COUNT; i++) {
      kept.consume(inGrams[i].add(othersInGrams[i]));
    }
  }

  /**
   * Sums of two masses.
   *
   * @param kept takes them
   */
  @Benchmark
  public void addRecord(Blackhole kept) {
    for (int i = 0; i < COUNT; i++) {
      kept.consume(new Kilograms(records[i].value + otherRecords[i].value));
    }
  }

  /**
   * Sums of two masses.
   *
   * @param kept takes them
   */
  @Benchmark
  public void addQuantity(Blackhole kept) {
    for (int i = 0; i < COUNT; i++) {
      kept.consume(quantities[i].add(otherQuantities[i]));
    }
  }

  /** {@return how many more masses are above their counterpart than below} */
  @Benchmark
  public int compareAmount() {
    int sum = 0;
    for (int i = 0; i < COUNT; i++) {
      sum += inGrams[i].compareTo(othersInKilograms[i]);
    }
    return sum;
  }

  /** {@return how many more masses are above their counterpart than below} */
  @Benchmark
  public int compareRecord() {
    int sum = 0;
    for (int i = 0; i < COUNT; i++) {
      sum += Double.compare(records[i].value, otherRecords[i].value);
    }
    return sum;
  }

  /** {@return how many more masses are above their counterpart than below} */
  @Benchmark
  public int compareQuantity() {
    int sum = 0;
    for (int i = 0; i < COUNT; i++) {
      sum += quantities[i].compareTo(otherQuantitiesInKilograms[i]);
    }
    return sum;
  }

  /** {@return the sum of the masses in gram} */
  @Benchmark
  public double chainAmount() {
    double sum = 0;
    for (int i = 0; i < COUNT; i++) {
      Amount<Volume> volume = Amounts.millilitres(millilitres[i]);
      Amount<Density> density = Amounts.gramsPerCubicCentimetre(densities[i]);
      Amount<Mass> mass = Relations.massOf(density, volume);
      sum += mass.add(Amounts.grams(1)).in(TradeUnits.GRAM);
    }
    return sum;
  }

  /** {@return the sum of the masses in gram} */
  @Benchmark
  public double chainRecord() {
    double sum = 0;
    for (int i = 0; i < COUNT; i++) {
      Kilograms mass = new Kilograms(densities[i] * 1000 * (millilitres[i] / 1e6));
      Kilograms more = new Kilograms(mass.value + new Kilograms(1 / 1000.0).value);
      sum += more.value * 1000;
    }
    return sum;
  }

  /** {@return the sum of the masses in gram} */
  @Benchmark
  public double chainQuantity() {
    double sum = 0;
    for (int i = 0; i < COUNT; i++) {
      Quantity<Volume> volume = Quantities.getQuantity(millilitres[i], TradeUnits.MILLILITRE);
      Quantity<Density> density =
          Quantities.getQuantity(densities[i], TradeUnits.GRAM_PER_CUBIC_CENTIMETRE);
      Quantity<Mass> mass = volume.multiply(density).asType(Mass.class);
      Quantity<Mass> more = mass.add(Quantities.getQuantity(1, TradeUnits.GRAM));
      sum += more.to(TradeUnits.GRAM).getValue().doubleValue();
    }
    return sum;
  }

  private static double[] numbers(long seed, double low, double high) {
    return new SplittableRandom(seed).doubles(COUNT, low, high).toArray();
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type, filled with it only
  private static Amount<Mass>[] amounts() {
    return new Amount[COUNT];
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // likewise
  private static ComparableQuantity<Mass>[] quantities() {
    return new ComparableQuantity[COUNT];
  }
}
