package dev.kilnledger.costing.breakeven;

import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Simulated;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/**
 * The fixture's values were made for this project and computed by hand, apart from the code; random
 * plans are checked against every n up to far behind the crossing.
 */
class BreakEvenTest {
  private static final BreakEven BREAK_EVEN = BreakEven.standard();

  @Test
  void tellsFirstPermanentAndSmoothCrossing() {
    LedgerPlan plan = FixturePlan.of(1);
    Crossing crossing = BREAK_EVEN.find(plan, eur("60"));
    assertThat(crossing.first()).contains(203L);
    assertThat(crossing.permanent()).contains(206L);
    assertThat(crossing.smooth()).contains(200L);
    assertThat(crossing.usage().total()).isEqualByComparingTo(eur("39.48"));
    assertThat(crossing.cashAtFirst()).contains(Ledger.standard().through(plan, 203));
    assertThat(crossing.cashAtPermanent()).contains(Ledger.standard().through(plan, 206));
  }

  @Test
  void saysNeverWhereUsageIsNotBelowThePrice() {
    for (String price : List.of("39.48", "39.47", "0.01")) {
      Crossing crossing = BREAK_EVEN.find(FixturePlan.of(1), eur(price));
      assertThat(crossing.first()).isEmpty();
      assertThat(crossing.permanent()).isEmpty();
      assertThat(crossing.smooth()).isEmpty();
    }
  }

  @Test
  void findsACrossingThatDoesNotLast() {
    // 250 g a part from 500 g at 60: 30 a part. At 30, even parts break even and odd ones do not.
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(FixturePlan.book().build())
            .addResources(consumed("filament", Driver.PART, Amounts.grams(250)).build())
            .partsPerFiring(1)
            .build();
    assertThat(BREAK_EVEN.find(plan, eur("30")).first()).contains(2L);
    assertThat(BREAK_EVEN.find(plan, eur("30")).permanent()).isEmpty();
    assertThat(BREAK_EVEN.find(plan, eur("29.99")).first()).isEmpty();
  }

  @Test
  void agreesWithTryingEveryNumberOfParts() {
    SplittableRandom random = new SplittableRandom(42);
    int lasting = 0;
    int passing = 0;
    for (int trial = 0; trial < 400; trial++) {
      Simulated workshop = new Simulated(random);
      BigMoney usage = Ledger.standard().usage(workshop.plan).total();
      long price =
          usage
                  .multipliedBy(BigDecimal.valueOf(random.nextDouble(0.8, 1.5)))
                  .getAmount()
                  .movePointRight(2)
                  .setScale(0, RoundingMode.CEILING)
                  .longValueExact()
              + random.nextLong(1, 200);
      Crossing crossing =
          BREAK_EVEN.find(workshop.plan, BigMoney.ofScale(CurrencyUnit.EUR, price, 2));
      long tried = 2 * crossing.permanent().orElse(2000L) + 2000;
      long first = 0;
      long lastViolation = 0;
      long cents = 0;
      for (long parts = 1; parts <= tried; parts++) {
        cents += workshop.nextPart();
        if (cents > parts * price) {
          lastViolation = parts;
        } else if (first == 0) {
          first = parts;
        }
      }
      if (crossing.permanent().isPresent()) {
        lasting++;
        assertThat(crossing.permanent().get()).as("trial %s", trial).isEqualTo(lastViolation + 1);
        assertThat(crossing.first()).as("trial %s", trial).contains(first);
      } else {
        passing += first == 0 ? 0 : 1;
        assertThat(crossing.first().filter(found -> found <= tried).orElse(0L))
            .as("trial %s", trial)
            .isEqualTo(first);
      }
    }
    assertThat(lasting).isGreaterThan(100);
    assertThat(passing).isGreaterThan(5);
  }

  @Test
  void isQuickWhereTheCrossingIsFarAway() {
    // 4100 / (39.49 - 39.48) = 410,000; the powder's first fill and the last packs come on top.
    Crossing crossing = BREAK_EVEN.find(FixturePlan.of(1), eur("39.49"));
    assertThat(crossing.smooth()).contains(410_000L);
    assertThat(crossing.first().orElseThrow()).isBetween(410_000L, 430_000L);
    assertThat(crossing.permanent().orElseThrow()).isBetween(410_000L, 430_000L);
  }

  @Test
  void refusesAPriceThatCannotBeCompared() {
    LedgerPlan plan = FixturePlan.of(1);
    assertThatThrownBy(() -> BREAK_EVEN.find(plan, BigMoney.parse("USD -1")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "break-even: outside price is USD -1; accepted is the currency EUR; and outside price"
                + " is USD -1; accepted is more than zero");
    assertThatThrownBy(() -> BREAK_EVEN.find(plan, eur("39.480000000000000000001")))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("so near the usage per part");
  }
}
