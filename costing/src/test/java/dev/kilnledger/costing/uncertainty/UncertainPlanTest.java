package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.MINUTE;
import static dev.kilnledger.units.TradeUnits.PERCENT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Stage;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

class UncertainPlanTest {
  @Test
  void listsWhatCanVary() {
    assertThat(UncertainPlan.figures(FixturePlan.of(1)))
        .containsExactly(
            "price of printer",
            "price of kiln",
            "price of crucible",
            "price of filament",
            "price of packing powder",
            "price of carbon",
            "price of energy",
            "life of crucible",
            "quantity of filament",
            "fill of packing powder",
            "loss of packing powder",
            "quantity of carbon",
            "quantity of energy",
            "printing yield",
            "debinding yield",
            "charge yield of debinding",
            "sintering yield",
            "charge yield of sintering",
            "prices of supplier supplier A");
  }

  @Test
  void tellsAllProblemsAtOnce() {
    assertThatThrownBy(
            () ->
                UncertainPlan.builder()
                    .plan(FixturePlan.of(1))
                    .failureRule(FailureRule.EXPECTED_VALUES)
                    .addInputs(
                        UncertainInput.life("crucble", Weibull.of(2, 10), INVENTED),
                        UncertainInput.price("kiln", Normal.of(3200, 2000), INVENTED),
                        UncertainInput.price("kiln", Normal.of(3200, 200), INVENTED),
                        UncertainInput.quantity("filament", Pert.of(120, 128, 150), INVENTED),
                        UncertainInput.quantity("carbon", Pert.of(2, 3, 4), INVENTED).in(HOUR),
                        UncertainInput.loss("packing powder", Rectangular.of(2, 120), INVENTED)
                            .in(PERCENT),
                        UncertainInput.partYield(Stage.PRINT, Rectangular.of(0.5, 1.2), INVENTED),
                        UncertainInput.supplierPrices("supplier A", Normal.of(1, 0.5), INVENTED),
                        UncertainInput.supplierPrices("B", Normal.of(1, 0.1), INVENTED),
                        UncertainInput.factor(
                            "long firings", List.of("energy"), Triangular.of(1, 2, 3), INVENTED))
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(
            "uncertain plan: price of kiln is stated 2 times; accepted is once; and failure rule is"
                + " expected values; accepted is that of the plan, planned starts, or at random")
        .hasMessageContaining(
            "the plan has no figure \"life of crucble\"; accepted is one of [price of printer,")
        .hasMessageContaining(
            "quantity of filament is stated in plain numbers; accepted is a unit of mass")
        .hasMessageContaining(
            "quantity of carbon is stated in units of 1 h; accepted is a unit of mass")
        .hasMessageContaining("price of kiln goes from -")
        .hasMessageContaining("; accepted is 0 or more but for one draw in a million")
        .hasMessageContaining("loss of packing powder goes from 2.")
        .hasMessageContaining("; accepted is from 0 % to 100 % but for one draw in a million")
        .hasMessageContaining("printing yield goes from 0.5")
        .hasMessageContaining("; accepted is from 0.001 to 1 but for one draw in a million")
        .hasMessageContaining("prices of supplier supplier A goes down to -1.37")
        .hasMessageContaining("accepted is more than 0, as it multiplies price of printer")
        .hasMessageContaining("the plan has no figure \"prices of supplier B\"")
        .hasMessageContaining("the plan has no figure \"energy\"; accepted is one of [");
    assertThatThrownBy(() -> UncertainInput.of(" ", Normal.of(0, 1), INVENTED))
        .hasMessageContaining("name is blank; accepted is any text");
    assertThatThrownBy(
            () ->
                UncertainInput.builder()
                    .from(UncertainInput.of("x", Normal.of(0, 1), INVENTED))
                    .degreesOfFreedom(0)
                    .build())
        .hasMessageContaining("degrees of freedom is 0; accepted is 1 or more, and infinity");
    assertThatThrownBy(() -> UncertainPlan.of(FixturePlan.of(1), List.of()).with(List.of(1.0)))
        .hasMessageContaining("there are 1 values; accepted is one for each of the 0 inputs");
  }

  @Test
  void tellsWorkOfSeveralStepsApart() {
    LedgerPlan plan = labour();
    assertThat(UncertainPlan.figures(plan))
        .contains("quantity of work for each part", "quantity of work for each firing")
        .doesNotContain("quantity of work");
    UncertainPlan uncertain =
        UncertainPlan.of(
            plan,
            List.of(
                UncertainInput.quantity("work", Driver.FIRING, Rectangular.of(50, 70), INVENTED)
                    .in(MINUTE)));
    // One part: 2 h of printing and a firing of 1.1 h at 20 an hour.
    assertThat(Ledger.standard().through(uncertain.with(List.of(66.0)), 1).total())
        .isEqualByComparingTo(eur("62"));
    assertThat(uncertain.inputs().get(0).text())
        .isEqualTo("quantity of work for each firing: rectangular, 50 to 70, in min");
  }

  private static LedgerPlan labour() {
    return LedgerPlan.builder()
        .prices(book().addOffers(offer("work", hours(1), "20").metered(true).build()).build())
        .addResources(
            consumed("work", Driver.PART, hours(2)).build(),
            consumed("work", Driver.FIRING, hours(1)).build())
        .partsPerFiring(1)
        .build();
  }

  @Test
  void convertsAllPricesOfACurrencyAtOneRate() {
    ExchangeRate dollars =
        ExchangeRate.builder()
            .base(CurrencyUnit.USD)
            .counter(CurrencyUnit.EUR)
            .rate(new BigDecimal("0.8"))
            .date(TODAY)
            .source(INVENTED)
            .build();
    Offer filament =
        Offer.builder()
            .from(offer("filament", ratio(1), "48").build())
            .convertedAt(dollars)
            .build();
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(
                FixturePlan.book()
                    .offers(List.of(filament, offer("glue", ratio(1), "5").build()))
                    .build())
            .addResources(
                consumed("filament", Driver.PART, ratio(1)).build(),
                consumed("glue", Driver.PART, ratio(1)).build())
            .partsPerFiring(1)
            .build();
    UncertainPlan uncertain =
        UncertainPlan.of(
            plan,
            List.of(
                UncertainInput.exchangeRate(
                    CurrencyUnit.USD, Triangular.of(0.7, 0.8, 1), INVENTED)));
    // 60 dollars at 0.9, and 5 euros.
    assertThat(Ledger.standard().through(uncertain.with(List.of(0.9)), 1).total().getAmount())
        .isEqualByComparingTo(new BigDecimal("59"));
  }
}
