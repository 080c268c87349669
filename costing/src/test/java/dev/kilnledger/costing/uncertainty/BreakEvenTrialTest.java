package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Plans so small that cash and crossings are seen at once: C(n) for n parts, P each outside. */
class BreakEvenTrialTest {
  private static final MonteCarlo MONTE_CARLO = new MonteCarlo(1);
  private static final Trials FEW = Trials.fixed(64, 1);

  private static LedgerPlan.Builder plan(List<Offer> offers, Resource... resources) {
    return LedgerPlan.builder()
        .prices(book().offers(offers).build())
        .addResources(resources)
        .partsPerFiring(1);
  }

  /** A press at 50, and an hour of work at 20 for each part: C(n) = 50 + 20 n. */
  private static LedgerPlan press() {
    return plan(
            List.of(
                offer("press", ratio(1), "50").build(),
                offer("work", hours(1), "20").metered(true).build()),
            Durable.toBuy("press"),
            consumed("work", Driver.PART, hours(1)).build())
        .build();
  }

  private static Optional<Long> first(LedgerPlan plan, String price, long most) {
    return MONTE_CARLO.breakEven(UncertainPlan.of(plan, List.of()), eur(price), most, FEW).median();
  }

  @Test
  void findsTheFirstPartThatIsWorthIt() {
    assertThat(first(press(), "70", 10)).contains(1L); // 70 <= 70
    assertThat(first(press(), "60", 10)).contains(2L); // 70 > 60, 90 <= 120
    assertThat(first(press(), "40", 10)).contains(3L); // 90 > 80, 110 <= 120
    assertThat(first(press(), "40", 3)).contains(3L);
    assertThat(first(press(), "40", 2)).isEmpty();
    assertThat(first(press(), "20", 1_000_000)).isEmpty();
  }

  /** A press at 120 alone is worth it with the second part at 60, and with the first at 120. */
  @Test
  void countsEqualCashAsWorthIt() {
    LedgerPlan alone =
        plan(List.of(offer("press", ratio(1), "120").build()), Durable.toBuy("press")).build();
    assertThat(first(alone, "60", 2)).contains(2L);
    assertThat(first(alone, "120", 2)).contains(1L);
    assertThat(first(alone, "40", 3)).contains(3L);
    // 0.1 + 0.2 is 0.30000000000000004 in doubles, and as much for each part.
    LedgerPlan sums =
        plan(
                List.of(
                    offer("work", hours(1), "0.10").metered(true).build(),
                    offer("rent", hours(1), "0.20").metered(true).build()),
                consumed("work", Driver.PART, hours(1)).build(),
                consumed("rent", Driver.PART, hours(1)).build())
            .build();
    assertThat(first(sums, "0.3", 100)).contains(1L);
  }

  @Test
  void looksAtOneToABillionParts() {
    UncertainPlan plan = UncertainPlan.of(press(), List.of());
    assertThatThrownBy(() -> MONTE_CARLO.breakEven(plan, eur("60"), 0, FEW))
        .hasMessage("Monte Carlo: parts is 0; accepted is from 1 to 1000000000");
    assertThatThrownBy(() -> MONTE_CARLO.statement(plan, 1_000_000_001, FEW))
        .hasMessage("Monte Carlo: parts is 1000000001; accepted is from 1 to 1000000000");
    // 50 + 20 x 1e9, which doubles hold.
    assertThat(MONTE_CARLO.statement(plan, 1_000_000_000, FEW).allParts().outcome().mean())
        .isCloseTo(20_000_000_050.0, within(1e-3));
  }

  /** If one print of a thousand is good, a billion parts take 1e12; twice as many are too many. */
  @Test
  void countsUpToATrillionStarts() {
    Failures thousandth =
        Failures.builder()
            .addStages(
                StageYield.builder()
                    .stage(Stage.PRINT)
                    .parts(ratio(0.001))
                    .source(INVENTED)
                    .build())
            .build();
    LedgerPlan.Builder plan = LedgerPlan.builder().from(press()).failures(thousandth);
    UncertainPlan most = UncertainPlan.of(plan.build(), List.of());
    assertThat(MONTE_CARLO.statement(most, 1_000_000_000, FEW).allParts().outcome().mean())
        .isCloseTo(20e12 + 50, within(1.0));
    plan.failures(
        Failures.builder()
            .from(thousandth)
            .addStages(
                StageYield.builder()
                    .stage(Stage.SINTER)
                    .parts(percent(50))
                    .source(INVENTED)
                    .build())
            .build());
    UncertainPlan more = UncertainPlan.of(plan.build(), List.of());
    assertThatThrownBy(() -> MONTE_CARLO.statement(more, 1_000_000_000, FEW))
        .hasMessage(
            "Monte Carlo: for 1000000000 parts more than 1000000000000 starts are expected;"
                + " accepted are fewer parts or higher yields");
  }

  /** C(25) / 25 = 550 / 25, and one part alone costs 70. */
  @Test
  void movesAveragesAndSingleParts() {
    UncertainPlan plan =
        UncertainPlan.of(
            press(), List.of(UncertainInput.price("press", Normal.of(50, 5), INVENTED)));
    OneAtATime one = OneAtATime.standard();
    assertThat(one.tornado(plan, CashFigure.AVERAGE, 25).middle()).isCloseTo(22, within(1e-12));
    assertThat(one.tornado(plan, CashFigure.ALL_PARTS, 1).middle()).isCloseTo(70, within(1e-12));
    assertThat(one.tornado(plan, CashFigure.ALL_PARTS, 1_000_000_000).middle())
        .isCloseTo(20_000_000_050.0, within(1e-3));
    assertThatThrownBy(() -> one.tornado(plan, CashFigure.ALL_PARTS, 1_000_000_001))
        .hasMessageContaining("parts is 1000000001; accepted is from 1 to 1000000000");
  }
}
