package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whether a dearer input can make the total cheaper: where it cannot, and the two ways it can. */
class MonotonyTest {
  private static final Ledger LEDGER = Ledger.standard();

  @Test
  void aDearerInputNeverMakesAPlanForNCheaperWithoutShippingThresholds() {
    SplittableRandom random = new SplittableRandom(31);
    for (int trial = 0; trial < 120; trial++) {
      compare(random, 3, BuyingRule.PLANNED_FOR_N);
    }
  }

  @Test
  void norOneWithASingleOfferOfEachItemBoughtAsNeeded() {
    SplittableRandom random = new SplittableRandom(32);
    for (int trial = 0; trial < 120; trial++) {
      compare(random, 1, BuyingRule.AS_NEEDED);
    }
  }

  private static void compare(SplittableRandom random, int offers, BuyingRule rule) {
    RandomMarket market = new RandomMarket(random);
    List<Resource> resources = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      market.item("item " + i, offers, 2, false);
      resources.add(consumed("item " + i, Driver.PART, grams(random.nextInt(1, 20))).build());
    }
    market.terms.add(
        ShippingTerms.builder().supplier("supplier 0").charge(eur("5")).source(INVENTED).build());
    PriceBook book = market.book();
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(book)
            .resources(resources)
            .partsPerFiring(1)
            .buying(rule)
            .build();
    int dearer = random.nextInt(book.offers().size());
    List<Offer> raised = new ArrayList<>(book.offers());
    raised.set(dearer, times(raised.get(dearer), random.nextInt(2, 5)));
    LedgerPlan dear =
        LedgerPlan.builder()
            .from(plan)
            .prices(PriceBook.builder().from(book).offers(raised).build())
            .build();
    for (long parts : new long[] {1, 2, 7, 31, 200}) {
      assertThat(LEDGER.through(plan, parts).total())
          .isLessThanOrEqualTo(LEDGER.through(dear, parts).total());
    }
  }

  private static Offer times(Offer offer, int factor) {
    return Offer.builder()
        .from(offer)
        .price(offer.price().multipliedBy(factor))
        .breaks(
            offer.breaks().stream()
                .map(step -> PriceBreak.of(step.fromPacks(), step.price().multipliedBy(factor)))
                .toList())
        .build();
  }

  @Test
  void aThresholdOfShippingCanMakeADearerInputCheaper() {
    // 95 and 10 for sending, against 100 sent for nothing.
    ShippingTerms terms =
        ShippingTerms.builder()
            .supplier("supplier A")
            .charge(eur("10"))
            .freeFrom(eur("100"))
            .source(INVENTED)
            .build();
    for (BuyingRule rule : BuyingRule.values()) {
      assertThat(LEDGER.through(wax("95", rule, terms), 1).total())
          .isEqualByComparingTo(eur("105"));
      assertThat(LEDGER.through(wax("100", rule, terms), 1).total())
          .isEqualByComparingTo(eur("100"));
    }
  }

  @Test
  void buyingAsNeededADearSmallPackCanMakeTheLargeOneCheaper() {
    // 50 g a part: at 19 the small pack covers each shortage, 7.6 per 100 g; at 33 the large one
    // does, 6.4 per 100 g. Who buys as needed pays for it, and who plans does not.
    assertThat(LEDGER.through(packs("19", BuyingRule.AS_NEEDED), 100).total())
        .isEqualByComparingTo(eur("380"));
    assertThat(LEDGER.through(packs("33", BuyingRule.AS_NEEDED), 100).total())
        .isEqualByComparingTo(eur("320"));
    assertThat(LEDGER.through(packs("19", BuyingRule.PLANNED_FOR_N), 100).total())
        .isEqualByComparingTo(eur("320"));
  }

  private static LedgerPlan packs(String small, BuyingRule rule) {
    return LedgerPlan.builder()
        .prices(
            FixturePlan.book()
                .offers(
                    List.of(
                        offer("wax", grams(250), small).build(),
                        offer("wax", grams(500), "32").build()))
                .build())
        .addResources(consumed("wax", Driver.PART, grams(50)).build())
        .partsPerFiring(1)
        .buying(rule)
        .build();
  }

  private static LedgerPlan wax(String price, BuyingRule rule, ShippingTerms terms) {
    return LedgerPlan.builder()
        .prices(
            FixturePlan.book()
                .offers(List.of(offer("wax", grams(50), price).build()))
                .addShipping(terms)
                .build())
        .addResources(consumed("wax", Driver.PART, grams(50)).build())
        .partsPerFiring(1)
        .buying(rule)
        .build();
  }
}
