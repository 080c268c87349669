package dev.kilnledger.costing.explanation;

import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Overhead;
import dev.kilnledger.costing.ledger.OverheadBase;
import dev.kilnledger.costing.ledger.Simulated;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.ExchangeRates;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The ledger case of the project, worked out by hand, opened. */
class StatementExplainerTest {
  private static final StatementExplainer EXPLAINER = StatementExplainer.standard();

  private static Explanation opened(LedgerPlan plan, long parts, StatementFigure figure) {
    return EXPLAINER.figure(Ledger.standard().statement(plan, parts), figure);
  }

  @Test
  void readsAsTheDocumentationShows() {
    String text = opened(FixturePlan.of(1), 4, StatementFigure.SECOND_PART).text(3);
    assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    assertThat(text.replaceAll("\\s+", " "))
        .isEqualTo(
            "second part: EUR 8.40, part 2, from exact amount rounded half even; the plan (stated by"
                + " the user) exact amount: EUR 8.40, from sum of the lines energy: EUR 8.40,"
                + " metered, from packs x price packs: 28, from packs(n) - packs(n - 1), packs(n) ="
                + " max(0, x), x = (quantity x ceil(n / parts per firing) - stock) / content price:"
                + " EUR 0.30, supplier A, 1 kWh, seen on 2026-11-02, tax included; invented (stated"
                + " by the user) ");
  }

  /** Usage 39.48 = 15.36 + 7.50 + 1.62 + 6.60 + 8.40. */
  @Test
  void theUsageIsTheSumOfItsLines() {
    Explanation usage = opened(FixturePlan.of(1), 4, StatementFigure.USAGE).at("exact amount");
    assertThat(usage.children())
        .extracting(Explanation::what)
        .containsExactlyInAnyOrder("crucible", "filament", "packing powder", "carbon", "energy");
    assertThat(usage.at("filament").value()).isEqualTo(eur("15.36"));
    assertThat(usage.at("crucible").value()).isEqualTo(eur("7.50"));
    assertThat(usage.at("packing powder").value()).isEqualTo(eur("1.62"));
    assertThat(usage.at("filament", "packs").value()).isEqualTo(new BigDecimal("0.256"));
    assertThat(usage.at("filament", "packs", "quantity").value()).isEqualTo(grams(128));
    assertThat(usage.at("filament", "packs", "quantity").source()).contains(FixturePlan.INVENTED);
  }

  /** Part 1 costs 4,271.40, the average of 4 is 1,099.15, part 4 108.40. */
  @Test
  void everyFigureOfAStatementIsOpened() {
    Statement statement = Ledger.standard().statement(FixturePlan.of(1), 4);
    assertThat(EXPLAINER.figures(statement))
        .extracting(Explanation::what)
        .containsExactly(
            "first part",
            "second part",
            "last part",
            "all parts",
            "average",
            "usage per part",
            "leftovers",
            "average less leftovers");
    assertThat(EXPLAINER.figure(statement, StatementFigure.FIRST_PART).value())
        .isEqualTo(eur("4271.40"));
    assertThat(EXPLAINER.figure(statement, StatementFigure.LAST_PART).value())
        .isEqualTo(eur("108.40"));
    Explanation average = EXPLAINER.figure(statement, StatementFigure.AVERAGE);
    assertThat(average.value()).isEqualTo(eur("1099.15"));
    assertThat(average.at("exact amount", "n").value()).isEqualTo(ratio(4));
    assertThat(average.at("exact amount", "all parts", "printer", "price").shown())
        .isEqualTo("EUR 900.00");
    Explanation leftovers = EXPLAINER.figure(statement, StatementFigure.LEFTOVERS);
    assertThat(leftovers.at("exact amount").source().orElseThrow().text()).contains("not valued");
  }

  /** 10 % on the materials, 15.36 + 7.50 + 1.62 + 6.60 = 31.08. */
  @Test
  void aSurchargeOpensToItsRateAndItsLines() {
    LedgerPlan plan =
        FixturePlan.builder()
            .partsPerFiring(1)
            .addOverheads(Overhead.of(OverheadBase.MATERIAL, percent(10), Source.user("the books")))
            .build();
    Explanation overhead =
        opened(plan, 1, StatementFigure.USAGE).at("exact amount", "overhead on material");
    assertThat((BigMoney) overhead.value()).isEqualByComparingTo(eur("3.108"));
    assertThat(overhead.at("rate").source()).contains(Source.user("the books"));
    assertThat(overhead.at("base").children())
        .extracting(Explanation::what)
        .containsExactlyInAnyOrder("crucible", "filament", "packing powder", "carbon");
  }

  @Test
  void aConvertedPriceOpensToItsRate() {
    ExchangeRate rate =
        ExchangeRate.builder()
            .base(CurrencyUnit.EUR)
            .counter(CurrencyUnit.USD)
            .rate(new BigDecimal("1.10"))
            .date(FixturePlan.TODAY)
            .source(Source.user("the bank"))
            .build();
    LedgerPlan plan =
        LedgerPlan.builder()
            .from(FixturePlan.of(1))
            .prices(
                ExchangeRates.of(List.of(rate))
                    .convert(FixturePlan.book().build(), CurrencyUnit.USD))
            .build();
    Explanation price =
        opened(plan, 1, StatementFigure.FIRST_PART).at("exact amount", "filament", "price");
    assertThat(price.shown()).isEqualTo("USD 66.00");
    assertThat(price.at("exchange rate").condition()).isEqualTo("1 EUR = 1.10 USD on 2026-11-02");
    assertThat(price.at("exchange rate").source()).contains(Source.user("the bank"));
  }

  /** 7.50 / 7 = 1.0714285...: six decimals; a single crucible is told as a piece. */
  @Test
  void showsSixDecimalsAndPieces() {
    Explanation crucible =
        opened(FixturePlan.of(7), 7, StatementFigure.USAGE).at("exact amount", "crucible");
    assertThat(crucible.shown()).isEqualTo("EUR 1.071429");
    assertThat(crucible.at("price").condition())
        .isEqualTo("supplier A, 1 piece, seen on 2026-11-02, tax included");
    assertThat(
            opened(FixturePlan.of(7), 7, StatementFigure.USAGE)
                .at("exact amount", "filament", "price")
                .condition())
        .isEqualTo("supplier A, 500 g, seen on 2026-11-02, tax included");
  }

  /** Packs of the first part are those of all n where they are planned, energy is its own. */
  @Test
  void tellsForHowManyPartsPacksArePlanned() {
    LedgerPlan planned =
        FixturePlan.builder().partsPerFiring(1).buying(BuyingRule.PLANNED_FOR_N).build();
    Explanation first = opened(planned, 10, StatementFigure.FIRST_PART).at("exact amount");
    assertThat(first.at("filament", "packs", "n").value()).isEqualTo(ratio(10));
    assertThat(first.at("energy", "packs", "n").value()).isEqualTo(ratio(1));
    // Of a single part the last one is the first, with all packs of the plan.
    Explanation last = opened(planned, 1, StatementFigure.LAST_PART).at("exact amount");
    assertThat(last.at("filament", "packs", "n").value()).isEqualTo(ratio(1));
    assertThat((BigMoney) last.value())
        .isEqualByComparingTo((BigMoney) opened(planned, 1, StatementFigure.FIRST_PART).value());
    assertThat(
            opened(FixturePlan.of(1), 10, StatementFigure.FIRST_PART)
                .at("exact amount", "filament", "packs", "n")
                .value())
        .isEqualTo(ratio(1));
  }

  /** A depreciation is a share of the price, which its packs open to; its salvage is in euros. */
  @Test
  void aDepreciationOpensToPriceAndSalvage() {
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(FixturePlan.book().build())
            .addResources(
                Depreciated.builder()
                    .item("kiln")
                    .driver(Driver.FIRING)
                    .life(ratio(1000))
                    .salvage(eur("200"))
                    .source(FixturePlan.INVENTED)
                    .build(),
                FixturePlan.consumed("filament", Driver.PART, grams(128)).build())
            .partsPerFiring(1)
            .build();
    Explanation exact = opened(plan, 1, StatementFigure.ALL_PARTS).at("exact amount");
    assertThat(exact.at("kiln", "packs", "price").shown()).isEqualTo("EUR 3200.00");
    assertThat(exact.at("kiln", "packs", "salvage").condition()).isEqualTo("in EUR");
    assertThat(exact.at("kiln", "packs", "salvage").value()).isEqualTo(ratio(200));
    assertThat(exact.at("filament", "packs").children())
        .extracting(Explanation::what)
        .doesNotContain("price");
  }

  @Test
  void nothingToPayIsSaidSo() {
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(
                FixturePlan.book()
                    .offers(List.of(offer("filament", grams(500), "60").build()))
                    .build())
            .addResources(FixturePlan.consumed("filament", Driver.PART, grams(128)).build())
            .partsPerFiring(1)
            .build();
    Explanation second = opened(plan, 3, StatementFigure.SECOND_PART);
    assertThat(second.value()).isEqualTo(Money.parse("EUR 0.00").toBigMoney());
    assertThat(second.at("exact amount").line())
        .isEqualTo(
            "exact amount: EUR 0.00, from sum of the lines, of which there are none; the ledger:"
                + " nothing has to be paid (recomputed)");
  }

  /** Every node of random plans ends in sources, and money is the exact sum of its lines. */
  @Test
  void randomPlansOpenWithoutAGap() {
    SplittableRandom random = new SplittableRandom(20261125);
    for (int i = 0; i < 60; i++) {
      LedgerPlan plan = new Simulated(random, i % 2 == 1).plan;
      Statement statement = Ledger.standard().statement(plan, random.nextLong(1, 60));
      for (Explanation figure : EXPLAINER.figures(statement)) {
        assertThat(figure.nodes()).allMatch(n -> n.formula().isPresent() || n.source().isPresent());
        figure
            .nodes()
            .filter(n -> n.formula().equals(Optional.of("sum of the lines")))
            .forEach(
                n ->
                    assertThat(
                            n.children().stream()
                                .map(line -> ((BigMoney) line.value()).getAmount())
                                .reduce(BigDecimal.ZERO, BigDecimal::add))
                        .isEqualByComparingTo(((BigMoney) n.value()).getAmount()));
      }
    }
  }
}
