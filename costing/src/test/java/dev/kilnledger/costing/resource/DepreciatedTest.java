package dev.kilnledger.costing.resource;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.offer.Offer;
import java.math.BigDecimal;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is charged of a machine over its life, and what lives and methods there are. */
class DepreciatedTest {
  @ParameterizedTest
  @CsvSource({
    // 312,000, salvage 28,000, 1,136,000 units; after 5 years 1,136,000 would be passed: the last
    // year is charged 50,100 and not 52,800 (textbook example, answers recomputed).
    "245600, 61400",
    "476000, 119000",
    "703000, 175750",
    "935600, 233900",
    "1146800, 284000"
  })
  void depreciatesByUnitsOfProductionDownToTheSalvageValue(long units, String charged) {
    Depreciated press =
        Depreciated.builder()
            .item("press")
            .driver(Driver.PART)
            .life(ratio(1_136_000))
            .salvage(eur("28000"))
            .source(INVENTED)
            .build();
    Offer offer = offer("press", ratio(1), "312000").build();
    assertThat(charge(press, offer, units)).isEqualByComparingTo(charged);
    // 171,600, salvage 15,000, 4,500,000 units, 675,000 in a year: 23,490; straight line over 8
    // years 19,575 (same textbook).
    Offer other = offer("press", ratio(1), "171600").build();
    Depreciated.Builder built = Depreciated.builder().from(press).salvage(eur("15000"));
    assertThat(charge(built.life(ratio(4_500_000)).build(), other, 675_000))
        .isEqualByComparingTo("23490");
    Depreciated straight = built.straightLine(8, ratio(675_000)).build();
    assertThat(straight.method()).isEqualTo(DepreciationMethod.STRAIGHT_LINE);
    assertThat(charge(straight, other, 675_000)).isEqualByComparingTo("19575");
  }

  /**
   * Double declining balance over five years of 200 firings: two fifths of the book value a year,
   * 400, 240, 144 and 86.40 of 1,000, and in the fifth what is left above the salvage value, 29.60.
   */
  @ParameterizedTest
  @CsvSource({
    "100, 200",
    "200, 400",
    "300, 520",
    "700, 827.2",
    "800, 870.4",
    "900, 885.2",
    "1000, 900",
    "5000, 900"
  })
  void chargesMoreInTheFirstYears(long firings, String charged) {
    Depreciated kiln =
        kilnWithoutSalvage().decliningBalance(ratio(2), 5, ratio(200)).salvage(eur("100")).build();
    Offer offer = offer("kiln", ratio(1), "1000").build();
    assertThat(charge(kiln, offer, firings)).isEqualByComparingTo(charged);
    // Without salvage value 0.6^5 of the price are never charged.
    Depreciated rest = kilnWithoutSalvage().decliningBalance(ratio(2), 5, ratio(200)).build();
    assertThat(charge(rest, offer, 1_000)).isEqualByComparingTo("922.24");
    assertThat(charge(rest, offer, 5_000)).isEqualByComparingTo("922.24");
    assertThat(kiln.formula(offer, Workload.of(1)))
        .startsWith("sum over the years of use of min(book value x factor / years")
        .contains("n / parts per firing");
    assertThat(kilnWithoutSalvage().life(ratio(10)).build().formula(offer, Workload.of(1)))
        .startsWith("(price - salvage) / price x min(1, ");
  }

  private static BigDecimal charge(Depreciated machine, Offer offer, long units) {
    Staircase staircase = machine.staircase(offer, Workload.of(1));
    return offer
        .price()
        .getAmount()
        .multiply(new BigDecimal(staircase.count(units)))
        .divide(new BigDecimal(staircase.divisor()));
  }

  private static Depreciated.Builder kilnWithoutSalvage() {
    return Depreciated.builder()
        .item("kiln")
        .driver(Driver.FIRING)
        .salvage(eur("0"))
        .source(INVENTED);
  }

  @Test
  void depreciatesWithinItsLimits() {
    Depreciated.Builder kiln = kilnWithoutSalvage();
    assertThat(kiln.straightLine(1, ratio(10)).build().years()).isEqualTo(1);
    assertThat(kiln.straightLine(100, ratio(10)).build().years()).isEqualTo(100);
    assertThatThrownBy(() -> kiln.straightLine(101, ratio(10)).build())
        .hasMessageContaining("years is 101; accepted is from 1 to 100");
    assertThatThrownBy(() -> kiln.straightLine(5, ratio(0)).build())
        .hasMessageContaining("life is 0");
    // All in the first year: a factor as large as the years.
    assertThat(kiln.decliningBalance(ratio(5), 5, ratio(10)).build().factor()).contains(ratio(5));
    assertThatThrownBy(() -> kiln.decliningBalance(ratio(5.1), 5, ratio(10)).build())
        .hasMessageContaining("factor is 5.1; accepted is above 0 and up to the years, 5");
    assertThatThrownBy(
            () ->
                kilnWithoutSalvage()
                    .life(ratio(10))
                    .method(DepreciationMethod.DECLINING_BALANCE)
                    .build())
        .hasMessageContaining("factor is not stated; accepted is above 0 and up to the years");
    assertThatThrownBy(() -> kilnWithoutSalvage().life(ratio(10)).factor(ratio(1)).build())
        .hasMessageContaining("factor is stated for ")
        .hasMessageContaining("; accepted is none");
    assertThatThrownBy(() -> kiln.decliningBalance(ratio(0), 5, ratio(10)).build())
        .hasMessageContaining("factor is 0; accepted is above 0 and up to the years, 5");
    Depreciated plain = kilnWithoutSalvage().life(ratio(10)).build();
    assertThat(plain.mismatches(offer("kiln", ratio(1), "100").build())).isEmpty();
    assertThat(
            kiln.straightLine(5, ratio(1))
                .factor(Optional.empty())
                .salvage(eur("100"))
                .build()
                .mismatches(offer("kiln", ratio(1), "100").build()))
        .isEmpty();
    assertThat(
            Depreciated.builder()
                .from(plain)
                .salvage(BigMoney.parse("USD 1"))
                .build()
                .mismatches(offer("kiln", ratio(1), "100").build()))
        .singleElement()
        .asString()
        .contains("salvage value of kiln is USD 1 and its price EUR 100.00")
        .endsWith("in one currency");
    assertThat(plain.mismatches(offer("kiln", ratio(1), "0").build()))
        .singleElement()
        .asString()
        .contains(
            "salvage value of kiln is EUR 0 and its price EUR 0.00; accepted is a price above");
    assertThat(plain.stock(offer("kiln", ratio(1), "100").build(), Workload.of(1), 4).text())
        .isEqualTo("6 firings");
  }
}
