package dev.kilnledger.costing.resource;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.pounds;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import dev.kilnledger.units.Amount;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected values are worked out by hand beside each check. */
class ResourceTest {
  private static final Offer SPOOL = offer("filament", grams(500), "60").build();

  @Test
  void strandsTheTailThatCannotBeJoined() {
    // floor(500 / 128) = 3 parts, 500 - 3 x 128 = 116 g left over.
    Consumed filament = consumed("filament", Driver.PART, grams(128)).tails(Tails.STRANDED).build();
    Stock three = filament.stock(SPOOL, Workload.of(1), 3);
    assertThat(three.left()).isEqualTo(grams(0));
    assertThat(three.stranded()).contains(grams(116));
    assertThat(three.nextPurchase()).contains(4L);
    // 8 parts: 3 spools; one more part in the third; 2 x 116 g and the third's own tail.
    Stock eight = filament.stock(SPOOL, Workload.of(1), 8);
    assertThat(filament.staircase(SPOOL, Workload.of(1)).count(8)).isEqualTo(3);
    assertThat(eight.left()).isEqualTo(grams(128));
    assertThat(eight.stranded()).contains(grams(348));
    // Joined, the third spool is first needed for part 8 as well: 8 x 128 = 1024 g; 12 need a 4th.
    Consumed joined = consumed("filament", Driver.PART, grams(128)).build();
    assertThat(joined.staircase(SPOOL, Workload.of(1)).count(12)).isEqualTo(4);
    assertThat(joined.staircase(SPOOL, Workload.of(1)).count(11)).isEqualTo(3);
    assertThat(filament.staircase(SPOOL, Workload.of(1)).count(10)).isEqualTo(4);
  }

  @Test
  void usesWhatIsOwnedBeforeItBuys() {
    Consumed filament = consumed("filament", Driver.PART, grams(128)).owned(kilograms(0.3)).build();
    assertThat(filament.staircase(SPOOL, Workload.of(1)).count(2)).isZero(); // 256 of 300 g
    assertThat(filament.stock(SPOOL, Workload.of(1), 2).left()).isEqualTo(grams(44));
    assertThat(filament.stock(SPOOL, Workload.of(1), 2).nextPurchase()).contains(3L);
    Offer crucibles = offer("crucible", ratio(2), "80").build();
    Wearing crucible =
        Wearing.builder()
            .item("crucible")
            .driver(Driver.FIRING)
            .life(6)
            .usesLeft(4)
            .source(INVENTED)
            .build();
    // 3 parts a firing: 4 firings are owned, parts 1 to 12; a pack of 2 lasts 12 firings more.
    assertThat(crucible.stock(crucibles, Workload.of(3), 12).nextPurchase()).contains(13L);
    assertThat(crucible.stock(crucibles, Workload.of(3), 13).nextPurchase()).contains(49L);
    assertThat(crucible.stock(crucibles, Workload.of(3), 13).text()).isEqualTo("11 firings");
    assertThat(Durable.owned("kiln").staircase(crucibles, Workload.of(1)).count(1_000_000))
        .isZero();
  }

  @Test
  void needsNothingMoreForAWholeNumberOfPacks() {
    // 40 min is no finite number of hours: 15 times 40 min are 10 h, one pack.
    Consumed rented = consumed("room", Driver.FIRING, minutes(40)).build();
    Offer block = offer("room", hours(10), "100").build();
    assertThat(rented.staircase(block, Workload.of(1)).count(15)).isEqualTo(1);
    assertThat(rented.staircase(block, Workload.of(1)).count(16)).isEqualTo(2);
    // 0.1 g is exactly a tenth: ten of them are 1 g.
    Consumed tenth = consumed("silver", Driver.PART, grams(0.1)).build();
    assertThat(tenth.staircase(offer("silver", grams(1), "9").build(), Workload.of(1)).count(10))
        .isEqualTo(1);
    // 1 lb = 453.59237 g (NIST SP 811).
    Consumed pound = consumed("sand", Driver.PART, grams(453.59237)).build();
    assertThat(pound.staircase(offer("sand", pounds(3), "9").build(), Workload.of(1)).count(3))
        .isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({
    "50, 25, 3", // 1, 0.5, 0.25 and not 0.125
    "10, 60, 5", // 0.9^4 = 0.6561, 0.9^5 = 0.59049
    "5, 100, 1",
    "99.9999, 0.0001, 2", // 1 and 0.000001
    "0.0001, 99.9999, 2"
  })
  void runsAFillDownToItsMinimum(double loss, double minimum, int firings) {
    RunDown powder =
        RunDown.builder()
            .item("powder")
            .fill(grams(900))
            .loss(percent(loss))
            .minimum(percent(minimum))
            .source(INVENTED)
            .build();
    assertThat(powder.firingsPerFill()).isEqualTo(firings);
    // The first kilogram leaves 100 g; the second fill needs a second one.
    Offer kilogram = offer("powder", kilograms(1), "18").build();
    assertThat(powder.stock(kilogram, Workload.of(2), 1).left()).isEqualTo(grams(100));
    assertThat(powder.stock(kilogram, Workload.of(2), 1).nextPurchase()).contains(2L * firings + 1);
  }

  @Test
  void replacesAnAgedFillAsAWhole() {
    // 900 g serve 3 firings, 6 parts at 2 a firing; the first kilogram leaves 100 g.
    Aged powder = Aged.builder().item("powder").fill(grams(900)).cycles(3).source(INVENTED).build();
    Offer kilogram = offer("powder", kilograms(1), "18").build();
    assertThat(powder.stock(kilogram, Workload.of(2), 6).left()).isEqualTo(grams(100));
    assertThat(powder.stock(kilogram, Workload.of(2), 6).nextPurchase()).contains(7L);
    assertThat(powder.staircase(kilogram, Workload.of(2)).count(60)).isEqualTo(9); // 10 x 900 g
  }

  @Test
  void tellsFormulaAndInputs() {
    Consumed joined = consumed("filament", Driver.PART, grams(128)).owned(grams(300)).build();
    assertThat(joined.formula(SPOOL, Workload.of(1))).isEqualTo("(quantity x n - stock) / content");
    assertThat(joined.inputs())
        .extracting(input -> input.name() + " " + input.value())
        .containsExactly("quantity 128 g", "stock 300 g");
    Consumed stranded = consumed("filament", Driver.PART, grams(128)).tails(Tails.STRANDED).build();
    assertThat(stranded.formula(SPOOL, Workload.of(1)))
        .isEqualTo("(n - floor(stock / quantity)) / floor(content / quantity)");
    Depreciated kiln =
        Depreciated.builder()
            .item("kiln")
            .driver(Driver.FIRING)
            .decliningBalance(ratio(2), 5, ratio(200))
            .salvage(eur("100"))
            .source(INVENTED)
            .build();
    assertThat(kiln.inputs())
        .extracting(input -> input.name() + " " + input.value())
        .containsExactly("life 1000", "salvage, in EUR 100", "factor 2", "years 5");
  }

  /** A pack that holds just one part's filament strands nothing; one gram less holds none. */
  @Test
  void wantsAPackThatHoldsWhatOnePartTakes() {
    Consumed filament = consumed("filament", Driver.PART, grams(500)).tails(Tails.STRANDED).build();
    assertThat(filament.mismatches(SPOOL)).isEmpty();
    assertThat(filament.staircase(SPOOL, Workload.of(1)).count(7)).isEqualTo(7);
    assertThat(filament.mismatches(offer("filament", grams(499), "60").build()))
        .containsExactly(
            "a pack of 499 g of filament does not hold the 500 g of one part; accepted is a larger"
                + " pack, or tails that can be joined");
    // By measure there are no tails.
    Offer measured = offer("filament", grams(1), "0.12").metered(true).build();
    assertThat(filament.stock(measured, Workload.of(1), 3).stranded()).isEmpty();
    assertThat(filament.stock(measured, Workload.of(1), 3).left()).isEqualTo(grams(0));
  }

  /** A life may be measured, in any unit, and what is left of it is told in that. */
  @Test
  void tellsWhatIsLeftOfAMeasuredLife() {
    Map<Driver, Amount<?>> amounts =
        Map.of(Driver.FIRING_TIME, hours(3), Driver.EXTRUDED_VOLUME, cubicCentimetres(20));
    Workload workload = Workload.of(1, ChargeRule.WHOLE, Failures.none(), amounts);
    Depreciated kiln =
        Depreciated.builder()
            .item("kiln")
            .driver(Driver.FIRING_TIME)
            .life(hours(300))
            .salvage(eur("0"))
            .source(INVENTED)
            .build();
    assertThat(kiln.stock(offer("kiln", ratio(1), "100").build(), workload, 4).text())
        .isEqualTo("288 h");
    Wearing nozzle =
        Wearing.builder()
            .item("nozzle")
            .driver(Driver.EXTRUDED_VOLUME)
            .life(cubicCentimetres(500))
            .source(INVENTED)
            .build();
    assertThat(nozzle.stock(offer("nozzle", ratio(1), "12").build(), workload, 4).text())
        .isEqualTo("420 cm³");
    // 15 times 40 min in a block of 10 h: 14 times are left after the first.
    Consumed rented = consumed("room", Driver.FIRING, minutes(40)).build();
    assertThat(rented.stock(offer("room", hours(10), "100").build(), workload, 1).left())
        .isEqualTo(minutes(560));
    assertThatThrownBy(() -> Wearing.builder().from(nozzle).life(cubicCentimetres(0)).build())
        .hasMessageContaining("life is 0 cm³; accepted is more than zero");
    assertThatThrownBy(() -> Wearing.builder().from(nozzle).observed(grams(1)).build())
        .hasMessage("wearing resource nozzle: observed is 1 g; accepted is a measure of volume");
    assertThat(Wearing.builder().from(nozzle).observed(cubicCentimetres(1)).build().observed())
        .contains(cubicCentimetres(1));
    assertThat(
            Wearing.builder().item("tray").driver(Driver.FIRING).life(1).source(INVENTED).build())
        .extracting(Wearing::life)
        .isEqualTo(ratio(1));
  }

  @Test
  void knowsWhatItsWorkTakes() {
    assertThat(Workload.of(3).partsPerFiring()).isEqualTo(3);
    assertThatThrownBy(() -> Workload.of(3).perEvent(Driver.PRINT_TIME))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the time of a print is not stated; accepted is a measure of time");
    Map<Driver, Amount<?>> hours = Map.of(Driver.PRINT_TIME, hours(2));
    Failures lost =
        Failures.builder()
            .addStages(
                StageYield.builder()
                    .stage(Stage.SINTER)
                    .charges(percent(90))
                    .source(INVENTED)
                    .build())
            .build();
    Workload workload = Workload.of(3, ChargeRule.WHOLE, lost, hours);
    assertThat(workload.inputs(Driver.PRINT_TIME))
        .extracting(input -> input.value().toString())
        .containsExactly("3", "2 h", "90 %");
    assertThat(Workload.of(3, ChargeRule.WHOLE, Failures.none(), hours).inputs(Driver.PART))
        .extracting(input -> input.name())
        .containsExactly("parts per firing");
    assertThatThrownBy(
            () ->
                Workload.of(
                    1,
                    ChargeRule.WHOLE,
                    Failures.none(),
                    Map.of(Driver.PART, ratio(1), Driver.PRINT_TIME, grams(1))))
        .hasMessage(
            "workload: each part is counted; accepted are amounts of what is measured; and time of a"
                + " print is 1 g; accepted is a measure of time");
    Map<Driver, Amount<?>> lastFirst = new LinkedHashMap<>();
    lastFirst.put(Driver.PRINT_TIME, hours(0));
    lastFirst.put(Driver.PART, ratio(1));
    assertThat(Workload.mismatches(lastFirst))
        .as("in the order of the drivers, whatever that of the map")
        .containsExactly(
            "each part is counted; accepted are amounts of what is measured",
            "time of a print is 0 h; accepted is more than zero");
  }

  @Test
  void refusesFiguresThatMakeNoSenseWithAllProblems() {
    assertThatThrownBy(
            () ->
                Wearing.builder()
                    .item("")
                    .driver(Driver.PART)
                    .life(0)
                    .usesLeft(-1)
                    .source(INVENTED)
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "wearing resource : item is blank; accepted is any text; and life is 0; accepted is 1"
                + " or more; and uses left is -1; accepted is zero or more");
    assertThatThrownBy(
            () ->
                ToppedUp.builder()
                    .item("powder")
                    .fill(grams(-1))
                    .loss(percent(105))
                    .owned(litres(1))
                    .source(INVENTED)
                    .build())
        .hasMessage(
            "topped-up resource powder: fill is -1 g; accepted is more than zero; and loss is 105 %;"
                + " accepted is from 0 to 1; and owned is 1 L and the fill -1 g; accepted is a"
                + " measure of mass");
    assertThatThrownBy(
            () ->
                RunDown.builder()
                    .item("powder")
                    .fill(grams(1))
                    .loss(percent(0))
                    .minimum(percent(0))
                    .source(INVENTED)
                    .build())
        .hasMessageContaining("loss is 0 %; accepted is from 0.000001 to 0.999999")
        .hasMessageContaining("minimum is 0 %; accepted is from 0.000001 to 1");
    assertThatThrownBy(() -> consumed("wax", Driver.PART, grams(0)).owned(grams(-2)).build())
        .hasMessage(
            "consumed resource wax: quantity is 0 g; accepted is more than zero; and owned is -2 g;"
                + " accepted is zero or more");
    assertThatThrownBy(() -> consumed("wax", Driver.PRINT_TIME, grams(1)).build())
        .hasMessageContaining(
            "driver is the time of a print; accepted is what is counted, each part with the"
                + " quantity it takes");
    assertThatThrownBy(
            () ->
                Wearing.builder()
                    .item("nozzle")
                    .driver(Driver.PRINT_TIME)
                    .life(6)
                    .source(INVENTED)
                    .build())
        .hasMessage("wearing resource nozzle: life is 6; accepted is a measure of time");
    assertThatThrownBy(
            () ->
                Aged.builder()
                    .item("powder")
                    .driver(Driver.FIRING_TIME)
                    .fill(grams(0))
                    .cycles(0)
                    .source(INVENTED)
                    .build())
        .hasMessageContaining("fill is 0 g; accepted is more than zero")
        .hasMessageContaining("cycles is 0; accepted is 1 or more")
        .hasMessageContaining("accepted is an event that is counted");
    Depreciated.Builder dear =
        Depreciated.builder().item("kiln").driver(Driver.FIRING).life(ratio(100)).source(INVENTED);
    assertThatThrownBy(() -> dear.salvage(eur("-1")).build())
        .hasMessageContaining("salvage is EUR -1; accepted is zero or more");
    assertThat(
            dear.salvage(eur("5000")).build().mismatches(offer("kiln", ratio(1), "3200").build()))
        .singleElement()
        .asString()
        .contains("salvage value of kiln is EUR 5000 and its price EUR 3200.00; accepted is");
    assertThatThrownBy(() -> Workload.of(0)).hasMessageContaining("parts per firing is 0");
    assertThatThrownBy(() -> Durable.toBuy(" "))
        .hasMessage("durable resource: item is blank; accepted is any text");
  }
}
