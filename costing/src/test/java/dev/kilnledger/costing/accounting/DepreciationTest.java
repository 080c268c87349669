package dev.kilnledger.costing.accounting;

import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.List;
import java.util.stream.DoubleStream;
import javax.measure.quantity.Dimensionless;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Inputs are of published exercises of open accounting courses; answers are recomputed by hand. */
class DepreciationTest {
  private static final Asset PRESS = asset(171_600, 15_000);
  private static final Asset PLANT = asset(312_000, 28_000);
  private static final Rounding EVEN = Rounding.HALF_EVEN;

  @Test
  void chargesThePressInItsFirstYear() {
    assertThat(charges(StraightLineDepreciation.standard().schedule(PRESS, 8, EVEN)))
        .hasSize(8)
        .containsOnly(eur("19575"));
    assertThat(charges(DecliningBalanceDepreciation.standard().schedule(PRESS, ratio(2), 8, EVEN)))
        .startsWith(eur("42900"));
    assertThat(
            charges(
                UnitsOfProductionDepreciation.standard()
                    .schedule(PRESS, ratio(4_500_000), List.of(ratio(675_000)), EVEN)))
        .containsExactly(eur("23490"));
  }

  @Test
  void stopsThePlantAtItsSalvageValue() {
    DepreciationSchedule byUse =
        UnitsOfProductionDepreciation.standard()
            .schedule(
                PLANT, ratio(1_136_000), ratios(245_600, 230_400, 227_000, 232_600, 211_200), EVEN);
    assertThat(charges(byUse))
        .containsExactly(eur("61400"), eur("57600"), eur("56750"), eur("58150"), eur("50100"));
    assertThat(byUse.years().get(4).bookValue()).isEqualTo(eur("28000"));
    DepreciationSchedule declining =
        DecliningBalanceDepreciation.standard().schedule(PLANT, ratio(2), 5, EVEN);
    assertThat(charges(declining))
        .containsExactly(
            eur("124800"), eur("74880"), eur("44928"), eur("26956.80"), eur("12435.20"));
    assertThat(declining.years().get(4).bookValue()).isEqualTo(eur("28000"));
    assertThat(declining.method())
        .isEqualTo("declining balance: book value x 2 / 5, down to the salvage value");
  }

  @Test
  void chargesNothingOnceTheSalvageValueIsReached() {
    assertThat(
            charges(
                UnitsOfProductionDepreciation.standard()
                    .schedule(asset(100, 10), ratio(10), ratios(9, 9, 9), EVEN)))
        .containsExactly(eur("81"), eur("9"), eur("0"));
  }

  /** By hand: 100 in thirds; what is charged through a year is rounded. */
  @Test
  void chargesAddUpToTheCent() {
    DepreciationSchedule thirds =
        StraightLineDepreciation.standard().schedule(asset(100, 0), 3, EVEN);
    assertThat(charges(thirds)).containsExactly(eur("33.33"), eur("33.34"), eur("33.33"));
    assertThat(thirds.years().get(2).bookValue()).isEqualTo(eur("0"));
  }

  /** By hand: at 8 / 8 the first year takes all there is down to the salvage value. */
  @Test
  void takesTheEndsOfWhatIsAccepted() {
    assertThat(charges(DecliningBalanceDepreciation.standard().schedule(PRESS, ratio(8), 8, EVEN)))
        .startsWith(eur("156600"), eur("0"));
    assertThat(
            charges(
                DecliningBalanceDepreciation.standard().schedule(asset(100, 0), ratio(1), 1, EVEN)))
        .containsExactly(eur("100"));
    DepreciationSchedule nothing =
        StraightLineDepreciation.standard().schedule(asset(100, 100), 1, EVEN);
    assertThat(charges(nothing)).containsExactly(eur("0"));
    assertThat(nothing.method()).isEqualTo("straight line: (cost - salvage) / 1 years");
    DepreciationSchedule idle =
        UnitsOfProductionDepreciation.standard()
            .schedule(asset(100, 0), ratio(10), ratios(0, 5), EVEN);
    assertThat(charges(idle)).containsExactly(eur("0"), eur("50"));
    assertThat(idle.years()).extracting(DepreciationYear::year).containsExactly(1, 2);
    assertThat(idle.method())
        .isEqualTo(
            "units of production: (cost - salvage) x units used / 10, down to the salvage value");
    assertThatThrownBy(() -> Asset.of("a", eur("10"), Money.parse("USD 1")))
        .hasMessageContaining(
            "salvage value is USD 1.00; accepted is from zero to the cost of EUR");
    assertThatThrownBy(() -> Asset.of("a", eur("10"), eur("-1")))
        .hasMessageContaining("salvage value is EUR -1.00; accepted is from zero to the cost");
    assertThatThrownBy(
            () -> DecliningBalanceDepreciation.standard().schedule(PRESS, ratio(0), 0, EVEN))
        .hasMessage(
            "declining-balance depreciation of asset: life is 0 years; accepted is 1 or more; and"
                + " factor is 0; accepted is above 0 and up to the years of life");
  }

  @Test
  void refusesWhatCannotBeDepreciated() {
    assertThatThrownBy(() -> Asset.of("", eur("10"), eur("11")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("name is blank; accepted is any text")
        .hasMessageContaining(
            "salvage value is EUR 11.00; accepted is from zero to the cost of EUR 10.00");
    assertThatThrownBy(() -> StraightLineDepreciation.standard().schedule(PRESS, 0, EVEN))
        .hasMessage("straight-line depreciation of asset: life is 0 years; accepted is 1 or more");
    assertThatThrownBy(
            () -> DecliningBalanceDepreciation.standard().schedule(PRESS, ratio(9), 8, EVEN))
        .hasMessageContaining("factor is 9; accepted is above 0 and up to the years of life");
    assertThatThrownBy(
            () ->
                UnitsOfProductionDepreciation.standard()
                    .schedule(PRESS, ratio(0), ratios(1, -1), EVEN))
        .hasMessageContaining("life is 0; accepted is more than zero")
        .hasMessageContaining("use of year 2 is -1; accepted is zero or more");
  }

  private static List<Money> charges(DepreciationSchedule schedule) {
    return schedule.years().stream().map(DepreciationYear::charge).toList();
  }

  private static List<Amount<Dimensionless>> ratios(double... numbers) {
    return DoubleStream.of(numbers).mapToObj(Amounts::ratio).toList();
  }

  private static Asset asset(int cost, int salvage) {
    return Asset.of("asset", Money.of(CurrencyUnit.EUR, cost), Money.of(CurrencyUnit.EUR, salvage));
  }

  private static Money eur(String amount) {
    return Money.parse("EUR " + amount);
  }
}
