package dev.kilnledger.costing.outfit;

import static dev.kilnledger.costing.outfit.Shop.euros;
import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.volts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.equipment.SupplyCircuit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.joda.money.Money;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Catalogues of eight groups with twelve options each. */
class LargeCatalogueTest {
  private static final int GROUPS = 8;
  private static final int OPTIONS = 12;

  private static OutfitQuestion scored() {
    Random random = new Random(7);
    Shop shop = new Shop();
    List<OptionGroup> groups = new ArrayList<>();
    for (int g = 0; g < GROUPS; g++) {
      List<Option> options = new ArrayList<>();
      for (int i = 0; i < OPTIONS; i++) {
        options.add(
            shop.scored(
                "option " + g + "." + i, 5 * (1 + random.nextInt(200)), random.nextInt(100)));
      }
      groups.add(OptionGroup.of("group " + g, Choice.EXACTLY_ONE, options));
    }
    return OutfitQuestion.builder()
        .catalogue(OutfitCatalogue.of(groups))
        .prices(shop.book())
        .addBudgets(euros(1000), euros(2000))
        .build();
  }

  private static OutfitQuestion equipped() {
    Random random = new Random(7);
    Shop shop = new Shop();
    List<List<Option>> lists = new ArrayList<>();
    for (int g = 0; g < GROUPS; g++) {
      List<Option> options = new ArrayList<>();
      for (int i = 0; i < OPTIONS; i++) {
        Option.Builder option =
            shop.option("option " + g + "." + i, 5 * (1 + random.nextInt(200)))
                .score(random.nextInt(100));
        if (g == 0) {
          option.printer(Workshop.printer("printer " + i, 60 + 10 * random.nextInt(12), i % 3 > 0));
        } else if (g == 1) {
          option.kiln(
              Workshop.kiln(
                  "kiln " + i,
                  900 + 50 * random.nextInt(12),
                  120 + 10 * random.nextInt(12),
                  2 + 0.5 * random.nextInt(8)));
        } else if (g == 2) {
          option.crucible(Workshop.crucible("crucible " + i, 70 + 10 * random.nextInt(12)));
        } else if (g == 3) {
          option.supplyCircuit(
              SupplyCircuit.builder()
                  .name("circuit " + i)
                  .voltage(volts(230))
                  .phases(1)
                  .breakerRating(amperes(10 + 2 * i))
                  .build());
        } else if (i == 0) {
          option.requires("option 1.3", "option 1.5");
        }
        options.add(option.build());
      }
      lists.add(options);
    }
    List<OptionGroup> groups = new ArrayList<>();
    for (int g = 0; g < GROUPS; g++) {
      groups.add(OptionGroup.of("group " + g, Choice.EXACTLY_ONE, lists.get(g)));
    }
    return OutfitQuestion.builder()
        .catalogue(OutfitCatalogue.of(groups))
        .prices(shop.book())
        .addAims(
            Workshop.aim(Workshop.BRONZE, 30, 10).build(),
            Workshop.aim(Workshop.STEEL, 24, 8).build())
        .addBudgets(euros(1000), euros(2000))
        .build();
  }

  /** The best score under every budget, by the textbook table over costs in steps of 5. */
  @Test
  void agreesWithTheTextbookTableOfTheMultipleChoiceKnapsack() {
    OutfitQuestion question = scored();
    int steps = GROUPS * 200;
    long[] best = new long[steps + 1];
    for (OptionGroup group : question.catalogue().groups()) {
      long[] next = new long[steps + 1];
      Arrays.fill(next, -1);
      for (Option option : group.options()) {
        int price = question.prices().offer(option.name()).price().getAmount().intValueExact() / 5;
        for (int step = price; step <= steps; step++) {
          if (best[step - price] >= 0) {
            next[step] = Math.max(next[step], best[step - price] + option.score());
          }
        }
      }
      best = next;
    }
    List<Outfit> front = OutfitPlanner.byScore().plan(question).front();
    for (int step = 0; step <= steps; step++) {
      Money budget = euros(5 * step);
      long found =
          front.stream()
              .filter(outfit -> !outfit.cost().isGreaterThan(budget))
              .mapToLong(Outfit::score)
              .max()
              .orElse(-1);
      assertThat(found).as("best score for " + budget).isEqualTo(best[step]);
    }
  }

  @Tag("sampled")
  @Test
  void holdsEquipmentOfEightGroupsOfTwelveAgainstTheChecks() {
    List<Double> heard = new ArrayList<>();
    OutfitPlan plan =
        new OutfitPlanner(Workshop.ROUTES, Workshop.fewRules()).plan(equipped(), heard::add);
    assertThat(heard).isSorted().hasSizeGreaterThan(GROUPS).allMatch(share -> share > 0);
    assertThat(heard.get(heard.size() - 1)).isEqualTo(1);
    assertThat(plan.front()).hasSizeGreaterThan(10);
    assertThat(plan.front())
        .isSortedAccordingTo((one, other) -> one.cost().compareTo(other.cost()));
    for (Outfit outfit : plan.front()) {
      assertThat(outfit.options()).hasSize(GROUPS);
      assertThat(outfit.reached()).isNotEmpty();
    }
  }

  @Test
  void endsWhenTheThreadIsInterrupted() {
    OutfitQuestion question = scored();
    Thread.currentThread().interrupt();
    try {
      assertThatThrownBy(() -> OutfitPlanner.byScore().plan(question))
          .isInstanceOf(CancellationException.class)
          .hasMessageContaining("the outfit plan was interrupted");
    } finally {
      assertThat(Thread.interrupted()).isTrue();
    }
  }
}
