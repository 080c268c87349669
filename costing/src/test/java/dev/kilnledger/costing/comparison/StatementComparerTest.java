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
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.Amounts.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.CaveatCode;
import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Leftovers;
import dev.kilnledger.costing.ledger.Overhead;
import dev.kilnledger.costing.ledger.OverheadBase;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.costing.ledger.Simulated;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.ledger.TaxPolicy;
import dev.kilnledger.costing.ledger.TaxRule;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.ExchangeRates;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Wearing;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Differences of the project's ledger case, each split by hand, and the sums over random plans. */
class StatementComparerTest {
  private static final LedgerPlan PLAN = FixturePlan.of(1);

  private static StatementComparison withPlan(LedgerPlan other, long parts) {
    return compared(PLAN, other, parts);
  }

  private static LedgerPlan with(String item, UnaryOperator<Offer> change) {
    return priced(PLAN, item, change);
  }

  private static LedgerPlan priced(LedgerPlan plan, String item, UnaryOperator<Offer> change) {
    return LedgerPlan.builder()
        .from(plan)
        .prices(
            PriceBook.builder()
                .from(plan.prices())
                .offers(
                    plan.prices().offers().stream()
                        .map(offer -> offer.item().equals(item) ? change.apply(offer) : offer)
                        .toList())
                .build())
        .build();
  }

  private static LedgerPlan replacing(LedgerPlan plan, Resource resource) {
    return LedgerPlan.builder()
        .from(plan)
        .resources(
            plan.resources().stream()
                .map(mine -> mine.item().equals(resource.item()) ? resource : mine)
                .toList())
        .build();
  }

  private static UnaryOperator<Offer> price(String price) {
    return offer -> Offer.builder().from(offer).price(Money.parse("EUR " + price)).build();
  }

  /** 15.36 + 24.12 / parts per firing. */
  @ParameterizedTest
  @CsvSource({"2, 27.42, -12.06", "4, 21.39, -18.09", "7, 18.81, -20.67"})
  void partsPerFiringChangeTheUsageByTheChargeSizeAlone(int parts, String usage, String change) {
    StatementComparison comparison = withPlan(FixturePlan.of(parts), 4);
    ComparedLine total = comparison.total("other", StatementFigure.USAGE);
    assertThat(total.before()).isEqualTo(eur("39.48"));
    assertThat(total.after()).isEqualTo(eur(usage));
    assertThat(total.difference()).isEqualTo(eur(change));
    assertThat(total.effects().keySet()).isSubsetOf(Effect.CHARGE_SIZE, Effect.ROUNDING);
    assertThat(comparison.line("other", StatementFigure.USAGE, "filament").effects()).isEmpty();
    // 7.50 / parts - 7.50, to the 34 digits of a quotient
    assertThat(comparison.line("other", StatementFigure.USAGE, "crucible").difference().getAmount())
        .isCloseTo(
            new BigDecimal("7.50")
                .divide(new BigDecimal(parts), MathContext.DECIMAL128)
                .subtract(new BigDecimal("7.50")),
            offset(new BigDecimal("1e-30")));
    assertThat(comparison.changes().get(0).rules().get(0).text())
        .isEqualTo(
            "rule, parts per firing: from 1 to " + parts + ", both the plan (stated by the user)");
    assertThat(comparison.changes().get(0).inputs()).isEmpty();
  }

  /** A spool more by 6: usage 0.256 x 6 = 1.536, four parts (two spools) 12. */
  @Test
  void aPriceChangesTheLineByThePriceAlone() {
    StatementComparison comparison = withPlan(with("filament", price("66")), 4);
    assertEffects(
        comparison.line("other", StatementFigure.USAGE, "filament"), Effect.PRICE, "1.536");
    assertEffects(
        comparison.line("other", StatementFigure.ALL_PARTS, "filament"), Effect.PRICE, "12");
    assertEffects(
        comparison.line("other", StatementFigure.FIRST_PART, "filament"), Effect.PRICE, "6");
    assertEffects(comparison.total("other", StatementFigure.SECOND_PART));
    assertEffects(comparison.total("other", StatementFigure.AVERAGE), Effect.PRICE, "3");
    assertThat(comparison.changes().get(0).inputs())
        .singleElement()
        .extracting(Change::text)
        .isEqualTo(
            "filament, price: from EUR 60.00 to EUR 66.00, both invented (stated by the user)");
  }

  /** A crucible of 12 firings: 45 / 12 = 3.75 a part, and seven parts need one instead of two. */
  @Test
  void aLifeChangesTheLineByItsQuantity() {
    LedgerPlan longer =
        replacing(
            PLAN,
            Wearing.builder()
                .item("crucible")
                .driver(Driver.FIRING)
                .life(12)
                .source(INVENTED)
                .build());
    StatementComparison comparison = withPlan(longer, 7);
    assertEffects(
        comparison.line("other", StatementFigure.USAGE, "crucible"), Effect.CONSUMPTION, "-3.75");
    assertEffects(
        comparison.line("other", StatementFigure.ALL_PARTS, "crucible"), Effect.CONSUMPTION, "-45");
    assertThat(comparison.changes().get(0).inputs().get(0).text())
        .isEqualTo("crucible, life: from 6 to 12, both invented (stated by the user)");
  }

  /**
   * 100 g instead of 128 g at the old price, -28 / 500 x 60 = -3.36, and 6 more for a spool at the
   * new quantity, 100 / 500 x 6 = 1.20: usage variance at standard price, price variance at the
   * quantity used (standard costing, as taught; common practice).
   */
  @Test
  void quantityCountsAtTheOldPriceAndPriceAtTheNewQuantity() {
    LedgerPlan less =
        replacing(
            with("filament", price("66")), consumed("filament", Driver.PART, grams(100)).build());
    assertEffects(
        withPlan(less, 4).line("other", StatementFigure.USAGE, "filament"),
        Effect.CONSUMPTION,
        "-3.36",
        Effect.PRICE,
        "1.2");
  }

  /**
   * 1 kg at 110 instead of 500 g at 60: a pack holds twice as much, and a kilogram costs 10 less.
   */
  @Test
  void aLargerPackIsToldApartFromAPrice() {
    LedgerPlan larger =
        with(
            "filament",
            offer ->
                Offer.builder()
                    .from(offer)
                    .content(kilograms(1))
                    .price(Money.parse("EUR 110"))
                    .build());
    StatementComparison comparison = withPlan(larger, 4);
    assertEffects(
        comparison.line("other", StatementFigure.FIRST_PART, "filament"),
        Effect.PACK_SIZE,
        "60",
        Effect.PRICE,
        "-10");
    assertEffects(
        comparison.line("other", StatementFigure.USAGE, "filament"), Effect.PRICE, "-1.28");
  }

  /** Half an hour at 22 comes in, 6.60 of carbon go out. */
  @Test
  void itemsComeAndGo() {
    List<Resource> resources = new ArrayList<>(PLAN.resources());
    resources.removeIf(resource -> resource.item().equals("carbon"));
    resources.add(consumed("labour", Driver.PART, hours(0.5)).build());
    LedgerPlan other =
        LedgerPlan.builder()
            .from(PLAN)
            .resources(resources)
            .prices(
                FixturePlan.book()
                    .addOffers(offer("labour", hours(1), "22").metered(true).build())
                    .build())
            .build();
    StatementComparison comparison = withPlan(other, 4);
    assertEffects(
        comparison.total("other", StatementFigure.USAGE),
        Effect.NEW_ITEM,
        "11",
        Effect.DROPPED_ITEM,
        "-6.6");
    assertEffects(
        comparison.line("other", StatementFigure.USAGE, "carbon"), Effect.DROPPED_ITEM, "-6.6");
    assertEffects(comparison.line("other", StatementFigure.USAGE, "labour"), Effect.NEW_ITEM, "11");
    assertThat(comparison.changes().get(0).inputs())
        .extracting(change -> change.text().substring(0, 26))
        .containsExactly("carbon, carbon: no longer,", "labour, labour: new, EUR 4");
    assertThat(comparison.changes().get(0).inputs())
        .allMatch(change -> change.where().equals(change.what()));
  }

  /** Carbon by volume cannot be mixed with carbon by mass: 0.5 l a firing at 30 a litre. */
  @Test
  void anItemOfAnotherMeasureIsReplaced() {
    LedgerPlan other =
        LedgerPlan.builder()
            .from(replacing(PLAN, PLAN.resources().get(0)))
            .resources(
                PLAN.resources().stream()
                    .map(
                        r ->
                            r.item().equals("carbon")
                                ? consumed("carbon", Driver.FIRING, litres(0.5)).build()
                                : r)
                    .toList())
            .prices(
                PriceBook.builder()
                    .from(PLAN.prices())
                    .offers(
                        PLAN.prices().offers().stream()
                            .map(
                                o ->
                                    o.item().equals("carbon")
                                        ? offer("carbon", litres(1), "30").build()
                                        : o)
                            .toList())
                    .build())
            .build();
    assertEffects(
        withPlan(other, 4).line("other", StatementFigure.USAGE, "carbon"), Effect.REPLACED, "8.4");
  }

  /** 39.48 hold 39.48 / 6 of tax at a rate of a fifth; 10 % on materials of 31.08 are 3.108. */
  @Test
  void rulesHaveEffectsOfTheirOwn() {
    LedgerPlan taxed =
        LedgerPlan.builder()
            .from(PLAN)
            .tax(TaxPolicy.of(TaxRule.DEDUCTED, percent(20), INVENTED))
            .build();
    assertEffects(
        withPlan(taxed, 4)
            .line("other", StatementFigure.USAGE, "tax deducted from prices with tax"),
        Effect.TAX,
        "-6.58");
    LedgerPlan overhead =
        LedgerPlan.builder()
            .from(PLAN)
            .addOverheads(Overhead.of(OverheadBase.MATERIAL, percent(10), INVENTED))
            .build();
    assertEffects(
        withPlan(overhead, 4).line("other", StatementFigure.USAGE, "overhead on material"),
        Effect.OVERHEAD,
        "3.108");
    // Seven parts need a second spool, third to fifth packs and the second crucible at once.
    LedgerPlan atOnce = LedgerPlan.builder().from(PLAN).buying(BuyingRule.PLANNED_FOR_N).build();
    StatementComparison planned = withPlan(atOnce, 7);
    assertEffects(
        planned.line("other", StatementFigure.FIRST_PART, "crucible"), Effect.BUYING, "45");
    assertEffects(planned.total("other", StatementFigure.ALL_PARTS));
    assertThat(planned.changes().get(0).rules().get(0).text())
        .startsWith("rule, buying: from as needed to planned for n");
    LedgerPlan valued = LedgerPlan.builder().from(PLAN).leftovers(Leftovers.atCostShare()).build();
    // after four parts 1000 - 512 g of filament are left: 488 / 500 x 60
    assertEffects(
        withPlan(valued, 4).line("other", StatementFigure.LEFTOVERS, "filament"),
        Effect.LEFTOVERS,
        "58.56");
    assertThat(withPlan(valued, 4).changes().get(0).caveatsGone())
        .extracting(caveat -> caveat.code())
        .containsExactly(CaveatCode.LEFTOVERS_NOT_VALUED);
  }

  /** Part 7 triggers a crucible and carbon; three parts more are the cash of parts 5 to 7. */
  @Test
  void moreOfThemIsAnEffectToo() {
    StatementComparison comparison = compared(PLAN, 4, PLAN, 7);
    assertEffects(
        comparison.line("other", StatementFigure.LAST_PART, "crucible"), Effect.PARTS, "45");
    assertEffects(
        comparison.line("other", StatementFigure.ALL_PARTS, "energy"), Effect.PARTS, "25.2");
  }

  /** Half a measure at 0.25: 0.125 is 0.12 by the even neighbour and 0.13 up. */
  @Test
  void roundingIsALineOfItsOwn() {
    LedgerPlan even =
        LedgerPlan.builder()
            .prices(
                FixturePlan.book()
                    .offers(
                        List.of(offer("energy", kilowattHours(1), "0.25").metered(true).build()))
                    .build())
            .addResources(consumed("energy", Driver.PART, kilowattHours(0.5)).build())
            .partsPerFiring(1)
            .build();
    LedgerPlan up = LedgerPlan.builder().from(even).rounding(Rounding.HALF_UP).build();
    StatementComparison comparison = compared(even, 1, up, 1);
    assertEffects(
        comparison.line("other", StatementFigure.USAGE, "rounding"), Effect.ROUNDING, "0.01");
    assertThat(comparison.total("other", StatementFigure.USAGE).difference())
        .isEqualByComparingTo(eur("0.01"));
  }

  private static ExchangeRate dollars(String rate, int daysAgo) {
    return ExchangeRate.builder()
        .base(CurrencyUnit.USD)
        .counter(CurrencyUnit.EUR)
        .rate(new BigDecimal(rate))
        .date(TODAY.minusDays(daysAgo))
        .source(INVENTED)
        .build();
  }

  private static LedgerPlan inDollars(String price, ExchangeRate rate) {
    List<Offer> offers =
        List.of(
            Offer.builder()
                .from(offer("filament", grams(500), "1").build())
                .price(Money.parse("USD " + price))
                .build());
    return LedgerPlan.builder()
        .prices(
            FixturePlan.book()
                .offers(ExchangeRates.of(List.of(rate)).convert(offers, CurrencyUnit.EUR))
                .build())
        .addResources(consumed("filament", Driver.PART, grams(500)).build())
        .partsPerFiring(1)
        .build();
  }

  /** 10 dollars at 0.90 against 11 at 0.92: 10 x 0.02, then 1 x 0.92. */
  @Test
  void anExchangeRateIsToldApartFromAPrice() {
    StatementComparison comparison =
        compared(inDollars("10", dollars("0.90", 30)), 1, inDollars("11", dollars("0.92", 1)), 1);
    assertEffects(
        comparison.line("other", StatementFigure.USAGE, "filament"),
        Effect.EXCHANGE,
        "0.2",
        Effect.PRICE,
        "0.92");
  }

  @Test
  void anotherCurrencyIsRefusedUnlessARateIsGiven() {
    Statement euros = Ledger.standard().statement(inDollars("10", dollars("0.90", 30)), 2);
    Statement dollars =
        Ledger.standard()
            .statement(
                LedgerPlan.builder()
                    .prices(
                        PriceBook.builder()
                            .currency(CurrencyUnit.USD)
                            .asOf(TODAY)
                            .addOffers(
                                Offer.builder()
                                    .from(offer("filament", grams(500), "1").build())
                                    .price(Money.parse("USD 12"))
                                    .build())
                            .build())
                    .addResources(consumed("filament", Driver.PART, grams(500)).build())
                    .partsPerFiring(1)
                    .build(),
                2);
    List<Scenario<Statement>> both =
        List.of(Scenario.of("here", euros), Scenario.of("there", dollars));
    StatementComparer comparer = StatementComparer.standard();
    assertThatThrownBy(() -> comparer.compare(both))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "comparison: \"there\" is in USD and the baseline in EUR; accepted is a dated rate from"
                + " USD to EUR");
    // 12 x 0.9 = 10.80 against 9.00, by the same rate
    StatementComparison comparison =
        comparer.compare(both, ExchangeRates.of(List.of(dollars("0.90", 30))));
    assertEffects(comparison.line("there", StatementFigure.USAGE, "filament"), Effect.PRICE, "1.8");
    assertThat(comparison.changes().get(0).rules())
        .extracting(Change::what)
        .containsExactly("currency");
  }

  @Test
  void refusesWhatCannotBeCompared() {
    Scenario<Statement> one = Scenario.of("one", Ledger.standard().statement(PLAN, 1));
    StatementComparer comparer = StatementComparer.standard();
    assertThatThrownBy(() -> comparer.compare(List.of(one)))
        .hasMessage("comparison: there are 1 scenarios; accepted is two or more");
    assertThatThrownBy(() -> comparer.compare(List.of(one, one)))
        .hasMessageContaining("\"one\" comes twice; accepted is a name for each scenario");
    assertThatThrownBy(() -> Scenario.of(" ", one.result())).hasMessageContaining("name is blank");
    StatementComparison comparison = withPlan(PLAN, 2);
    assertThatThrownBy(() -> comparison.line("other", StatementFigure.USAGE, "gold"))
        .hasMessageContaining("no line \"gold\" in \"other\"; accepted is one of [crucible");
    assertThatThrownBy(() -> comparison.total("none", StatementFigure.USAGE))
        .hasMessage("no scenario \"none\"; accepted is one of [other]");
    assertThat(comparison.text()).contains("Nothing was changed.");
  }

  /** Whatever two plans are, the effects of a line are its difference, and lines are the total. */
  @Test
  void effectsAddUpToTheDifferenceOverAFewPlans() {
    effectsAddUpToTheDifferenceOverRandomPlans(4);
  }

  @Tag("sampled")
  @Test
  void effectsAddUpToTheDifferenceOverRandomPlans() {
    effectsAddUpToTheDifferenceOverRandomPlans(60);
  }

  private static void effectsAddUpToTheDifferenceOverRandomPlans(int trials) {
    SplittableRandom random = new SplittableRandom(1126);
    for (int i = 0; i < trials; i++) {
      LedgerPlan from = varied(new Simulated(random, i % 3 == 0).plan, random);
      LedgerPlan to = varied(new Simulated(random, i % 2 == 0).plan, random);
      StatementComparison comparison =
          compared(from, random.nextLong(1, 80), to, random.nextLong(1, 80));
      for (ComparedLine line : comparison.lines()) {
        assertThat(sum(line.effects()).getAmount())
            .as("%s", line)
            .isEqualByComparingTo(line.difference().getAmount());
        assertThat(line.effects().values()).noneMatch(BigMoney::isZero);
      }
      for (ComparedLine total : comparison.totals()) {
        assertThat(sum(total.effects()).getAmount())
            .isEqualByComparingTo(total.difference().getAmount());
        assertThat(total.effects()).doesNotContainKey(Effect.OTHER);
        BigMoney before = BigMoney.zero(CurrencyUnit.EUR);
        BigMoney after = BigMoney.zero(CurrencyUnit.EUR);
        List<ComparedLine> lines = comparison.lines(total.scenario(), total.figure());
        for (ComparedLine line : lines) {
          before = before.plus(line.before());
          after = after.plus(line.after());
        }
        boolean average =
            total.figure() == StatementFigure.AVERAGE
                || total.figure() == StatementFigure.AVERAGE_LESS_LEFTOVERS;
        if (!average) {
          assertThat(before.getAmount()).isEqualByComparingTo(total.before().getAmount());
          assertThat(after.getAmount()).isEqualByComparingTo(total.after().getAmount());
        }
      }
      assertThat(comparison.text().lines()).allMatch(line -> line.length() <= 100);
    }
  }

  private static LedgerPlan varied(LedgerPlan plan, SplittableRandom random) {
    LedgerPlan.Builder varied = LedgerPlan.builder().from(plan);
    if (random.nextBoolean()) {
      varied.tax(TaxPolicy.of(TaxRule.DEDUCTED, percent(random.nextInt(1, 25)), INVENTED));
    }
    if (random.nextBoolean()) {
      varied.addOverheads(
          Overhead.of(OverheadBase.ALL_COSTS, percent(random.nextInt(1, 30)), INVENTED));
    }
    if (random.nextBoolean()) {
      varied.leftovers(Leftovers.atCostShare());
    }
    if (random.nextBoolean()) {
      varied.rounding(Rounding.HALF_UP);
    }
    return varied.build();
  }

  private static BigMoney sum(Map<Effect, BigMoney> effects) {
    return effects.values().stream().reduce(BigMoney.zero(CurrencyUnit.EUR), BigMoney::plus);
  }

  @Test
  void readsSideBySideForAnyNumberOfScenariosInAnyLocale() {
    List<Scenario<Statement>> scenarios = new ArrayList<>();
    for (int parts = 1; parts <= 6; parts++) {
      scenarios.add(
          Scenario.of(
              parts + " per firing", Ledger.standard().statement(FixturePlan.of(parts), 12)));
    }
    StatementComparison comparison = StatementComparer.standard().compare(scenarios);
    String text = comparison.text();
    assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    assertThat(text)
        .contains("1 per firing      2 per firing      3 per firing      4 per firing")
        .contains("1 per firing      5 per firing      6 per firing")
        .contains("\n2 per firing against 1 per firing\n")
        .contains("  usage per part: EUR 27.42, EUR 12.06 less\n")
        .contains("    crucible: EUR 3.75, EUR 3.75 less: charge size minus EUR 3.75\n");
    assertThat(comparison.totals()).hasSize(5 * StatementFigure.values().length);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("hi-IN"));
      assertThat(comparison.text()).isEqualTo(text);
    } finally {
      Locale.setDefault(before);
    }
  }
}
