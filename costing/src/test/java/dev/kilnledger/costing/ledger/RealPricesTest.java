package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.percent;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.ToppedUp;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Ledgers over offers with breaks, minimum orders, increments, limits and several suppliers, held
 * against a workshop that tries out every order at the moment something is lacking.
 */
class RealPricesTest {
  private static final Ledger LEDGER = Ledger.standard();
  private static final List<Driver> DRIVERS =
      List.of(Driver.PART, Driver.FIRING, Driver.DEBINDING, Driver.SINTERED_PART);

  /** A random plan and the shelves of the workshop that makes its parts one by one. */
  private static final class Workshop {
    final LedgerPlan plan;
    private final RandomMarket market;
    private final Production production;
    private final List<Driver> drivers = new ArrayList<>();
    private final List<ShortageShelf> shelves = new ArrayList<>();
    private final List<long[]> takes = new ArrayList<>();

    Workshop(SplittableRandom random, boolean failing) {
      market = new RandomMarket(random);
      int partsPerFiring = random.nextInt(1, 4);
      List<Resource> resources = new ArrayList<>();
      int items = random.nextInt(1, 4);
      for (int i = 0; i < items; i++) {
        String name = "item " + i;
        List<Offer> offers = market.item(name, 3, 3, true);
        int owned = random.nextInt(2) * random.nextInt(30);
        if (random.nextInt(4) == 0) {
          int fill = 10 * random.nextInt(1, 3);
          int loss = random.nextInt(0, 11);
          resources.add(
              ToppedUp.builder()
                  .item(name)
                  .fill(grams(fill))
                  .loss(percent(10.0 * loss))
                  .owned(grams(owned))
                  .source(INVENTED)
                  .build());
          drivers.add(Driver.FIRING);
          takes.add(new long[] {fill, fill * loss / 10});
        } else {
          int quantity = random.nextInt(1, 14);
          Driver driver = DRIVERS.get(random.nextInt(DRIVERS.size()));
          resources.add(consumed(name, driver, grams(quantity)).owned(grams(owned)).build());
          drivers.add(driver);
          takes.add(new long[] {quantity, quantity});
        }
        shelves.add(new ShortageShelf(offers, owned));
      }
      market.addTerms(3);
      production = new Production(random, failing, partsPerFiring);
      plan =
          LedgerPlan.builder()
              .prices(market.book())
              .resources(resources)
              .partsPerFiring(partsPerFiring)
              .failures(production.failures())
              .build();
    }

    /** Makes the next good part and returns what it costs. */
    long nextPart() {
      production.nextGoodPart();
      long cost = 0;
      long[] goods = new long[3];
      boolean[] ordered = new boolean[3];
      for (int i = 0; i < shelves.size(); i++) {
        List<Offer> offers = market.offers.get(i);
        long events = production.newEvents(drivers.get(i));
        for (long event = 0; event < events; event++) {
          long[] packs = shelves.get(i).take(takes.get(i)[0]);
          shelves.get(i).putBack(takes.get(i)[0] - takes.get(i)[1]);
          for (int j = 0; j < packs.length; j++) {
            long price = RandomMarket.cost(offers.get(j), packs[j], Long.MAX_VALUE);
            int supplier = offers.get(j).supplier().charAt(9) - '0';
            cost += price;
            goods[supplier] += price;
            ordered[supplier] |= packs[j] > 0;
          }
        }
      }
      for (ShippingTerms terms : market.terms) {
        int supplier = terms.supplier().charAt(9) - '0';
        boolean free =
            terms
                .freeFrom()
                .filter(from -> from.getAmount().longValueExact() <= goods[supplier])
                .isPresent();
        cost += ordered[supplier] && !free ? terms.charge().getAmount().longValueExact() : 0;
      }
      return cost;
    }
  }

  @Test
  void buysForAFewPlansWhatAWorkshopBuysThatTriesEveryOrder() {
    buysAsNeededWhatAWorkshopBuysThatTriesEveryOrder(15);
  }

  @Tag("sampled")
  @Test
  void buysAsNeededWhatAWorkshopBuysThatTriesEveryOrder() {
    buysAsNeededWhatAWorkshopBuysThatTriesEveryOrder(250);
  }

  private static void buysAsNeededWhatAWorkshopBuysThatTriesEveryOrder(int trials) {
    SplittableRandom random = new SplittableRandom(20261124);
    for (int trial = 0; trial < trials; trial++) {
      Workshop workshop = new Workshop(random, trial % 2 == 0);
      ExactCash exact = ExactCash.of(workshop.plan);
      CashLines lines = exact.lines();
      long sum = 0;
      for (long part = 1; part <= 150; part++) {
        long cost = workshop.nextPart();
        sum += cost;
        assertThat(LEDGER.part(workshop.plan, part).total().getAmount())
            .as("trial %s part %s of %s", trial, part, workshop.plan)
            .isEqualByComparingTo(String.valueOf(cost));
        assertThat(exact.through(part))
            .isEqualTo(exact.denominator().multiply(BigInteger.valueOf(sum)));
        assertThat(exact.through(part).multiply(lines.scale()))
            .isBetween(
                lines.lowGrowth().multiply(BigInteger.valueOf(part)).add(lines.lowest()),
                lines.highGrowth().multiply(BigInteger.valueOf(part)).add(lines.highest()));
      }
      assertThat(LEDGER.through(workshop.plan, 150).total().getAmount())
          .isEqualByComparingTo(String.valueOf(sum));
      Statement statement = LEDGER.statement(workshop.plan, 150);
      for (int i = 0; i < workshop.shelves.size(); i++) {
        assertThat(statement.stocks().get(i).left())
            .isEqualTo(grams((double) workshop.shelves.get(i).there()));
      }
      // The next purchase is the next part with a line of packs.
      long next = statement.nextPurchase().map(NextPurchase::part).orElse(400L);
      for (long part = 151; part < Math.min(next + 1, 400); part++) {
        assertThat(
                LEDGER.part(workshop.plan, part).lines().stream()
                    .anyMatch(line -> line.entry() == Entry.BOUGHT))
            .isEqualTo(part == next);
      }
    }
  }

  @Test
  void drawsTheLedgerItselfWhereNothingFails() {
    SplittableRandom random = new SplittableRandom(12);
    for (int trial = 0; trial < 60; trial++) {
      LedgerPlan failing = new Workshop(random, true).plan;
      LedgerPlan plan =
          LedgerPlan.builder()
              .from(failing)
              .failures(failing.failures().trialsOnly())
              .buying(trial % 3 == 0 ? BuyingRule.PLANNED_FOR_N : BuyingRule.AS_NEEDED)
              .build();
      long parts = random.nextLong(1, 200);
      BigMoney cash = LEDGER.through(plan, parts).total();
      assertThat(RandomYields.standard().simulate(plan, parts, 3, trial).cash())
          .allSatisfy(drawn -> assertThat(drawn).isEqualByComparingTo(cash));
      // With failures, every draw costs at least what nothing failing costs.
      if (plan.prices().shipping().isEmpty()) {
        assertThat(RandomYields.standard().simulate(failing, parts, 20, trial).cash())
            .allSatisfy(drawn -> assertThat(drawn).isGreaterThanOrEqualTo(cash));
      }
    }
  }

  @Test
  void continuesTheLedgerOfNWithTheLedgerOfNPlusM() {
    SplittableRandom random = new SplittableRandom(99);
    for (int trial = 0; trial < 60; trial++) {
      LedgerPlan plan = new Workshop(random, trial % 2 == 0).plan;
      long n = random.nextLong(1, 400);
      long m = random.nextLong(1, 60);
      BigMoney continued = LEDGER.through(plan, n).total();
      for (long part = n + 1; part <= n + m; part++) {
        continued = continued.plus(LEDGER.part(plan, part).total());
      }
      assertThat(LEDGER.through(plan, n + m).total()).isEqualByComparingTo(continued);
    }
  }

  @Test
  void followsThePatternAsFarAsOneLikes() {
    SplittableRandom random = new SplittableRandom(7);
    int repeating = 0;
    for (int trial = 0; trial < 80; trial++) {
      LedgerPlan plan = new Workshop(random, false).plan;
      CashLines lines = ExactCash.of(plan).lines();
      if (lines.period().isEmpty() || lines.settled() > 100_000) {
        continue;
      }
      repeating++;
      long period = lines.period().get().longValueExact();
      long n = lines.settled() + random.nextLong(1000);
      BigMoney round = LEDGER.through(plan, n + period).total();
      BigMoney rise = round.minus(LEDGER.through(plan, n).total());
      assertThat(LEDGER.through(plan, n + 1_000_000 * period).total())
          .isEqualByComparingTo(LEDGER.through(plan, n).total().plus(rise.multipliedBy(1_000_000)));
      // In the long run, over one period, the cash rises by the usage.
      assertThat(LEDGER.usage(plan).total().getAmount().doubleValue() * period)
          .isCloseTo(rise.getAmount().doubleValue(), org.assertj.core.api.Assertions.within(1e-6));
    }
    assertThat(repeating).isGreaterThan(60);
  }
}
