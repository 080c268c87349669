package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.units.Amounts.grams;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is planned for n, held against an independent solver and against random orders. */
class PlannedPricesTest {
  private static final Ledger LEDGER = Ledger.standard();

  /** A plan of items with a quantity for each part. */
  private static final class Planned {
    final RandomMarket market;
    final List<Integer> quantities = new ArrayList<>();
    final LedgerPlan plan;

    Planned(SplittableRandom random, int items, int offers, boolean limits) {
      market = new RandomMarket(random);
      List<Resource> resources = new ArrayList<>();
      for (int i = 0; i < items; i++) {
        market.item("item " + i, offers, 3, limits);
        quantities.add(random.nextInt(1, 5));
        resources.add(consumed("item " + i, Driver.PART, grams(quantities.get(i))).build());
      }
      market.addTerms(3);
      plan =
          LedgerPlan.builder()
              .prices(market.book())
              .resources(resources)
              .partsPerFiring(1)
              .buying(BuyingRule.PLANNED_FOR_N)
              .build();
    }

    List<Long> needs(long parts) {
      return quantities.stream().map(quantity -> quantity * parts).toList();
    }
  }

  @Test
  void costsWhatBranchAndBoundFindsForAFewPlans() {
    costsWhatBranchAndBoundFinds(10);
  }

  @Tag("sampled")
  @Test
  void costsWhatBranchAndBoundFinds() {
    costsWhatBranchAndBoundFinds(150);
  }

  private static void costsWhatBranchAndBoundFinds(int trials) {
    SplittableRandom random = new SplittableRandom(20261125);
    for (int trial = 0; trial < trials; trial++) {
      Planned planned = new Planned(random, random.nextInt(1, 3), 2, true);
      CashLines lines = ExactCash.of(planned.plan).lines();
      for (long parts : new long[] {1, random.nextLong(2, 5), random.nextLong(5, 9)}) {
        long least =
            new BranchAndBound(planned.needs(parts), planned.market.offers, planned.market.terms)
                .least();
        assertThat(LEDGER.through(planned.plan, parts).total().getAmount())
            .as("trial %s, %s parts of %s", trial, parts, planned.plan)
            .isEqualByComparingTo(BigDecimal.valueOf(least));
        ExactCash exact = ExactCash.of(planned.plan);
        assertThat(exact.through(parts).multiply(lines.scale()))
            .isBetween(
                lines.lowGrowth().multiply(BigInteger.valueOf(parts)).add(lines.lowest()),
                lines.highGrowth().multiply(BigInteger.valueOf(parts)).add(lines.highest()));
      }
    }
  }

  @Test
  void isNeverDearerThanAnOrderPutTogetherAtRandom() {
    SplittableRandom random = new SplittableRandom(5);
    for (int trial = 0; trial < 100; trial++) {
      Planned planned = new Planned(random, 3, 3, false);
      long parts = random.nextLong(1, 60);
      BigDecimal total = LEDGER.through(planned.plan, parts).total().getAmount();
      for (int order = 0; order < 20; order++) {
        assertThat(total).isLessThanOrEqualTo(BigDecimal.valueOf(atRandom(random, planned, parts)));
      }
      LedgerPlan asNeeded =
          LedgerPlan.builder().from(planned.plan).buying(BuyingRule.AS_NEEDED).build();
      assertThat(total).isLessThanOrEqualTo(LEDGER.through(asNeeded, parts).total().getAmount());
    }
  }

  private static long atRandom(SplittableRandom random, Planned planned, long parts) {
    long cost = 0;
    long[] goods = new long[3];
    boolean[] ordered = new boolean[3];
    List<Long> needs = planned.needs(parts);
    for (int i = 0; i < needs.size(); i++) {
      List<Offer> offers = planned.market.offers.get(i);
      long[] packs = new long[offers.size()];
      long content = 0;
      while (content < needs.get(i)) {
        int one = random.nextInt(packs.length);
        packs[one] = offers.get(one).orderOf(packs[one] + 1);
        content = 0;
        for (int j = 0; j < packs.length; j++) {
          content += packs[j] * RandomMarket.content(offers.get(j));
        }
      }
      for (int j = 0; j < packs.length; j++) {
        int supplier = offers.get(j).supplier().charAt(9) - '0';
        long price = RandomMarket.cost(offers.get(j), packs[j], Long.MAX_VALUE);
        cost += price;
        goods[supplier] += price;
        ordered[supplier] |= packs[j] > 0;
      }
    }
    for (ShippingTerms terms : planned.market.terms) {
      int supplier = terms.supplier().charAt(9) - '0';
      boolean free = !terms.chargeOn(RandomMarket.money((int) goods[supplier])).isPositive();
      cost += ordered[supplier] && !free ? terms.charge().getAmount().longValueExact() : 0;
    }
    return cost;
  }

  @Test
  void buysPartsBeyondThePlanAsNeededFromWhatItLeaves() {
    SplittableRandom random = new SplittableRandom(6);
    for (int trial = 0; trial < 60; trial++) {
      Planned planned = new Planned(random, 2, 3, false);
      long n = random.nextLong(1, 30);
      Account all = LEDGER.through(planned.plan, n);
      // A workshop that owns at the start what the plan has bought, and counts on from part n.
      List<Resource> stocked = new ArrayList<>();
      for (int i = 0; i < planned.quantities.size(); i++) {
        String item = "item " + i;
        long bought =
            all.lines().stream()
                .filter(line -> line.item().equals(item))
                .mapToLong(
                    line -> line.count().longValueExact() * RandomMarket.content(line.offer()))
                .sum();
        stocked.add(
            consumed(item, Driver.PART, grams(planned.quantities.get(i)))
                .owned(grams((double) bought))
                .build());
      }
      LedgerPlan after =
          LedgerPlan.builder()
              .from(planned.plan)
              .resources(stocked)
              .buying(BuyingRule.AS_NEEDED)
              .build();
      assertThat(LEDGER.through(after, n).total().isZero()).isTrue();
      for (long part = n + 1; part <= n + 20; part++) {
        assertThat(LEDGER.part(planned.plan, part, n).total())
            .isEqualTo(LEDGER.part(after, part).total());
      }
      BigMoney first = LEDGER.part(planned.plan, 1, n).total();
      for (long part = 2; part <= n; part++) {
        assertThat(LEDGER.part(planned.plan, part, n).total().isZero()).isTrue();
      }
      assertThat(first).isEqualByComparingTo(all.total());
    }
  }
}
