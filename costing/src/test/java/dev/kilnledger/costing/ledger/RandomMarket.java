package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;

import dev.kilnledger.costing.offer.BreakRule;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * Small offers of several suppliers, with breaks, minimum orders, increments, limits, and terms.
 */
final class RandomMarket {
  private final SplittableRandom random;
  final List<List<Offer>> offers = new ArrayList<>();
  final List<ShippingTerms> terms = new ArrayList<>();

  RandomMarket(SplittableRandom random) {
    this.random = random;
  }

  /** Adds an item with offers in grams, at least one of them without a limit. */
  List<Offer> item(String name, int most, int suppliers, boolean limits) {
    List<Offer> found = new ArrayList<>();
    List<String> seen = new ArrayList<>();
    int count = random.nextInt(1, most + 1);
    while (found.size() < count) {
      int content = random.nextInt(1, 10);
      String supplier = "supplier " + random.nextInt(suppliers);
      if (seen.contains(content + supplier)) {
        continue;
      }
      seen.add(content + supplier);
      // Small prices, so that ties are common.
      int price = random.nextInt(12);
      Offer.Builder one = offer(name, grams(content), "" + price).supplier(supplier);
      if (random.nextInt(3) == 0) {
        int lower = random.nextInt(price + 1);
        int from = random.nextInt(2, 6);
        one.addBreaks(PriceBreak.of(from, money(lower)));
        if (random.nextBoolean()) {
          one.addBreaks(
              PriceBreak.of(from + random.nextInt(1, 4), money(random.nextInt(lower + 1))));
        }
        one.breakRule(random.nextBoolean() ? BreakRule.ALL_UNITS : BreakRule.INCREMENTAL);
      }
      if (random.nextInt(3) == 0) {
        one.minimumOrder(random.nextInt(1, 4)).orderIncrement(random.nextInt(1, 3));
      }
      if (limits && !found.isEmpty() && random.nextInt(3) == 0) {
        one.available((long) random.nextInt(6, 12));
      }
      found.add(one.build());
    }
    offers.add(found);
    return found;
  }

  /** Gives some suppliers terms. */
  void addTerms(int suppliers) {
    for (int i = 0; i < suppliers; i++) {
      if (random.nextInt(4) > 0) {
        ShippingTerms.Builder one = ShippingTerms.builder();
        one.supplier("supplier " + i)
            .charge(money(random.nextInt(8)))
            .tax(Tax.INCLUDED)
            .source(INVENTED);
        if (random.nextInt(3) > 0) {
          one.freeFrom(money(random.nextInt(1, 40)));
        }
        terms.add(one.build());
      }
    }
  }

  PriceBook book() {
    return PriceBook.builder()
        .currency(CurrencyUnit.EUR)
        .asOf(FixturePlan.TODAY)
        .offers(offers.stream().flatMap(List::stream).toList())
        .shipping(terms)
        .build();
  }

  static BigMoney money(int amount) {
    return BigMoney.of(CurrencyUnit.EUR, BigDecimal.valueOf(amount));
  }

  static long content(Offer offer) {
    return offer.content().getValue().longValue();
  }

  /** What an order costs, by the words of breaks, minimum and increment; -1 if it cannot be. */
  static long cost(Offer offer, long packs, long available) {
    if (packs == 0) {
      return 0;
    }
    if (packs < offer.minimumOrder() || packs % offer.orderIncrement() != 0 || packs > available) {
      return -1;
    }
    long cost = 0;
    for (long pack = 1; pack <= packs; pack++) {
      long price = offer.price().getAmount().longValueExact();
      for (PriceBreak step : offer.breaks()) {
        boolean reached =
            offer.breakRule() == BreakRule.ALL_UNITS
                ? packs >= step.fromPacks()
                : pack >= step.fromPacks();
        price = reached ? step.price().getAmount().longValueExact() : price;
      }
      cost += price;
    }
    return cost;
  }
}
