package dev.kilnledger.costing.purchase;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.offer.BreakRule;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Holds the planner against trying out everything, on small random cases of fixed seeds. */
class PurchasePlannerSearchTest {
  private static final PurchasePlanner PLANNER = PurchasePlanner.standard();

  @Test
  void oneNeedOverPacksBreaksMinimumIncrementAndLimit() {
    Random random = new Random(4711);
    for (int round = 0; round < 600; round++) {
      List<Offer> offers = offers(random, "a", 1 + random.nextInt(4), 1);
      int need = 1 + random.nextInt(30);
      if (coverable(offers, need)) {
        compare("round " + round, List.of(need), List.of(offers), List.of());
      }
    }
  }

  /** Where packs cost nearly what they hold, mixes of many packs win, and many of them tie. */
  @Test
  void oneNeedOverPacksPricedByWhatTheyHold() {
    Random random = new Random(2718);
    for (int round = 0; round < 400; round++) {
      int count = 2 + random.nextInt(3);
      int[] contents = random.ints(2, 14).distinct().limit(count).toArray();
      List<Offer> offers = new ArrayList<>();
      for (int content : contents) {
        offers.add(priced(random, "a", content, 1));
      }
      compare("round " + round, List.of(1 + random.nextInt(40)), List.of(offers), List.of());
    }
  }

  /** As above; free shipping lies a little above what is needed. */
  @Test
  void twoNeedsOverPacksPricedByWhatTheyHoldWithShipping() {
    Random random = new Random(1618);
    for (int round = 0; round < 250; round++) {
      List<List<Offer>> offers = new ArrayList<>();
      List<Integer> needs = new ArrayList<>();
      for (String item : round % 2 == 0 ? List.of("a") : List.of("a", "b")) {
        int count = round % 2 == 0 ? 3 : 2;
        List<Offer> found = new ArrayList<>();
        for (int content : random.ints(2, 7).distinct().limit(count).toArray()) {
          found.add(priced(random, item, content, 2));
        }
        offers.add(found);
        needs.add(1 + random.nextInt(12));
      }
      int sum = needs.stream().mapToInt(Integer::intValue).sum();
      List<ShippingTerms> terms = new ArrayList<>();
      for (int supplier = 0; supplier < 2; supplier++) {
        terms.add(
            ShippingTerms.builder()
                .supplier("supplier " + supplier)
                .charge(money(1 + random.nextInt(7)))
                .freeFrom(money(1 + random.nextInt(2 * sum + 8)))
                .tax(Tax.INCLUDED)
                .source(INVENTED)
                .build());
      }
      compare("round " + round, needs, offers, terms);
    }
  }

  private static Offer priced(Random random, String item, int content, int suppliers) {
    int price = 2 * content + random.nextInt(3);
    return FixturePlan.offer(item, ratio(content), String.valueOf(price))
        .supplier("supplier " + random.nextInt(suppliers))
        .build();
  }

  @Test
  void severalNeedsFromSeveralSuppliersWithShipping() {
    Random random = new Random(815);
    for (int round = 0; round < 250; round++) {
      List<List<Offer>> offers = new ArrayList<>();
      List<Integer> needs = new ArrayList<>();
      int items = 1 + random.nextInt(2);
      for (int item = 0; item < items; item++) {
        // Up to three offers in all: more take the exhaustive search too long.
        int count = items == 1 ? 1 + random.nextInt(3) : 1 + (item + random.nextInt(2)) / 2;
        offers.add(offers(random, item == 0 ? "a" : "b", count, 3));
        needs.add(1 + random.nextInt(9));
      }
      List<ShippingTerms> terms = new ArrayList<>();
      for (int supplier = 0; supplier < 3; supplier++) {
        if (random.nextInt(4) > 0) {
          ShippingTerms.Builder one = ShippingTerms.builder();
          one.supplier("supplier " + supplier)
              .charge(money(random.nextInt(8)))
              .tax(Tax.INCLUDED)
              .source(INVENTED);
          if (random.nextInt(3) > 0) {
            one.freeFrom(money(1 + random.nextInt(40)));
          }
          terms.add(one.build());
        }
      }
      boolean all = true;
      for (int i = 0; i < needs.size(); i++) {
        all &= coverable(offers.get(i), needs.get(i));
      }
      if (all) {
        compare("round " + round, needs, offers, terms);
      }
    }
  }

  /** The covering knapsack by its textbook recursion over every measure up to the need. */
  @Test
  void plainPacksForNeedsOfHundreds() {
    Random random = new Random(1234);
    for (int round = 0; round < 200; round++) {
      int count = 1 + random.nextInt(5);
      int[] contents = random.ints(1, 60).distinct().limit(count).toArray();
      int[] prices = random.ints(count, 1, 100).toArray();
      int need = 1 + random.nextInt(2000);
      List<Offer> offers = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        offers.add(FixturePlan.offer("a", ratio(contents[i]), "" + prices[i]).build());
      }
      int[] least = new int[need + 1];
      for (int part = 1; part <= need; part++) {
        least[part] = Integer.MAX_VALUE;
        for (int i = 0; i < count; i++) {
          least[part] = Math.min(least[part], prices[i] + least[Math.max(0, part - contents[i])]);
        }
      }
      PriceBook book =
          PriceBook.builder().currency(CurrencyUnit.EUR).asOf(TODAY).addAllOffers(offers).build();
      assertThat(PLANNER.plan(book, List.of(Need.of("a", ratio(need)))).total())
          .as("need %s of %s at %s", need, Arrays.toString(contents), Arrays.toString(prices))
          .isEqualTo(money(least[need]).withCurrencyScale());
    }
  }

  private static void compare(
      String round, List<Integer> needs, List<List<Offer>> offers, List<ShippingTerms> terms) {
    List<Offer> all = offers.stream().flatMap(List::stream).toList();
    PriceBook book =
        PriceBook.builder()
            .currency(CurrencyUnit.EUR)
            .asOf(TODAY)
            .addAllOffers(all)
            .addAllShipping(terms)
            .build();
    List<Need> wanted = new ArrayList<>();
    for (int i = 0; i < needs.size(); i++) {
      wanted.add(Need.of(i == 0 ? "a" : "b", ratio(needs.get(i))));
    }
    PurchasePlan plan = PLANNER.plan(book, wanted);
    long[] expected = new Exhaustive(needs, offers, terms).best();
    long[] found = new long[all.size()];
    for (Purchase purchase : plan.purchases()) {
      found[all.indexOf(purchase.offer())] = purchase.packs().longValueExact();
    }
    assertThat(found)
        .as(
            "%s: needs %s of %s, terms %s, expected %s",
            round,
            needs,
            all.stream()
                .map(
                    offer ->
                        offer.text()
                            + offer.breaks()
                            + offer.breakRule()
                            + " min "
                            + offer.minimumOrder()
                            + " by "
                            + offer.orderIncrement()
                            + offer.available())
                .toList(),
            terms.stream().map(one -> one.supplier() + one.text()).toList(),
            Arrays.toString(expected))
        .isEqualTo(expected);
  }

  private static boolean coverable(List<Offer> offers, int need) {
    int sum = 0;
    for (Offer offer : offers) {
      if (offer.available().isEmpty()) {
        return true;
      }
      long most = offer.available().get();
      sum += (int) (offer.content().si() * (most - most % offer.orderIncrement()));
    }
    return sum >= need;
  }

  private static List<Offer> offers(Random random, String item, int count, int suppliers) {
    List<Offer> offers = new ArrayList<>();
    List<String> seen = new ArrayList<>();
    while (offers.size() < count) {
      int content = 1 + random.nextInt(9);
      String supplier = "supplier " + random.nextInt(suppliers);
      if (seen.contains(content + supplier)) {
        continue;
      }
      seen.add(content + supplier);
      // Small prices, so that ties are common.
      int price = random.nextInt(12);
      Offer.Builder offer =
          FixturePlan.offer(item, ratio(content), String.valueOf(price)).supplier(supplier);
      if (random.nextInt(3) == 0) {
        int lower = random.nextInt(price + 1);
        int from = 2 + random.nextInt(4);
        offer.addBreaks(PriceBreak.of(from, money(lower)));
        if (random.nextBoolean()) {
          offer.addBreaks(
              PriceBreak.of(from + 1 + random.nextInt(4), money(random.nextInt(lower + 1))));
        }
        offer.breakRule(random.nextBoolean() ? BreakRule.ALL_UNITS : BreakRule.INCREMENTAL);
      }
      if (random.nextInt(3) == 0) {
        offer.minimumOrder(1 + random.nextInt(4));
        offer.orderIncrement(1 + random.nextInt(3));
      }
      if (random.nextInt(4) == 0) {
        offer.available(6L + random.nextInt(4));
      }
      offers.add(offer.build());
    }
    return offers;
  }

  private static BigMoney money(int amount) {
    return BigMoney.of(CurrencyUnit.EUR, BigDecimal.valueOf(amount));
  }

  /** Tries every number of packs up to what could make sense. */
  private static final class Exhaustive {
    private final List<Integer> needs;
    private final List<Offer> all;
    private final List<Integer> itemOf = new ArrayList<>();
    private final List<ShippingTerms> terms;
    private final long[][] costs;
    private long[] bestKey = new long[0];
    private long[] best = new long[0];

    Exhaustive(List<Integer> needs, List<List<Offer>> offers, List<ShippingTerms> terms) {
      this.needs = needs;
      this.all = offers.stream().flatMap(List::stream).toList();
      this.terms = terms;
      for (int i = 0; i < offers.size(); i++) {
        for (int j = 0; j < offers.get(i).size(); j++) {
          itemOf.add(i);
        }
      }
      costs = new long[all.size()][];
      for (int i = 0; i < all.size(); i++) {
        Offer offer = all.get(i);
        int need = needs.get(itemOf.get(i));
        // Enough to cover alone, to reach every break, and to spend any threshold of 40.
        long cover = (long) Math.ceil(need / offer.content().si());
        long top =
            Math.max(cover, offer.breaks().isEmpty() ? 0 : 12)
                + offer.orderIncrement()
                + offer.minimumOrder();
        if (!terms.isEmpty()) {
          top += 8; // at least one unit of money each: more never saves a charge of at most 7
        }
        costs[i] = new long[(int) Math.min(top, offer.available().orElse(top)) + 1];
        for (int packs = 0; packs < costs[i].length; packs++) {
          costs[i][packs] =
              packs == 0 || offer.orderOf(packs) == packs
                  ? offer.cost(packs).getAmount().longValueExact()
                  : -1;
        }
      }
    }

    long[] best() {
      visit(0, new long[all.size()]);
      return best;
    }

    private void visit(int index, long[] counts) {
      if (index == counts.length) {
        weigh(counts);
        return;
      }
      for (int packs = 0; packs < costs[index].length; packs++) {
        if (costs[index][packs] >= 0) {
          counts[index] = packs;
          visit(index + 1, counts);
        }
      }
      counts[index] = 0;
    }

    private void weigh(long[] counts) {
      long[] key = new long[2 + needs.size() + counts.length];
      for (int i = 0; i < needs.size(); i++) {
        key[1 + i] = -needs.get(i);
      }
      for (int i = 0; i < counts.length; i++) {
        key[0] += costs[i][(int) counts[i]];
        key[1 + itemOf.get(i)] += counts[i] * (long) all.get(i).content().si();
        key[1 + needs.size()] += counts[i];
        key[2 + needs.size() + i] = -counts[i];
      }
      for (int i = 0; i < needs.size(); i++) {
        if (key[1 + i] < 0) {
          return;
        }
      }
      for (ShippingTerms one : terms) {
        long value = 0;
        boolean ordered = false;
        for (int i = 0; i < counts.length; i++) {
          if (all.get(i).supplier().equals(one.supplier())) {
            value += costs[i][(int) counts[i]];
            ordered |= counts[i] > 0;
          }
        }
        long reached = value;
        boolean free =
            one.freeFrom().filter(from -> from.getAmount().longValueExact() <= reached).isPresent();
        if (ordered && !free) {
          key[0] += one.charge().getAmount().longValueExact();
        }
      }
      if (bestKey.length == 0 || Arrays.compare(key, bestKey) < 0) {
        bestKey = key;
        best = counts.clone();
      }
    }
  }
}
