package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
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
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

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

  /** The thread is interrupted after some thousands of orders, not before the first. */
  @Test
  void stopsInTheMiddleOfTheCount() {
    SupplierOrders orders = orders(plan(1, new int[] {997, 1009, 1013}, new int[] {128, 501, 303}));
    BigInteger early = orders.through(8_000);
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> orders.through(40_000)).isInstanceOf(CancellationException.class);
    assertThat(Thread.interrupted()).isTrue();
    assertThat(orders.through(8_000)).isEqualTo(early);
  }

  /** With every part one pack of 100 g runs short, and the pattern has some 1e12 parts. */
  @Test
  @Timeout(60)
  void refusesToCountMoreThanAMillionOrders() {
    SupplierOrders orders = new Bench().packs("wax", 100, "1", 100.0000000001).sent("5").orders();
    assertThat(orders.through(1 << 20)).isEqualTo(1 << 20);
    assertThatThrownBy(() -> orders.through((1 << 20) + 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "the orders to supplier A do not repeat within 1048576 of them; accepted are fewer"
                + " parts, or rounder contents and quantities");
  }

  /** Seven primes whose product, 1.42e19 parts, lies between 2^63 and 2^64. */
  @Test
  void knowsNoPatternThatNoLongCanCount() {
    int[] primes = {997, 1009, 1013, 1019, 1021, 1031, 13};
    assertThat(orders(plan(1, primes, new int[] {1, 1, 1, 1, 1, 1, 1})).period()).isEmpty();
  }

  /** 1e19 and 5e19 parts until a pack of 100 or 500 g ends with a part, and 5e13 in between. */
  @Test
  void givesUpWhereOneItemAloneTakesTooLong() {
    assertThat(new Bench().packs("wax", 100, "1", 0.12345678901234569).sent("5").orders().perPart())
        .isEmpty();
    assertThat(new Bench().packs("wax", 500, "1", 0.12345678901234569).sent("5").orders().perPart())
        .isEmpty();
    LedgerPlan plan = new Bench().packs("wax", 500, "1", 0.123456789011).sent("5").plan();
    assertThat(orders(plan).perPart()).isEmpty();
    // No order but one in the first 2000 parts, of 247 g together.
    Line line = Ledger.standard().usage(plan).lines().get(1);
    assertThat(line.formula()).startsWith("orders per part over the first 2000 parts, as they do");
    assertThat(line.packs()).isEqualByComparingTo("0.0005");
  }

  /** Two items share the prime 100,003 as their period: too many residues to go through. */
  @Test
  void givesUpWhereTheCommonPartOfPeriodsIsLarge() {
    LedgerPlan plan = plan(1, new int[] {100_003, 100_003, 997}, new int[] {1, 2, 501});
    assertThat(orders(plan).perPart()).isEmpty();
  }

  /** Free shipping depends on what is ordered together, so items cannot be told one by one. */
  @Test
  void givesUpWhereTheValueOfLongPatternsDecides() {
    Bench bench =
        new Bench()
            .packs("wax", 997, "10", 128)
            .packs("resin", 1009, "10", 501)
            .packs("powder", 1013, "10", 303)
            .sent(Bench.terms("supplier A", "5").freeFrom(eur("20")));
    assertThat(bench.orders().perPart()).isEmpty();
  }

  /**
   * 350 g a part: 500 g of A at 10 and then, for the 200 g lacking, two packs of B at 3 each, which
   * leave nothing. Of 997 residues 869 need no pack of the second item and 508 of 1,009 none of the
   * third, all three periods without a common divisor.
   */
  @Test
  void countsTheOrdersOfOneSupplierOnly() {
    LedgerPlan plan =
        new Bench()
            .offers(
                Bench.pack("wax", 500, "10"), Bench.pack("wax", 100, "3").supplier("supplier B"))
            .takes("wax", 350)
            .packs("resin", 997, "10", 128)
            .packs("powder", 1009, "10", 501)
            .sent("5")
            .plan();
    BigInteger period = BigInteger.valueOf(2L * 997 * 1009);
    assertThat(orders(plan).perPart())
        .hasValue(Fraction.of(period.subtract(BigInteger.valueOf(869L * 508)), period));
  }

  @Test
  void namesTheItemsOfTheSupplier() {
    LedgerPlan plan =
        new Bench()
            .packs("wax", 500, "10", 100)
            .offers(Bench.pack("resin", 500, "10").supplier("supplier B"))
            .takes("resin", 100)
            .sent("5")
            .plan();
    assertThat(Ledger.standard().usage(plan).lines().get(2).formula()).endsWith(", of wax");
    // Bought once, a machine of the same supplier does not change how orders repeat: 5 parts.
    LedgerPlan machine =
        new Bench().packs("wax", 500, "10", 100).machine("printer", "900").sent("5").plan();
    assertThat(orders(machine).period()).hasValue(BigInteger.valueOf(5));
    assertThat(orders(machine).settled()).isEqualTo(1);
  }

  /** Where all offers are limited, purchases end and no long run is known. */
  @Test
  void knowsNoLongRunOfWhatEnds() {
    LedgerPlan plan =
        new Bench()
            .offers(Bench.pack("wax", 500, "10").available(3L))
            .takes("wax", 100)
            .sent("5")
            .plan();
    assertThat(orders(plan).perPart()).isEmpty();
    assertThat(orders(plan).period()).isEmpty();
  }

  /**
   * 10 g a part and 1,000 or 1,200 g in stock: 50 parts foretell no purchase. 150 parts drawn need
   * one pack of each, in one order worth 20, which is sent for nothing.
   */
  @Test
  void ordersTogetherWhatIsDrawnAndNotForetold() {
    LedgerPlan plan =
        new Bench()
            .offers(Bench.pack("wax", 1000, "10"), Bench.pack("resin", 1000, "10"))
            .uses(FixturePlan.consumed("wax", Driver.PART, grams(10)).owned(grams(1000)).build())
            .uses(FixturePlan.consumed("resin", Driver.PART, grams(10)).owned(grams(1200)).build())
            .sent(Bench.terms("supplier A", "5").freeFrom(eur("20")))
            .plan();
    Map<Driver, BigInteger> drawn = Map.of(Driver.PART.event(), BigInteger.valueOf(150));
    assertThat(orders(plan).of(drawn, 50)).isZero();
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
