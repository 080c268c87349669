package dev.kilnledger.examples;

import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.LinearShrinkage;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.PrintConditions;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.costing.comparison.Change;
import dev.kilnledger.costing.comparison.ComparedLine;
import dev.kilnledger.costing.comparison.Effect;
import dev.kilnledger.costing.comparison.FindingChange;
import dev.kilnledger.costing.comparison.JobChanges;
import dev.kilnledger.costing.comparison.JobComparer;
import dev.kilnledger.costing.comparison.JobComparison;
import dev.kilnledger.costing.comparison.Scenario;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.JobExplainer;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.Leftovers;
import dev.kilnledger.costing.ledger.Overhead;
import dev.kilnledger.costing.ledger.OverheadBase;
import dev.kilnledger.costing.ledger.TaxPolicy;
import dev.kilnledger.costing.ledger.TaxRule;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.DepreciationMethod;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The figures of the demo job, and of variants with every rule, opened and worked out again. */
class WhereItComesFromTest {
  private static final Source INVENTED = Source.user("invented for this test");
  private static final List<FormulaReader.End> ENDS = List.of(FormulaReader.End.values());
  private static final JobExplainer EXPLAINER = JobExplainer.standard();

  static Stream<Arguments> jobs() {
    Job demo = WindowWorkshop.latchCams(100);
    return Stream.of(
        Arguments.of("the demo", demo),
        Arguments.of("one part", WindowWorkshop.latchCams(1)),
        Arguments.of("every rule", everyRule(demo)),
        Arguments.of(
            "planned and shared",
            Job.builder()
                .from(everyRule(demo))
                .buying(BuyingRule.PLANNED_FOR_N)
                .charging(ChargeRule.SHARED)
                .tax(TaxPolicy.of(TaxRule.DEDUCTED, percent(19), INVENTED))
                .failures(failures(FailureRule.EXPECTED_VALUES))
                .build()),
        Arguments.of("measured", measured(demo)));
  }

  private static Failures failures(FailureRule rule) {
    return Failures.builder()
        .rule(rule)
        .addStages(
            StageYield.builder().stage(Stage.PRINT).parts(percent(95)).source(INVENTED).build(),
            StageYield.builder()
                .stage(Stage.SINTER)
                .parts(percent(90))
                .charges(percent(96))
                .source(INVENTED)
                .build())
        .trialParts(2)
        .build();
  }

  private static Job everyRule(Job demo) {
    return Job.builder()
        .from(demo)
        .filamentTails(Tails.STRANDED)
        .failures(failures(FailureRule.PLANNED_STARTS))
        .addResources(
            Aged.builder().item("gloves").fill(ratio(1)).cycles(7).source(INVENTED).build(),
            Consumed.builder()
                .item("labour")
                .driver(Driver.GOOD_PART)
                .quantity(hours(0.25))
                .source(INVENTED)
                .build(),
            Depreciated.builder()
                .item("grinder")
                .driver(Driver.GOOD_PART)
                .life(ratio(400))
                .salvage(BigMoney.parse("EUR 20"))
                .method(DepreciationMethod.UNITS_OF_PRODUCTION)
                .source(INVENTED)
                .build())
        .prices(
            PriceBook.builder()
                .from(demo.prices())
                .addOffers(
                    offer("gloves", "5").content(ratio(2)).build(),
                    offer("labour", "22").content(hours(1)).metered(true).build(),
                    offer("grinder", "140").content(ratio(1)).build())
                .build())
        .addShipping(offer("sending", "5.90").content(ratio(1)).tax(Tax.EXCLUDED).build())
        .addOverheads(
            Overhead.of(OverheadBase.ALL_COSTS, percent(3), INVENTED),
            Overhead.of(OverheadBase.MATERIAL, percent(7), INVENTED),
            Overhead.of(OverheadBase.TIME, percent(40), INVENTED))
        .tax(TaxPolicy.of(TaxRule.ADDED, percent(20), INVENTED))
        .leftovers(Leftovers.atCostShare())
        .build();
  }

  private static Offer.Builder offer(String item, String price) {
    return Offer.builder()
        .item(item)
        .supplier("corner shop")
        .price(Money.parse("EUR " + price))
        .tax(Tax.EXCLUDED)
        .source(INVENTED);
  }

  /** A part told by its mass, a shrinkage that was measured, and a firing likewise. */
  private static Job measured(Job demo) {
    return Job.builder()
        .from(demo)
        .part(
            Part.builder()
                .from(demo.part())
                .finishedVolume(Optional.empty())
                .finishedMass(grams(15.4))
                .build())
        .conditions(
            PrintConditions.builder()
                .measuredShrinkage(
                    Sourced.of(
                        LinearShrinkage.exactly(ratio(0.15), ratio(0.16), ratio(0.18)), INVENTED))
                .build())
        .measuredFiring(
            FiringUse.builder()
                .duration(hours(60))
                .energy(kilowattHours(9.3))
                .getter(grams(55))
                .partsPerCharge(3)
                .source(INVENTED)
                .build())
        .build();
  }

  /** Formulas that say more than arithmetic: what they give is checked where it is computed. */
  private static boolean isWords(String formula) {
    return formula.endsWith(", rounded up")
        || formula.startsWith("exact amount rounded")
        || formula.startsWith("packs bought x min(left, bought")
        || formula.startsWith("parts of 1 to n for which something has to be bought")
        || formula.startsWith("one order to the supplier")
        || formula.startsWith("orders per part")
        || formula.startsWith("measured");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("jobs")
  void everyFormulaGivesItsFigureFromTheFiguresBelow(String name, Job job) {
    JobAnswer answer = WholeJob.standard().answer(job);
    List<String> wrong = new ArrayList<>();
    int read = 0;
    for (Explanation figure : EXPLAINER.figures(answer)) {
      for (Explanation node : figure.nodes().filter(n -> n.formula().isPresent()).toList()) {
        String formula = node.formula().orElseThrow();
        for (FormulaReader.End end : isWords(formula) ? List.<FormulaReader.End>of() : ENDS) {
          Optional<Double> given = FormulaReader.figure(node, end);
          double value = FormulaReader.number(node, end);
          // doubles, and steps that no longer show over a billion parts
          if (given.isEmpty()
              || !(Math.abs(given.get() - value) <= 1e-6 * Math.abs(value) + 1e-12)) {
            wrong.add(node.line() + " gives " + given);
          }
          read++;
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(read).isGreaterThan(200);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("jobs")
  void moneyAddsUpExactlyAndInputsAreRoundedUpByLittle(String name, Job job) {
    JobAnswer answer = WholeJob.standard().answer(job);
    for (StatementFigure which : StatementFigure.values()) {
      Explanation figure = EXPLAINER.cost(answer, which);
      assertThat(figure.value())
          .isEqualTo(answer.statement().money(which.of(answer.statement())).toBigMoney());
      figure
          .nodes()
          .filter(node -> node.formula().filter(f -> f.startsWith("sum of the lines")).isPresent())
          .filter(node -> node.value() instanceof BigMoney)
          .forEach(
              node -> {
                BigMoney sum = BigMoney.zero(CurrencyUnit.EUR);
                for (Explanation line : node.children()) {
                  sum = sum.plus((BigMoney) line.value());
                }
                assertThat(sum).isEqualByComparingTo((BigMoney) node.value());
              });
      figure
          .nodes()
          .filter(node -> node.formula().filter(f -> f.endsWith(", rounded up")).isPresent())
          .forEach(
              node ->
                  assertThat(FormulaReader.number(node, FormulaReader.End.MOST))
                      .isCloseTo(
                          node.children().size() == 1
                              ? FormulaReader.number(node.children().get(0), FormulaReader.End.MOST)
                              : FormulaReader.number(node.at("green mass"), FormulaReader.End.MOST)
                                  / FormulaReader.number(
                                      node.at("strand density"), FormulaReader.End.MOST),
                          withPercentage(1)));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("jobs")
  void everyFigureEndsInSources(String name, Job job) {
    List<Explanation> figures = EXPLAINER.figures(WholeJob.standard().answer(job));
    assertThat(figures.stream().flatMap(Explanation::nodes))
        .allMatch(node -> node.formula().isPresent() || node.source().isPresent())
        .allMatch(node -> !node.children().isEmpty() || node.source().isPresent());
    assertThat(figures)
        .allSatisfy(f -> assertThat(f.text().lines()).allMatch(line -> line.length() <= 100))
        .allSatisfy(f -> assertThat(f.outline()).allMatch(line -> line.length() <= 100));
  }

  @Test
  void theFilamentOfAPartOpensDownToSolidsLoadingAndDensity() {
    JobAnswer answer = WholeJob.standard().answer(WindowWorkshop.latchCams(100));
    Explanation loading =
        EXPLAINER
            .cost(answer, StatementFigure.USAGE)
            .at("exact amount", "bronze filament", "packs", "quantity", "green mass", "metal")
            .at("metal in green", "solids loading");
    assertThat(loading.at("full density").source().orElseThrow().text()).contains("C52400");
    assertThat(loading.at("binder density").source().orElseThrow().standing())
        .isEqualTo(Standing.FROM_MEMORY);
    assertThat(EXPLAINER.cost(answer, StatementFigure.USAGE).grounds(Standing.FROM_MEMORY))
        .extracting(Explanation::what)
        .containsExactlyInAnyOrder("binder density", "relative density");
  }

  @Test
  void theExampleComparesAndOpensTheSameInEveryLocale() {
    String text = ThreeWorkshops.text();
    assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    assertThat(text)
        .contains("rule, parts per firing: from 3 to 2")
        .contains("crucible, life: from 12 to 30, both invented for this example")
        .contains("crucible, price: from EUR 40.00 to EUR 90.00, both invented")
        .contains("What it rests on and nobody has looked up\nbinder density: 1240 kg/m³");
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(ThreeWorkshops.text()).isEqualTo(text);
    } finally {
      Locale.setDefault(before);
    }
  }

  /**
   * By hand: 34 firings take 3 crucibles of 12 or 2 of 30; 50 firings, two in each, take 5 of 12.
   */
  @Test
  void theExampleSplitsTheCrucibleIntoLifeAndPrice() {
    JobComparison comparison = ThreeWorkshops.comparison();
    ComparedLine all =
        comparison.costs().line("heavy crucible", StatementFigure.ALL_PARTS, "crucible");
    assertThat(all.before()).isEqualTo(BigMoney.parse("EUR 120.00"));
    assertThat(all.after()).isEqualTo(BigMoney.parse("EUR 180.00"));
    assertThat(all.effects().values())
        .containsExactly(BigMoney.parse("EUR -40.00"), BigMoney.parse("EUR 100.00"));
    assertThat(
            comparison
                .costs()
                .line("two per firing", StatementFigure.ALL_PARTS, "crucible")
                .difference())
        .isEqualTo(BigMoney.parse("EUR 80.00"));
    assertThat(comparison.changes("two per firing").passage()).isEmpty();
    assertThat(comparison.changes("heavy crucible").firing()).isNotEmpty();
  }

  /** Copper against tin bronze: other facts, hence other masses, sizes and findings. */
  @Test
  void anotherMaterialChangesPassageFactsAndFindings() {
    Job bronze = WindowWorkshop.latchCams(10);
    Job copper =
        Job.builder()
            .from(bronze)
            .feedstock(MaterialLibrary.standard().feedstock("copper in polylactide, generic"))
            .build();
    JobComparison comparison =
        JobComparer.standard()
            .compare(
                List.of(
                    Scenario.of("bronze", WholeJob.standard().answer(bronze)),
                    Scenario.of("copper", WholeJob.standard().answer(copper))));
    JobChanges changes = comparison.changes("copper");
    assertThat(changes.passage())
        .extracting(Change::what)
        .contains("green mass", "sintered mass", "shrinkage along x", "filament length");
    Change density =
        changes.facts().stream()
            .filter(change -> change.what().equals("full density"))
            .findFirst()
            .orElseThrow();
    assertThat(density.before().orElseThrow().value())
        .isEqualTo(bronze.feedstock().alloy().fullDensity().value());
    assertThat(density.after().orElseThrow().source())
        .contains(copper.feedstock().alloy().fullDensity().source());
    assertThat(changes.facts()).extracting(Change::what).contains("relative density");
    assertThat(changes.findings())
        .anyMatch(FindingChange::severityChanged)
        .extracting(FindingChange::text)
        .anyMatch(text -> text.startsWith("was ") && text.contains(", now "));
    assertThat(
            comparison
                .costs()
                .line("copper", StatementFigure.USAGE, "bronze filament")
                .effects()
                .keySet())
        .containsExactly(Effect.CONSUMPTION);
    assertThat(comparison.text().lines()).allMatch(line -> line.length() <= 100);
    assertThat(comparison.text()).contains("full density: from");
  }
}
