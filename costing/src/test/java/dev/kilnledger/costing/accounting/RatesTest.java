package dev.kilnledger.costing.accounting;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatesTest {
  /** Exercise of an open course on cost accounting; inputs published, total recomputed by hand. */
  @Test
  void addsUpAMachineHour() {
    MachineHourRate rate =
        MachineHourRate.builder()
            .machine("lathe")
            .currency(CurrencyUnit.EUR)
            .effectiveHours(hours(4380))
            .addStanding(
                part("depreciation", "910"), // (10,000 - 900) / 10
                part("repairs", "1800"), // 18,000 over 10 years
                part("rent", "900"), // a quarter of 300 a month
                part("light", "192"), // 2 of 10 points of 80 a month
                part("foreman", "1920"), // a sixth of 960 a month
                part("sundries", "108"), // 9 a month
                part("insurance", "100")) // 1 % of 10,000
            .addRunning(part("power", "0.75")) // 15 units at 0.05
            .build();
    assertThat(rounded(rate.perHour(), 4)).isEqualTo("2.1039");
    assertThat(rate.hourly())
        .extracting(CostPart::name)
        .containsExactly(
            "depreciation",
            "repairs",
            "rent",
            "light",
            "foreman",
            "sundries",
            "insurance",
            "power");
    assertThat(rate.hourly().get(2).source()).isEqualTo(INVENTED);
    assertThat(rate.costOf(hours(0)).isZero()).isTrue();
    assertThat(rate.offer())
        .satisfies(offer -> assertThat(offer.item()).isEqualTo("lathe"))
        .satisfies(offer -> assertThat(offer.supplier()).isEqualTo("own workshop"))
        .satisfies(offer -> assertThat(offer.content()).isEqualTo(hours(1)))
        .satisfies(offer -> assertThat(offer.price()).isEqualTo(rate.perHour()))
        .satisfies(offer -> assertThat(offer.metered()).isTrue())
        .satisfies(offer -> assertThat(offer.tax()).isEqualTo(Tax.EXCLUDED))
        .extracting(offer -> offer.source().cite(), STRING)
        .contains(
            "machine-hour rate of depreciation, repairs, rent, light, foreman, sundries, insurance,"
                + " power");
  }

  /** By hand: 10 x 11 / (11 - 1), one in a hundred thousand, and units that all cost the same. */
  @Test
  void takesTheEndsOfWhatIsAccepted() {
    assertThat(CapitalRecovery.standard().factor(ratio(10), 1)).isEqualByComparingTo("11");
    assertThat(CapitalRecovery.standard().factor(ratio(0), 100_000))
        .isEqualByComparingTo("0.00001");
    // r (1 + r) / r, one period: 1 + r
    assertThat(CapitalRecovery.standard().factor(ratio(1e-9), 1))
        .isEqualByComparingTo("1.000000001");
    assertThatThrownBy(() -> CapitalRecovery.standard().factor(ratio(10.5), 100_001))
        .hasMessageContaining("interest is 10.5; accepted is")
        .hasMessageContaining("periods is 100001; accepted is 1 to 100000");
    assertThatThrownBy(() -> CapitalRecovery.standard().factor(ratio(1e-10), 1))
        .hasMessageContaining("interest is");
    WrightLearningCurve wright = WrightLearningCurve.of(eur("100"), percent(100));
    assertThat(wright.unit(1)).isEqualByComparingTo(eur("100"));
    assertThat(wright.unit(7)).isEqualByComparingTo(eur("100"));
    CrawfordLearningCurve crawford = CrawfordLearningCurve.of(eur("1"), percent(100));
    assertThat(crawford.totalOf(1000)).isEqualByComparingTo(eur("1000"));
    assertThat(rounded(crawford.averageOf(5000), 9)).isEqualTo("1.000000000");
    assertThat(WrightLearningCurve.of(eur("0"), percent(80)).totalOf(3).isZero()).isTrue();
    assertThatThrownBy(() -> WrightLearningCurve.of(eur("1"), percent(0)))
        .hasMessageContaining("rate is 0 %; accepted is above 0 and up to 1");
    assertThatThrownBy(() -> CrawfordLearningCurve.of(eur("1"), percent(101)))
        .hasMessageContaining("rate is 101 %; accepted is above 0 and up to 1");
    assertThatThrownBy(() -> CrawfordLearningCurve.of(eur("1"), percent(80)).unit(0))
        .hasMessageContaining("unit is 0; accepted is 1 or more");
    assertThatThrownBy(() -> CrawfordLearningCurve.of(eur("1"), percent(80)).averageOf(0))
        .hasMessageContaining("unit is 0; accepted is 1 or more");
  }

  /**
   * N. Hopkinson and P. Dickens, Analysis of rapid manufacturing, Proc. IMechE C 217 (2003) 31
   * (from memory; recomputed): stereolithography and fused deposition.
   */
  @ParameterizedTest
  @CsvSource({
    "190, 26.8,  1040000, 89000, 33, 49, 7.0896, 55894, 3.92, 7.24, 0.04",
    "75,  67.27, 101280,  10560, 10, 60, 1.1149, 8790,  2.64, 6.18, 0.08"
  })
  void costsAPartAsHopkinsonAndDickensDo(
      int parts,
      double hours,
      int equipment,
      String maintenance,
      double before,
      double after,
      String perHour,
      String perYear,
      String machine,
      String labour,
      String labourPerPart) {
    BigDecimal rate =
        BigDecimal.valueOf(parts).divide(BigDecimal.valueOf(hours), 12, RoundingMode.HALF_EVEN);
    assertThat(rate.setScale(4, RoundingMode.HALF_UP)).hasToString(perHour);
    // The paper multiplies unrounded; its yearly number is whole parts.
    assertThat(rate.multiply(BigDecimal.valueOf(7884)).setScale(0, RoundingMode.HALF_UP))
        .hasToString(perYear);
    Asset asset =
        Asset.of("printer", Money.of(CurrencyUnit.EUR, equipment), Money.zero(CurrencyUnit.EUR));
    Money depreciation =
        StraightLineDepreciation.standard()
            .schedule(asset, 8, Rounding.HALF_EVEN)
            .years()
            .get(0)
            .charge();
    MachineHourRate printer =
        MachineHourRate.builder()
            .machine("printer")
            .currency(CurrencyUnit.EUR)
            .effectiveHours(Amounts.hours(7884))
            .addStanding(
                CostPart.of("depreciation", depreciation.toBigMoney(), INVENTED),
                part("maintenance", maintenance))
            .build();
    BigDecimal build = printer.costOf(Amounts.hours(hours)).getAmount();
    assertThat(build.divide(BigDecimal.valueOf(parts), 2, RoundingMode.HALF_UP))
        .hasToString(machine);
    MachineHourRate operator =
        MachineHourRate.builder()
            .machine("operator")
            .currency(CurrencyUnit.EUR)
            .effectiveHours(Amounts.hours(1))
            .addRunning(part("wage", "5.30"))
            .build();
    BigDecimal wage = operator.costOf(Amounts.minutes(before + after)).getAmount();
    assertThat(wage.setScale(2, RoundingMode.HALF_UP)).hasToString(labour);
    assertThat(wage.divide(BigDecimal.valueOf(parts), 2, RoundingMode.HALF_UP))
        .hasToString(labourPerPart);
  }

  /**
   * Interest tables of engineering economy (published and recomputed; the last three recomputed).
   */
  @ParameterizedTest
  @CsvSource({
    "0.25, 12, 0.08469",
    "0.25, 24, 0.04298",
    "35, 5, 0.4505",
    "35, 10, 0.3683",
    "8, 5, 0.25046",
    "10, 5, 0.26380",
    "10, 10, 0.16275"
  })
  void agreesWithInterestTables(double interest, int periods, BigDecimal factor) {
    assertThat(
            CapitalRecovery.standard()
                .factor(percent(interest), periods)
                .setScale(factor.scale(), RoundingMode.HALF_UP))
        .isEqualTo(factor);
  }

  /** By hand: (1000 - 100) x 0.1 + 0, and (1000 - 100) x 0.2637975 + 100 x 0.1. */
  @Test
  void recoversCapitalWithAndWithoutInterest() {
    Asset asset = Asset.of("kiln", Money.parse("EUR 1000"), Money.parse("EUR 100"));
    assertThat(rounded(CapitalRecovery.standard().payment(asset, ratio(0), 10), 2))
        .isEqualTo("90.00");
    assertThat(rounded(CapitalRecovery.standard().payment(asset, percent(10), 5), 2))
        .isEqualTo("247.42");
    assertThatThrownBy(() -> CapitalRecovery.standard().factor(percent(-1), 0))
        .hasMessage(
            "capital recovery: interest is -1 %; accepted is 0, or from 1e-9 to 10 for one period;"
                + " and periods is 0; accepted is 1 to 100000");
  }

  /** Recomputed: 100 x 0.8, 0.64, 0.512, 0.4096. */
  @ParameterizedTest
  @CsvSource({"1, 100", "2, 80", "4, 64", "8, 51.2", "16, 40.96"})
  void wrightLowersTheAverage(long units, BigDecimal average) {
    WrightLearningCurve curve = WrightLearningCurve.of(eur("100"), percent(80));
    assertThat(curve.averageOf(units).getAmount()).isEqualByComparingTo(average);
  }

  /** By hand: the second unit is 2 x 80 - 100. Recomputed: 100 + 80 + 70.2104 + 64 = 314.210. */
  @Test
  void crawfordLowersTheUnitAndWrightTheAverage() {
    assertThat(rounded(WrightLearningCurve.of(eur("100"), percent(80)).unit(2), 3))
        .isEqualTo("60.000");
    CrawfordLearningCurve crawford = CrawfordLearningCurve.of(eur("100"), percent(80));
    assertThat(rounded(crawford.unit(2), 3)).isEqualTo("80.000");
    assertThat(rounded(crawford.totalOf(4), 3)).isEqualTo("314.210");
    assertThat(rounded(crawford.averageOf(4), 4)).isEqualTo("78.5526");
  }

  /** Against the sum itself, taken unit by unit, and against the harmonic number at 50 %. */
  @ParameterizedTest
  @CsvSource({"95", "80", "50", "10"})
  void crawfordSumsLargeQuantitiesInClosedForm(double rate) {
    CrawfordLearningCurve curve = CrawfordLearningCurve.of(eur("1"), percent(rate));
    double b = Math.log(rate / 100) / Math.log(2);
    double sum = 0;
    for (int k = 200_000; k >= 1; k--) {
      sum += Math.pow(k, b);
    }
    // The plain sum of 200,000 doubles is good to about 1e-13.
    assertThat(curve.totalOf(200_000).getAmount().doubleValue() / sum).isCloseTo(1, within(1e-12));
  }

  @Test
  void refusesWhatNobodyLearns() {
    assertThatThrownBy(() -> WrightLearningCurve.of(eur("-1"), percent(120)))
        .hasMessage(
            "Wright learning curve: first unit is EUR -1; accepted is zero or more; and rate is 120"
                + " %; accepted is above 0 and up to 1");
    assertThatThrownBy(() -> CrawfordLearningCurve.of(eur("1"), percent(80)).totalOf(0))
        .hasMessage("Crawford learning curve: unit is 0; accepted is 1 or more");
    assertThatThrownBy(() -> WrightLearningCurve.of(eur("1"), percent(80)).unit(0))
        .hasMessage("Wright learning curve: unit is 0; accepted is 1 or more");
  }

  @Test
  void refusesAMachineWithoutHours() {
    assertThatThrownBy(
            () ->
                MachineHourRate.builder()
                    .machine(" ")
                    .currency(CurrencyUnit.USD)
                    .effectiveHours(hours(0))
                    .addStanding(part("rent", "1"))
                    .build())
        .hasMessageContaining("machine is blank; accepted is any text")
        .hasMessageContaining("effective hours is 0 h; accepted is more than zero")
        .hasMessageContaining("rent is EUR 1; accepted is in USD");
    assertThatThrownBy(() -> part("rent", "-1"))
        .hasMessage("cost part rent: cost is EUR -1; accepted is zero or more");
    assertThatThrownBy(
            () ->
                MachineHourRate.builder()
                    .machine("kiln")
                    .currency(CurrencyUnit.EUR)
                    .effectiveHours(hours(1))
                    .build()
                    .costOf(hours(-1)))
        .hasMessage("time on kiln: time is -1 h; accepted is zero or more");
  }

  private static CostPart part(String name, String cost) {
    return CostPart.of(name, eur(cost), INVENTED);
  }

  private static String rounded(BigMoney money, int decimals) {
    return money.getAmount().setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}
