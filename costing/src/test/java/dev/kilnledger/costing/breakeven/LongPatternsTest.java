package dev.kilnledger.costing.breakeven;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Plans whose purchases repeat together only after more parts than a long can count, or whose
 * orders never do: 500, 997 and 991 g share no divisor, and the quantities per part no round
 * measure with them. What is expected is worked out by hand beside each check.
 */
@Timeout(60)
class LongPatternsTest {
  private static final BreakEven BREAK_EVEN = BreakEven.standard();

  @Test
  void aPlanBreaksEvenWithItselfFromTheFirstPartOn() {
    LedgerPlan plan = FixturePlan.of(1);
    assertThat(BREAK_EVEN.between(plan, plan).text()).isEqualTo("first at 1, for good from 1");
  }

  /** Both buy the same powders with the same parts; 200 for a machine is always less than 300. */
  @Test
  void whatBothPlansShareDoesNotDecide() {
    LedgerPlan cheap = new Workshop().machine("cheap", "200").powders("", false).plan();
    LedgerPlan dear = new Workshop().machine("dear", "300").powders("", false).plan();
    assertThat(BREAK_EVEN.between(cheap, dear).text()).isEqualTo("first at 1, for good from 1");
  }

  /** Of two plans that use alike, one pays 1,000 more from the first part on. */
  @Test
  void aFixedCostAboveAnyPackDecidesForGood() {
    LedgerPlan plain = new Workshop().powders("", false).plan();
    LedgerPlan dear =
        new Workshop().powders(" of another make", false).machine("any", "1000").plan();
    assertThat(BREAK_EVEN.between(plain, dear).text()).isEqualTo("first at 1, for good from 1");
    // Of 500 and 997 g alone the pattern has some 5e17 parts.
    LedgerPlan two = new Workshop().two("").plan();
    LedgerPlan dearTwo = new Workshop().two(" of another make").machine("any", "1000").plan();
    assertThat(BREAK_EVEN.between(dearTwo, two).text()).isEqualTo("never");
  }

  /** What is paid by measure never costs more than whole packs at the same price per content. */
  @Test
  void payingByMeasureNeverCostsMoreThanPacks() {
    LedgerPlan measured = new Workshop().powders(" by measure", true).plan();
    LedgerPlan packed = new Workshop().powders("", false).plan();
    assertThat(BREAK_EVEN.between(measured, packed).text())
        .isEqualTo("first at 1, for good from 1");
  }

  /** 12 + 12 a part from the first pack of 60 each on, against 6 from one pack of 60. */
  @Test
  void theDearerPlanNeverBreaksEven() {
    LedgerPlan dear =
        new Workshop()
            .packs("wax", 500, "60", 100.123456789011)
            .packs("resin", 997, "120", 100.123456789011)
            .plan();
    LedgerPlan cheap = new Workshop().packs("powder", 991, "60", 99.123456789013).plan();
    assertThat(BREAK_EVEN.between(dear, cheap).text()).isEqualTo("never");
  }

  /** A pack of 120 lasts 1,000,000 parts, one of 60 half as long: equal from 500,001 on. */
  @Test
  void findsAFarCrossingWherePurchasesRepeat() {
    LedgerPlan large = new Workshop().packs("large", 1000, "120", 0.001).plan();
    LedgerPlan small = new Workshop().packs("small", 500, "60", 0.001).plan();
    assertThat(BREAK_EVEN.between(large, small).text())
        .isEqualTo("first at 500001, never for good");
  }

  /** 50 and a pack of 60 are more than 100, and more packs follow. */
  @Test
  void whatIsPaidOnceIsNeverReachedFromAbove() {
    LedgerPlan plan = new Workshop().machine("small", "50").packs("wax", 500, "60", 1).plan();
    LedgerPlan once = new Workshop().machine("large", "100").plan();
    assertThat(BREAK_EVEN.between(plan, once).text()).isEqualTo("never");
  }

  /** 1,000 paid at once, and 1,000 charged over 100 firings in equal shares. */
  @Test
  void breaksEvenWithADepreciationAtItsEnd() {
    LedgerPlan bought = new Workshop().machine("owned", "1000").plan();
    Workshop charged = new Workshop();
    charged.prices.addOffers(offer("charged", ratio(1), "1000").build());
    charged.plan.addResources(
        Depreciated.builder()
            .item("charged")
            .driver(Driver.FIRING)
            .life(ratio(100))
            .salvage(eur("0"))
            .source(INVENTED)
            .build());
    assertThat(BREAK_EVEN.between(bought, charged.plan()).text())
        .isEqualTo("first at 100, for good from 100");
  }

  /** The crossing of 4,100 / 3.2e-16 lies above the 2^63 that can be counted, and below 2^64. */
  @Test
  void refusesACrossingThatNoLongCanCount() {
    assertThatThrownBy(() -> BREAK_EVEN.find(FixturePlan.of(1), eur("39.48000000000000032")))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("so near the usage per part");
  }

  /**
   * Each pack is an order of 65 that lasts some 4,050 parts; the pattern of the orders has 5e13
   * parts and is not counted. At 62 or 65 for the same content, measured, the other way always
   * costs less; the search does not know and must not guess.
   */
  @Test
  void refusesToAnswerWhatUncountedOrdersLeaveOpen() {
    LedgerPlan sent = new Workshop().packs("wax", 500, "60", 0.123456789011).sent("5").plan();
    for (String price : new String[] {"62", "65"}) {
      LedgerPlan other = new Workshop().measured("resin", 500, price, 0.123456789011).plan();
      assertThatThrownBy(() -> BREAK_EVEN.between(sent, other))
          .isInstanceOf(ArithmeticException.class)
          .hasMessageContaining("so near the usage per part");
    }
    // With 1,000 to start with the other costs more at first, and for how long is open.
    LedgerPlan later =
        new Workshop().machine("any", "1000").measured("resin", 500, "62", 0.123456789011).plan();
    assertThatThrownBy(() -> BREAK_EVEN.between(sent, later))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("so near the usage per part");
  }

  private static final class Workshop {
    final PriceBook.Builder prices = PriceBook.builder().currency(CurrencyUnit.EUR).asOf(TODAY);
    final LedgerPlan.Builder plan = LedgerPlan.builder().partsPerFiring(1);

    Workshop machine(String item, String price) {
      prices.addOffers(offer(item, ratio(1), price).build());
      plan.addResources(Durable.toBuy(item));
      return this;
    }

    Workshop packs(String item, double content, String price, double perPart) {
      return supplied(item, content, price, perPart, false);
    }

    Workshop measured(String item, double content, String price, double perPart) {
      return supplied(item, content, price, perPart, true);
    }

    /** Three powders at 60 a pack. */
    Workshop powders(String make, boolean metered) {
      return supplied("wax" + make, 500, "60", 0.123456789011, metered)
          .supplied("resin" + make, 997, "60", 0.123456789013, metered)
          .supplied("powder" + make, 991, "60", 0.123456789017, metered);
    }

    Workshop two(String make) {
      return packs("wax" + make, 500, "60", 0.123456789011)
          .packs("resin" + make, 997, "60", 0.123456789013);
    }

    private Workshop supplied(
        String item, double content, String price, double perPart, boolean metered) {
      prices.addOffers(offer(item, grams(content), price).metered(metered).build());
      plan.addResources(consumed(item, Driver.PART, grams(perPart)).build());
      return this;
    }

    /** The supplier charges for each order. */
    Workshop sent(String charge) {
      prices.addShipping(
          ShippingTerms.builder()
              .supplier("supplier A")
              .charge(eur(charge))
              .tax(Tax.INCLUDED)
              .source(INVENTED)
              .build());
      return this;
    }

    LedgerPlan plan() {
      return plan.prices(prices.build()).build();
    }
  }
}
