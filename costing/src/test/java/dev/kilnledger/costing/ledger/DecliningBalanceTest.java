package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.accounting.Asset;
import dev.kilnledger.costing.accounting.DecliningBalanceDepreciation;
import dev.kilnledger.costing.accounting.DepreciationSchedule;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.SplittableRandom;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Declining balance as a line of a ledger. */
class DecliningBalanceTest {
  private static final Ledger LEDGER = Ledger.standard();

  /** 312,000, salvage 28,000, 5 years: inputs published, the answers recomputed by hand. */
  @Test
  void chargesEachYearOfUseAndStopsAtTheSalvageValue() {
    LedgerPlan plan = plan("312000", "28000", 2, 5, 1000);
    String[] yearly = {"124800", "74880", "44928", "26956.80", "12435.20"};
    BigMoney before = BigMoney.parse("EUR 0");
    for (int year = 1; year <= 5; year++) {
      BigMoney through = LEDGER.through(plan, 1000L * year).total();
      assertThat(through.minus(before)).isEqualByComparingTo(eur(yearly[year - 1]));
      before = through;
      // Within a year each part is charged alike.
      BigMoney part = LEDGER.part(plan, 1000L * year - 1).total();
      assertThat(part.multipliedBy(1000)).isEqualByComparingTo(eur(yearly[year - 1]));
    }
    assertThat(LEDGER.part(plan, 5001).lines()).isEmpty();
    assertThat(LEDGER.through(plan, 1_000_000_000).total()).isEqualByComparingTo(eur("284000"));
    assertThat(LEDGER.usage(plan).total()).isEqualByComparingTo(eur("56.8")); // 284,000 / 5,000
    Line line = LEDGER.part(plan, 1).lines().get(0);
    assertThat(line.entry()).isEqualTo(Entry.DEPRECIATED);
    assertThat(line.formula())
        .contains("declining balance")
        .contains("book value x factor / years");
    assertThat(LEDGER.statement(plan, 1500).stocks().get(0).text()).isEqualTo("3500 firings");
  }

  /** A press of 171,600, salvage 15,000, 8 years: 42,900 in year 1 (input published). */
  @Test
  void chargesTheFirstYearOfThePress() {
    assertThat(LEDGER.through(plan("171600", "15000", 2, 8, 560), 560).total())
        .isEqualByComparingTo(eur("42900"));
  }

  @Test
  void agreesWithTheScheduleOfTheAccountant() {
    SplittableRandom random = new SplittableRandom(8);
    for (int trial = 0; trial < 100; trial++) {
      int years = random.nextInt(1, 12);
      double factor = random.nextInt(1, 10 * years + 1) / 10.0;
      long price = random.nextLong(1000, 1_000_000);
      long salvage = random.nextLong(price);
      int yearly = random.nextInt(1, 3000);
      LedgerPlan plan = plan("" + price, "" + salvage, factor, years, yearly);
      DepreciationSchedule schedule =
          DecliningBalanceDepreciation.standard()
              .schedule(
                  Asset.of("kiln", Money.parse("EUR " + price), Money.parse("EUR " + salvage)),
                  ratio(factor),
                  years,
                  Rounding.HALF_EVEN);
      ExactCash exact = ExactCash.of(plan);
      CashLines lines = exact.lines();
      for (int year = 1; year <= years; year++) {
        long parts = (long) yearly * year;
        BigDecimal charged =
            new BigDecimal(price).subtract(schedule.years().get(year - 1).bookValue().getAmount());
        // The schedule rounds each year to the cent, the ledger does not.
        assertThat(LEDGER.through(plan, parts).total().getAmount().subtract(charged).abs())
            .isLessThanOrEqualTo(new BigDecimal("0.005").multiply(BigDecimal.valueOf(year)));
        assertThat(exact.through(parts).multiply(lines.scale()))
            .isBetween(
                lines.lowGrowth().multiply(BigInteger.valueOf(parts)).add(lines.lowest()),
                lines.highGrowth().multiply(BigInteger.valueOf(parts)).add(lines.highest()));
      }
    }
  }

  @Test
  void takesTheCheapestOfSeveralOffers() {
    LedgerPlan dear = plan("312000", "28000", 2, 5, 1000);
    LedgerPlan two =
        LedgerPlan.builder()
            .from(dear)
            .prices(
                book()
                    .offers(
                        List.of(
                            offer("kiln", ratio(1), "400000").build(),
                            offer("kiln", ratio(1), "312000").supplier("supplier B").build()))
                    .build())
            .build();
    assertThat(LEDGER.through(two, 777).total()).isEqualTo(LEDGER.through(dear, 777).total());
  }

  @Test
  void refusesAFactorThatIsNone() {
    assertThatThrownBy(() -> kiln("1", 6, 5, 10).build())
        .hasMessageContaining("factor is 6; accepted is above 0 and up to the years, 5");
    assertThatThrownBy(
            () ->
                Depreciated.builder()
                    .item("kiln")
                    .driver(Driver.FIRING_TIME)
                    .straightLine(8, hours(2000))
                    .factor(ratio(2))
                    .years(0)
                    .salvage(eur("1"))
                    .source(INVENTED)
                    .build())
        .hasMessageContaining("years is 0; accepted is from 1 to 100")
        .hasMessageContaining("factor is stated for straight line; accepted is none");
  }

  private static LedgerPlan plan(
      String price, String salvage, double factor, int years, int yearlyFirings) {
    return LedgerPlan.builder()
        .prices(book().offers(List.of(offer("kiln", ratio(1), price).build())).build())
        .addResources(kiln(salvage, factor, years, yearlyFirings).build())
        .partsPerFiring(1)
        .build();
  }

  private static Depreciated.Builder kiln(
      String salvage, double factor, int years, int yearlyFirings) {
    Depreciated.Builder kiln = Depreciated.builder();
    kiln.item("kiln").driver(Driver.FIRING).salvage(eur(salvage)).source(INVENTED);
    return kiln.decliningBalance(ratio(factor), years, ratio(yearlyFirings));
  }
}
