package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.CaveatCode.CHARGE_NOT_FULL;
import static dev.kilnledger.costing.ledger.CaveatCode.ENERGY_EXCLUDED;
import static dev.kilnledger.costing.ledger.CaveatCode.EQUIPMENT_NOT_IN_USAGE;
import static dev.kilnledger.costing.ledger.CaveatCode.EXCHANGE_RATE_ASSUMED;
import static dev.kilnledger.costing.ledger.CaveatCode.EXCHANGE_RATE_OLD;
import static dev.kilnledger.costing.ledger.CaveatCode.LEFTOVERS_NOT_VALUED;
import static dev.kilnledger.costing.ledger.CaveatCode.LIFE_ASSUMED;
import static dev.kilnledger.costing.ledger.CaveatCode.LIFE_EXTRAPOLATED;
import static dev.kilnledger.costing.ledger.CaveatCode.LOSS_ASSUMED;
import static dev.kilnledger.costing.ledger.CaveatCode.OFFERS_LEFT_OUT;
import static dev.kilnledger.costing.ledger.CaveatCode.OWNERSHIP_ASSUMED;
import static dev.kilnledger.costing.ledger.CaveatCode.PRICE_OLD;
import static dev.kilnledger.costing.ledger.CaveatCode.PRICE_UNDATED;
import static dev.kilnledger.costing.ledger.CaveatCode.SHELF_LIFE_AT_RISK;
import static dev.kilnledger.costing.ledger.CaveatCode.SHELF_LIFE_UNDETERMINED;
import static dev.kilnledger.costing.ledger.CaveatCode.SHIPPING_EXCLUDED;
import static dev.kilnledger.costing.ledger.CaveatCode.TAX_EXCLUDED;
import static dev.kilnledger.costing.ledger.CaveatCode.TAX_MIXED;
import static dev.kilnledger.costing.ledger.CaveatCode.TAX_UNKNOWN;
import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.days;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.joda.money.CurrencyUnit.EUR;

import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.ExchangeRates;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
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
  void tellsOfEveryBehaviourWhetherItIsOwned() {
    Offer.Builder pot = offer("pot", ratio(1), "45");
    Wearing crucible =
        Wearing.builder().item("pot").driver(Driver.FIRING).life(6).source(INVENTED).build();
    Aged aged = Aged.builder().item("wax").fill(grams(100)).cycles(2).source(INVENTED).build();
    ToppedUp toppedUp =
        ToppedUp.builder().item("wax").fill(grams(100)).loss(ratio(0)).source(INVENTED).build();
    RunDown runDown =
        RunDown.builder()
            .item("wax")
            .fill(grams(100))
            .loss(percent(10))
            .minimum(percent(90))
            .source(INVENTED)
            .build();
    assertThat(only(List.of(crucible), 6, pot)).containsExactly(LIFE_ASSUMED);
    assertThat(only(List.of(Wearing.builder().from(crucible).usesLeft(6).build()), 6, pot))
        .containsExactly(LIFE_ASSUMED, OWNERSHIP_ASSUMED);
    assertThat(only(List.of(Aged.builder().from(aged).owned(grams(100)).build()), 2, WAX))
        .containsExactly(LIFE_ASSUMED, OWNERSHIP_ASSUMED);
    assertThat(only(List.of(toppedUp), 2, WAX)).containsExactly(LOSS_ASSUMED, LEFTOVERS_NOT_VALUED);
    assertThat(only(List.of(ToppedUp.builder().from(toppedUp).owned(grams(100)).build()), 2, WAX))
        .containsExactly(LOSS_ASSUMED, OWNERSHIP_ASSUMED, LEFTOVERS_NOT_VALUED);
    // 0.9 of the fill is left after one firing, which just serves another: two a fill.
    assertThat(only(List.of(runDown), 2, WAX)).containsExactly(LOSS_ASSUMED);
    assertThat(only(List.of(RunDown.builder().from(runDown).owned(grams(100)).build()), 2, WAX))
        .containsExactly(LOSS_ASSUMED, OWNERSHIP_ASSUMED);
    assertThat(
            only(List.of(consumed("wax", Driver.PART, grams(50)).owned(grams(0)).build()), 2, WAX))
        .as("an empty shelf is nothing owned")
        .isEmpty();
  }

  /** 500 g give three prints of 128 g and a tail of 116 g, of which no print can be made. */
  @Test
  void countsTailsAmongWhatIsLeftOver() {
    Resource prints = consumed("wax", Driver.PART, grams(128)).tails(Tails.STRANDED).build();
    assertThat(only(List.of(prints), 3, offer("wax", grams(500), "5")))
        .containsExactly(LEFTOVERS_NOT_VALUED);
    assertThat(only(List.of(prints), 3, offer("wax", grams(384), "5"))).isEmpty();
  }

  @Test
  void countsAnOverheadThatIsStatedAsCovered() {
    LedgerPlan.Builder plan =
        plan(List.of(EVEN), WAX).covered(EnumSet.complementOf(EnumSet.of(CostArea.OVERHEAD)));
    assertThat(codes(plan, 2)).containsExactly(CaveatCode.OVERHEAD_EXCLUDED);
    assertThat(
            codes(plan.addOverheads(Overhead.of(OverheadBase.ALL_COSTS, ratio(0.1), INVENTED)), 2))
        .isEmpty();
  }

  @Test
  void takesTheRoomInAChargeAsSharedOnlyWhereThereIsRoom() {
    LedgerPlan.Builder plan = plan(List.of(EVEN), WAX).covered(ALL).charging(ChargeRule.SHARED);
    assertThat(codes(plan, 2)).isEmpty();
    assertThat(codes(plan.partsPerFiring(2), 2)).containsExactly(CaveatCode.CHARGE_SHARED);
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
  void countsShippingAmongThePricesThatHoldTheTaxOrDoNot() {
    LedgerPlan.Builder plan =
        plan(List.of(EVEN), WAX)
            .covered(ALL)
            .addShipping(offer("sending", ratio(1), "5").tax(Tax.EXCLUDED).build());
    assertThat(Ledger.standard().statement(plan.build(), 2).caveats())
        .containsExactly(
            Caveat.of(TAX_MIXED, "Prices with tax are summed with prices without tax: sending."));
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

  @Test
  void tellsByWhichRateAndOfWhichDayPricesWereConverted() {
    ExchangeRate rate =
        ExchangeRate.builder()
            .base(CurrencyUnit.USD)
            .counter(CurrencyUnit.EUR)
            .rate(new BigDecimal("0.92"))
            .date(TODAY.minusDays(200))
            .source(INVENTED)
            .build();
    Offer dollars =
        Offer.builder()
            .from(offer("wax", grams(100), "5").build())
            .price(Money.parse("USD 5"))
            .build();
    Offer converted = ExchangeRates.of(List.of(rate)).convert(List.of(dollars), EUR).get(0);
    Offer.Builder wax = Offer.builder().from(converted);
    assertThat(only(List.of(EVEN), 2, wax))
        .containsExactly(EXCHANGE_RATE_ASSUMED, EXCHANGE_RATE_OLD);
    assertThat(Ledger.standard().statement(plan(List.of(EVEN), wax).build(), 2).caveats())
        .extracting(Caveat::text)
        .contains(
            "Prices were converted at 1 USD = 0.92 EUR on 2026-04-16 (invented (stated by the"
                + " user)): wax.",
            "The exchange rate 1 USD = 0.92 EUR on 2026-04-16 is more than 180 days old on"
                + " 2026-11-02: wax.");
  }

  @Test
  void namesOnlyTheItemsWhosePricesWereConverted() {
    ExchangeRate rate =
        ExchangeRate.builder()
            .base(CurrencyUnit.USD)
            .counter(EUR)
            .rate(new BigDecimal("0.92"))
            .date(TODAY)
            .source(INVENTED)
            .build();
    Offer.Builder nozzle =
        Offer.builder().from(offer("nozzle", ratio(1), "5").build()).price(Money.parse("USD 5"));
    Offer converted = ExchangeRates.of(List.of(rate)).convert(List.of(nozzle.build()), EUR).get(0);
    LedgerPlan.Builder plan =
        plan(List.of(EVEN, Durable.owned("nozzle")), WAX, Offer.builder().from(converted))
            .covered(ALL);
    assertThat(Ledger.standard().statement(plan.build(), 2).caveats())
        .extracting(Caveat::text)
        .containsExactly(
            "Prices were converted at 1 USD = 0.92 EUR on 2026-11-02 (invented (stated by the"
                + " user)): nozzle.",
            "Taken to be owned at the start, at no cost: nozzle.");
  }

  @Test
  void asksThePriceOfWhatIsOwnedAsIfItWereBought() {
    Offer.Builder kiln = offer("kiln", ratio(1), "3200").date(TODAY.minusDays(181));
    assertThat(only(List.of(EVEN, Durable.owned("kiln")), 2, WAX, kiln))
        .containsExactly(PRICE_OLD, OWNERSHIP_ASSUMED);
  }

  @Test
  void asksNothingOfAnOrderThatIsNotPlaced() {
    LedgerPlan.Builder plan =
        plan(List.of(EVEN), WAX)
            .covered(ALL)
            .addShipping(
                offer("sending", ratio(1), "5").supplier("supplier B").tax(Tax.EXCLUDED).build());
    assertThat(codes(plan, 2)).isEmpty();
  }

  @Test
  void asksNoShelfLifeOfWhatIsNotBoughtInPacksToBeUsedUp() {
    Offer.Builder kiln = offer("kiln", ratio(1), "3200").shelfLife(days(1));
    Offer.Builder gas = offer("gas", grams(1), "1").metered(true).shelfLife(days(1));
    List<Resource> resources =
        List.of(EVEN, Durable.toBuy("kiln"), consumed("gas", Driver.PART, grams(1)).build());
    assertThat(only(resources, 2, WAX, kiln, gas)).containsExactly(EQUIPMENT_NOT_IN_USAGE);
  }

  @Test
  void holdsWhatIsBoughtAgainstItsShelfLife() {
    // 100 g last two parts; at 20 days a part that is 40 days.
    Offer.Builder keeps40 = offer("wax", grams(100), "5").shelfLife(days(40));
    Offer.Builder keeps39 = offer("wax", grams(100), "5").shelfLife(days(39));
    assertThat(only(List.of(EVEN), 2, keeps40)).containsExactly(SHELF_LIFE_UNDETERMINED);
    assertThat(codes(plan(List.of(EVEN), keeps40).covered(ALL).timePerPart(days(20)), 2)).isEmpty();
    LedgerPlan.Builder risky = plan(List.of(EVEN), keeps39).covered(ALL).timePerPart(days(20));
    assertThat(codes(risky, 2)).containsExactly(SHELF_LIFE_AT_RISK);
    assertThat(Ledger.standard().statement(risky.build(), 2).caveats())
        .extracting(Caveat::text)
        .containsExactly("Bought for longer than it keeps: wax keeps 39 d and lasts 40 d.");
    // Planned for 6, it lies for 6 x 20 days.
    assertThat(
            Ledger.standard()
                .statement(risky.buying(BuyingRule.PLANNED_FOR_N).build(), 6)
                .caveats())
        .extracting(Caveat::text)
        .containsExactly("Bought for longer than it keeps: wax keeps 39 d and lasts 120 d.");
    assertThat(
            Ledger.standard()
                .statement(plan(List.of(EVEN), keeps40).covered(ALL).build(), 2)
                .caveats())
        .extracting(Caveat::text)
        .containsExactly(
            "Whether it is used within its shelf life is not known, as no pace of parts is stated:"
                + " wax keeps 40 d.");
  }

  @Test
  void holdsTheShortestShelfLifeOfWhatIsBoughtAgainstTheTime() {
    Offer.Builder few = offer("wax", grams(100), "1").supplier("supplier B").available(1L);
    Offer.Builder dear = offer("wax", grams(100), "9").shelfLife(days(1));
    // Four parts take one pack of each; that of the dear offer is never bought.
    for (int first : new int[] {39, 41}) {
      LedgerPlan.Builder plan =
          plan(
                  List.of(EVEN),
                  few.shelfLife(days(first)),
                  offer("wax", grams(100), "5").supplier("supplier C").shelfLife(days(40)),
                  dear)
              .covered(ALL);
      assertThat(Ledger.standard().statement(plan.build(), 4).caveats())
          .extracting(Caveat::text)
          .containsExactly(
              "Whether it is used within its shelf life is not known, as no pace of parts is"
                  + " stated: wax keeps "
                  + Math.min(first, 40)
                  + " d.");
    }
  }

  @Test
  void tellsWhereALifeIsLongerThanAnybodyHasSeen() {
    Offer.Builder pot = offer("pot", ratio(1), "45");
    Wearing.Builder six = Wearing.builder().item("pot").driver(Driver.FIRING).life(6);
    six.source(INVENTED);
    assertThat(only(List.of(six.build()), 6, pot)).containsExactly(LIFE_ASSUMED);
    assertThat(only(List.of(six.observed(ratio(6)).build()), 6, pot)).containsExactly(LIFE_ASSUMED);
    assertThat(only(List.of(six.observed(ratio(5)).build()), 6, pot))
        .containsExactly(LIFE_ASSUMED, LIFE_EXTRAPOLATED);
    Aged aged =
        Aged.builder().item("wax").fill(grams(100)).cycles(4).observed(3).source(INVENTED).build();
    // Four parts take one fill of 100 g, which is one pack: nothing is left over.
    assertThat(only(List.of(aged), 4, WAX)).containsExactly(LIFE_ASSUMED, LIFE_EXTRAPOLATED);
    assertThat(only(List.of(Aged.builder().from(aged).observed(4).build()), 4, WAX))
        .containsExactly(LIFE_ASSUMED);
    assertThat(only(List.of(Aged.builder().from(aged).observed(Optional.empty()).build()), 4, WAX))
        .containsExactly(LIFE_ASSUMED);
    assertThatThrownBy(() -> six.observed(grams(5)).build())
        .hasMessageContaining("observed is 5 g; accepted is a measure of");
  }

  @Test
  void tellsOfOffersThatDoNotServeAndSuppliersWhoseShippingIsNotKnown() {
    Offer.Builder sample = offer("wax", grams(40), "1").supplier("supplier B");
    Resource pieces = consumed("wax", Driver.PART, grams(50)).tails(Tails.STRANDED).build();
    assertThat(only(List.of(pieces), 2, WAX, sample)).containsExactly(OFFERS_LEFT_OUT);
    Offer.Builder kiln = offer("kiln", ratio(1), "3200").supplier("supplier B");
    LedgerPlan.Builder plan =
        plan(List.of(EVEN, Durable.toBuy("kiln")), WAX, kiln)
            .covered(EnumSet.complementOf(EnumSet.of(CostArea.SHIPPING)))
            .addShipping(offer("sending", ratio(1), "5").build());
    assertThat(codes(plan, 2)).containsExactly(SHIPPING_EXCLUDED, EQUIPMENT_NOT_IN_USAGE);
    assertThat(Ledger.standard().statement(plan.build(), 2).caveats())
        .extracting(Caveat::text)
        .contains("Not included: shipping by suppliers whose charge is not known: supplier B.");
  }

  @Test
  void tellsOfOffersThatAreBoughtAndOfNoOthers() {
    // Only the cheap one is bought, so that the age of the dear one does not matter.
    Offer.Builder dear =
        offer("wax", grams(100), "9").supplier("supplier B").date(TODAY.minusDays(900));
    assertThat(only(List.of(EVEN), 2, WAX, dear)).isEmpty();
    assertThat(only(List.of(EVEN), 2, offer("wax", grams(100), "10"), dear))
        .containsExactly(PRICE_OLD);
  }

  @Test
  void reachesEveryCode() {
    Set<CaveatCode> reached = EnumSet.noneOf(CaveatCode.class);
    Ledger.standard()
        .statement(FixturePlan.of(4), 5)
        .caveats()
        .forEach(one -> reached.add(one.code()));
    reached.addAll(
        EnumSet.of(
            // each by a test of its own here, in RulesTest, FailuresTest or AnswersTest
            ENERGY_EXCLUDED,
            TAX_EXCLUDED,
            TAX_UNKNOWN,
            TAX_MIXED,
            PRICE_UNDATED,
            PRICE_OLD,
            EXCHANGE_RATE_ASSUMED,
            EXCHANGE_RATE_OLD,
            OFFERS_LEFT_OUT,
            CaveatCode.EQUIPMENT_NOT_COVERED,
            LIFE_EXTRAPOLATED,
            SHELF_LIFE_AT_RISK,
            SHELF_LIFE_UNDETERMINED,
            CaveatCode.YIELD_ASSUMED,
            OWNERSHIP_ASSUMED,
            CaveatCode.CHARGE_SHARED,
            CaveatCode.DEPRECIATION_NOT_CASH));
    assertThat(reached).containsExactlyInAnyOrder(CaveatCode.values());
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
