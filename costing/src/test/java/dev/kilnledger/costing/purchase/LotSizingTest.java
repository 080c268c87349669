package dev.kilnledger.costing.purchase;

import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.offer.BreakRule;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.units.Amount;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LotSizingTest {
  /** Demand as published for an open lot-sizing package; cost from memory, recomputed. */
  @Test
  void ordersAsWagnerAndWhitinDo() {
    LotPlan plan =
        WagnerWhitin.standard().plan(sizing(20, 50, 10, 50, 50, 10, 20, 40, 20, 30).build());
    assertThat(plan.total()).isEqualTo(eur("580"));
    assertThat(plan.lots())
        .extracting(lot -> lot.first() + "-" + lot.last() + ": " + lot.quantity())
        .containsExactly("1-3: 80", "4-7: 130", "8-10: 90");
    assertThat(plan.lots().get(0).text())
        .isEqualTo("periods 1 to 3: 80, order EUR 100, holding EUR 70");
  }

  @Test
  void neverCoversMorePeriodsThanTheGoodsKeep() {
    LotPlan plan =
        WagnerWhitin.standard()
            .plan(sizing(20, 50, 10, 50, 50, 10, 20, 40, 20, 30).longestCover(2).build());
    assertThat(plan.lots()).hasSize(5).allMatch(lot -> lot.last() - lot.first() == 1);
    // Five orders, and what the second of each pair of periods uses is held once.
    assertThat(plan.total()).isEqualTo(eur("680")); // 500 + 50 + 50 + 10 + 40 + 30
  }

  /** By hand: orders cost nothing, holding does, so each demand has its own order and no other. */
  @Test
  void ordersNothingForNothing() {
    LotPlan free = WagnerWhitin.standard().plan(sizing(0, 5, 0, 4).orderCost(eur("0")).build());
    assertThat(free.lots())
        .extracting(lot -> lot.first() + "-" + lot.last() + ": " + lot.quantity())
        .containsExactly("2-2: 5", "4-4: 4");
  }

  /** By hand: one order of 2 holds 1 for 10; two orders cost 20 as well. */
  @Test
  void letsAnOrderReachFurtherAtEqualCost() {
    LotPlan plan =
        WagnerWhitin.standard()
            .plan(sizing(1, 1).orderCost(eur("10")).holdingCost(eur("10")).build());
    assertThat(plan.lots()).singleElement().extracting(Lot::quantity).isEqualTo(ratio(2));
  }

  @Test
  void agreesWithTryingOutAllPlans() {
    Random random = new Random(99);
    for (int round = 0; round < 300; round++) {
      int[] demand = random.ints(1 + random.nextInt(8), 0, 6).toArray();
      int order = random.nextInt(12);
      int hold = random.nextInt(4);
      int cover = 1 + random.nextInt(8);
      LotPlan plan =
          WagnerWhitin.standard()
              .plan(
                  sizing(demand)
                      .orderCost(eur("" + order))
                      .holdingCost(eur("" + hold))
                      .longestCover(cover)
                      .build());
      assertThat(plan.total().getAmount().intValueExact())
          .as("%s at %s and %s for up to %s", Arrays.toString(demand), order, hold, cover)
          .isEqualTo(least(demand, order, hold, cover));
    }
  }

  private static int least(int[] demand, int order, int hold, int cover) {
    int least = Integer.MAX_VALUE;
    for (int orders = 0; orders < 1 << demand.length; orders++) {
      int last = -1;
      int cost = order * Integer.bitCount(orders);
      boolean served = true;
      for (int period = 0; period < demand.length; period++) {
        last = (orders >> period & 1) == 1 ? period : last;
        served &= (last >= 0 && period - last < cover) || demand[period] == 0;
        cost += demand[period] * hold * (period - Math.max(last, 0));
      }
      least = served ? Math.min(least, cost) : least;
    }
    return least;
  }

  @Test
  void refusesALotSizingThatCannotBe() {
    assertThatThrownBy(
            () ->
                sizing(1)
                    .addDemand(litres(-1))
                    .orderCost(eur("-1"))
                    .holdingCost(BigMoney.of(CurrencyUnit.USD, 1))
                    .longestCover(0)
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("order cost is EUR -1; accepted is zero or more")
        .hasMessageContaining("holding cost is USD 1; accepted is zero or more in EUR")
        .hasMessageContaining("demand of period 2 is -1 L; accepted is zero or more")
        .hasMessageContaining("demand of period 2 is -1 L; accepted is a measure of ratio")
        .hasMessageContaining("longest cover is 0 periods; accepted is 1 or more");
  }

  /** Worked example of an open course on operations management; recomputed by hand. */
  @Test
  void findsTheOrderQuantityUnderBreaksOnAllUnits() {
    OrderQuantity best =
        EconomicOrderQuantity.standard().best(lamp(), ratio(800), eur("60"), percent(30));
    assertThat(best.packs()).isEqualTo(200);
    assertThat(best.total().isEqual(eur("40080"))).isTrue();
    assertThat(best.purchase().isEqual(eur("38400"))).isTrue();
    assertThat(best.ordering().isEqual(eur("240"))).isTrue();
    assertThat(best.holding().isEqual(eur("1440"))).isTrue();
  }

  /** The other two totals of the same example. */
  @ParameterizedTest
  @CsvSource({"100, 40822.50", "500, 41221.00"})
  void agreesWithTheExamplesOtherOrders(long packs, String total) {
    Offer only = Offer.builder().from(lamp()).minimumOrder(packs).available(packs).build();
    OrderQuantity best =
        EconomicOrderQuantity.standard().best(only, ratio(800), eur("60"), percent(30));
    assertThat(best.total().isEqual(eur(total))).isTrue();
  }

  @Test
  void agreesWithTryingOutAllOrders() {
    for (BreakRule rule : BreakRule.values()) {
      Offer lamp = Offer.builder().from(lamp()).breakRule(rule).orderIncrement(3).build();
      OrderQuantity best =
          EconomicOrderQuantity.standard().best(lamp, ratio(777), eur("31"), percent(22));
      double least =
          IntStream.rangeClosed(1, 1000)
              .map(step -> 3 * step)
              .mapToDouble(
                  packs -> {
                    double cost = lamp.cost(packs).getAmount().doubleValue();
                    return 777 * (cost + 31) / packs + 0.11 * cost;
                  })
              .min()
              .orElseThrow();
      // Doubles of 15 digits against decimals.
      assertThat(best.total().getAmount().doubleValue()).isCloseTo(least, within(1e-8));
    }
  }

  /** Random offers of fixed seeds: the least over every order that can be made. */
  @Test
  void findsTheBestOfAllOrdersUnderEveryRule() {
    Random random = new Random(577);
    for (int round = 0; round < 300; round++) {
      int price = 20 + random.nextInt(30);
      Offer.Builder builder = offer("lamp", ratio(1), "" + price);
      int first = 2 + random.nextInt(15);
      int lower = price - random.nextInt(10);
      builder.addBreaks(PriceBreak.of(first, eur("" + lower)));
      builder.addBreaks(
          PriceBreak.of(first + 1 + random.nextInt(20), eur("" + (lower - random.nextInt(10)))));
      builder.breakRule(random.nextBoolean() ? BreakRule.ALL_UNITS : BreakRule.INCREMENTAL);
      builder.minimumOrder(1 + random.nextInt(5)).orderIncrement(1 + random.nextInt(4));
      if (random.nextBoolean()) {
        builder.available(8L + random.nextInt(30));
      }
      Offer lamp = builder.build();
      int use = 1 + random.nextInt(60);
      int order = random.nextInt(40);
      OrderQuantity best =
          EconomicOrderQuantity.standard()
              .best(lamp, ratio(use), eur("" + order), percent(1 + random.nextInt(60)));
      double rate = best.holding().getAmount().doubleValue() / cost(lamp, best.packs());
      double least =
          LongStream.rangeClosed(1, lamp.available().orElse(1_000L))
              .filter(packs -> lamp.orderOf(packs) == packs)
              .mapToDouble(
                  packs -> use * (cost(lamp, packs) + order) / packs + rate * cost(lamp, packs))
              .min()
              .orElseThrow();
      // Doubles of 15 digits against decimals.
      assertThat(best.total().getAmount().doubleValue())
          .as("round %s: %s", round, lamp)
          .isCloseTo(least, within(1e-8));
      assertThat(lamp.orderOf(best.packs())).isEqualTo(best.packs());
      assertThat(best.packs()).isLessThanOrEqualTo(lamp.available().orElse(Long.MAX_VALUE));
    }
  }

  private static double cost(Offer offer, long packs) {
    return offer.cost(packs).getAmount().doubleValue();
  }

  /**
   * By hand: the root of 2 x 10 x 9 / (0.2 x 9) is 10, and of the orders 4, 8, 12 only 8 is to be
   * had.
   */
  @Test
  void ordersNoMoreThanThereIs() {
    Offer lamp = offer("lamp", ratio(1), "9").orderIncrement(4).available(10L).build();
    OrderQuantity best =
        EconomicOrderQuantity.standard().best(lamp, ratio(10), eur("9"), percent(20));
    assertThat(best.packs()).isEqualTo(8);
  }

  @Test
  void refusesAnOrderQuantityOfPacksThatAreFreeFromABreakOn() {
    Offer lamp = offer("lamp", ratio(1), "9").addBreaks(PriceBreak.of(5, eur("0"))).build();
    assertThatThrownBy(
            () -> EconomicOrderQuantity.standard().best(lamp, ratio(1), eur("1"), percent(20)))
        .hasMessageContaining(
            "order quantity of lamp: some packs cost nothing; accepted are prices above zero");
  }

  @Test
  void refusesAnOrderQuantityOfNothing() {
    Offer metered = offer("energy", ratio(1), "0").metered(true).build();
    assertThatThrownBy(
            () ->
                EconomicOrderQuantity.standard()
                    .best(metered, grams(0), BigMoney.of(CurrencyUnit.USD, -1), percent(0)))
        .hasMessageContaining("it is sold by measure; accepted are packs")
        .hasMessageContaining("some packs cost nothing; accepted are prices above zero")
        .hasMessageContaining("yearly use is 0 g; accepted is more than zero")
        .hasMessageContaining("yearly use is 0 g; accepted is a measure of ratio")
        .hasMessageContaining("order cost is USD -1; accepted is zero or more in EUR")
        .hasMessageContaining("holding rate is 0 %; accepted is more than zero");
  }

  private static Offer lamp() {
    return offer("lamp", ratio(1), "53")
        .addBreaks(
            PriceBreak.of(50, eur("51.50")),
            PriceBreak.of(100, eur("49.50")),
            PriceBreak.of(200, eur("48")),
            PriceBreak.of(500, eur("47")))
        .build();
  }

  private static LotSizing.Builder sizing(int... demand) {
    LotSizing.Builder sizing = LotSizing.builder();
    for (int amount : demand) {
      Amount<?> each = ratio(amount);
      sizing.addDemand(each);
    }
    sizing.measure(ratio(1)).orderCost(eur("100")).holdingCost(eur("1"));
    return sizing;
  }
}
