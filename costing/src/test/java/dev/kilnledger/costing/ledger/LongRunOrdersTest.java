package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Driver;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

class LongRunOrdersTest {

  /** Against every part of the common period, gone through one by one. */
  @Test
  void isTheCountOfAWholePeriod() {
    Random random = new Random(6);
    int shared = 0;
    for (int i = 0; i < 100; i++) {
      int items = 1 + random.nextInt(3);
      int[] contents = random.ints(items, 2, 31).toArray();
      int[] quantities = random.ints(items, 1, 12).toArray();
      SupplierOrders orders = orders(plan(1 + random.nextInt(4), contents, quantities));
      long from = orders.settled();
      long period = orders.period().orElseThrow().longValueExact();
      shared += items > 1 ? 1 : 0;
      assertThat(LongRunOrders.of(orders.items, BigInteger.valueOf(period), made -> true))
          .hasValue(orders.through(from + period).subtract(orders.through(from)));
    }
    assertThat(shared).isGreaterThan(50);
  }

  /**
   * Packs of 997, 1,009 and 1,013 g, of which a part takes 128, 501 and 303: the pattern repeats
   * after their product, primes all three. A part needs no pack of the first with 869 of 997
   * residues, and so on, so 1 - 869 x 508 x 710 / (997 x 1009 x 1013) of the parts cause an order.
   */
  @Test
  void isExactWhereThePatternIsFarTooLongToCount() {
    LedgerPlan plan = plan(1, new int[] {997, 1009, 1013}, new int[] {128, 501, 303});
    BigInteger period = BigInteger.valueOf(997L * 1009 * 1013);
    assertThat(orders(plan).period()).isEmpty();
    Fraction share = orders(plan).perPart().orElseThrow();
    assertThat(share)
        .isEqualTo(Fraction.of(period.subtract(BigInteger.valueOf(869L * 508 * 710)), period));
    Line line = Ledger.standard().usage(plan).lines().get(3);
    assertThat(line.formula()).startsWith("orders per part in the long run: ");
    assertThat(line.count()).isEqualTo(share.numerator());
    // Half a million orders have that share but for some thousandths.
    double counted = orders(plan).through(700_000).doubleValue() / 700_000;
    assertThat(counted).isBetween(0.995 * ratio(share), 1.005 * ratio(share));
  }

  /** The count goes on from where it was, and comes to the same. */
  @Test
  void stopsWhenInterruptedAndKeepsWhatItHasCounted() {
    LedgerPlan plan = plan(1, new int[] {997, 1009, 1013}, new int[] {128, 501, 303});
    SupplierOrders orders = orders(plan);
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> orders.through(10_000))
        .isInstanceOf(CancellationException.class)
        .hasMessage("interrupted while the orders to supplier A were counted");
    assertThat(Thread.interrupted()).isTrue();
    assertThat(orders.through(10_000))
        .isEqualTo(
            orders(plan(1, new int[] {997, 1009, 1013}, new int[] {128, 501, 303}))
                .through(10_000));
  }

  private static double ratio(Fraction share) {
    return share.numerator().doubleValue() / share.denominator().doubleValue();
  }

  private static SupplierOrders orders(LedgerPlan plan) {
    return ((AsNeeded) plan.purchases().buying).orders().get(0);
  }

  /** Items of so many grams in a pack, of which every part or firing takes so many. */
  private static LedgerPlan plan(int partsPerFiring, int[] contents, int[] quantities) {
    PriceBook.Builder book =
        PriceBook.builder()
            .currency(CurrencyUnit.EUR)
            .asOf(FixturePlan.TODAY)
            .addShipping(
                ShippingTerms.builder()
                    .supplier("supplier A")
                    .charge(BigMoney.parse("EUR 5"))
                    .tax(Tax.INCLUDED)
                    .source(INVENTED)
                    .build());
    LedgerPlan.Builder plan = LedgerPlan.builder().partsPerFiring(partsPerFiring);
    List<Driver> drivers = new ArrayList<>(List.of(Driver.PART, Driver.FIRING));
    for (int i = 0; i < contents.length; i++) {
      String item = "item " + i;
      book.addOffers(offer(item, grams(contents[i]), "10").build());
      plan.addResources(
          FixturePlan.consumed(item, drivers.get(i % 2), grams(quantities[i])).build());
    }
    return plan.prices(book.build()).build();
  }
}
