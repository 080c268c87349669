package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.Bench.pack;
import static dev.kilnledger.costing.ledger.Bench.terms;
import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.ToppedUp;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import org.junit.jupiter.api.Test;

/**
 * The lines that the cash never leaves, held against the cash itself for the first parts; slopes,
 * intercepts and periods are worked out by hand beside each check.
 */
class CashLinesTest {
  /** 3,200 for a kiln of which 200 are left at the end, charged over 100 firings. */
  private static final Resource KILN =
      Depreciated.builder()
          .item("kiln")
          .driver(Driver.FIRING)
          .life(ratio(100))
          .salvage(eur("200"))
          .source(INVENTED)
          .build();

  private static Bench machines() {
    return new Bench().machine("printer", "900").offers(offer("kiln", ratio(1), "3200")).uses(KILN);
  }

  @Test
  void whatIsPaidOnceIsFixed() {
    for (LedgerPlan plan : new LedgerPlan[] {machines().plan(), machines().planned()}) {
      CashLines lines = enclosing(plan);
      assertThat(money(plan, lines.fixed())).isEqualByComparingTo("3900");
      assertThat(lines.highGrowth()).isZero();
    }
  }

  /** Of two offers of a machine the cheaper one is bought, whatever the number of parts. */
  @Test
  void aMachineOfSeveralOffersIsFixedToo() {
    LedgerPlan plan =
        new Bench()
            .offers(
                offer("printer", ratio(1), "900"),
                offer("printer", ratio(1), "850").supplier("supplier B"))
            .uses(Durable.toBuy("printer"))
            .planned();
    CashLines lines = enclosing(plan);
    assertThat(money(plan, lines.fixed())).isEqualByComparingTo("850");
    assertThat(money(plan, lines.lowest())).isEqualByComparingTo("850");
    assertThat(money(plan, lines.highest())).isEqualByComparingTo("850");
    assertThat(lines.period()).hasValue(BigInteger.ONE);
  }

  /** Planned, one order of 7 is paid for any number of parts; 128 g of 500 g repeat after 125. */
  @Test
  void anOrderPlannedForAllIsFixed() {
    LedgerPlan plan =
        new Bench().machine("printer", "900").packs("wax", 500, "60", 128).sent("7").planned();
    CashLines lines = enclosing(plan);
    assertThat(money(plan, lines.fixed())).isEqualByComparingTo("907");
    assertThat(lines.period()).hasValue(BigInteger.valueOf(125));
  }

  /** From 120 on the one order is sent for nothing, so that the first parts are not repeated. */
  @Test
  void whatIsWeighedWithFreeShippingDoesNotRepeat() {
    LedgerPlan plan =
        new Bench()
            .packs("wax", 500, "60", 128)
            .sent(terms("supplier A", "7").freeFrom(eur("120")))
            .planned();
    assertThat(enclosing(plan).period()).isEmpty();
  }

  /** The second offer holds a gram at 0.08 instead of 0.10. */
  @Test
  void aMixGrowsByItsBestPriceThatGoesOn() {
    LedgerPlan plan =
        new Bench()
            .offers(pack("wax", 100, "10"), pack("wax", 500, "40"))
            .takes("wax", 50)
            .planned();
    CashLines lines = enclosing(plan);
    assertThat(money(plan, lines.lowGrowth())).isEqualByComparingTo("4");
    assertThat(money(plan, lines.highGrowth())).isEqualByComparingTo("4");
    assertThat(lines.period()).isEmpty();
  }

  /** Ten packs at 5 instead of 10 save 50 for good. */
  @Test
  void aLimitedOfferLowersTheLineByWhatItSaves() {
    LedgerPlan plan =
        new Bench()
            .offers(
                pack("wax", 100, "5").available(10L), pack("wax", 100, "10").supplier("supplier B"))
            .takes("wax", 100)
            .planned();
    CashLines lines = enclosing(plan);
    assertThat(money(plan, lines.lowest())).isEqualByComparingTo("-50");
    assertThat(money(plan, ExactCash.of(plan).through(30).multiply(lines.scale())))
        .isEqualByComparingTo("250");
  }

  /** One part takes a pack and has to buy 12; breaks make the first 49 packs the dearest. */
  @Test
  void minimumOrdersAndBreaksRaiseTheLine() {
    enclosing(
        new Bench()
            .offers(pack("wax", 100, "10").minimumOrder(10).orderIncrement(4))
            .takes("wax", 100)
            .planned());
    enclosing(
        new Bench()
            .offers(pack("wax", 100, "10").addBreaks(PriceBreak.of(50, eur("5"))))
            .takes("wax", 100)
            .planned());
  }

  /**
   * A fill of one pack of 1000 g and 100 g a firing: orders with parts 1, 2, 12, 22. Ten times them
   * less n is least, 9, after parts 1, 11 and 21. The powder itself costs nothing.
   */
  @Test
  void theLineBelowOrdersTouchesThem() {
    LedgerPlan plan = topped("0", 10).sent("5").plan();
    CashLines lines = enclosing(plan);
    assertThat(money(plan, lines.lowest())).isEqualByComparingTo("4.5"); // 9 / 10 x 5
    assertThat(money(plan, lines.lowGrowth())).isEqualByComparingTo("0.5");
    assertThat(lines.period()).hasValue(BigInteger.TEN);
  }

  private static Bench topped(String price, double loss) {
    return new Bench()
        .offers(pack("powder", 1000, price))
        .uses(
            ToppedUp.builder()
                .item("powder")
                .fill(grams(1000))
                .loss(percent(loss))
                .source(INVENTED)
                .build());
  }

  /**
   * 0.123456789011 g a part from packs of 500 g repeat after 5e13 parts, too many to count the
   * orders of; the machine has an order of its own, as there is wax enough at first.
   */
  @Test
  void ordersThatAreNotCountedLieBelowOneForEachPurchase() {
    LedgerPlan plan =
        new Bench()
            .machine("printer", "0")
            .offers(pack("wax", 500, "0"))
            .uses(consumed("wax", Driver.PART, grams(0.123456789011)).owned(grams(1)).build())
            .sent("5")
            .plan();
    CashLines lines = enclosing(plan);
    assertThat(lines.period()).isEmpty();
    assertThat(lines.lowGrowth()).isZero();
    assertThat(money(plan, lines.highGrowth()).doubleValue()).isEqualTo(5 * 0.123456789011 / 500);
  }

  /** As above, with two offers of the machine. */
  @Test
  void oneOrderIsPaidForWhatIsBoughtOnce() {
    LedgerPlan plan =
        new Bench()
            .offers(
                offer("printer", ratio(1), "0"),
                offer("printer", ratio(2), "1"),
                pack("wax", 500, "0"))
            .uses(Durable.toBuy("printer"))
            .uses(consumed("wax", Driver.PART, grams(0.123456789011)).owned(grams(1)).build())
            .sent("5")
            .plan();
    assertThat(enclosing(plan).period()).isEmpty();
  }

  /**
   * The fill of 1,800 g is cheapest as 2 packs of 1000 g, 36; what a firing loses, some 90 g, as
   * one of 500 g at 10, of which each is an order of 5.
   */
  @Test
  void afterAFirstOrderOfItsOwnEachPurchaseIsTheSame() {
    LedgerPlan plan =
        new Bench()
            .offers(pack("powder", 500, "10"), pack("powder", 1000, "18"))
            .uses(
                ToppedUp.builder()
                    .item("powder")
                    .fill(grams(1800))
                    .loss(percent(5.006858709))
                    .source(INVENTED)
                    .build())
            .sent("5")
            .plan();
    assertThat(Ledger.standard().part(plan, 1).total()).isEqualByComparingTo(eur("41"));
    CashLines lines = enclosing(plan);
    double perPart = 18 * 5.006858709 / 500;
    // Both sides are rounded to doubles once or twice.
    assertThat(money(plan, lines.lowGrowth()).doubleValue() / (10 * perPart))
        .isBetween(1 - 1e-15, 1 + 1e-15);
    assertThat(money(plan, lines.highGrowth()).doubleValue() / (15 * perPart))
        .isBetween(1 - 1e-15, 1 + 1e-15);
  }

  /** The lines of a plan, once the cash for its first parts was seen to lie between them. */
  private static CashLines enclosing(LedgerPlan plan) {
    ExactCash cash = ExactCash.of(plan);
    CashLines lines = cash.lines();
    for (long parts = 1; parts <= 300; parts++) {
      BigInteger n = BigInteger.valueOf(parts);
      assertThat(cash.through(parts).multiply(lines.scale()))
          .as("cash for %s parts", parts)
          .isGreaterThanOrEqualTo(lines.lowest().add(lines.lowGrowth().multiply(n)))
          .isLessThanOrEqualTo(lines.highest().add(lines.highGrowth().multiply(n)));
    }
    return lines;
  }

  private static BigDecimal money(LedgerPlan plan, BigInteger figure) {
    ExactCash cash = ExactCash.of(plan);
    return new BigDecimal(figure)
        .divide(
            new BigDecimal(cash.denominator().multiply(cash.lines().scale())),
            MathContext.DECIMAL128);
  }
}
