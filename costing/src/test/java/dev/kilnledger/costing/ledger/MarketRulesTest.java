package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import dev.kilnledger.costing.offer.BreakRule;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.resource.Wearing;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where nothing else is named, expected values are worked out by hand beside each check. */
class MarketRulesTest {
  private static final Ledger LEDGER = Ledger.standard();
  private static final List<Offer> WAX =
      List.of(wax(250, "19"), wax(500, "32"), wax(1000, "55"), wax(2500, "125"));
  private static final Resource FIFTY = consumed("wax", Driver.PART, grams(50)).build();

  @ParameterizedTest
  @CsvSource({
    // Made for this project and computed independently; 50 g a part.
    "12, 51",
    "24, 74",
    "35, 106",
    "46, 125",
    "66, 180",
    "80, 212"
  })
  void plansTheCheapestCover(long parts, String cash) {
    LedgerPlan plan = planned(plan(WAX, FIFTY)).build();
    assertThat(LEDGER.through(plan, parts).total()).isEqualByComparingTo(eur(cash));
    assertThat(LEDGER.part(plan, 1, parts).total()).isEqualByComparingTo(eur(cash));
  }

  @Test
  void breaksTiesByLeastSurplusAndFewestPacks() {
    // Packs of 6, 9 and 20 at their size: 43 cannot be composed (the Frobenius number of the
    // three, from memory), 44 is 20 + 9 + 9 + 6.
    List<Offer> nuggets = List.of(wax(6, "6"), wax(9, "9"), wax(20, "20"));
    LedgerPlan plan =
        planned(plan(nuggets, consumed("wax", Driver.PART, grams(43)).build())).build();
    Account account = LEDGER.through(plan, 1);
    assertThat(account.total()).isEqualByComparingTo(eur("44"));
    assertThat(account.lines())
        .extracting(Line::text)
        .containsExactly(
            "wax: bought 1 x 6 g at EUR 6.00",
            "wax: bought 2 x 9 g at EUR 9.00",
            "wax: bought 1 x 20 g at EUR 20.00");
    assertThat(account.lines().get(0).formula())
        .isEqualTo(
            "packs(n) of the cheapest order for all n parts that holds max(0, x) x content, x ="
                + " (quantity x n - stock) / content");
  }

  @Test
  void coversWhatAUseLacksByTheCheapestOrder() {
    // 50 g are lacking with every fifth part, and 250 g at 19 are the cheapest that hold them.
    LedgerPlan fifty = plan(WAX, FIFTY).build();
    assertThat(LEDGER.through(fifty, 12).total()).isEqualByComparingTo(eur("57"));
    assertThat(LEDGER.part(fifty, 6).lines())
        .extracting(Line::text)
        .containsExactly("wax: bought 1 x 250 g at EUR 19.00");
    assertThat(LEDGER.usage(fifty).total()).isEqualByComparingTo(eur("3.8")); // 19 x 50 / 250
    // 300 g: 500 g at 32, and 200 g are left; 100 g lack: 250 g at 19, 150 g left; 150 g lack:
    // 19, 100 g left; 200 g lack: 19, 50 g left; 250 g lack: 19, nothing left.
    LedgerPlan three = plan(WAX, consumed("wax", Driver.PART, grams(300)).build()).build();
    assertThat(LEDGER.staircase(three, 1, 6))
        .extracting(step -> step.cash().total().getAmount().intValueExact())
        .containsExactly(32, 19, 19, 19, 19, 32);
    assertThat(LEDGER.usage(three).total()).isEqualByComparingTo(eur("21.6")); // 108 / 5
    assertThat(LEDGER.through(three, 1_000_003).total())
        .isEqualByComparingTo(eur("21600070")); // 200,000 rounds of 108, and 32 + 19 + 19
    Statement two = LEDGER.statement(three, 2);
    assertThat(two.stocks())
        .extracting(Stock::text, Stock::nextPurchase)
        .containsExactly(tuple("150 g", Optional.of(3L)));
    assertThat(two.lastPart().lines().get(0).formula())
        .isEqualTo(
            "packs(n) - packs(n - 1), packs(n) of the cheapest orders, each for what a use lacks,"
                + " that together hold max(0, x) x content, x = (quantity x n - stock) / content");
  }

  @Test
  void countsQuantitiesThatAreNotRound() {
    // As a division leaves them: 27,775,999.999999996 g are 111,104 packs of 250 g.
    Resource odd = consumed("wax", Driver.PART, grams(27.775999999999996)).build();
    assertThat(LEDGER.through(plan(WAX, odd).build(), 1_000_000).total())
        .isEqualByComparingTo(eur("2110976"));
    // 300.000001 g leave another rest each time: the first orders are told, the millionth is not.
    Resource restless = consumed("wax", Driver.PART, grams(300.000001)).build();
    LedgerPlan plan = plan(WAX, restless).build();
    assertThat(LEDGER.staircase(plan, 1, 6))
        .extracting(step -> step.cash().total().getAmount().intValueExact())
        // As at 300 g, but that with the fifth part 250.000005 g lack.
        .containsExactly(32, 19, 19, 19, 32, 19);
    assertThatThrownBy(() -> LEDGER.through(plan, 1_000_000))
        .hasMessage(
            "the purchases of wax do not repeat within 131072 of them; accepted are fewer parts,"
                + " or rounder contents and quantities");
    LedgerPlan planned = planned(LedgerPlan.builder().from(plan)).build();
    // 300,000,001 g: 120,000 packs of 2.5 kg at 125, the cheapest per gram, and 250 g for the last.
    assertThat(LEDGER.through(planned, 1_000_000).total()).isEqualByComparingTo(eur("15000019"));
  }

  @Test
  void paysEachPackAtThePriceOfItsStep() {
    Offer incremental =
        Offer.builder()
            .from(wax(10, "5"))
            .addBreaks(PriceBreak.of(10, eur("4")), PriceBreak.of(20, eur("3")))
            .breakRule(BreakRule.INCREMENTAL)
            .build();
    Resource hundred = consumed("wax", Driver.PART, grams(120)).build();
    // 9 at 5 and 3 at 4; for 24 packs 9 at 5, 10 at 4 and 5 at 3.
    assertThat(LEDGER.through(planned(plan(List.of(incremental), hundred)).build(), 1).lines())
        .extracting(Line::text)
        .containsExactly("wax: bought 9 x 10 g at EUR 5.00", "wax: bought 3 x 10 g at EUR 4");
    Account two = LEDGER.through(planned(plan(List.of(incremental), hundred)).build(), 2);
    assertThat(two.total()).isEqualByComparingTo(eur("100"));
    assertThat(two.lines().get(2).quantity()).isEqualTo(grams(50));
    Offer allUnits = Offer.builder().from(incremental).breakRule(BreakRule.ALL_UNITS).build();
    assertThat(LEDGER.through(planned(plan(List.of(allUnits), hundred)).build(), 1).lines())
        .extracting(Line::text)
        .containsExactly("wax: bought 12 x 10 g at EUR 4");
  }

  @Test
  void ordersTheMinimumInWholeIncrementsAndKeepsWhatIsLeft() {
    Offer bulk = Offer.builder().from(wax(100, "5")).minimumOrder(5).orderIncrement(2).build();
    LedgerPlan plan = plan(List.of(bulk), FIFTY).build();
    // 6 packs last 12 parts.
    assertThat(LEDGER.part(plan, 1).total()).isEqualByComparingTo(eur("30"));
    assertThat(LEDGER.through(plan, 12).total()).isEqualByComparingTo(eur("30"));
    assertThat(LEDGER.part(plan, 13).total()).isEqualByComparingTo(eur("30"));
    assertThat(LEDGER.statement(plan, 3).stocks().get(0).text()).isEqualTo("450 g");
    LedgerPlan many = planned(LedgerPlan.builder().from(plan)).build();
    assertThat(LEDGER.through(many, 13).total()).isEqualByComparingTo(eur("40")); // 8 packs
  }

  @Test
  void usesUpWhatIsLimitedAndSaysWhenAllIs() {
    Offer few = Offer.builder().from(wax(100, "1")).available(3L).build();
    LedgerPlan plan = plan(List.of(few, wax(250, "19")), FIFTY).build();
    // 300 g in three packs at 1 for six parts, then 19 for five.
    assertThat(LEDGER.through(plan, 6).total()).isEqualByComparingTo(eur("3"));
    assertThat(LEDGER.part(plan, 7).total()).isEqualByComparingTo(eur("19"));
    assertThat(LEDGER.through(plan, 16).total()).isEqualByComparingTo(eur("41"));
    assertThat(LEDGER.usage(plan).total()).isEqualByComparingTo(eur("3.8"));
    LedgerPlan only = plan(List.of(few), FIFTY).build();
    assertThat(LEDGER.through(only, 6).total()).isEqualByComparingTo(eur("3"));
    assertThatThrownBy(() -> LEDGER.through(only, 7))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "all packs of wax that can be had are used up; accepted are fewer parts or more"
                + " offers");
    LedgerPlan planned = planned(LedgerPlan.builder().from(only)).build();
    assertThat(LEDGER.statement(planned, 6).allParts().total()).isEqualByComparingTo(eur("3"));
    assertThatThrownBy(() -> LEDGER.through(planned, 7))
        .hasMessageContaining("all packs of wax that can be had are used up");
    assertThatThrownBy(() -> LEDGER.part(planned, 7, 6)).hasMessageContaining("are used up");
    assertThatThrownBy(() -> ExactCash.of(only).lines())
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("are used up");
  }

  @Test
  void takesNothingOfWhatIsLessThanTheLeastOrder() {
    Offer.Builder few = Offer.builder().from(wax(100, "1")).available(3L);
    LedgerPlan three = plan(List.of(few.minimumOrder(3).build(), wax(250, "19")), FIFTY).build();
    assertThat(LEDGER.through(three, 6).total()).isEqualByComparingTo(eur("3"));
    // Two at a time, of which the third pack is never one.
    LedgerPlan pairs =
        plan(List.of(few.minimumOrder(1).orderIncrement(2).build(), wax(250, "19")), FIFTY).build();
    assertThat(LEDGER.through(pairs, 4).total()).isEqualByComparingTo(eur("2"));
    assertThat(LEDGER.part(pairs, 5).total()).isEqualByComparingTo(eur("19"));
  }

  /** By hand: five packs of wax at 5, and one of glue at 7 sent for 4, to last ten parts. */
  @Test
  void paysForSendingOnlyWhereItIsOrderedFromTheSupplierWhoAsksForIt() {
    LedgerPlan.Builder plan =
        plan(
                List.of(
                    wax(100, "5"), offer("glue", grams(100), "7").supplier("supplier B").build()),
                FIFTY,
                consumed("glue", Driver.PART, grams(10)).build())
            .addShipping(offer("sending", ratio(1), "4").supplier("supplier B").build());
    assertThat(LEDGER.through(plan.build(), 10).total()).isEqualByComparingTo(eur("36"));
    assertThat(LEDGER.part(plan.build(), 3).total()).isEqualByComparingTo(eur("5"));
    assertThat(LEDGER.part(plan.build(), 11).total()).isEqualByComparingTo(eur("16"));
    // 5 every second part, and 7 + 4 every tenth
    assertThat(LEDGER.usage(plan.build()).total()).isEqualByComparingTo(eur("3.6"));
    assertThat(LEDGER.through(planned(plan).build(), 10).total()).isEqualByComparingTo(eur("36"));
  }

  @Test
  void keepsWhatIsOwnedOfAnythingPaidByMeasureInStock() {
    LedgerPlan plan =
        plan(
                List.of(offer("energy", kilowattHours(1), "0.30").metered(true).build()),
                consumed("energy", Driver.FIRING, kilowattHours(28))
                    .owned(kilowattHours(56))
                    .build())
            .build();
    assertThat(LEDGER.statement(plan, 1).stocks())
        .extracting(Stock::text)
        .containsExactly("28 kWh");
    assertThat(LEDGER.statement(plan, 2).stocks()).isEmpty();
    assertThat(LEDGER.through(plan, 3).total()).isEqualByComparingTo(eur("8.40"));
  }

  @Test
  void sendsAllThatFallsDueTogetherAndForNothingFromAValueOn() {
    ShippingTerms terms =
        ShippingTerms.builder()
            .supplier("supplier A")
            .charge(eur("10"))
            .freeFrom(eur("100"))
            .tax(Tax.INCLUDED)
            .source(INVENTED)
            .build();
    LedgerPlan plan =
        FixturePlan.builder()
            .prices(FixturePlan.book().addShipping(terms).build())
            .partsPerFiring(1)
            .build();
    // Part 4 orders filament, powder and carbon for 100: free. Part 7 a crucible and carbon for
    // 67: not.
    assertThat(LEDGER.part(plan, 1).total()).isEqualByComparingTo(eur("4271.40"));
    assertThat(LEDGER.part(plan, 4).total()).isEqualByComparingTo(eur("108.40"));
    assertThat(LEDGER.part(plan, 7).total()).isEqualByComparingTo(eur("85.40"));
    assertThat(LEDGER.part(plan, 7).lines().get(3).text())
        .isEqualTo("shipping by supplier A: shipped 1 x 1 at EUR 10");
    assertThat(LEDGER.part(plan, 7).lines().get(3).formula())
        .isEqualTo(
            "parts of 1 to n for which something has to be bought whose goods are worth less than"
                + " EUR 100, of printer, kiln, crucible, filament, packing powder, carbon");
    assertThat(LEDGER.statement(plan, 1).caveats())
        .extracting(Caveat::code)
        .doesNotContain(CaveatCode.SHIPPING_EXCLUDED);
  }

  @Test
  void paysForMoreThanIsNeededWhereThatIsSentForNothing() {
    ShippingTerms terms =
        ShippingTerms.builder()
            .supplier("supplier A")
            .charge(eur("10"))
            .freeFrom(eur("30"))
            .tax(Tax.INCLUDED)
            .source(INVENTED)
            .build();
    // 19 and 10 for sending, or 19 + 19 - no: 500 g at 32 sent for nothing, or 29. At a charge
    // of 15, 32 is less than 34.
    PriceBook book = prices(WAX).addShipping(terms).build();
    LedgerPlan plan = planned(plan(WAX, FIFTY)).prices(book).build();
    assertThat(LEDGER.through(plan, 1).total()).isEqualByComparingTo(eur("29"));
    ShippingTerms dear = ShippingTerms.builder().from(terms).charge(eur("15")).build();
    LedgerPlan freed =
        LedgerPlan.builder().from(plan).prices(prices(WAX).addShipping(dear).build()).build();
    assertThat(LEDGER.through(freed, 1).lines())
        .extracting(Line::text)
        .containsExactly("wax: bought 1 x 500 g at EUR 32.00");
    // As needed orders are weighed by their goods alone.
    LedgerPlan asNeeded = LedgerPlan.builder().from(freed).buying(BuyingRule.AS_NEEDED).build();
    assertThat(LEDGER.through(asNeeded, 1).total()).isEqualByComparingTo(eur("34"));
  }

  @Test
  void usesNoOrdersWhereNoneFallDueInTheLongRun() {
    LedgerPlan elsewhere =
        plan(WAX, FIFTY)
            .addShipping(offer("sending", ratio(1), "5").supplier("supplier B").build())
            .build();
    assertThat(LEDGER.usage(elsewhere).lines()).extracting(Line::item).containsExactly("wax");
    LedgerPlan once =
        planned(plan(WAX, FIFTY)).addShipping(offer("sending", ratio(1), "5").build()).build();
    assertThat(LEDGER.through(once, 1).lines())
        .extracting(Line::item)
        .containsExactly("wax", "sending");
    assertThat(LEDGER.usage(once).lines()).extracting(Line::item).containsExactly("wax");
  }

  @Test
  void tellsHowWhatIsPlannedIsCounted() {
    Account plain =
        LEDGER.through(
            FixturePlan.builder()
                .partsPerFiring(1)
                .buying(BuyingRule.PLANNED_FOR_N)
                .addShipping(offer("sending", ratio(1), "10").build())
                .build(),
            10);
    assertThat(plain.lines())
        .filteredOn(line -> List.of("filament", "energy", "sending").contains(line.item()))
        .extracting(Line::formula)
        .containsExactly(
            "packs(n) = max(0, ceil(x)), x = (quantity x n - stock) / content",
            "packs(n) = max(0, x), x = (quantity x ceil(n / parts per firing) - stock) / content",
            "one order to the supplier");
    ShippingTerms terms =
        ShippingTerms.builder()
            .supplier("supplier A")
            .charge(eur("10"))
            .freeFrom(eur("30"))
            .tax(Tax.INCLUDED)
            .source(INVENTED)
            .build();
    LedgerPlan weighed =
        planned(plan(WAX, FIFTY)).prices(prices(WAX).addShipping(terms).build()).build();
    assertThat(LEDGER.through(weighed, 1).lines())
        .extracting(Line::formula)
        .containsExactly(
            "packs(n) of the cheapest order for all n parts, with what suppliers charge for"
                + " sending, that holds max(0, x) x content, x = (quantity x n - stock) / content",
            "one order to the supplier whose goods are worth less than EUR 30");
  }

  @Test
  void takesTheOfferOfEachResourceThatServesItBest() {
    // A spool of 500 g gives 3 prints of 128 g, one of 700 g gives 5: 12 a print against 11.
    List<Offer> spools = List.of(wax(500, "36"), wax(700, "55"));
    LedgerPlan prints =
        planned(
                plan(
                    spools, consumed("wax", Driver.PART, grams(128)).tails(Tails.STRANDED).build()))
            .build();
    assertThat(LEDGER.through(prints, 3).total()).isEqualByComparingTo(eur("36"));
    assertThat(LEDGER.through(prints, 5).total()).isEqualByComparingTo(eur("55"));
    assertThat(LEDGER.through(prints, 8).total()).isEqualByComparingTo(eur("91"));
    Stock left = LEDGER.statement(prints, 7).stocks().get(0);
    // 1200 g less 7 x 128 g are 304 g: 128 g for one print, 116 g and 60 g of tails.
    assertThat(left.left()).isEqualTo(grams(128));
    assertThat(left.stranded()).contains(grams(176));
    // Six crucibles in a box at 200, or one at 45: five firings more cost 45 each.
    List<Offer> crucibles =
        List.of(
            offer("crucible", ratio(6), "200").build(),
            offer("crucible", ratio(1), "45").supplier("supplier B").build());
    Resource crucible =
        Wearing.builder().item("crucible").driver(Driver.FIRING).life(6).source(INVENTED).build();
    LedgerPlan boxes = planned(plan(crucibles, crucible)).build();
    assertThat(LEDGER.through(boxes, 24).total()).isEqualByComparingTo(eur("180"));
    assertThat(LEDGER.through(boxes, 25).total()).isEqualByComparingTo(eur("200"));
    assertThat(LEDGER.through(boxes, 37).total()).isEqualByComparingTo(eur("245"));
    assertThat(LEDGER.usage(boxes).total().getAmount())
        .isEqualByComparingTo("5.555555555555555555555555555555556"); // 200 / 36
    // One kiln of two, and energy of the cheaper meter.
    List<Offer> kilns =
        List.of(
            offer("kiln", ratio(1), "3200").build(),
            offer("kiln", ratio(1), "2900").supplier("supplier B").build(),
            offer("energy", kilowattHours(1), "0.30").metered(true).build(),
            offer("energy", kilowattHours(2), "0.50").supplier("supplier B").metered(true).build());
    LedgerPlan kiln =
        plan(
                kilns,
                Durable.toBuy("kiln"),
                consumed("energy", Driver.FIRING, kilowattHours(28)).build())
            .build();
    assertThat(LEDGER.through(kiln, 2).total()).isEqualByComparingTo(eur("2914")); // 56 x 0.25
    assertThat(LEDGER.through(kiln, 2).lines())
        .extracting(line -> line.offer().supplier())
        .containsExactly("supplier B", "supplier B");
  }

  @Test
  void valuesLeftoversAtWhatAllPacksHaveCost() {
    LedgerPlan plan =
        plan(WAX, consumed("wax", Driver.PART, grams(300)).build())
            .leftovers(Leftovers.atCostShare())
            .build();
    // 500 g at 32 and 250 g at 19 less 600 g: 150 of 750 g, of 51.
    Account left = LEDGER.statement(plan, 2).leftovers();
    assertThat(left.total()).isEqualByComparingTo(eur("10.2"));
    assertThat(left.lines())
        .extracting(line -> line.offer().content().toString(), Line::formula)
        .containsExactly(
            tuple("250 g", "packs bought x min(left, bought) / bought"),
            tuple("500 g", "packs bought x min(left, bought) / bought"));
    // 1500 g for five parts are all used up.
    assertThat(LEDGER.statement(plan, 5).leftovers().lines()).isEmpty();
  }

  @Test
  void refusesOffersThatCannotBeWeighedAgainstEachOther() {
    assertThatThrownBy(
            () ->
                plan(
                        List.of(
                            wax(100, "5"),
                            Offer.builder()
                                .from(wax(200, "5"))
                                .supplier("supplier B")
                                .metered(true)
                                .tax(Tax.EXCLUDED)
                                .build()),
                        FIFTY)
                    .build())
        .hasMessage(
            "ledger plan: wax is offered both in packs and by measure; accepted is one of the two;"
                + " and some offers of wax hold the tax and others do not; accepted are offers on"
                + " one basis, into which the price book brings them");
    Offer order = offer("shipping", ratio(1), "4").build();
    ShippingTerms terms =
        ShippingTerms.builder()
            .supplier("supplier A")
            .charge(BigMoney.parse("EUR 4"))
            .source(INVENTED)
            .build();
    assertThatThrownBy(
            () ->
                plan(WAX, FIFTY)
                    .prices(prices(WAX).addShipping(terms).build())
                    .addShipping(order)
                    .build())
        .hasMessageContaining("shipping by supplier A is stated 2 times; accepted is once");
  }

  private static Offer wax(int grams, String price) {
    return offer("wax", grams(grams), price).build();
  }

  private static PriceBook.Builder prices(List<Offer> offers) {
    return PriceBook.builder().currency(CurrencyUnit.EUR).asOf(TODAY).offers(offers);
  }

  private static LedgerPlan.Builder plan(List<Offer> offers, Resource... resources) {
    return LedgerPlan.builder()
        .prices(prices(offers).build())
        .resources(List.of(resources))
        .partsPerFiring(1);
  }

  private static LedgerPlan.Builder planned(LedgerPlan.Builder plan) {
    return plan.buying(BuyingRule.PLANNED_FOR_N);
  }
}
