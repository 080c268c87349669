package dev.kilnledger.costing.comparison;

import static dev.kilnledger.costing.comparison.ComparedPlans.assertEffects;
import static dev.kilnledger.costing.comparison.ComparedPlans.compared;
import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Leftovers;
import dev.kilnledger.costing.ledger.Overhead;
import dev.kilnledger.costing.ledger.OverheadBase;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.ledger.TaxPolicy;
import dev.kilnledger.costing.ledger.TaxRule;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.ExchangeRates;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** To which effect a difference belongs, and how it reads; worked out by hand beside each check. */
class EffectsTest {
  private static final Resource WAX = consumed("wax", Driver.PART, grams(100)).build();

  private static LedgerPlan.Builder plan(Offer... offers) {
    return LedgerPlan.builder().prices(book(offers).build()).addResources(WAX).partsPerFiring(1);
  }

  private static PriceBook.Builder book(Offer... offers) {
    return PriceBook.builder().currency(CurrencyUnit.EUR).asOf(TODAY).addOffers(offers);
  }

  private static Offer.Builder wax(String price) {
    return offer("wax", grams(100), price);
  }

  private static ComparedLine all(StatementComparison comparison, String item) {
    return comparison.line("other", StatementFigure.ALL_PARTS, item);
  }

  /** The day of the other prices is the earlier one, and an offer of the later day still counts. */
  @Test
  void pricesOfAnEarlierDayAreStillPrices() {
    LedgerPlan later =
        plan(wax("5").build())
            .prices(
                book(wax("5").date(TODAY.plusDays(10)).build()).asOf(TODAY.plusDays(10)).build())
            .build();
    LedgerPlan now =
        plan(wax("6").build())
            .resources(List.of(consumed("wax", Driver.PART, grams(200)).build()))
            .build();
    // 3 packs more at 5, and 6 packs dearer by 1.
    assertEffects(all(compared(later, now, 3), "wax"), Effect.CONSUMPTION, "15", Effect.PRICE, "6");
  }

  @Test
  void anotherSupplierWhoSendsForMoneyIsShipping() {
    LedgerPlan near = plan(wax("5").build()).build();
    LedgerPlan far =
        LedgerPlan.builder()
            .from(near)
            .prices(
                book(wax("4").supplier("supplier B").build())
                    .addShipping(
                        ShippingTerms.builder()
                            .supplier("supplier B")
                            .charge(eur("7"))
                            .tax(Tax.INCLUDED)
                            .source(INVENTED)
                            .build())
                    .build())
            .build();
    StatementComparison comparison = compared(near, far, 2);
    assertEffects(all(comparison, "shipping by supplier B"), Effect.SHIPPING, "14");
    assertEffects(all(comparison, "wax"), Effect.PRICE, "-2");
  }

  /** Two offers cannot be held against one: 4 instead of 5 is a price, whichever plan chooses. */
  @Test
  void aChoiceOfOffersIsAPrice() {
    LedgerPlan one = plan(wax("5").build()).build();
    LedgerPlan two = plan(wax("5").build(), wax("4").supplier("supplier B").build()).build();
    assertEffects(all(compared(one, two, 2), "wax"), Effect.PRICE, "-2");
    assertEffects(all(compared(two, one, 2), "wax"), Effect.PRICE, "2");
  }

  /** 119 with tax are 100 without; without tax they are not touched. */
  @Test
  void pricesOnAnotherTaxBasisAreTax() {
    TaxPolicy deducted = TaxPolicy.of(TaxRule.DEDUCTED, percent(19), INVENTED);
    LedgerPlan gross = plan(wax("119").build()).tax(deducted).build();
    LedgerPlan net = plan(wax("119").tax(Tax.EXCLUDED).build()).tax(deducted).build();
    StatementComparison comparison = compared(gross, net, 1);
    assertEffects(comparison.total("other", StatementFigure.ALL_PARTS), Effect.TAX, "19");
  }

  /** Two packs come at the price of the break: 2 x 50 and 2 x 55. */
  @Test
  void breaksOfPacksOfOneSizeArePrices() {
    LedgerPlan cheap =
        plan(wax("60").addBreaks(PriceBreak.of(2, eur("50"))).build())
            .buying(BuyingRule.PLANNED_FOR_N)
            .build();
    LedgerPlan dear =
        plan(wax("66").addBreaks(PriceBreak.of(2, eur("55"))).build())
            .buying(BuyingRule.PLANNED_FOR_N)
            .build();
    assertEffects(all(compared(cheap, dear, 2), "wax"), Effect.PRICE, "10");
  }

  /** 20 minutes a part at 30 an hour, and 90 minutes a firing more: 45. */
  @Test
  void aSecondUseOfWhatIsPaidByTheHourIsAQuantity() {
    Offer work = offer("work", hours(1), "30").metered(true).build();
    Resource perPart = consumed("work", Driver.PART, minutes(20)).build();
    Resource perFiring = consumed("work", Driver.FIRING, minutes(90)).build();
    LedgerPlan.Builder once = plan(work).resources(List.of(perPart));
    LedgerPlan.Builder twice = plan(work).resources(List.of(perPart, perFiring));
    assertEffects(all(compared(once.build(), twice.build(), 1), "work"), Effect.CONSUMPTION, "45");
    // Whole hours, of which one covers the part, cannot be shared by two uses: 55 less 30.
    Offer whole = offer("work", hours(1), "30").build();
    LedgerPlan packed = plan(whole).resources(List.of(perPart)).build();
    assertEffects(all(compared(packed, twice.build(), 1), "work"), Effect.REPLACED, "25");
  }

  /** Carbon by volume replaces carbon by mass; the wax is a quantity of its own all the same. */
  @Test
  void whatIsReplacedLeavesOtherQuantitiesAlone() {
    LedgerPlan mass =
        LedgerPlan.builder()
            .prices(book(wax("5").build(), offer("carbon", grams(100), "2").build()).build())
            .addResources(WAX, consumed("carbon", Driver.PART, grams(100)).build())
            .partsPerFiring(1)
            .build();
    LedgerPlan volume =
        LedgerPlan.builder()
            .prices(book(wax("5").build(), offer("carbon", litres(1), "3").build()).build())
            .addResources(
                consumed("wax", Driver.PART, grams(200)).build(),
                consumed("carbon", Driver.PART, litres(1)).build())
            .partsPerFiring(1)
            .build();
    StatementComparison comparison = compared(mass, volume, 1);
    assertEffects(all(comparison, "wax"), Effect.CONSUMPTION, "5");
    assertEffects(all(comparison, "carbon"), Effect.REPLACED, "1");
  }

  /** 10 dollars at 0.9 and 10 pounds at 1.2: 3 more, and no rate of one currency. */
  @Test
  void anotherCurrencyIsNoExchangeRate() {
    assertEffects(
        all(compared(foreign("USD", "0.9"), foreign("GBP", "1.2"), 1), "wax"), Effect.PRICE, "3");
  }

  private static LedgerPlan foreign(String currency, String rate) {
    ExchangeRate dated =
        ExchangeRate.builder()
            .base(CurrencyUnit.of(currency))
            .counter(CurrencyUnit.EUR)
            .rate(new BigDecimal(rate))
            .date(TODAY)
            .source(INVENTED)
            .build();
    Offer offer = wax("1").price(Money.parse(currency + " 10")).build();
    return plan(ExchangeRates.of(List.of(dated))
            .convert(List.of(offer), CurrencyUnit.EUR)
            .toArray(Offer[]::new))
        .build();
  }

  @Test
  void refusesNoScenarioAndARateOfAnotherCurrency() {
    StatementComparer comparer = StatementComparer.standard();
    assertThatThrownBy(() -> comparer.compare(List.of()))
        .hasMessage("comparison: there are 0 scenarios; accepted is two or more");
    Statement euros = Ledger.standard().statement(plan(wax("5").build()).build(), 1);
    Statement dollars =
        Ledger.standard()
            .statement(
                LedgerPlan.builder()
                    .prices(
                        PriceBook.builder()
                            .currency(CurrencyUnit.USD)
                            .asOf(TODAY)
                            .addOffers(wax("5").price(Money.parse("USD 5")).build())
                            .build())
                    .addResources(WAX)
                    .partsPerFiring(1)
                    .build(),
                1);
    ExchangeRate pounds =
        ExchangeRate.builder()
            .base(CurrencyUnit.GBP)
            .counter(CurrencyUnit.EUR)
            .rate(BigDecimal.ONE)
            .date(TODAY)
            .source(INVENTED)
            .build();
    assertThatThrownBy(
            () ->
                comparer.compare(
                    List.of(Scenario.of("here", euros), Scenario.of("there", dollars)),
                    ExchangeRates.of(List.of(pounds))))
        .hasMessage(
            "comparison: \"there\" is in USD and the baseline in EUR; accepted is a dated rate from"
                + " USD to EUR");
  }

  /** 15.36 + 24.12 / 7 ends in no cent; the same fraction on both sides has no effect. */
  @Test
  void roundingThatStaysTheSameHasNoEffect() {
    LedgerPlan seven = FixturePlan.of(7);
    LedgerPlan dearPrinter = printer(seven, "1000");
    StatementComparison comparison = compared(seven, dearPrinter, 7);
    assertThat(comparison.line("other", StatementFigure.USAGE, "rounding").effects()).isEmpty();
    assertThat(comparison.lines("other", StatementFigure.FIRST_PART))
        .extracting(ComparedLine::what)
        .doesNotContain("rounding");
    assertThat(comparison.text())
        .contains("    printer: EUR 1000.00, EUR 100.00 more: price plus EUR 100.00\n")
        .doesNotContain("  usage per part: ");
  }

  private static LedgerPlan printer(LedgerPlan plan, String price) {
    return priced(plan, "printer", price, INVENTED);
  }

  private static LedgerPlan priced(LedgerPlan plan, String item, String price, Source source) {
    return LedgerPlan.builder()
        .from(plan)
        .prices(
            PriceBook.builder()
                .from(plan.prices())
                .offers(
                    plan.prices().offers().stream()
                        .map(
                            offer ->
                                offer.item().equals(item)
                                    ? Offer.builder()
                                        .from(offer)
                                        .price(Money.parse("EUR " + price))
                                        .source(source)
                                        .build()
                                    : offer)
                        .toList())
                .build())
        .build();
  }

  /** A spool 6 dearer, a crucible 6 cheaper; four parts take two spools: 6 more, 1.50 a part. */
  @Test
  void readsWhatBecameOfEachSum() {
    LedgerPlan other = priced(FixturePlan.of(1), "filament", "66", INVENTED);
    other = priced(other, "crucible", "39", INVENTED);
    String text = compared(FixturePlan.of(1), other, 4).text();
    assertThat(text)
        .contains("\n  filament, price: from EUR 60.00 to EUR 66.00, both invented (stated by the")
        .contains("\n  first part: EUR 4271.40, the same\n")
        .contains("\n    filament: EUR 66.00, EUR 6.00 more: price plus EUR 6.00\n")
        .contains("\n    crucible: EUR 39.00, EUR 6.00 less: price minus EUR 6.00\n")
        .contains("\n  average: EUR 1100.65, EUR 1.50 more: price plus EUR 1.50\n")
        // 39.48 + 0.256 x 6 - 6 / 6 = 40.016
        .contains("\n  usage per part: EUR 40.02, EUR 0.54 more\n")
        .contains("\n    filament: EUR 16.896, EUR 1.536 more: price plus EUR 1.536\n")
        .doesNotContain("second part: ", "Nothing was changed");
    assertThat(text.lines().filter(line -> line.startsWith("first part")))
        .containsExactly("first part" + " ".repeat(25) + "EUR 4271.40       EUR 4271.40");
    assertThat(text.lines().filter(line -> line.startsWith("usage per part")))
        .containsExactly("usage per part" + " ".repeat(23) + "EUR 39.48         EUR 40.02");
    // 7.50 / 7 = 1.0714285...
    assertThat(compared(FixturePlan.of(1), FixturePlan.of(7), 7).text())
        .contains("    crucible: EUR 1.0714, EUR 6.4286 less: charge size minus EUR 6.4286\n")
        .contains("\n  rule, parts per firing: from 1 to 7, both the plan (stated by the user)\n");
  }

  @Test
  void readsWhatCaveatsComeAndGo() {
    LedgerPlan plan = FixturePlan.of(1);
    LedgerPlan valued = LedgerPlan.builder().from(plan).leftovers(Leftovers.atCostShare()).build();
    Statement without = Ledger.standard().statement(plan, 4);
    Statement with = Ledger.standard().statement(valued, 4);
    String gone =
        without.caveats().stream()
            .filter(caveat -> !with.caveats().contains(caveat))
            .findFirst()
            .orElseThrow()
            .text();
    String start = gone.substring(0, 40);
    assertThat(compared(plan, valued, 4).text())
        .contains("\n  caveat gone: " + start)
        .doesNotContain("new caveat");
    assertThat(compared(valued, plan, 4).text())
        .contains("\n  new caveat: " + start)
        .doesNotContain("caveat gone");
  }

  /** A block has the baseline and three more; the fifth scenario opens a second block. */
  @Test
  void opensANewBlockOnlyWhereOneIsNeeded() {
    Statement statement = Ledger.standard().statement(FixturePlan.of(1), 1);
    List<Scenario<Statement>> scenarios = new ArrayList<>();
    for (String name : List.of("one", "two", "three", "four")) {
      scenarios.add(Scenario.of(name, statement));
    }
    String four = StatementComparer.standard().compare(scenarios).text();
    assertThat(four).startsWith(" ".repeat(28 + 15) + "one");
    assertThat(Pattern.compile("(?m)^first part  ").matcher(four).results()).hasSize(1);
    // A name as wide as its column is cut, so that it stands apart from the one before it.
    scenarios.add(Scenario.of("eighteen letters..", statement));
    String five = StatementComparer.standard().compare(scenarios).text();
    assertThat(Pattern.compile("(?m)^first part  ").matcher(five).results()).hasSize(2);
    assertThat(five)
        .contains("\n\n" + " ".repeat(28 + 15) + "one eighteen letters.\n")
        .doesNotContain("\n\n\n");
  }

  /** The words up to the 100th column stand on one line; one letter more takes the last away. */
  @Test
  void fillsLinesToAHundredColumns() {
    String start =
        "  filament, price: from EUR 60.00, invented (stated by the user), to EUR 66.00, ";
    for (int extra = 0; extra <= 1; extra++) {
      String name = "x".repeat(100 - start.length() - " (stated".length() + extra);
      LedgerPlan other = priced(FixturePlan.of(1), "filament", "66", Source.user(name));
      String text = compared(FixturePlan.of(1), other, 1).text();
      assertThat(text)
          .contains(
              extra == 0
                  ? start + name + " (stated\n" + "      by the user)\n"
                  : start + name + "\n      (stated by the user)\n");
    }
    // A word that is wider than the page has a line of its own, and no empty one before it.
    String wide = "w".repeat(120);
    LedgerPlan renamed =
        LedgerPlan.builder()
            .prices(book(offer(wide, grams(100), "5").build()).build())
            .addResources(consumed(wide, Driver.PART, grams(100)).build())
            .partsPerFiring(1)
            .build();
    assertThat(compared(plan(wax("5").build()).build(), renamed, 1).text().lines())
        .noneMatch(line -> line.isBlank() && !line.isEmpty())
        .anyMatch(line -> line.equals("  " + wide + ","));
  }

  @Test
  void tellsRulesInWords() {
    LedgerPlan plain = FixturePlan.of(1);
    LedgerPlan strict =
        LedgerPlan.builder()
            .from(plain)
            .failures(
                Failures.builder()
                    .addStages(
                        StageYield.builder()
                            .stage(Stage.PRINT)
                            .parts(percent(95))
                            .source(INVENTED)
                            .build())
                    .rule(FailureRule.EXPECTED_VALUES)
                    .trialParts(3)
                    .trialFirings(2)
                    .trialSource(INVENTED)
                    .build())
            .addOverheads(Overhead.of(OverheadBase.MATERIAL, percent(10), INVENTED))
            .tax(TaxPolicy.of(TaxRule.DEDUCTED, percent(20), INVENTED))
            .build();
    assertThat(compared(plain, strict, 1).changes().get(0).rules())
        .extracting(change -> change.text().replace(", both the plan (stated by the user)", ""))
        .containsExactly(
            "rule, failures: from none to "
                + Stage.PRINT.words()
                + " 95.0 % of parts and 100.0 % of charges, 3 trial parts in 2 firings, as "
                + FailureRule.EXPECTED_VALUES.words(),
            "rule, overhead: from none to 10.0 % on material",
            "rule, tax: from "
                + TaxRule.AS_PRICED.words()
                + " to "
                + TaxRule.DEDUCTED.words()
                + ", 20.0 %");
  }

  @Test
  void tellsOfNoTrialsWhereThereAreNone() {
    LedgerPlan failing =
        LedgerPlan.builder()
            .from(FixturePlan.of(1))
            .failures(
                Failures.builder()
                    .addStages(
                        StageYield.builder()
                            .stage(Stage.SINTER)
                            .charges(percent(90))
                            .source(INVENTED)
                            .build())
                    .rule(FailureRule.EXPECTED_VALUES)
                    .build())
            .build();
    assertThat(compared(FixturePlan.of(1), failing, 1).changes().get(0).rules())
        .singleElement()
        .extracting(Change::text)
        .asString()
        .startsWith(
            "rule, failures: from none to "
                + Stage.SINTER.words()
                + " 100.0 % of parts and 90.0 % of charges, as "
                + FailureRule.EXPECTED_VALUES.words()
                + ",");
  }

  /** A declining balance has a factor and years, which a charge by use has not. */
  @Test
  void tellsOfFiguresThatOneMethodHasAndTheOtherNot() {
    Depreciated.Builder kiln =
        Depreciated.builder()
            .item("kiln")
            .driver(Driver.FIRING)
            .salvage(eur("100"))
            .source(INVENTED);
    Offer offer = offer("kiln", ratio(1), "1000").build();
    LedgerPlan byUse = plan(offer).resources(List.of(kiln.life(ratio(1000)).build())).build();
    LedgerPlan declining =
        plan(offer)
            .resources(List.of(kiln.decliningBalance(ratio(2), 5, ratio(200)).build()))
            .build();
    assertThat(compared(byUse, declining, 1).changes().get(0).inputs())
        .extracting(Change::text)
        .containsExactlyInAnyOrder(
            "kiln, factor: new, 2, invented (stated by the user)",
            "kiln, years: new, 5, invented (stated by the user)");
    assertThat(compared(declining, byUse, 1).changes().get(0).inputs())
        .extracting(Change::text)
        .containsExactlyInAnyOrder(
            "kiln, factor: no longer, 2, invented (stated by the user)",
            "kiln, years: no longer, 5, invented (stated by the user)");
  }

  /** A price converted from dollars and one in euros differ as prices, whatever is below them. */
  @Test
  void tellsOfAPriceAsAPrice() {
    assertThat(
            compared(plan(wax("6").build()).build(), foreign("USD", "0.9"), 1)
                .changes()
                .get(0)
                .inputs())
        .singleElement()
        .extracting(Change::text)
        .asString()
        .startsWith("wax, price: from EUR 6.00 to EUR 9.00");
  }

  /** What one has in stock and the other not is told as new or gone. */
  @Test
  void tellsOfInputsThatOnlyOneHas() {
    LedgerPlan none = plan(wax("5").build()).build();
    LedgerPlan stocked =
        LedgerPlan.builder()
            .from(none)
            .resources(List.of(consumed("wax", Driver.PART, grams(100)).owned(grams(250)).build()))
            .build();
    assertThat(compared(none, stocked, 1).changes().get(0).inputs())
        .extracting(Change::text)
        .anySatisfy(text -> assertThat(text).startsWith("wax, ").contains("250 g"));
  }
}
