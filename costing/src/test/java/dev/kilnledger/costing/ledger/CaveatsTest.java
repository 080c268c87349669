package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.CaveatCode.CHARGE_NOT_FULL;
import static dev.kilnledger.costing.ledger.CaveatCode.ENERGY_EXCLUDED;
import static dev.kilnledger.costing.ledger.CaveatCode.EQUIPMENT_NOT_IN_USAGE;
import static dev.kilnledger.costing.ledger.CaveatCode.LEFTOVERS_NOT_VALUED;
import static dev.kilnledger.costing.ledger.CaveatCode.LIFE_ASSUMED;
import static dev.kilnledger.costing.ledger.CaveatCode.LOSS_ASSUMED;
import static dev.kilnledger.costing.ledger.CaveatCode.OWNERSHIP_ASSUMED;
import static dev.kilnledger.costing.ledger.CaveatCode.PRICE_OLD;
import static dev.kilnledger.costing.ledger.CaveatCode.PRICE_UNDATED;
import static dev.kilnledger.costing.ledger.CaveatCode.TAX_EXCLUDED;
import static dev.kilnledger.costing.ledger.CaveatCode.TAX_MIXED;
import static dev.kilnledger.costing.ledger.CaveatCode.TAX_UNKNOWN;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

class CaveatsTest {
  private static final Offer.Builder WAX = offer("wax", grams(100), "5");
  private static final Set<CostArea> ALL = EnumSet.allOf(CostArea.class);
  private static final Resource EVEN = consumed("wax", Driver.PART, grams(50)).build();

  @Test
  void tellsOfTheFixtureWhatItLeavesOutAndTakesForGranted() {
    assertThat(Ledger.standard().statement(FixturePlan.of(4), 5).caveats())
        .extracting(caveat -> caveat.code().code())
        .containsExactly(
            "shipping-excluded",
            "duty-excluded",
            "printing-energy-excluded",
            "labour-excluded",
            "overhead-excluded",
            "capital-excluded",
            "failures-excluded",
            "finishing-excluded",
            "disposal-excluded",
            "safety-equipment-excluded",
            "equipment-not-in-usage",
            "life-assumed",
            "loss-assumed",
            "charge-not-full",
            "leftovers-not-valued");
    assertThat(Ledger.standard().statement(FixturePlan.of(4), 5).caveats())
        .extracting(Caveat::text)
        .contains(
            "Not included: cost of capital.",
            "How long it lasts is an assumption: crucible.",
            "The last charge holds 1 of 4 parts and is counted as a whole firing.",
            "What is left over is not deducted: crucible, filament, packing powder, carbon.");
  }

  @Test
  void staysSilentWhereNothingApplies() {
    assertThat(codes(plan(List.of(EVEN), WAX).covered(ALL), 2)).isEmpty();
  }

  @Test
  void saysEachThingExactlyWhereItApplies() {
    assertThat(only(List.of(EVEN), 1, WAX)).containsExactly(LEFTOVERS_NOT_VALUED);
    assertThat(
            codes(
                plan(List.of(EVEN), WAX).covered(EnumSet.complementOf(EnumSet.of(CostArea.ENERGY))),
                2))
        .containsExactly(ENERGY_EXCLUDED);
    assertThat(codes(plan(List.of(EVEN), WAX).covered(ALL).partsPerFiring(4), 2))
        .containsExactly(CHARGE_NOT_FULL);
    assertThat(only(List.of(EVEN, Durable.owned("kiln")), 2, WAX, offer("kiln", ratio(1), "3200")))
        .containsExactly(OWNERSHIP_ASSUMED);
    assertThat(
            only(
                List.of(consumed("wax", Driver.PART, grams(50)).owned(grams(100)).build()), 2, WAX))
        .containsExactly(OWNERSHIP_ASSUMED);
    assertThat(codes(FixturePlan.builder().partsPerFiring(1), 1))
        .contains(LIFE_ASSUMED, LOSS_ASSUMED);
  }

  @Test
  void tellsTheTaxBasisOfThePricesInUse() {
    Offer.Builder kiln = offer("kiln", ratio(1), "3200");
    List<Resource> both = List.of(EVEN, Durable.toBuy("kiln"));
    assertThat(only(List.of(EVEN), 2, taxed(Tax.EXCLUDED), kiln)).containsExactly(TAX_EXCLUDED);
    assertThat(only(List.of(EVEN), 2, taxed(Tax.UNKNOWN), kiln)).containsExactly(TAX_UNKNOWN);
    assertThat(only(both, 2, taxed(Tax.EXCLUDED), kiln))
        .containsExactly(TAX_MIXED, EQUIPMENT_NOT_IN_USAGE);
  }

  @Test
  void tellsTheAgeOfThePricesInUse() {
    assertThat(only(List.of(EVEN), 2, dated(180))).isEmpty();
    assertThat(only(List.of(EVEN), 2, dated(181))).containsExactly(PRICE_OLD);
    assertThat(only(List.of(EVEN), 2, offer("wax", grams(100), "5").date(Optional.empty())))
        .containsExactly(PRICE_UNDATED);
    assertThat(Ledger.standard().statement(plan(List.of(EVEN), dated(181)).build(), 2).caveats())
        .extracting(Caveat::text)
        .contains("Prices are more than 180 days old on 2026-11-02: wax.");
  }

  private static Offer.Builder taxed(Tax tax) {
    return offer("wax", grams(100), "5").tax(tax);
  }

  private static Offer.Builder dated(int daysAgo) {
    return offer("wax", grams(100), "5").date(TODAY.minusDays(daysAgo));
  }

  private static LedgerPlan.Builder plan(List<Resource> resources, Offer.Builder... offers) {
    PriceBook.Builder book = PriceBook.builder().currency(CurrencyUnit.EUR).asOf(TODAY);
    for (Offer.Builder offer : offers) {
      book.addOffers(offer.build());
    }
    return LedgerPlan.builder().prices(book.build()).resources(resources).partsPerFiring(1);
  }

  private static List<CaveatCode> only(
      List<Resource> resources, long parts, Offer.Builder... offers) {
    return codes(plan(resources, offers).covered(ALL), parts);
  }

  private static List<CaveatCode> codes(LedgerPlan.Builder plan, long parts) {
    return Ledger.standard().statement(plan.build(), parts).caveats().stream()
        .map(Caveat::code)
        .toList();
  }
}
