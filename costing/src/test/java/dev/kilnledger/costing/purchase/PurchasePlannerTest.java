package dev.kilnledger.costing.purchase;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.units.Amounts.days;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.Amounts.pounds;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.offer.BreakRule;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PurchasePlannerTest {
  private static final PurchasePlanner PLANNER = PurchasePlanner.standard();

  /** Frobenius number of 6, 9, 20 is 43 (from memory; recomputed): 43 itself cannot be composed. */
  @Test
  void coversWhatPacksCannotComposeWithTheFewestPacks() {
    PurchasePlan plan =
        plan(Need.of("beads", ratio(43)), pieces(6, "6"), pieces(9, "9"), pieces(20, "20"));
    assertThat(plan.total()).isEqualTo(eur("44.00"));
    assertThat(counts(plan)).containsExactly("1 x 6", "2 x 9", "1 x 20");
    assertThat(plan.covered().get(0).surplus()).isEqualTo(ratio(1));
  }

  /** Computed for this project by exhaustive search outside it. */
  @ParameterizedTest
  @CsvSource({
    "600, 51, 150",
    "1200, 74, 50",
    "1750, 106, 0",
    "2300, 125, 200",
    "3300, 180, 200",
    "4000, 212, 0"
  })
  void findsTheCheapestCoverOfFourPacks(double need, String cost, double surplus) {
    PurchasePlan plan =
        plan(
            Need.of("powder", grams(need)),
            offer("powder", grams(250), "19").build(),
            offer("powder", grams(500), "32").build(),
            offer("powder", kilograms(1), "55").build(),
            offer("powder", grams(2500), "125").build());
    assertThat(plan.total()).isEqualTo(eur(cost + ".00"));
    assertThat(plan.covered().get(0).surplus()).isEqualTo(grams(surplus));
  }

  /**
   * 0/1 knapsack P01 of a public collection of test problems (from memory; recomputed): capacity
   * 165, optimum 309. What is left out of the knapsack is a cover: of a total weight of 537 and a
   * value of 679 at least 372 has to be bought, each item at most once, for 679 - 309 = 370.
   */
  @Test
  void agreesWithAKnapsackOfKnownOptimum() {
    int[] weights = {23, 31, 29, 44, 53, 38, 63, 85, 89, 82};
    int[] values = {92, 57, 49, 68, 60, 43, 67, 84, 87, 72};
    Offer[] offers = new Offer[weights.length];
    for (int i = 0; i < weights.length; i++) {
      offers[i] =
          offer("load", grams(weights[i]), String.valueOf(values[i]))
              .supplier("supplier " + i)
              .available(1L)
              .build();
    }
    assertThat(plan(Need.of("load", grams(537 - 165)), offers).total()).isEqualTo(eur("370.00"));
  }

  /** Contents of 999 g and 1001 g share no divisor; the answer follows from the residues. */
  @Test
  @Timeout(10)
  void answersALargeNeedAsQuicklyAsASmallOne() {
    Offer smaller = offer("powder", grams(999), "9.99").build();
    Offer larger = offer("powder", grams(1001), "10.01").build();
    PurchasePlan plan = plan(Need.of("powder", grams(100_000_000)), smaller, larger);
    // Priced by content, so the least total is the least content of 1e8 or more that can be
    // composed, which above the Frobenius number of 999 x 1001 - 2000 is 1e8 itself.
    assertThat(plan.total()).isEqualTo(eur("1000000.00"));
    assertThat(plan.covered().get(0).surplus()).isEqualTo(grams(0));
  }

  /**
   * By hand: a brush of A at 5 needs 7 of shipping, unless 45 of powder is bought at A as well,
   * which asks more for it than B does.
   */
  @Test
  @Timeout(10)
  void weighsFreeShippingOfALargeNeed() {
    Offer brush = offer("brush", ratio(1), "5").available(1L).build();
    Offer local = offer("powder", kilograms(1), "55").build();
    Offer bulk = offer("powder", grams(2500), "125").supplier("supplier B").build();
    List<Need> needs = List.of(Need.of("brush", ratio(1)), Need.of("powder", grams(100_000_000)));
    PurchasePlan plan = plan(needs, shipped(), brush, local, bulk);
    // All powder at B, brush and shipping at A: 5,000,000 + 12. With one local pack B still has to
    // send 40,000 packs, with three of them 39,999: 5,000,000 - 125 + 165 + 5.
    assertThat(plan.total()).isEqualTo(eur("5000012.00"));
    PurchasePlan fitting =
        plan(needs, shipped(), brush, offer("powder", grams(2500), "130").build(), bulk);
    // One pack of 2500 g at A instead of B: 5 more for it, and no shipping.
    assertThat(fitting.total()).isEqualTo(eur("5000010.00"));
  }

  /** By hand: 1,000,000 packs at the price of the break, and one of another item. */
  @Test
  @Timeout(10)
  void answersALargeNeedWithBreaksAndMinimumOrders() {
    Offer stepped = offer("powder", grams(100), "6").addBreaks(PriceBreak.of(10, eur("5"))).build();
    assertThat(plan(Need.of("powder", grams(200_000_000)), stepped).total())
        .isEqualByComparingTo(eur("10000000"));
    // Free shipping is out of reach for a brush of 5, and given on the powder where it is bought.
    Offer most = offer("powder", grams(100), "5").minimumOrder(10).build();
    Offer brush = offer("brush", ratio(1), "5").supplier("supplier B").build();
    List<Need> needs = List.of(Need.of("powder", grams(200_000_000)), Need.of("brush", ratio(1)));
    assertThat(
            plan(needs, shipping("supplier B", "7").freeFrom(eur("20")).build(), most, brush)
                .total())
        .isEqualByComparingTo(eur("10000012"));
  }

  /** A limit of packs means that each number of them is weighed, up to 2 to the power of 20. */
  @Test
  @Timeout(10)
  void refusesToWeighTooManyWays() {
    Offer limited = offer("beads", ratio(1), "1").available(5_000_000L).build();
    assertThat(plan(Need.of("beads", ratio(1 << 20)), limited).total())
        .isEqualTo(eur("1048576.00"));
    assertThatThrownBy(() -> plan(Need.of("beads", ratio((1 << 20) + 1)), limited))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "the packs of beads can be mixed in more than 1048576 ways that matter; accepted are"
                + " fewer offers, rounder contents, or a smaller need");
  }

  /** The largest measure that divides the packs is 1: 2 to the power of 52 of them are planned. */
  @Test
  void plansUpToTheLargestNumberOfMeasures() {
    Offer single = pieces(1, "1");
    assertThat(plan(Need.of("beads", ratio(1L << 52)), single).total())
        .isEqualTo(eur("4503599627370496.00"));
    assertThatThrownBy(() -> plan(Need.of("beads", ratio((1L << 52) + 1)), single))
        .hasMessageContaining(
            "is 4503599627370497 of the largest measure that divides every pack; accepted is up to"
                + " 4503599627370496");
    Offer far = offer("beads", ratio(1), "2").addBreaks(PriceBreak.of(1L << 53, eur("1"))).build();
    assertThatThrownBy(() -> plan(Need.of("beads", ratio(1)), far))
        .hasMessageContaining("beads: an order of")
        .hasMessageContaining("is 9007199254740992 of the largest measure");
  }

  @Test
  void takesPacksThatShareHardlyAnyMeasure() {
    // 1 lb = 453.59237 g: four of them cost 32, two of 1 kg 22, one of each 19 and hold 1453.59237
    // g.
    // 22.
    PurchasePlan plan =
        plan(
            Need.of("powder", grams(1400)),
            offer("powder", pounds(1), "8").build(),
            offer("powder", kilograms(1), "11").build());
    assertThat(counts(plan)).containsExactly("1 x 1 lb", "1 x 1 kg");
    assertThat(plan.covered().get(0).surplus()).isEqualTo(grams(53.59237));
  }

  @Test
  void paysForSurplusWhereABreakMakesItCheaper() {
    Offer.Builder spool = offer("filament", grams(500), "60");
    Offer allUnits = spool.addBreaks(PriceBreak.of(10, eur("50"))).build();
    // 9 x 60 = 540, 10 x 50 = 500.
    assertThat(counts(plan(Need.of("filament", grams(4500)), allUnits)))
        .containsExactly("10 x 500 g");
    Offer incremental = spool.breakRule(BreakRule.INCREMENTAL).build();
    // 9 x 60 = 540, and 600 for 12: 9 x 60 + 3 x 50 = 690.
    assertThat(plan(Need.of("filament", grams(4500)), incremental).total())
        .isEqualTo(eur("540.00"));
    assertThat(plan(Need.of("filament", grams(6000)), incremental).total())
        .isEqualTo(eur("690.00"));
  }

  @Test
  void respectsMinimumAndIncrement() {
    Offer carton =
        offer("boats", ratio(1), "1")
            .supplier("supplier B")
            .minimumOrder(10)
            .orderIncrement(4)
            .build();
    Offer single = offer("boats", ratio(1), "1.50").build();
    // 12 for 12 against 7 for 10.50; 14 is 12 and 2 singles, 15, against 16 for 16.
    assertThat(plan(Need.of("boats", ratio(7)), carton, single).total()).isEqualTo(eur("10.50"));
    assertThat(plan(Need.of("boats", ratio(14)), carton, single).total()).isEqualTo(eur("15.00"));
  }

  @Test
  void breaksTiesByCatalogueOrder() {
    Offer first = offer("wax", grams(100), "5").build();
    Offer second = offer("wax", grams(100), "5").supplier("supplier B").build();
    assertThat(plan(Need.of("wax", grams(300)), first, second).purchases())
        .containsExactly(Purchase.of(first, new BigDecimal(3)));
    assertThat(plan(Need.of("wax", grams(300)), second, first).purchases())
        .extracting(purchase -> purchase.offer().supplier())
        .containsExactly("supplier B");
  }

  /** By hand: 2 + 2 and 1 + 3 cost and hold the same, and are two packs each. */
  @Test
  void breaksTiesOfMixesByCatalogueOrder() {
    Offer two = pieces(2, "2");
    Offer one = pieces(1, "1");
    Offer three = pieces(3, "3");
    Need four = Need.of("beads", ratio(4));
    // All three are needed for 1 + 3; a pack of 4 would be a single one.
    assertThat(counts(plan(four, two, one, three))).containsExactly("2 x 2");
    assertThat(counts(plan(four, one, two, three))).containsExactly("1 x 1", "1 x 3");
    assertThat(counts(plan(four, three, two, one))).containsExactly("1 x 3", "1 x 1");
  }

  /** By hand: two packs of 4 and shipping of 2 are 10, and so is the one pack of B. */
  @Test
  void breaksTiesOfSuppliersByThePacks() {
    PriceBook book =
        book(
                offer("wax", grams(100), "4").build(),
                offer("wax", grams(200), "10").supplier("supplier B").build())
            .addShipping(shipping("supplier A", "2").build())
            .build();
    PurchasePlan plan = PLANNER.plan(book, List.of(Need.of("wax", grams(200))));
    assertThat(plan.total()).isEqualTo(eur("10.00"));
    assertThat(counts(plan)).containsExactly("1 x 200 g");
  }

  /**
   * By hand: 300 g for 10 and shipping of 2 are 12; 200 g for 12 are sent free and leave nothing.
   */
  @Test
  void breaksTiesWithFreeShippingByTheSurplus() {
    PurchasePlan plan =
        plan(
            List.of(Need.of("wax", grams(200))),
            shipping("supplier A", "2").freeFrom(eur("12")).build(),
            offer("wax", grams(300), "10").build(),
            offer("wax", grams(200), "12").build());
    assertThat(plan.total()).isEqualTo(eur("12.00"));
    assertThat(counts(plan)).containsExactly("1 x 200 g");
  }

  /**
   * By hand: either item's larger pack lifts 16 to 18; the surplus of the first need counts first.
   */
  @Test
  void breaksTiesOfTwoNeedsByTheSurplusOfTheFirst() {
    PurchasePlan plan =
        plan(
            List.of(Need.of("wax", grams(100)), Need.of("resin", grams(100))),
            shipping("supplier A", "3").freeFrom(eur("18")).build(),
            offer("wax", grams(100), "8").build(),
            offer("wax", grams(200), "10").build(),
            offer("resin", grams(100), "8").build(),
            offer("resin", grams(200), "10").build());
    assertThat(plan.total()).isEqualTo(eur("18.00"));
    assertThat(counts(plan)).containsExactly("1 x 100 g", "1 x 200 g");
  }

  /** By hand: 8 + 8 reach the 16; of the two ways to reach more none is cheaper. */
  @Test
  void buysNoMoreThanReachesFreeShipping() {
    PurchasePlan plan =
        plan(
            List.of(Need.of("wax", grams(100)), Need.of("resin", grams(100))),
            shipping("supplier A", "10").freeFrom(eur("16")).build(),
            offer("wax", grams(100), "8").build(),
            offer("wax", grams(200), "10").build(),
            offer("resin", grams(100), "8").build(),
            offer("resin", grams(100), "3").supplier("supplier B").build());
    // Elsewhere: 8 + 3 + shipping of 10.
    assertThat(plan.total()).isEqualTo(eur("16.00"));
  }

  /** By hand: one small pack and shipping are 10, two small packs are 6. */
  @Test
  void takesSmallPacksBeyondTheNeedToReachFreeShipping() {
    PurchasePlan plan =
        plan(
            List.of(Need.of("wax", grams(5))),
            shipping("supplier A", "7").freeFrom(eur("6")).build(),
            offer("wax", grams(100), "24").build(),
            offer("wax", grams(10), "3").build());
    assertThat(plan.total()).isEqualTo(eur("6.00"));
    assertThat(counts(plan)).containsExactly("2 x 10 g");
  }

  @Test
  void aDearerItemCanMakeTheTotalCheaper() {
    List<Need> needs = List.of(Need.of("wax", grams(100)), Need.of("brush", ratio(1)));
    Offer wax = offer("wax", grams(100), "45").build();
    Offer.Builder brush = offer("brush", ratio(1), "4").available(1L);
    PurchasePlan cheap = plan(needs, shipped(), wax, brush.build());
    PurchasePlan dear = plan(needs, shipped(), wax, brush.price(eur("5")).build());
    assertThat(cheap.total()).isEqualTo(eur("56.00")); // 49 + 7 shipping
    assertThat(dear.total()).isEqualTo(eur("50.00")); // free from 50 on
  }

  @Test
  void buysMoreToReachFreeShippingAndBundlesAtOneSupplier() {
    Offer wax = offer("wax", grams(100), "24").build();
    // One at 24 and shipping of 7 is 31; two would be 48 and do not reach 50.
    assertThat(plan(List.of(Need.of("wax", grams(100))), shipped(), wax).total())
        .isEqualTo(eur("31.00"));
    Offer brush = offer("brush", ratio(1), "3").build();
    List<Need> both = List.of(Need.of("wax", grams(200)), Need.of("brush", ratio(1)));
    // Wax of 48 and one brush reach the threshold by themselves.
    assertThat(plan(both, shipped(), wax, brush).total()).isEqualTo(eur("51.00"));
    Offer cheaperBrush = offer("brush", ratio(1), "1").build();
    // 48 + 1 + 7 = 56 against a second brush, 48 + 2 = 50.
    PurchasePlan plan = plan(both, shipped(), wax, cheaperBrush);
    assertThat(plan.total()).isEqualTo(eur("50.00"));
    assertThat(counts(plan)).containsExactly("2 x 100 g", "2 x 1");
    Offer elsewhere = offer("brush", ratio(1), "0.50").supplier("supplier B").build();
    assertThat(plan(both, shipped(), wax, cheaperBrush, elsewhere).deliveries()).hasSize(1);
  }

  @Test
  void explainsItsLines() {
    PurchasePlan plan =
        plan(
            List.of(Need.of("wax", grams(250)), Need.of("energy", kilowattHours(28))),
            shipped(),
            offer("wax", grams(100), "5").build(),
            offer("energy", kilowattHours(1), "0.32").supplier("supplier B").metered(true).build(),
            offer("energy", kilowattHours(10), "3").supplier("supplier C").metered(true).build());
    assertThat(plan.explanation())
        .startsWith(
            "wax: 3 x 100 g from supplier A at EUR 5.00 = EUR 15.00",
            "energy: 2.8 x 10 kWh from supplier C at EUR 3.00 = EUR 8.400",
            "supplier A: shipping EUR 7, free from EUR 50, on goods of EUR 15.00 = EUR 7",
            "total EUR 30.400 at the prices of 2026-11-02",
            "wax: need 250 g, surplus 50 g",
            "energy: need 28 kWh, surplus 0 kWh");
    assertThat(plan.findings()).isEmpty();
  }

  /** By hand: a third of what 1 unit of the offer holds, for a third of 0.90. */
  @Test
  void buysByMeasureWhatIsNeededWithoutSurplus() {
    Offer first = offer("energy", kilowattHours(3), "0.90").metered(true).build();
    Offer second =
        offer("energy", kilowattHours(1), "0.30").supplier("supplier B").metered(true).build();
    PurchasePlan plan = plan(Need.of("energy", kilowattHours(1)), first, second);
    // Of two at one price per content the first.
    assertThat(plan.purchases()).singleElement().extracting(Purchase::offer).isEqualTo(first);
    assertThat(plan.covered().get(0).surplus()).isEqualTo(kilowattHours(0));
    assertThat(PLANNER.cheapestByMeasure(List.of(second, first))).isEqualTo(second);
  }

  @Test
  void countsMoneyInTheDecimalsOfTheShipping() {
    ShippingTerms terms = shipping("supplier A", "1.125").freeFrom(eur("9.8765")).build();
    PurchasePlan plan =
        plan(List.of(Need.of("wax", grams(100))), terms, offer("wax", grams(100), "5").build());
    assertThat(plan.total()).isEqualByComparingTo(eur("6.125"));
  }

  /** What is sold by measure is not sent, and what is sent for nothing has no tax to it. */
  @Test
  void leavesOutTheTermsOfThoseWhoSendNothingOrForNothing() {
    PriceBook.Builder book =
        book(
            offer("energy", kilowattHours(1), "0.30").supplier("grid").metered(true).build(),
            offer("wax", grams(100), "5").build());
    book.addShipping(shipping("grid", "9").tax(Tax.EXCLUDED).build());
    book.addShipping(shipping("supplier A", "0").tax(Tax.EXCLUDED).build());
    List<Need> needs = List.of(Need.of("energy", kilowattHours(10)), Need.of("wax", grams(1)));
    assertThat(PLANNER.plan(book.build(), needs).total()).isEqualByComparingTo(eur("8"));
  }

  @Test
  void weighsUpToTwelveSuppliersWhoCharge() {
    List<Offer> offers = new ArrayList<>();
    List<ShippingTerms> terms = new ArrayList<>();
    for (int i = 1; i <= 13; i++) {
      offers.add(offer("wax", grams(100), i + "").supplier("supplier " + i).build());
      terms.add(shipping("supplier " + i, (14 - i) + "").build());
    }
    List<Need> needs = List.of(Need.of("wax", grams(200)));
    PriceBook twelve =
        book(offers.subList(0, 12).toArray(Offer[]::new)).shipping(terms.subList(0, 12)).build();
    // Two packs at i and shipping of 14 - i: the cheapest is the first supplier.
    assertThat(PLANNER.plan(twelve, needs).total()).isEqualByComparingTo(eur("15"));
    PriceBook thirteen = book(offers.toArray(Offer[]::new)).shipping(terms).build();
    assertThatThrownBy(() -> PLANNER.plan(thirteen, needs))
        .hasMessage("purchase plan: 13 suppliers charge for sending; accepted are up to 12");
    Wanted wanted =
        Wanted.of(
            "wax",
            new BigDecimal(200),
            offers.stream().map(offer -> Supply.of(offer, new BigDecimal(100))).toList());
    assertThatThrownBy(() -> PLANNER.cover(List.of(wanted), terms))
        .hasMessage("purchases: 13 suppliers charge for sending; accepted are up to 12");
    // Who charges nothing, and from whom nothing could be bought, does not count.
    List<ShippingTerms> idle = new ArrayList<>(terms.subList(0, 12));
    idle.add(shipping("supplier 13", "0").build());
    idle.add(shipping("supplier 14", "7").build());
    assertThat(PLANNER.cover(List.of(wanted), idle))
        .containsExactly(Purchase.of(offers.get(0), new BigDecimal(2)));
  }

  /** Each of 400 packs of either item may come from A or B, dearer or cheaper by a cent. */
  @Test
  @Timeout(60)
  void refusesTooManyWaysToFreeShipping() {
    List<Offer> offers = new ArrayList<>();
    for (String item : List.of("wax", "resin")) {
      offers.add(offer(item, grams(100), "1.01").build());
      offers.add(offer(item, grams(100), "1").supplier("supplier B").build());
    }
    List<Need> needs =
        List.of(
            Need.of("wax", grams(40_000)),
            Need.of("resin", grams(40_000)),
            Need.of("brush", ratio(1)));
    ShippingTerms terms = shipping("supplier A", "10").freeFrom(eur("404")).build();
    offers.add(offer("brush", ratio(1), "1").build());
    assertThatThrownBy(() -> plan(needs, terms, offers.toArray(Offer[]::new)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "free shipping can be reached in more than 131072 ways that matter; accepted are fewer"
                + " needs or offers");
  }

  @Test
  void refusesAWantThatCannotBe() {
    Offer limited = offer("boats", ratio(1), "1").available(10L).orderIncrement(4).build();
    Supply supply = Supply.of(limited, BigDecimal.ONE);
    // In steps of 4 only 8 of the 10 can be had.
    assertThat(
            PLANNER.cover(
                List.of(Wanted.of("boats", new BigDecimal(8), List.of(supply))), List.of()))
        .containsExactly(Purchase.of(limited, new BigDecimal(8)));
    Wanted more = Wanted.of("boats", new BigDecimal(9), List.of(supply));
    assertThatThrownBy(() -> PLANNER.cover(List.of(more), List.of()))
        .hasMessage(
            "purchases: all packs of boats that can be had hold less than is wanted, 9 in the"
                + " measure of their contents; accepted is a smaller want or more offers");
    assertThatThrownBy(() -> Wanted.of("boats", BigDecimal.ZERO, List.of()))
        .hasMessageContaining("want of boats")
        .hasMessageContaining("amount is 0; accepted is more than zero")
        .hasMessageContaining("there is no supply; accepted is one or more");
    Offer metered = offer("gas", litres(1), "5").metered(true).build();
    assertThatThrownBy(() -> Supply.of(metered, BigDecimal.ZERO))
        .hasMessageContaining("supply of gas")
        .hasMessageContaining("a pack holds 0; accepted is more than zero")
        .hasMessageContaining("it is sold by measure; accepted are whole packs");
    assertThatThrownBy(() -> Purchase.of(limited, BigDecimal.ZERO))
        .hasMessage("purchase of boats: packs is 0; accepted is a whole number of 1 or more");
    assertThatThrownBy(() -> Purchase.of(limited, new BigDecimal("1.5")))
        .hasMessage("purchase of boats: packs is 1.5; accepted is a whole number of 1 or more");
    assertThatThrownBy(() -> Purchase.of(metered, BigDecimal.ZERO))
        .hasMessage("purchase of gas: packs is 0; accepted is more than zero");
  }

  @Test
  void leavesOutWhatPerishesBeforeItIsUsed() {
    Offer large = offer("resin", kilograms(5), "50").shelfLife(days(90)).build();
    Offer small = offer("resin", kilograms(1), "20").shelfLife(days(365)).build();
    assertThat(plan(Need.of("resin", kilograms(3)), large, small).total()).isEqualTo(eur("50.00"));
    assertThat(plan(Need.of("resin", kilograms(3), days(180)), large, small).total())
        .isEqualTo(eur("60.00"));
    assertThatThrownBy(() -> plan(Need.of("resin", kilograms(3), days(400)), large, small))
        .hasMessageContaining(
            "no offer of resin keeps for 400 d; accepted is a need of a shorter time, bought"
                + " more often");
  }

  @Test
  void refusesWhatItCannotPlanWithAllProblems() {
    PriceBook book =
        book(
                offer("wax", grams(100), "5").build(),
                offer("wax", litres(1), "5").tax(Tax.EXCLUDED).build(),
                offer("boat", ratio(1), "5").available(3L).build(),
                offer("gas", litres(1), "5").build(),
                offer("gas", litres(10), "5").metered(true).build())
            .build();
    assertThatThrownBy(
            () ->
                PLANNER.plan(
                    book,
                    List.of(
                        Need.of("wax", grams(1)),
                        Need.of("boat", ratio(4)),
                        Need.of("boat", ratio(1)),
                        Need.of("gas", litres(1)),
                        Need.of("brush", ratio(1)))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("boat is needed 2 times; accepted is one need, of the sum")
        .hasMessageContaining(
            "wax is needed as 1 g and offered as [supplier A: 1 L at EUR 5.00]; accepted is one"
                + " measure for both")
        .hasMessageContaining(
            "all packs of boat that can be had hold less than the 4 needed; accepted is a smaller"
                + " need or more offers")
        .hasMessageContaining(
            "gas is offered both in packs and by measure; accepted is one of the two")
        .hasMessageContaining("no offer of \"brush\"; accepted is one of [boat, gas, wax]")
        .hasMessageContaining(
            "some prices hold the tax and others do not; accepted is a price book on one basis");
    assertThatThrownBy(() -> PLANNER.plan(book, List.of()))
        .hasMessage("purchase plan: there is no need; accepted is one or more");
    assertThatThrownBy(() -> Need.of(" ", grams(0), days(0)))
        .hasMessageContaining("item is blank; accepted is any text")
        .hasMessageContaining("amount is 0 g; accepted is more than zero")
        .hasMessageContaining("used within is 0 d; accepted is more than zero");
    assertThatThrownBy(
            () -> plan(Need.of("wax", grams(1e15)), offer("wax", grams(0.001), "1").build()))
        .hasMessageContaining("so state contents in rounder numbers");
  }

  private static ShippingTerms shipped() {
    return shipping("supplier A", "7").freeFrom(eur("50")).build();
  }

  private static ShippingTerms.Builder shipping(String supplier, String charge) {
    return ShippingTerms.builder()
        .supplier(supplier)
        .charge(eur(charge))
        .tax(Tax.INCLUDED)
        .source(INVENTED);
  }

  private static Offer pieces(int pieces, String price) {
    return offer("beads", ratio(pieces), price).build();
  }

  private static Offer.Builder offer(String item, Amount<?> content, String price) {
    return FixturePlan.offer(item, content, price);
  }

  private static PriceBook.Builder book(Offer... offers) {
    PriceBook.Builder book = PriceBook.builder();
    book.currency(CurrencyUnit.EUR).asOf(TODAY).addOffers(offers);
    return book;
  }

  private static PurchasePlan plan(Need need, Offer... offers) {
    return PLANNER.plan(book(offers).build(), List.of(need));
  }

  private static PurchasePlan plan(List<Need> needs, ShippingTerms terms, Offer... offers) {
    return PLANNER.plan(book(offers).addShipping(terms).build(), needs);
  }

  private static List<String> counts(PurchasePlan plan) {
    List<String> counts = new ArrayList<>();
    for (Purchase purchase : plan.purchases()) {
      counts.add(purchase.packs().toPlainString() + " x " + purchase.offer().content());
    }
    return counts;
  }
}
