package dev.kilnledger.costing.quote;

import static dev.kilnledger.units.Amounts.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.Law;
import dev.kilnledger.costing.accounting.Asset;
import dev.kilnledger.costing.accounting.CapitalRecovery;
import dev.kilnledger.costing.accounting.DecliningBalanceDepreciation;
import dev.kilnledger.costing.accounting.DepreciationSchedule;
import dev.kilnledger.costing.accounting.DepreciationYear;
import dev.kilnledger.costing.accounting.StraightLineDepreciation;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What holds for every sum that is split, taxed, marked up or written off: no cent is lost. */
class MoneyLawsTest {
  private static Money cents(long cents) {
    return Money.ofMinor(CurrencyUnit.EUR, cents);
  }

  @Law
  void splitsWithoutLosingACentAndFairly(
      @ForAll @IntRange(min = -1_000_000, max = 1_000_000) int total,
      @ForAll @Size(min = 1, max = 12) List<@IntRange(max = 1000) Integer> weights) {
    int sum = weights.stream().mapToInt(Integer::intValue).sum();
    Assume.that(sum > 0);
    List<Money> shares =
        LargestRemainder.standard()
            .split(cents(total), weights.stream().map(BigDecimal::valueOf).toList());
    assertThat(Money.total(shares)).isEqualTo(cents(total));
    for (int i = 0; i < weights.size(); i++) {
      double exact = (double) total * weights.get(i) / sum;
      assertThat((double) shares.get(i).getAmountMinorLong()).isCloseTo(exact, within(1.0 - 1e-9));
      for (int k = 0; k < i; k++) {
        // Who weighs more gets no less, by size.
        if (weights.get(i) > weights.get(k)) {
          assertThat(Math.abs(shares.get(i).getAmountMinorLong()))
              .isGreaterThanOrEqualTo(Math.abs(shares.get(k).getAmountMinorLong()));
        }
      }
    }
  }

  @Law
  void takesTheTaxOutSoThatNetAndTaxAreTheGross(
      @ForAll @IntRange(max = 100_000_000) int gross,
      @ForAll @IntRange(max = 300) int tenths,
      @ForAll Rounding rounding) {
    TaxedAmount taxed = TaxedAmount.ofGross(cents(gross), percent(tenths / 10.0), rounding);
    assertThat(taxed.net().plus(taxed.tax())).isEqualTo(cents(gross));
    assertThat(taxed.gross()).isEqualTo(cents(gross));
    double exact = (double) gross * tenths / 1000 / (1 + tenths / 1000.0);
    assertThat((double) taxed.tax().getAmountMinorLong()).isCloseTo(exact, within(1.0));
  }

  @Law
  void makesAMarginTheShareOfThePriceThatItSays(
      @ForAll @IntRange(min = 1, max = 1_000_000) int cost,
      @ForAll @IntRange(max = 99) int percent) {
    var price = Uplift.margin(percent(percent)).priceOf(cents(cost).toBigMoney());
    BigDecimal margin =
        price.minus(cents(cost)).getAmount().divide(price.getAmount(), MathContext.DECIMAL64);
    assertThat(margin.doubleValue()).isCloseTo(percent / 100.0, within(1e-9));
    var marked = Uplift.markup(percent(percent)).priceOf(cents(cost).toBigMoney());
    assertThat(marked).isLessThanOrEqualTo(price);
  }

  @Law
  void writesOffAllButTheSalvageValueByEveryMethod(
      @ForAll @IntRange(min = 1, max = 10_000_000) int cost,
      @ForAll @IntRange(max = 100) int salvagePercent,
      @ForAll @IntRange(min = 1, max = 30) int years,
      @ForAll Rounding rounding) {
    long salvage = (long) cost * salvagePercent / 100;
    Asset asset = Asset.of("kiln", cents(cost), cents(salvage));
    writtenOff(StraightLineDepreciation.standard().schedule(asset, years, rounding), salvage);
    DepreciationSchedule falling =
        DecliningBalanceDepreciation.standard()
            .schedule(asset, Amounts.ratio(2), Math.max(2, years), rounding);
    for (DepreciationYear year : falling.years()) {
      assertThat(year.charge().isNegative()).isFalse();
      assertThat(year.bookValue().getAmountMinorLong()).isGreaterThanOrEqualTo(salvage);
    }
  }

  private static void writtenOff(DepreciationSchedule schedule, long salvage) {
    long book = schedule.asset().cost().getAmountMinorLong();
    for (DepreciationYear year : schedule.years()) {
      book -= year.charge().getAmountMinorLong();
      assertThat(year.bookValue().getAmountMinorLong()).isEqualTo(book);
    }
    assertThat(book).isEqualTo(salvage);
  }

  /** The payments at interest are worth the asset: P = A (1 - (1 + i)^-n) / i, any textbook. */
  @Law
  void paysBackWhatTheAssetCost(
      @ForAll @IntRange(min = 1, max = 40) int years, @ForAll @IntRange(max = 250) int tenths) {
    double interest = tenths / 1000.0;
    double factor = CapitalRecovery.standard().factor(percent(tenths / 10.0), years).doubleValue();
    double worth = 0;
    for (int year = 1; year <= years; year++) {
      worth += factor / Math.pow(1 + interest, year);
    }
    assertThat(worth).isCloseTo(1, within(1e-9));
  }
}
