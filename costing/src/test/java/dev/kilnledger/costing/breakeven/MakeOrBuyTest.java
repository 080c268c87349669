package dev.kilnledger.costing.breakeven;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.ledger.Simulated;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Wearing;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where nothing else is named, expected values are worked out by hand beside each check. */
class MakeOrBuyTest {
  private static final BreakEven BREAK_EVEN = BreakEven.standard();
  private static final Ledger LEDGER = Ledger.standard();

  @Test
  void meetsTheTextbook() {
    // 20,000 / (400 - 250) = 133.3: 134 units (published inputs).
    Crossing crossing = BREAK_EVEN.find(system("20000", "250"), eur("400"));
    assertThat(crossing.first()).contains(134L);
    assertThat(crossing.permanent()).contains(134L);
    assertThat(crossing.smooth()).contains(134L);
    assertThat(crossing.text()).isEqualTo("first at 134, for good from 134");
  }

  @Test
  void countsTheMinimumAndTheShippingOfEachOrder() {
    OutsideOffer lots = outside("400", 50).shipping(eur("1000")).build();
    // n cost ceil(n / 50) x 21,000. Making, 20,000 + 250 n, is below up to n = 4 of the first lot
    // and n = 88 of the second, and below each later lot to its end: 57,500 at 150 to 63,000.
    Crossing crossing = BREAK_EVEN.find(system("20000", "250"), lots);
    assertThat(crossing.first()).contains(1L);
    assertThat(crossing.permanent()).contains(101L);
    assertThat(crossing.otherAtPermanent().orElseThrow().lines())
        .extracting(Line::text)
        .containsExactly(
            "outside part: bought 150 x 1 piece at EUR 400.00",
            "shipping by supplier A: shipped 3 x 1 at EUR 1000");
    // One order of max(n, 50): 21,000 up to 50, then 1,000 + 400 n: 19,000 / 150 = 126.7.
    Crossing planned =
        BREAK_EVEN.find(
            system("20000", "250"),
            OutsideOffer.builder().from(lots).buying(BuyingRule.PLANNED_FOR_N).build());
    assertThat(planned.first()).contains(1L);
    assertThat(planned.permanent()).contains(127L);
    assertThat(planned.otherAtPermanent().orElseThrow().total()).isEqualByComparingTo(eur("51800"));
    assertThat(planned.otherAtFirst().orElseThrow().total()).isEqualByComparingTo(eur("21000"));
  }

  @Test
  void countsThePriceBreaksOfTheOutsideOfferAndItsFreeShipping() {
    // 400 a part, 300 from 100 on; 50 for sending, nothing from 20,000 on.
    OutsideOffer broken =
        OutsideOffer.builder()
            .part(
                Offer.builder()
                    .from(offer("outside part", ratio(1), "400").build())
                    .addBreaks(PriceBreak.of(100, eur("300")))
                    .build())
            .shipping(eur("50"))
            .shippingFreeFrom(eur("20000"))
            .buying(BuyingRule.PLANNED_FOR_N)
            .build();
    // Outside: 400 n + 50 below 50, 400 n up to 75, 30,000 for 100 up to 100, then 300 n.
    // 20,000 + 250 n <= 300 n from 400 on, and nowhere before: 38,750 at 75 against 30,000.
    Crossing crossing = BREAK_EVEN.find(system("20000", "250"), broken);
    assertThat(crossing.permanent()).contains(400L);
    assertThat(crossing.first()).contains(400L);
    // 10,000 + 250 n: 26,750 at 67 against 26,800; above 30,000 from 81 on; 60,000 at 200 on both
    // sides.
    Crossing twice = BREAK_EVEN.find(system("10000", "250"), broken);
    assertThat(twice.first()).contains(67L);
    assertThat(twice.permanent()).contains(200L);
  }

  @Test
  void holdsADearSystemAgainstACheapOne() {
    LedgerPlan cheap = system("20000", "250");
    // 60,000 + 50 n <= 20,000 + 250 n from 200 on.
    Crossing crossing = BREAK_EVEN.between(system("60000", "50"), cheap);
    assertThat(crossing.first()).contains(200L);
    assertThat(crossing.permanent()).contains(200L);
    assertThat(crossing.cashAtFirst()).isEqualTo(crossing.cashAtPermanent());
    assertThat(crossing.otherAtFirst()).contains(LEDGER.through(cheap, 200));
    assertThat(BREAK_EVEN.between(system("60000", "250"), cheap).text()).isEqualTo("never");
    assertThat(BREAK_EVEN.between(system("60000", "251"), cheap).text()).isEqualTo("never");
    // Cheaper to start with and dearer to run: from the first part on, but not for good.
    Crossing passing = BREAK_EVEN.between(cheap, system("60000", "50"));
    assertThat(passing.text()).isEqualTo("first at 1, never for good");
    assertThat(passing.smooth()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    // Life and price, against 45 for 6 firings, 7.50 a firing.
    "20, 100",
    "12, 90",
    "12, 91",
    "12, 89",
    "7, 52.5",
    "18, 200",
    "1, 7.5",
    "60, 450",
    "40, 100"
  })
  void findsFromWhichPartOnADearCrucibleIsCheaper(int life, String price) {
    LedgerPlan plan = withCrucible(price);
    Crossing crossing =
        Substitution.standard().compare(plan, "crucible", wearing("dear crucible", life));
    // Independently: the cost of each crucible, firing by firing, over several rounds of both
    // lives.
    BigDecimal dear = BigDecimal.ZERO;
    BigDecimal cheap = BigDecimal.ZERO;
    long first = 0;
    long lastViolation = 0;
    long tried = 120L * life;
    for (long firing = 0; firing < tried; firing++) {
      dear = firing % life == 0 ? dear.add(new BigDecimal(price)) : dear;
      cheap = firing % 6 == 0 ? cheap.add(new BigDecimal("45")) : cheap;
      if (dear.compareTo(cheap) > 0) {
        lastViolation = firing + 1;
      } else if (first == 0) {
        first = firing + 1;
      }
    }
    assertThat(crossing.first()).isEqualTo(first == 0 ? Optional.empty() : Optional.of(first));
    assertThat(crossing.permanent())
        .isEqualTo(
            lastViolation > tried - 6L * life ? Optional.empty() : Optional.of(lastViolation + 1));
  }

  @Tag("sampled")
  @Test
  void agreesWithTryingEveryNumberOfParts() {
    SplittableRandom random = new SplittableRandom(77);
    int lasting = 0;
    int undecided = 0;
    int trials = 300;
    for (int trial = 0; trial < trials; trial++) {
      Simulated workshop = new Simulated(random, random.nextBoolean());
      BigMoney usage = LEDGER.usage(workshop.plan).total();
      int minimum = random.nextInt(1, 30);
      long shipping = random.nextLong(5000);
      boolean planned = random.nextBoolean();
      long price =
          Math.max(
              1, Math.round(usage.getAmount().doubleValue() * 100 * random.nextDouble(0.7, 1.6)));
      Crossing crossing;
      try {
        crossing =
            BREAK_EVEN.find(
                workshop.plan,
                outside(BigDecimal.valueOf(price, 2).toPlainString(), minimum)
                    .shipping(BigMoney.ofScale(CurrencyUnit.EUR, shipping, 2))
                    .buying(planned ? BuyingRule.PLANNED_FOR_N : BuyingRule.AS_NEEDED)
                    .build());
      } catch (ArithmeticException open) {
        undecided += workshop.plan.shipping().isEmpty() ? trials : 1;
        continue;
      }
      long tried = Math.min(20_000, 2 * crossing.permanent().orElse(1000L) + 1000);
      long first = 0;
      long lastViolation = 0;
      long cents = 0;
      for (long parts = 1; parts <= tried; parts++) {
        cents += workshop.nextPart();
        long orders = (parts + minimum - 1) / minimum;
        long outside =
            planned
                ? Math.max(parts, minimum) * price + shipping
                : orders * (minimum * price + shipping);
        if (cents > outside) {
          lastViolation = parts;
        } else if (first == 0) {
          first = parts;
        }
      }
      assertThat(crossing.first().filter(found -> found <= tried).orElse(0L))
          .as("trial %s", trial)
          .isEqualTo(first);
      if (crossing.permanent().isPresent() && crossing.permanent().get() < tried) {
        lasting++;
        assertThat(crossing.permanent().get()).as("trial %s", trial).isEqualTo(lastViolation + 1);
      }
    }
    assertThat(lasting).isGreaterThan(100);
    // Orders that do not repeat leave some open, if prices lie within what they can cost.
    assertThat(undecided).isLessThan(trials / 4);
  }

  @Test
  void comparesTwoOfAFewRandomPlansExactly() {
    comparesTwoRandomPlansExactly(8);
  }

  @Tag("sampled")
  @Test
  void comparesTwoRandomPlansExactly() {
    comparesTwoRandomPlansExactly(200);
  }

  private static void comparesTwoRandomPlansExactly(int trials) {
    SplittableRandom random = new SplittableRandom(78);
    int undecided = 0;
    for (int trial = 0; trial < trials; trial++) {
      Simulated one = new Simulated(random, random.nextBoolean());
      Simulated two = new Simulated(random, random.nextBoolean());
      Crossing crossing;
      try {
        crossing = BREAK_EVEN.between(one.plan, two.plan);
      } catch (ArithmeticException open) {
        undecided += one.plan.shipping().isEmpty() && two.plan.shipping().isEmpty() ? 200 : 1;
        continue;
      }
      long difference = 0;
      long first = 0;
      long lastViolation = 0;
      int tried = 3000;
      for (long parts = 1; parts <= tried; parts++) {
        difference += one.nextPart() - two.nextPart();
        if (difference > 0) {
          lastViolation = parts;
        } else if (first == 0) {
          first = parts;
        }
      }
      assertThat(crossing.first().filter(found -> found <= tried).orElse(0L)).isEqualTo(first);
      if (crossing.permanent().isPresent() && crossing.permanent().get() <= tried) {
        assertThat(crossing.permanent().get()).isEqualTo(lastViolation + 1);
      } else {
        assertThat(lastViolation).isPositive();
      }
    }
    assertThat(undecided).isLessThan(50);
  }

  @Test
  void refusesWhatCannotBeCompared() {
    assertThatThrownBy(
            () ->
                OutsideOffer.builder()
                    .part(offer("bracket", kilograms(2), "0").build())
                    .shipping(BigMoney.parse("USD 5"))
                    .build())
        .hasMessage(
            "outside offer: content is 2 kg; accepted is 1 piece; and price is EUR 0.00; accepted"
                + " is more than zero; and shipping is USD 5; accepted is zero or more in the"
                + " currency of the price");
    assertThatThrownBy(
            () -> Substitution.standard().compare(FixturePlan.of(1), "pot", Durable.toBuy("kiln")))
        .hasMessageContaining("no resource \"pot\" to replace; accepted is one of [printer, kiln");
    LedgerPlan dollars =
        LedgerPlan.builder()
            .prices(
                PriceBook.builder()
                    .currency(CurrencyUnit.USD)
                    .asOf(FixturePlan.TODAY)
                    .addOffers(offer("kiln", ratio(1), "1").price(BigMoney.parse("USD 1")).build())
                    .build())
            .addResources(Durable.toBuy("kiln"))
            .partsPerFiring(1)
            .build();
    assertThatThrownBy(() -> BREAK_EVEN.between(FixturePlan.of(1), dollars))
        .hasMessage("break-even: the other plan is in USD; accepted is the currency EUR");
  }

  private static OutsideOffer.Builder outside(String price, int minimumOrder) {
    return OutsideOffer.builder()
        .part(offer("outside part", ratio(1), price).minimumOrder(minimumOrder).build());
  }

  private static LedgerPlan system(String capital, String perPart) {
    return LedgerPlan.builder()
        .prices(
            book()
                .offers(
                    List.of(
                        offer("machine", ratio(1), capital).build(),
                        offer("work", hours(1), perPart).metered(true).build()))
                .build())
        .addResources(Durable.toBuy("machine"), consumed("work", Driver.PART, hours(1)).build())
        .partsPerFiring(1)
        .build();
  }

  private static LedgerPlan withCrucible(String price) {
    return FixturePlan.builder()
        .prices(
            book()
                .addOffers(offer("dear crucible", ratio(1), "1").price(eur(price)).build())
                .build())
        .partsPerFiring(1)
        .build();
  }

  private static Resource wearing(String item, int life) {
    return Wearing.builder().item(item).driver(Driver.FIRING).life(life).source(INVENTED).build();
  }
}
