package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import dev.kilnledger.costing.accounting.CostPart;
import dev.kilnledger.costing.accounting.MachineHourRate;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.quote.LargestRemainder;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Stock;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.LongStream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/**
 * What an adviser hands over, each with one call. Expected values are those of the project's
 * fixture, or worked out by hand beside the check.
 */
class AnswersTest {
  private static final Ledger LEDGER = Ledger.standard();

  @Test
  void listsWhatToBuyWithQuantitiesAndASubtotalForEachGroup() {
    LedgerPlan plan =
        FixturePlan.builder()
            .partsPerFiring(1)
            .addShipping(offer("shipping", ratio(1), "12").build())
            .putGroups("carbon", "getter")
            .build();
    ShoppingList list = LEDGER.statement(plan, 4).firstShoppingList();
    assertThat(list.title()).isEqualTo("part 1");
    assertThat(list.groups())
        .extracting(ShoppingGroup::name, group -> group.subtotal().getAmount().intValueExact())
        .containsExactly(
            tuple("equipment", 4100),
            tuple("wearing parts", 45),
            tuple("material", 96), // 60 + 2 x 18
            tuple("getter", 22),
            tuple("shipping", 12));
    // Part 1 of the fixture is 4,271.40, of which 8.40 are energy and on no list.
    assertThat(list.total()).isEqualByComparingTo(eur("4275"));
    assertThat(list.groups().get(2).lines())
        .extracting(Line::item, Line::quantity)
        .containsExactly(tuple("filament", grams(500)), tuple("packing powder", kilograms(2)));
    // Four parts take 2 spools, ceil(1.8 + 3 x 0.09) = 3 kg and 2 kg of carbon, in two orders.
    assertThat(LEDGER.statement(plan, 4).shoppingList().groups())
        .extracting(ShoppingGroup::name, group -> group.subtotal().getAmount().intValueExact())
        .containsExactly(
            tuple("equipment", 4100),
            tuple("wearing parts", 45),
            tuple("material", 174),
            tuple("getter", 44),
            tuple("shipping", 24));
  }

  @Test
  void addsTheTaxToAShoppingListAndNoOverhead() {
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(
                book()
                    .offers(List.of(offer("wax", grams(100), "5").tax(Tax.EXCLUDED).build()))
                    .build())
            .addResources(consumed("wax", Driver.PART, grams(50)).build())
            .partsPerFiring(1)
            .tax(TaxPolicy.of(TaxRule.ADDED, percent(20), INVENTED))
            .addOverheads(Overhead.of(OverheadBase.ALL_COSTS, percent(10), INVENTED))
            .build();
    ShoppingList list = LEDGER.statement(plan, 1).shoppingList();
    assertThat(list.total()).isEqualByComparingTo(eur("6"));
    assertThat(LEDGER.statement(plan, 1).allParts().total()).isEqualByComparingTo(eur("6.5"));
  }

  @Test
  void tellsTheStaircaseToPart25() {
    LedgerPlan plan = FixturePlan.of(1);
    List<CostStep> steps = LEDGER.staircase(plan, 1, 25);
    // By hand: purchases fall due where ceil(need / content) rises; 8.40 of energy with each part.
    List<BigDecimal> expected =
        LongStream.rangeClosed(1, 25)
            .mapToObj(
                n ->
                    new BigDecimal("8.40")
                        .add(BigDecimal.valueOf(n == 1 ? 4100 : 0))
                        .add(rise(45, packs(n, 6), packs(n - 1, 6)))
                        .add(rise(60, packs(128 * n, 500), packs(128 * (n - 1), 500)))
                        .add(
                            rise(
                                18,
                                packs(1710 + 90 * n, 1000),
                                n == 1 ? 0 : packs(1620 + 90 * n, 1000)))
                        .add(rise(22, packs(300 * n, 1000), packs(300 * (n - 1), 1000))))
            .toList();
    assertThat(steps)
        .extracting(step -> step.cash().total().getAmount())
        .usingElementComparator(BigDecimal::compareTo)
        .isEqualTo(expected);
    assertThat(steps.get(3).average()).isEqualByComparingTo(eur("1099.15"));
    assertThat(steps.get(24).through()).isEqualByComparingTo(LEDGER.through(plan, 25).total());
    LedgerPlan planned = LedgerPlan.builder().from(plan).buying(BuyingRule.PLANNED_FOR_N).build();
    List<CostStep> atStart = LEDGER.staircase(planned, 1, 25);
    assertThat(atStart.get(24).through()).isEqualByComparingTo(steps.get(24).through());
    assertThat(atStart.get(0).through())
        .isEqualByComparingTo(atStart.get(24).through().minus(eur("8.40").multipliedBy(24)));
    assertThatThrownBy(() -> LEDGER.staircase(plan, 3, 2))
        .hasMessage("the last part is 2; accepted is a number from the first, 3, up");
  }

  private static long packs(long need, long content) {
    return (need + content - 1) / content;
  }

  private static BigDecimal rise(long price, long packs, long before) {
    return BigDecimal.valueOf(price * (packs - before));
  }

  @Test
  void tellsWhenEachItemRunsOut() {
    assertThat(LEDGER.statement(FixturePlan.of(1), 25).stocks())
        .extracting(Stock::item, stock -> stock.nextPurchase().orElse(0L))
        .containsExactly(
            // 25 firings; 25 x 128 = 3200 of 3500 g; 1.8 + 24 x 0.09 = 3.96 of 4 kg; 7.5 of 8 kg.
            tuple("printer", 0L),
            tuple("kiln", 0L),
            tuple("crucible", 31L),
            tuple("filament", 28L),
            tuple("packing powder", 26L),
            tuple("carbon", 27L));
  }

  @Test
  void setsTheKilnAsLoadedBesideTheKilnFilled() {
    Loadings loadings = LEDGER.loadings(FixturePlan.of(1), 7, 20);
    assertThat(loadings.asPlanned().usage().total()).isEqualByComparingTo(eur("39.48"));
    assertThat(loadings.filled().usage().total().rounded(4, RoundingMode.HALF_UP))
        .isEqualByComparingTo(eur("18.8057"));
    assertThat(loadings.savedPerPart().rounded(4, RoundingMode.HALF_UP))
        .isEqualByComparingTo(eur("20.6743"));
    // 3 firings instead of 20: one crucible, 6 spools, 2 kg, 1 kg, 84 kWh.
    assertThat(loadings.filled().allParts().total()).isEqualByComparingTo(eur("4588.20"));
    assertThatThrownBy(() -> LEDGER.loadings(FixturePlan.of(4), 3, 20))
        .hasMessage("capacity is 3; accepted is 4 or more, the parts per firing of the plan");
  }

  @Test
  void namesItsRules() {
    LedgerPlan plan = FixturePlan.of(1);
    assertThat(LEDGER.statement(plan, 1).rules())
        .containsExactly(
            "Packs are bought as needed: what a use lacks is covered by the cheapest order of its"
                + " item, and what falls due with one part is one order to each supplier.",
            "A charge that is not full is counted in whole firings.",
            "Every part is taken to come out good.",
            "Tax: as priced.",
            "Leftovers are not valued.",
            "Sums are rounded once, to the nearest, halves to the even neighbour.");
  }

  @Test
  void tellsWhichEquipmentNobodyHasPricedOrMarkedAsOwned() {
    LedgerPlan plan =
        FixturePlan.builder()
            .partsPerFiring(1)
            .addEquipment("printer", "kiln", "crucible", "extractor hood", "dry cabinet")
            .build();
    assertThat(plan.covers("kiln")).isTrue();
    assertThat(plan.covers("extractor hood")).isFalse();
    assertThat(plan.uncovered()).containsExactly("extractor hood", "dry cabinet");
    assertThat(LEDGER.statement(plan, 1).caveats())
        .contains(
            Caveat.of(
                CaveatCode.EQUIPMENT_NOT_COVERED,
                "Neither priced nor marked as owned: extractor hood, dry cabinet."));
  }

  @Test
  void countsAMachineByTheHour() {
    // Exercise of an open course on cost accounting; inputs published, total recomputed by hand.
    MachineHourRate rate =
        MachineHourRate.builder()
            .machine("lathe")
            .currency(CurrencyUnit.EUR)
            .effectiveHours(hours(4380))
            .addStanding(
                part("depreciation", "910"),
                part("repairs", "1800"),
                part("rent", "900"),
                part("light", "192"),
                part("foreman", "1920"),
                part("sundries", "108"),
                part("insurance", "100"))
            .addRunning(part("power", "0.75"))
            .build();
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(book().addOffers(rate.offer()).build())
            .addResources(consumed("lathe", Driver.PART, hours(2)).build())
            .partsPerFiring(1)
            .overheads(List.of())
            .build();
    assertThat(LEDGER.through(plan, 5).total().rounded(10, RoundingMode.HALF_UP))
        .isEqualByComparingTo(rate.costOf(hours(10)).rounded(10, RoundingMode.HALF_UP));
    assertThat(rate.offer().price().rounded(4, RoundingMode.HALF_UP))
        .isEqualByComparingTo(eur("2.1039"));
    assertThat(LEDGER.through(plan, 5).lines().get(0).text()).startsWith("lathe: metered 10 x 1 h");
  }

  private static CostPart part(String name, String cost) {
    return CostPart.of(name, eur(cost), INVENTED);
  }

  @Test
  void sumsLinesToTotalsAndSplitsThemToTheMinorUnit() {
    Statement statement = LEDGER.statement(FixturePlan.of(3), 17);
    BigMoney sum = BigMoney.zero(CurrencyUnit.EUR);
    for (ShoppingGroup group : statement.shoppingList().groups()) {
      for (Line line : group.lines()) {
        sum = sum.plus(line.amount());
      }
    }
    assertThat(statement.shoppingList().total()).isEqualTo(sum);
    Money total = statement.money(statement.allParts().total());
    List<Money> shares =
        LargestRemainder.standard().split(total, Collections.nCopies(17, BigDecimal.ONE));
    assertThat(Money.total(shares)).isEqualTo(total);
  }

  @Test
  void answersAlikeInEveryLocaleAndOnAnyNumberOfThreads()
      throws InterruptedException, ExecutionException {
    LedgerPlan plan =
        FixturePlan.builder()
            .partsPerFiring(2)
            .addShipping(offer("shipping", ratio(1), "12.50").build())
            .addResources(Durable.owned("microscope"))
            .prices(book().addOffers(offer("microscope", ratio(1), "250").build()).build())
            .build();
    Locale before = Locale.getDefault();
    List<String> texts = new ArrayList<>();
    try {
      for (String tag : List.of("en-US", "de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        LedgerPlan fresh = LedgerPlan.builder().from(plan).build();
        texts.add(text(LEDGER.statement(fresh, 1234)));
      }
    } finally {
      Locale.setDefault(before);
    }
    assertThat(texts).containsOnly(texts.get(0));
    for (int threads : List.of(1, 2, 7)) {
      LedgerPlan shared = LedgerPlan.builder().from(plan).build();
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        // All threads ask one plan, whose orders are counted as the questions come.
        List<BigMoney> parallel =
            pool.submit(
                    () ->
                        LongStream.rangeClosed(1, 400)
                            .parallel()
                            .mapToObj(part -> LEDGER.through(shared, 5 * (401 - part)).total())
                            .toList())
                .get();
        List<BigMoney> alone =
            LongStream.rangeClosed(1, 400)
                .mapToObj(part -> LEDGER.through(plan, 5 * (401 - part)).total())
                .toList();
        assertThat(parallel).isEqualTo(alone);
      } finally {
        pool.shutdown();
      }
    }
  }

  private static String text(Statement statement) {
    StringBuilder text = new StringBuilder();
    for (Account account :
        List.of(statement.firstPart(), statement.allParts(), statement.usage())) {
      account.lines().forEach(line -> text.append(line.text()).append(line.formula()));
      text.append(account.total());
    }
    statement.caveats().forEach(caveat -> text.append(caveat.code().code()).append(caveat.text()));
    statement.stocks().forEach(stock -> text.append(stock.text()));
    statement.rules().forEach(text::append);
    return text.toString();
  }
}
