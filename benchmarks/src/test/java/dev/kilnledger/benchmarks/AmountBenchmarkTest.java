package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.benchmarks.AmountBenchmark.Kilograms;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import java.math.BigDecimal;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

class AmountBenchmarkTest {
  private static final int COUNT = AmountBenchmark.COUNT;

  private final AmountBenchmark benchmark = new AmountBenchmark();

  /** Both divide by 1000 and so are the double nearest to the decimal quotient. */
  @Test
  void createsTheSameKilogramsInEveryVariant() {
    for (int i = 0; i < COUNT; i++) {
      Kilograms mass = benchmark.records[i];
      assertThat(mass.value())
          .isEqualTo(new BigDecimal(benchmark.grams[i]).movePointLeft(3).doubleValue());
      assertThat(benchmark.inGrams[i].si()).isEqualTo(mass.value());
      assertThat(benchmark.inKilograms[i].si()).isEqualTo(mass.value());
      assertThat(benchmark.quantities[i].to(TradeUnits.KILOGRAM).getValue().doubleValue())
          .isCloseTo(mass.value(), within(1e-15));
    }
  }

  @Test
  void convertsToTheSameGramsInEveryVariant() {
    for (int i = 0; i < COUNT; i++) {
      double grams = benchmark.records[i].value() * 1000;
      Amount<Mass> amount = benchmark.inKilograms[i].to(TradeUnits.GRAM);
      assertThat(amount.getUnit()).isSameAs(TradeUnits.GRAM);
      assertThat(amount.in(TradeUnits.GRAM)).isEqualTo(grams);
      assertThat(benchmark.quantitiesInKilograms[i].to(TradeUnits.GRAM).getValue().doubleValue())
          .isCloseTo(grams, within(2 * Math.ulp(grams)));
    }
  }

  /** The variants add the same numbers in the same order; the reference rounds otherwise. */
  @Test
  void readsTheSameGramsInEveryVariant() {
    assertThat(benchmark.readAmount()).isEqualTo(benchmark.readRecord());
    assertThat(benchmark.readQuantity()).isCloseTo(benchmark.readRecord(), within(1e-6));
  }

  /**
   * Kilograms round three times and grams twice, each by half a unit in the last place: less than
   * three units apart.
   */
  @Test
  void addsTheSameMassesInEveryVariant() {
    for (int i = 0; i < COUNT; i++) {
      double sum = benchmark.records[i].value() + benchmark.otherRecords[i].value();
      Amount<Mass> amount = benchmark.inGrams[i].add(benchmark.othersInGrams[i]);
      assertThat(amount.si()).isCloseTo(sum, within(3 * Math.ulp(sum)));
      Amount<Mass> quantity = Amount.of(benchmark.quantities[i].add(benchmark.otherQuantities[i]));
      assertThat(quantity.si()).isCloseTo(sum, within(3 * Math.ulp(sum)));
    }
  }

  @Test
  void comparesAlikeInEveryVariant() {
    assertThat(benchmark.compareAmount()).isEqualTo(benchmark.compareRecord());
    assertThat(benchmark.compareQuantity()).isEqualTo(benchmark.compareRecord());
  }

  /** The sum of a thousand products, by exact decimals; each is off by some last places at most. */
  @Test
  void chainsTheSameWorkInEveryVariant() {
    BigDecimal sum = BigDecimal.ZERO;
    for (int i = 0; i < COUNT; i++) {
      BigDecimal millilitres = new BigDecimal(benchmark.millilitres[i]);
      sum = sum.add(millilitres.multiply(new BigDecimal(benchmark.densities[i])));
      sum = sum.add(BigDecimal.ONE);
    }
    double expected = sum.doubleValue();
    double some = COUNT * Math.ulp(expected);
    assertThat(benchmark.chainRecord()).isCloseTo(expected, within(some));
    assertThat(benchmark.chainAmount()).isCloseTo(expected, within(some));
    assertThat(benchmark.chainQuantity()).isCloseTo(expected, within(some));
  }
}
