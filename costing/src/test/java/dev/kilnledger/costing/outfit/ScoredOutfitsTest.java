package dev.kilnledger.costing.outfit;

import static dev.kilnledger.costing.outfit.Shop.euros;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceFinding;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.purchase.Need;
import dev.kilnledger.units.Amounts;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Outfits compared by cost and the caller's scores alone. */
class ScoredOutfitsTest {

  /**
   * The outfit table made for this project (exact, computed independently): printer keep (0, 0), A
   * (300, 20), B (700, 32); kiln S (1500, 60), M (2600, 85), L (4200, 100); atmosphere carbon (120,
   * 30), gas (900, 55); finishing by hand (80, 10), tumbler (450, 24).
   */
  private static OutfitQuestion.Builder fixture() {
    Shop shop = new Shop();
    OptionGroup printer =
        OptionGroup.of(
            "printer",
            Choice.EXACTLY_ONE,
            Shop.owned("keep"),
            shop.scored("A", 300, 20),
            shop.scored("B", 700, 32));
    OptionGroup kiln =
        OptionGroup.of(
            "kiln",
            Choice.EXACTLY_ONE,
            shop.scored("S", 1500, 60),
            shop.scored("M", 2600, 85),
            shop.scored("L", 4200, 100));
    OptionGroup atmosphere =
        OptionGroup.of(
            "atmosphere",
            Choice.EXACTLY_ONE,
            shop.scored("carbon", 120, 30),
            shop.scored("gas", 900, 55));
    OptionGroup finishing =
        OptionGroup.of(
            "finishing",
            Choice.EXACTLY_ONE,
            shop.scored("by hand", 80, 10),
            shop.scored("tumbler", 450, 24));
    return shop.question(printer, kiln, atmosphere, finishing);
  }

  @Test
  void reproducesTheOutfitTable() {
    OutfitPlan plan =
        OutfitPlanner.byScore()
            .plan(fixture().addBudgets(euros(1600), euros(1700), euros(2500), euros(4000)).build());
    BudgetAnswer tooLittle = plan.answers().get(0);
    assertThat(tooLittle.best()).isEmpty();
    assertThat(tooLittle.shortfall()).contains(euros(100));
    assertThat(plan.cheapest().orElseThrow().cost()).isEqualTo(euros(1700));

    assertBest(plan, 1, 1700, 100, "keep", "S", "carbon", "by hand");
    assertBest(plan, 2, 2370, 134, "A", "S", "carbon", "tumbler");
    assertBest(plan, 3, 3550, 171, "B", "S", "gas", "tumbler");
    assertThat(plan.answers().get(3).shortfall()).isEmpty();
  }

  private static void assertBest(
      OutfitPlan plan, int answer, double cost, long score, String... names) {
    Outfit best = plan.answers().get(answer).best().orElseThrow();
    assertThat(best.names()).containsExactly(names);
    assertThat(best.cost()).isEqualTo(euros(cost));
    assertThat(best.score()).isEqualTo(score);
  }

  /** The example in the documentation of the planner. */
  @Test
  void doesAsItsExampleSays() {
    Shop shop = new Shop();
    BudgetAnswer answer =
        OutfitPlanner.byScore()
            .plan(
                shop.question(
                        OptionGroup.of(
                            "printer",
                            Choice.EXACTLY_ONE,
                            Shop.owned("keep"),
                            shop.scored("A", 300, 20)),
                        OptionGroup.of(
                            "finishing",
                            Choice.EXACTLY_ONE,
                            shop.scored("by hand", 80, 10),
                            shop.scored("drum", 450, 24)))
                    .addBudgets(euros(400))
                    .build())
            .answers()
            .get(0);
    assertThat(answer.best().orElseThrow().text()).isEqualTo("A, by hand for EUR 380.00");
    assertThat(answer.rejected().get(0).text())
        .isEqualTo(
            "drum: the cheapest outfit with it costs EUR 450.00, EUR 50.00 more than the budget");
  }

  @Test
  void tellsTheStepsFromOneBudgetToTheNext() {
    OutfitPlan plan =
        OutfitPlanner.byScore()
            .plan(fixture().addBudgets(euros(1600), euros(1700), euros(2500), euros(4000)).build());
    // By hand from the table: 1700 to 2370 buys A (300) and the tumbler (450).
    assertThat(plan.upgrades()).hasSize(2);
    Upgrade first = plan.upgrades().get(0);
    assertThat(first.bought()).extracting(OutfitLine::option).containsExactly("A", "tumbler");
    assertThat(first.extraCost()).isEqualTo(euros(750));
    assertThat(first.spentInAll()).isEqualTo(euros(2450));
    assertThat(first.idle()).extracting(Option::name).containsExactly("keep", "by hand");
    // 2370 to 3550 buys B (700) and gas (900); A and carbon fall idle.
    Upgrade second = plan.upgrades().get(1);
    assertThat(second.extraCost()).isEqualTo(euros(1600));
    assertThat(second.idle()).extracting(Option::name).containsExactly("A", "carbon");
    assertThat(second.explanation())
        .containsExactly(
            "From A, S, carbon, tumbler for EUR 2370.00 to B, S, gas, tumbler for EUR 3550.00:"
                + " EUR 1600.00 more, EUR 3970.00 in all",
            "buy B: 1 x 1 from corner shop at EUR 700.00 = EUR 700.00",
            "buy gas: 1 x 1 from corner shop at EUR 900.00 = EUR 900.00",
            "idle from then on: A, carbon",
            "score 134 to 171");
  }

  @Test
  void plansTheNextStepFromWhatIsThereByThen() {
    OutfitQuestion first = fixture().addBudgets(euros(2500)).build();
    Outfit bought = OutfitPlanner.byScore().plan(first).answers().get(0).best().orElseThrow();
    OutfitQuestion second =
        OutfitQuestion.builder()
            .from(first)
            .catalogue(first.catalogue().owning(bought.names()))
            .budgets(List.of(euros(1500)))
            .build();
    // With A, S, carbon and tumbler there, 1500 buys gas (900, +25) and not B (700, +12) as well.
    Outfit next = OutfitPlanner.byScore().plan(second).answers().get(0).best().orElseThrow();
    assertThat(next.names()).containsExactly("A", "S", "gas", "tumbler");
    assertThat(next.cost()).isEqualTo(euros(900));
    assertThat(next.kept()).extracting(Option::name).containsExactly("A", "S", "tumbler");
    assertThat(next.unused()).extracting(Option::name).containsExactly("keep", "carbon");
    assertThatThrownBy(() -> first.catalogue().owning(List.of("C")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("there is no option C; accepted is one of [A, B, L, M, S");
  }

  @Test
  void tellsWhyOptionsAreRejected() {
    OutfitPlan plan = OutfitPlanner.byScore().plan(fixture().addBudgets(euros(2500)).build());
    // Cheapest with L: keep, L, carbon, by hand = 4400; with M 2800; with gas 2480, score 125;
    // with B 2400, score 132, and A, S, carbon, tumbler makes 134 for 2370.
    assertThat(plan.answers().get(0).rejected())
        .extracting(Rejection::text)
        .containsExactly(
            "B: the cheapest outfit with it costs EUR 2400.00; the same with A, tumbler instead costs"
                + " EUR 2370.00 and does as much or more",
            "M: the cheapest outfit with it costs EUR 2800.00, EUR 300.00 more than the budget",
            "L: the cheapest outfit with it costs EUR 4400.00, EUR 1900.00 more than the budget",
            "gas: the cheapest outfit with it costs EUR 2480.00; the same with A, carbon, tumbler"
                + " instead costs EUR 2370.00 and does as much or more");
    assertThat(plan.answers().get(0).rejected())
        .extracting(Rejection::reason)
        .containsExactly(
            RejectionReason.BEATEN,
            RejectionReason.OVER_BUDGET,
            RejectionReason.OVER_BUDGET,
            RejectionReason.BEATEN);
  }

  @Test
  void readsAloud() {
    OutfitPlan plan = OutfitPlanner.byScore().plan(fixture().addBudgets(euros(2500)).build());
    assertThat(plan.answers().get(0).explanation())
        .startsWith(
            "A budget of EUR 2500.00 buys A, S, carbon, tumbler for EUR 2370.00 and leaves EUR"
                + " 130.00",
            "printer, EUR 300.00: A: 1 x 1 from corner shop at EUR 300.00 = EUR 300.00",
            "kiln, EUR 1500.00: S: 1 x 1 from corner shop at EUR 1500.00 = EUR 1500.00",
            "atmosphere, EUR 120.00: carbon: 1 x 1 from corner shop at EUR 120.00 = EUR 120.00",
            "finishing, EUR 450.00: tumbler: 1 x 1 from corner shop at EUR 450.00 = EUR 450.00",
            "no longer used: keep");
  }

  /**
   * Knapsack problem P01 of the collection of J. Burkardt, 0/1, optimum 309 (quoted from memory,
   * recomputed): a group of any number of options under a budget is a knapsack.
   */
  @Test
  void fillsAKnapsack() {
    int[] weights = {23, 31, 29, 44, 53, 38, 63, 85, 89, 82};
    int[] values = {92, 57, 49, 68, 60, 43, 67, 84, 87, 72};
    Shop shop = new Shop();
    OptionGroup things =
        OptionGroup.of(
            "things",
            Choice.ANY_NUMBER,
            IntStream.range(0, weights.length)
                .mapToObj(i -> shop.scored("thing " + (i + 1), weights[i], values[i]))
                .toList());
    Outfit best =
        OutfitPlanner.byScore()
            .plan(shop.question(things).addBudgets(euros(165)).build())
            .answers()
            .get(0)
            .best()
            .orElseThrow();
    assertThat(best.score()).isEqualTo(309);
    assertThat(best.cost()).isEqualTo(euros(165));
    assertThat(best.names()).containsExactly("thing 1", "thing 2", "thing 3", "thing 4", "thing 6");
  }

  @Test
  void heedsWhatOptionsRequire() {
    Shop shop = new Shop();
    OutfitQuestion question =
        shop.question(
                OptionGroup.of(
                    "kiln",
                    Choice.EXACTLY_ONE,
                    shop.scored("small kiln", 1000, 10),
                    shop.option("large kiln", 1500).score(30).requires("circuit").build()),
                OptionGroup.of("supply", Choice.AT_MOST_ONE, shop.scored("circuit", 400, 0)),
                OptionGroup.of(
                    "odds",
                    Choice.ANY_NUMBER,
                    shop.option("hoist", 10).score(5).requires("small kiln").build(),
                    shop.option("lid", 5)
                        .score(50)
                        .requires("small kiln")
                        .requires("large kiln")
                        .build()))
            .addBudgets(euros(1899), euros(1900))
            .build();
    OutfitPlan plan = OutfitPlanner.byScore().plan(question);
    assertThat(plan.answers().get(0).best().orElseThrow().names())
        .containsExactly("small kiln", "hoist");
    assertThat(plan.answers().get(1).best().orElseThrow().names())
        .containsExactly("large kiln", "circuit");
    assertThat(plan.rejected())
        .extracting(Rejection::text)
        .containsExactly(
            "lid: it requires small kiln, and large kiln, with which no outfit can be put together");
    assertThat(plan.rejected().get(0).reason()).isEqualTo(RejectionReason.NOT_ALLOWED);
  }

  @Test
  void ofEqualsTakesTheFirstInTheCatalogueAndKeepsWhatIsOwned() {
    Shop shop = new Shop();
    OutfitPlan plan =
        OutfitPlanner.byScore()
            .plan(
                shop.question(
                        OptionGroup.of(
                            "tool",
                            Choice.EXACTLY_ONE,
                            shop.scored("file", 10, 1),
                            shop.scored("rasp", 10, 1)),
                        OptionGroup.of("old", Choice.ANY_NUMBER, Shop.owned("vice")))
                    .build());
    assertThat(plan.front()).hasSize(1);
    assertThat(plan.front().get(0).names()).containsExactly("file", "vice");
    assertThat(plan.rejected())
        .extracting(Rejection::text)
        .containsExactly(
            "rasp: the cheapest outfit with it costs EUR 10.00; the same with file instead costs EUR"
                + " 10.00 and does as much or more");
  }

  @Test
  void buysWholePacksAndTheStarter() {
    Shop shop = new Shop();
    OutfitQuestion question =
        shop.question(
                OptionGroup.of(
                    "alarm",
                    Choice.EXACTLY_ONE,
                    List.of(
                        Option.builder()
                            .from(shop.scored("alarm", 25, 0))
                            .toBuy(List.of(Need.of("alarm", Amounts.ratio(3))))
                            .build())))
            .addStarter(Need.of("alarm", Amounts.ratio(2)))
            .addBudgets(euros(124), euros(125))
            .build();
    OutfitPlan plan = OutfitPlanner.byScore().plan(question);
    Outfit outfit = plan.front().get(0);
    assertThat(outfit.groups())
        .extracting(GroupList::subtotal)
        .containsExactly(euros(75), euros(50));
    assertThat(outfit.cost()).isEqualTo(euros(125));
    assertThat(plan.answers().get(0).shortfall()).contains(euros(1));
    assertThat(plan.answers().get(1).best()).contains(outfit);
  }

  @Test
  void tellsWhatIsKnownOfPricesAndSending() {
    OutfitQuestion question = fixture().build();
    assertThat(OutfitPlanner.byScore().plan(question).front().get(0).priceFindings())
        .extracting(found -> (Object) found.code())
        .containsExactly(PriceFinding.SHIPPING_TERMS);
    PriceBook sent =
        PriceBook.builder()
            .from(question.prices())
            .addShipping(
                ShippingTerms.builder()
                    .supplier("corner shop")
                    .charge(euros(30).toBigMoney())
                    .source(Shop.MADE)
                    .build())
            .build();
    Outfit outfit =
        OutfitPlanner.byScore()
            .plan(OutfitQuestion.builder().from(question).prices(sent).build())
            .front()
            .get(0);
    assertThat(outfit.cost()).isEqualTo(euros(1700));
    assertThat(outfit.priceFindings()).hasSize(1);
    assertThat(outfit.priceFindings().get(0).code()).isEqualTo(OutfitFinding.SHIPPING);
    assertThat(outfit.priceFindings().get(0).severity()).isEqualTo(Severity.NOTE);
    assertThat(outfit.priceFindings().get(0).message())
        .isEqualTo("sending is not in the cost of the outfit: shipping EUR 30.00");
  }

  @Test
  void tellsAllProblemsAtOnce() {
    Shop shop = new Shop();
    Option file = shop.scored("file", 10, 1);
    Option unpriced = Option.builder().name("saw").buy("saw").build();
    OptionGroup group = OptionGroup.of("tool", Choice.EXACTLY_ONE, file, unpriced);
    OutfitQuestion question =
        shop.question(group).addStarter(Need.of("oil", Amounts.litres(1))).build();
    assertThatThrownBy(() -> OutfitPlanner.byScore().plan(question))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "outfit plan: saw: purchase plan: no offer of \"saw\"; accepted is one of [file]; and"
                + " for the first part: purchase plan: no offer of \"oil\"; accepted is one of"
                + " [file]");
    assertThatThrownBy(
            () ->
                shop.question(group)
                    .addBudgets(euros(20), euros(10), Money.of(CurrencyUnit.GBP, 1))
                    .worstAccepted(Severity.STOP)
                    .addMeasures(Measure.ENVELOPE, Measure.ENVELOPE)
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "outfit question: measures are [ENVELOPE, ENVELOPE]; accepted is each of them once; and"
                + " worst accepted is STOP; accepted is up to WARNING; and budget EUR 10.00 follows"
                + " EUR 20.00; accepted is from small to large; and budget is GBP 1.00; accepted is"
                + " zero or more in the price book's currency EUR");
    assertThatThrownBy(
            () ->
                OutfitCatalogue.of(
                    group,
                    OptionGroup.of(
                        "tool",
                        Choice.AT_MOST_ONE,
                        shop.scored("file", 5, 1),
                        shop.option("rack", 5).requires("wall", "rack").build())))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "catalogue: group tool stands there 2 times; accepted is once; and option file stands"
                + " there 2 times; accepted is once; and rack requires [wall]; accepted is one of"
                + " [file, rack, saw]; and rack requires itself; accepted are other options");
    assertThatThrownBy(() -> Option.builder().name(" ").build())
        .hasMessage(
            "option  : name is blank; accepted is any text; and it is neither owned nor bought;"
                + " accepted is something to buy, or owned");
  }
}
