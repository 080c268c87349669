package dev.kilnledger.costing.resource;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The formula of each resource, its inputs, and the offers by which it cannot be bought. */
class ResourceTextTest {
  private static final Workload ONE = Workload.of(1);
  private static final Offer MASS = offer("powder", grams(500), "5").build();
  private static final Offer VOLUME = offer("powder", litres(1), "5").build();
  private static final Offer PIECE = offer("pot", ratio(1), "40").build();

  private static final ToppedUp TOPPED =
      ToppedUp.builder().item("powder").fill(grams(900)).loss(percent(5)).source(INVENTED).build();
  private static final RunDown RUN_DOWN =
      RunDown.builder()
          .item("powder")
          .fill(grams(900))
          .loss(percent(5))
          .minimum(percent(60))
          .source(INVENTED)
          .build();
  private static final Aged AGED =
      Aged.builder().item("powder").fill(grams(900)).cycles(3).source(INVENTED).build();
  private static final Wearing POT =
      Wearing.builder().item("pot").driver(Driver.FIRING).life(6).source(INVENTED).build();

  private static List<String> names(Resource resource) {
    return resource.inputs().stream().map(Input::name).toList();
  }

  @Test
  void tellsFormulas() {
    String firings = ONE.formula(Driver.FIRING);
    assertThat(TOPPED.formula(MASS, ONE))
        .isEqualTo("(fill x (1 + (" + firings + " - 1) x loss) - stock) / content");
    assertThat(AGED.formula(MASS, ONE))
        .isEqualTo("(fill x ceil(" + firings + " / cycles) - stock) / content");
    assertThat(RUN_DOWN.formula(MASS, ONE)).startsWith("(fill x ceil(" + firings);
    assertThat(POT.formula(PIECE, ONE)).isEqualTo("(" + firings + " - stock) / (life x content)");
    assertThat(Durable.toBuy("pot").formula(PIECE, ONE)).isEqualTo("(1 - stock) / content");
  }

  @Test
  void tellsInputs() {
    assertThat(names(TOPPED)).containsExactly("fill", "loss", "stock");
    assertThat(names(RUN_DOWN)).contains("fill", "loss", "minimum");
    assertThat(names(AGED)).contains("fill", "cycles", "stock");
    assertThat(names(POT)).contains("life", "stock");
    assertThat(Durable.owned("pot").inputs().get(0).value()).isEqualTo(ratio(1));
    assertThat(Durable.toBuy("pot").inputs().get(0).value()).isEqualTo(ratio(0));
  }

  @Test
  void tellsOffersThatDoNotFit() {
    for (Resource resource : List.of(TOPPED, RUN_DOWN, AGED)) {
      assertThat(resource.mismatches(MASS)).isEmpty();
      assertThat(resource.mismatches(VOLUME)).hasSize(1);
    }
    Offer metered = offer("pot", ratio(1), "40").metered(true).build();
    for (Resource resource : List.of(POT, Durable.toBuy("pot"))) {
      assertThat(resource.mismatches(PIECE)).isEmpty();
      assertThat(resource.mismatches(MASS)).isNotEmpty();
      assertThat(resource.mismatches(metered)).hasSize(1);
    }
    assertThatThrownBy(
            () ->
                Aged.builder()
                    .item("powder")
                    .fill(grams(900))
                    .cycles(1)
                    .owned(litres(1))
                    .source(INVENTED)
                    .build())
        .hasMessageContaining("owned is 1 L");
    assertThat(Aged.builder().from(AGED).cycles(1).build().cycles()).isEqualTo(1);
    assertThatThrownBy(() -> RunDown.builder().from(RUN_DOWN).owned(grams(-1)).build())
        .hasMessageContaining("owned is -1 g");
  }

  /**
   * A pot of 6 firings: after one 5 are left, after five one, and the seventh part needs another.
   */
  @Test
  void tellsWhatIsLeft() {
    Stock first = POT.stock(PIECE, ONE, 1);
    assertThat(first.text()).isEqualTo("5 firings");
    assertThat(first.furtherParts()).contains(5L);
    assertThat(POT.stock(PIECE, ONE, 5).text()).isEqualTo("1 firing");
    assertThat(POT.stock(PIECE, ONE, 6).furtherParts()).contains(0L);
    assertThat(consumed("powder", Driver.PART, grams(100)).build().stock(MASS, ONE, 1).text())
        .isEqualTo("400 g");
  }

  /** By the names of a workload's inputs its formulas can be read. */
  @Test
  void namesYields() {
    Failures failures =
        Failures.builder()
            .addStages(
                StageYield.builder()
                    .stage(Stage.SINTER)
                    .parts(percent(95))
                    .charges(percent(90))
                    .source(INVENTED)
                    .build())
            .build();
    Workload workload = Workload.of(1, ChargeRule.WHOLE, failures, Map.of());
    assertThat(workload.inputs(Driver.FIRING))
        .extracting(Input::name)
        .containsExactly(
            "parts per firing",
            Stage.SINTER.words() + " yield",
            "charge yield of " + Stage.SINTER.words());
    assertThat(Workload.mismatches(Map.of(Driver.PRINT_TIME, ratio(1)))).hasSize(1);
    assertThat(ChargeRule.values()).extracting(ChargeRule::words).doesNotHaveDuplicates();
    assertThat(ChargeRule.values()).allSatisfy(rule -> assertThat(rule.words()).isNotBlank());
    assertThat(DepreciationMethod.values())
        .allSatisfy(method -> assertThat(method.words()).isNotBlank());
  }
}
