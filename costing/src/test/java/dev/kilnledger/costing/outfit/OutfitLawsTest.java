package dev.kilnledger.costing.outfit;

import static dev.kilnledger.costing.outfit.Shop.euros;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.Law;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds for every catalogue of outfits that are weighed by score and price. */
class OutfitLawsTest {
  /** An option in whole euros, with its score. */
  record Row(int price, int score) {}

  /** Groups of options, one of each to be taken, and a budget. */
  record Catalogue(List<List<Row>> groups, int budget) {
    OutfitPlan plan(int spend, int seed) {
      Shop shop = new Shop();
      Random random = new Random(seed);
      List<OptionGroup> listed = new ArrayList<>();
      for (int g = 0; g < groups.size(); g++) {
        List<Option> options = new ArrayList<>();
        for (int i = 0; i < groups.get(g).size(); i++) {
          Row row = groups.get(g).get(i);
          options.add(shop.scored("option " + g + " " + i, row.price(), row.score()));
        }
        if (seed != 0) {
          Collections.shuffle(options, random);
        }
        listed.add(
            OptionGroup.of("group " + g, Choice.EXACTLY_ONE, options.toArray(Option[]::new)));
      }
      if (seed != 0) {
        Collections.shuffle(listed, random);
      }
      return OutfitPlanner.byScore()
          .plan(shop.question(listed.toArray(OptionGroup[]::new)).addBudgets(euros(spend)).build());
    }

    BudgetAnswer answer(int spend, int seed) {
      return plan(spend, seed).answers().get(0);
    }
  }

  @Provide
  Arbitrary<Catalogue> catalogue() {
    Arbitrary<Row> row =
        Combinators.combine(
                Arbitraries.integers().between(1, 900), Arbitraries.integers().between(0, 90))
            .as(Row::new);
    return Combinators.combine(
            row.list().ofMinSize(1).ofMaxSize(4).list().ofMinSize(1).ofMaxSize(4),
            Arbitraries.integers().between(1, 3600))
        .as(Catalogue::new);
  }

  /** Among equals the first in the catalogue is taken, so names may differ; worth may not. */
  @Law
  void isWorthTheSameInAnyOrderOfRows(
      @ForAll("catalogue") Catalogue catalogue, @ForAll @IntRange(min = 1) int seed) {
    BudgetAnswer straight = catalogue.answer(catalogue.budget(), 0);
    BudgetAnswer shuffled = catalogue.answer(catalogue.budget(), seed);
    assertThat(shuffled.best().map(Outfit::score)).isEqualTo(straight.best().map(Outfit::score));
    assertThat(shuffled.best().map(Outfit::cost)).isEqualTo(straight.best().map(Outfit::cost));
    assertThat(shuffled.shortfall()).isEqualTo(straight.shortfall());
  }

  @Law
  void staysWithinTheBudgetAndSaysWhatIsShort(@ForAll("catalogue") Catalogue catalogue) {
    BudgetAnswer answer = catalogue.answer(catalogue.budget(), 0);
    long cheapest =
        catalogue.groups().stream()
            .mapToLong(group -> group.stream().mapToLong(Row::price).min().orElseThrow())
            .sum();
    assertThat(answer.best().isPresent()).isEqualTo(cheapest <= catalogue.budget());
    answer
        .best()
        .ifPresent(best -> assertThat(best.cost()).isLessThanOrEqualTo(euros(catalogue.budget())));
    if (answer.best().isEmpty()) {
      assertThat(answer.shortfall()).contains(euros((double) (cheapest - catalogue.budget())));
    }
  }

  @Law
  void isWorthNoLessWithAGreaterBudget(
      @ForAll("catalogue") Catalogue catalogue, @ForAll @IntRange(max = 500) int more) {
    BudgetAnswer here = catalogue.answer(catalogue.budget(), 0);
    BudgetAnswer richer = catalogue.answer(catalogue.budget() + more, 0);
    here.best()
        .ifPresent(
            best ->
                assertThat(richer.best().orElseThrow().score())
                    .isGreaterThanOrEqualTo(best.score()));
  }
}
