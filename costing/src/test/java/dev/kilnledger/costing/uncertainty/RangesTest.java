package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.costing.yield.FailureRule;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What can vary, and from where to where; each range is tried at its ends. */
class RangesTest {
  private static BreakEvenBand band() {
    // Of ten trials four break even with the third part, three with the seventh, three never.
    return BreakEvenBand.builder()
        .plan(UncertainPlan.of(FixturePlan.of(1), List.of()))
        .outsidePrice(eur("60"))
        .parts(10)
        .trials(TrialRecord.of(Trials.fixed(10, 1), 10, Ending.ALL_MADE))
        .first(new TreeMap<>(Map.of(3L, 4, 7L, 3)))
        .build();
  }

  @Test
  void breaksEvenWithSoManyPartsInSoManyTrials() {
    assertThat(band().probabilityBy(1)).isEqualTo(ratio(0));
    assertThat(band().probabilityBy(3)).isEqualTo(ratio(0.4));
    assertThat(band().probabilityBy(10)).isEqualTo(ratio(0.7));
    assertThat(band().median()).contains(7L);
    assertThat(band().quantile(percent(40))).contains(3L);
    assertThat(band().quantile(percent(41))).contains(7L);
    assertThat(band().quantile(percent(71))).isEmpty();
    assertThat(band().quantile(percent(100))).isEmpty();
    for (long number : new long[] {0, 11}) {
      assertThatThrownBy(() -> band().probabilityBy(number))
          .hasMessage("break-even: number of parts is " + number + "; accepted is from 1 to 10");
    }
    assertThatThrownBy(() -> band().quantile(ratio(0)))
        .hasMessage("quantile: share is 0; accepted is more than 0 and up to 1");
    assertThatThrownBy(() -> band().quantile(percent(101)))
        .hasMessageContaining("accepted is more than 0 and up to 1");
  }

  @Test
  void movesBetweenAscendingQuantilesOnly() {
    double[][] wrong = {{0, 0.5}, {-0.1, 0.5}, {0.5, 0.5}, {0.6, 0.5}, {0.5, 1}, {0.5, 1.1}};
    for (double[] pair : wrong) {
      assertThatThrownBy(() -> new OneAtATime(ratio(pair[0]), ratio(pair[1])))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith("one at a time: quantiles are ")
          .hasMessageEndingWith("; accepted is more than 0, ascending and less than 1");
    }
    // From the 10 % to the 60 % quantile of 0 to 10.
    Tornado tornado =
        new OneAtATime(percent(10), percent(60))
            .tornado(
                "x",
                List.of(UncertainInput.of("x", Rectangular.of(0, 10), INVENTED)),
                values -> values[0]);
    assertThat(tornado.low()).isEqualTo(percent(10));
    assertThat(tornado.high()).isEqualTo(percent(60));
    assertThat(tornado.middle()).isCloseTo(5, within(1e-12));
    assertThat(tornado.bars().get(0).swing()).isCloseTo(5, within(1e-12));
  }

  private static LedgerPlan plan() {
    return LedgerPlan.builder()
        .prices(
            FixturePlan.book()
                .addOffers(
                    offer("press", ratio(1), "900").build(),
                    offer("sand", grams(500), "5").build(),
                    offer("felt", grams(500), "5").build(),
                    offer("nozzle", ratio(1), "12").build(),
                    offer("nozzle", ratio(1), "11").supplier("supplier B").build())
                .build())
        .addResources(
            Depreciated.builder()
                .item("press")
                .driver(Driver.FIRING)
                .life(ratio(100))
                .salvage(eur("100"))
                .source(INVENTED)
                .build(),
            RunDown.builder()
                .item("sand")
                .fill(grams(300))
                .loss(percent(5))
                .minimum(percent(60))
                .source(INVENTED)
                .build(),
            Aged.builder().item("felt").fill(grams(200)).cycles(3).source(INVENTED).build(),
            Wearing.builder()
                .item("nozzle")
                .driver(Driver.EXTRUDED_VOLUME)
                .life(cubicCentimetres(500))
                .source(INVENTED)
                .build(),
            consumed("filament", Driver.PART, grams(128)).build())
        .partsPerFiring(1)
        .putAmounts(Driver.EXTRUDED_VOLUME, cubicCentimetres(20))
        .putAmounts(Driver.FIRING_TIME, hours(3))
        .build();
  }

  @Test
  void namesEveryFigureThatCanVary() {
    assertThat(UncertainPlan.figures(plan()))
        .contains(
            "price of press",
            "life of press",
            "fill of sand",
            "loss of sand",
            "fill of felt",
            "life of felt",
            "life of nozzle",
            // Of two offers supplier and pack are told.
            "price of nozzle by supplier A in 1",
            "price of nozzle by supplier B in 1",
            "quantity of filament",
            Driver.EXTRUDED_VOLUME.word(),
            Driver.FIRING_TIME.word())
        .doesNotContain("price of nozzle");
  }

  private static void assertRefused(UncertainInput input, String accepted) {
    assertThatThrownBy(() -> UncertainPlan.of(plan(), List.of(input)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(input.name() + " goes from ")
        .hasMessageContaining("; accepted is " + accepted + " but for one draw in a million");
  }

  /** A salvage value of 100 is the least that the price can be, and exactly that can be. */
  @Test
  void staysWithinWhatAFigureCanBe() {
    assertRefused(UncertainInput.price("press", Rectangular.of(99, 900), INVENTED), "100 or more");
    assertThat(
            UncertainPlan.of(
                    plan(),
                    List.of(UncertainInput.price("press", Empirical.of(100, 900), INVENTED)))
                .isCertain())
        .isFalse();
    assertRefused(UncertainInput.life("press", Rectangular.of(-1, 9), INVENTED), "more than 0");
    assertThatThrownBy(
            () ->
                UncertainPlan.of(
                    plan(),
                    List.of(UncertainInput.loss("sand", Rectangular.of(0.5, 1.5), INVENTED))))
        .hasMessageContaining("loss of sand goes from 50")
        .hasMessageContaining(" to 99.9999 % but for one draw in a million");
  }

  @Test
  void refusesUnitsOfFactorsAndInputsTwice() {
    assertThatThrownBy(
            () ->
                UncertainPlan.of(
                    plan(),
                    List.of(
                        UncertainInput.supplierPrices("supplier A", Normal.of(1, 0.1), INVENTED)
                            .in(HOUR),
                        UncertainInput.factor(
                                "more",
                                List.of("quantity of filament"),
                                Normal.of(1, 0.1),
                                INVENTED)
                            .in(HOUR))))
        .hasMessageContaining(
            "prices of supplier supplier A is stated in units of 1 h; accepted are plain numbers")
        .hasMessageContaining("more is stated in units of 1 h; accepted are plain numbers");
    UncertainInput life = UncertainInput.life("press", Normal.of(100, 1), INVENTED);
    assertThatThrownBy(() -> UncertainPlan.of(plan(), List.of(life, life)))
        .hasMessage("uncertain plan: life of press is stated 2 times; accepted is once");
    assertThatThrownBy(() -> Rectangular.of(Double.NEGATIVE_INFINITY, Double.NaN))
        .hasMessageContaining("low is -Infinity; accepted is a finite number")
        .hasMessageContaining("high is NaN; accepted is a finite number");
    assertThatThrownBy(() -> Rectangular.of(2, 2))
        .hasMessageContaining("low is 2 and high 2; accepted is low < high");
  }

  @Test
  void isCertainWhereNothingVaries() {
    assertThat(UncertainPlan.of(FixturePlan.of(1), List.of()).isCertain()).isTrue();
    assertThat(
            UncertainPlan.builder()
                .plan(FixturePlan.of(1))
                .failureRule(FailureRule.AT_RANDOM)
                .build()
                .isCertain())
        .isFalse();
  }
}
