package dev.kilnledger.costing.purchase;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.Law;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.ShippingTerms;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * What holds for every shopping list: it covers the needs, and no row that is added makes it dear.
 */
class PurchaseLawsTest {
  /** A pack of one of three items at one of three suppliers, in grams and whole euros. */
  record Row(int item, int supplier, int content, int price, int minimum) {
    Offer asOffer() {
      return offer("item " + item, grams(content), price + "")
          .supplier("supplier " + supplier)
          .minimumOrder(minimum)
          .build();
    }
  }

  /** What one supplier takes for sending, and from which sum on nothing. */
  record Sending(int charge, int freeFrom) {}

  /** Prices, and how many grams of each item are needed. */
  record Market(List<Row> rows, List<Sending> sending, List<Integer> needs) {
    PurchasePlan plan() {
      return plan(rows, needs);
    }

    PurchasePlan plan(List<Row> listed, List<Integer> wanted) {
      PriceBook.Builder book =
          PriceBook.builder().currency(CurrencyUnit.EUR).asOf(TODAY).offers(offers(listed));
      for (int i = 0; i < sending.size(); i++) {
        ShippingTerms.Builder terms =
            ShippingTerms.builder()
                .supplier("supplier " + i)
                .charge(eur(sending.get(i).charge() + ""))
                .source(INVENTED);
        if (sending.get(i).freeFrom() > 0) {
          terms.freeFrom(eur(sending.get(i).freeFrom() + ""));
        }
        book.addShipping(terms.build());
      }
      List<Need> list = new ArrayList<>();
      for (int i = 0; i < wanted.size(); i++) {
        list.add(Need.of("item " + i, grams(wanted.get(i))));
      }
      return PurchasePlanner.standard().plan(book.build(), list);
    }

    /** Of rows with the same item, supplier and content the first stands. */
    private List<Offer> offers(List<Row> listed) {
      List<Offer> offers = new ArrayList<>();
      for (int item = 0; item < 3; item++) {
        // Each item can always be had.
        offers.add(new Row(item, 0, 11, 40, 1).asOffer());
      }
      for (Row row : listed) {
        Offer one = row.asOffer();
        if (offers.stream()
            .noneMatch(
                other ->
                    other.item().equals(one.item())
                        && other.supplier().equals(one.supplier())
                        && other.content().equals(one.content()))) {
          offers.add(one);
        }
      }
      return offers;
    }
  }

  @Provide
  Arbitrary<Market> market() {
    Arbitrary<Row> row =
        Combinators.combine(
                Arbitraries.integers().between(0, 2),
                Arbitraries.integers().between(0, 2),
                Arbitraries.integers().between(1, 40),
                Arbitraries.integers().between(0, 60),
                Arbitraries.integers().between(1, 3))
            .as(Row::new);
    Arbitrary<Sending> sending =
        Combinators.combine(
                Arbitraries.integers().between(0, 15), Arbitraries.integers().between(0, 120))
            .as(Sending::new);
    return Combinators.combine(
            row.list().ofMaxSize(6),
            sending.list().ofSize(3),
            Arbitraries.integers().between(1, 150).list().ofMinSize(1).ofMaxSize(3))
        .as(Market::new);
  }

  @Law
  void coversEveryNeed(@ForAll("market") Market market) {
    PurchasePlan plan = market.plan();
    for (int item = 0; item < market.needs().size(); item++) {
      String name = "item " + item;
      double bought =
          plan.purchases().stream()
              .filter(purchase -> purchase.offer().item().equals(name))
              .mapToDouble(p -> p.packs().doubleValue() * p.offer().content().si() * 1000)
              .sum();
      assertThat(bought).isGreaterThanOrEqualTo(market.needs().get(item) - 1e-9);
    }
  }

  @Law
  void addsUpToItsTotal(@ForAll("market") Market market) {
    PurchasePlan plan = market.plan();
    BigMoney sum = eur("0");
    for (Purchase purchase : plan.purchases()) {
      sum = sum.plus(purchase.cost());
    }
    for (Delivery delivery : plan.deliveries()) {
      sum = sum.plus(delivery.charge());
    }
    assertThat(plan.total()).isEqualByComparingTo(sum);
  }

  @Law
  void costsTheSameInAnyOrderOfRows(@ForAll("market") Market market, @ForAll int seed) {
    List<Row> rows = new ArrayList<>(market.rows());
    // Of two rows for the same pack the first counts, so only what is told apart is shuffled.
    rows.removeIf(
        row ->
            market.rows().stream()
                    .filter(
                        other ->
                            other.item() == row.item()
                                && other.supplier() == row.supplier()
                                && other.content() == row.content())
                    .count()
                > 1);
    BigMoney straight = market.plan(rows, market.needs()).total();
    Collections.shuffle(rows, new Random(seed));
    assertThat(market.plan(rows, market.needs()).total()).isEqualByComparingTo(straight);
  }

  @Law
  void isNoDearerWithAnotherRow(
      @ForAll("market") Market market,
      @ForAll @IntRange(max = 2) int item,
      @ForAll @IntRange(min = 41, max = 60) int content,
      @ForAll @IntRange(max = 90) int price) {
    List<Row> more = new ArrayList<>(market.rows());
    more.add(new Row(item, 1, content, price, 1));
    assertThat(market.plan(more, market.needs()).total())
        .isLessThanOrEqualTo(market.plan().total());
  }

  /** Whatever covers more covers less as well, thresholds and minimum orders or not. */
  @Law
  void isNoCheaperForAGreaterNeed(
      @ForAll("market") Market market, @ForAll @IntRange(max = 60) int more) {
    List<Integer> greater = new ArrayList<>(market.needs());
    greater.set(0, greater.get(0) + more);
    assertThat(market.plan(market.rows(), greater).total())
        .isGreaterThanOrEqualTo(market.plan().total());
  }

  /** Two errands cost no less than one for both, as the one may be split into them. */
  @Law
  void isNoDearerTogetherThanOneByOne(@ForAll("market") Market market) {
    BigMoney apart = eur("0");
    for (int item = 0; item < market.needs().size(); item++) {
      apart = apart.plus(alone(market, item));
    }
    assertThat(market.plan().total()).isLessThanOrEqualTo(apart);
  }

  private static BigMoney alone(Market market, int item) {
    // The items are renumbered so that the one wanted is the first.
    List<Row> rows =
        market.rows().stream()
            .map(
                r ->
                    new Row(
                        (r.item() - item + 3) % 3,
                        r.supplier(),
                        r.content(),
                        r.price(),
                        r.minimum()))
            .toList();
    return market.plan(rows, List.of(market.needs().get(item))).total();
  }

  @Law
  void takesTheOneOfferThereIsAsOftenAsItMust(
      @ForAll @IntRange(min = 1, max = 100_000_000) int need,
      @ForAll @IntRange(min = 1, max = 5_000) int content,
      @ForAll @IntRange(max = 10_000) int cents) {
    String price = BigDecimal.valueOf(cents, 2).toString();
    PriceBook book =
        PriceBook.builder()
            .currency(CurrencyUnit.EUR)
            .asOf(TODAY)
            .addOffers(offer("wax", grams(content), price).build())
            .build();
    PurchasePlan plan = PurchasePlanner.standard().plan(book, List.of(Need.of("wax", grams(need))));
    long packs = (need + content - 1L) / content;
    assertThat(plan.total()).isEqualByComparingTo(eur(price).multipliedBy(packs));
  }
}
