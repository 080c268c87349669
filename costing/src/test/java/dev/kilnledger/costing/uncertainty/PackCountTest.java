package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.KILOGRAM;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.units.Amount;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Packs in doubles: told where whole numbers decide them, and no number where rounding might. */
class PackCountTest {
  private static PackCount count(Resource resource, Amount<?> pack, UncertainInput... inputs) {
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(book().offers(List.of(offer(resource.item(), pack, "1").build())).build())
            .addResources(resource)
            .partsPerFiring(1)
            .build();
    return new PackCount(
        plan, resource, Binding.of(plan, List.of(inputs), false, new Problems("plan")));
  }

  private static UncertainInput quantity(double... kilograms) {
    return UncertainInput.quantity("wax", Empirical.of(kilograms), INVENTED).in(KILOGRAM);
  }

  @Test
  void needsNothingForNoEvent() {
    PackCount kiln = count(Durable.toBuy("kiln"), ratio(1));
    assertThat(kiln.of(0)).isZero();
    assertThat(kiln.of(1)).isEqualTo(1);
    assertThat(kiln.varies()).isFalse();
  }

  /** 0.1 kg and 0.3 kg are no doubles, but one and three in a measure of 0.1 kg. */
  @Test
  void countsCertainFiguresInWholeNumbers() {
    PackCount wax = count(consumed("wax", Driver.PART, grams(100)).build(), grams(300));
    assertThat(wax.varies()).isFalse();
    assertThat(wax.of(3)).isEqualTo(1);
    assertThat(wax.of(4)).isEqualTo(2);
    assertThat(wax.of(300_000)).isEqualTo(100_000);
    // A fill of 1 kg, of which 0.1 kg are lost with each charge but the first.
    ToppedUp powder =
        ToppedUp.builder()
            .item("powder")
            .fill(kilograms(1))
            .loss(percent(10))
            .owned(kilograms(0.4))
            .source(INVENTED)
            .build();
    PackCount fills = count(powder, kilograms(0.2));
    assertThat(fills.of(1)).isEqualTo(3);
    assertThat(fills.of(3)).isEqualTo(4);
    assertThat(fills.of(4)).isEqualTo(5);
  }

  @Test
  void leavesToTheStaircaseWhatDoublesCannotTell() {
    PackCount whole =
        count(consumed("wax", Driver.PART, kilograms(7)).build(), kilograms(21), quantity(7, 9));
    assertThat(whole.varies()).isTrue();
    whole.set(new double[] {7});
    assertThat(whole.of(3)).isEqualTo(1);
    assertThat(whole.of(4)).isEqualTo(2);
    assertThat(whole.of(1.5)).isEqualTo(1); // half of 21 kg is far from any pack
    assertThat(whole.of(4.5)).isEqualTo(2);
    assertThat(whole.of(1.2 + 1.8)).isEqualTo(1);
    whole.set(new double[] {8.4});
    assertThat(whole.of(2.5)).isNaN(); // 21 kg, of fractions of an event
    PackCount decimals =
        count(
            consumed("wax", Driver.PART, kilograms(0.2)).build(),
            kilograms(0.3),
            quantity(0.1, 0.2));
    decimals.set(new double[] {0.1});
    assertThat(decimals.of(3)).isNaN();
    assertThat(decimals.of(4)).isEqualTo(2);
  }

  /** From 1e15 on doubles are not trusted to hold every whole number. */
  @Test
  void trustsWholeNumbersUpToALimit() {
    PackCount each =
        count(consumed("wax", Driver.PART, kilograms(1)).build(), kilograms(1), quantity(1, 2));
    each.set(new double[] {1});
    assertThat(each.of(1e15 - 1)).isEqualTo(1e15 - 1);
    assertThat(each.of(1e15)).isNaN();
  }

  /** Three firings to a fill: whole numbers of them are told, and no fraction that is near. */
  @Test
  void groupsWholeEvents() {
    Aged powder =
        Aged.builder().item("powder").fill(kilograms(1)).cycles(3).source(INVENTED).build();
    PackCount fills = count(powder, kilograms(1));
    assertThat(fills.of(6)).isEqualTo(2);
    assertThat(fills.of(7)).isEqualTo(3);
    assertThat(fills.of(6.5)).isEqualTo(3);
    assertThat(fills.of(Math.nextUp(6.0))).isNaN();
    assertThat(fills.usage(3)).isEqualTo(1);
  }
}
