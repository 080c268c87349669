package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.PERCENT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** What becomes of a plan's figures when values are drawn for some of them. */
class DrawnFiguresTest {
  private static final LedgerPlan FIXTURE = FixturePlan.of(1);

  private static UncertainInput filament(Distribution distribution) {
    return UncertainInput.quantity("filament", distribution, INVENTED).in(GRAM);
  }

  private static <R extends Resource> R used(LedgerPlan plan, Class<R> kind, String item) {
    return plan.resources().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .filter(resource -> resource.item().equals(item))
        .findFirst()
        .orElseThrow();
  }

  private static LedgerPlan drawn(LedgerPlan plan, UncertainInput input, double value) {
    return UncertainPlan.of(plan, List.of(input)).with(List.of(value));
  }

  private static Amount<?> quantity(Distribution distribution, double value) {
    return used(drawn(FIXTURE, filament(distribution), value), Consumed.class, "filament")
        .quantity();
  }

  private static Amount<?> loss(UncertainInput input, double value) {
    return used(drawn(FIXTURE, input, value), ToppedUp.class, "packing powder").loss();
  }

  /** Seven digits of what is typical, or a thousandth of the spread if that is finer. */
  @Test
  void takesSevenDigitsAndPricesAsTheyAre() {
    assertThat(quantity(Rectangular.of(100, 150), 128.123456789)).isEqualTo(grams(128.1235));
    // A thousandth of 0.001 g are six decimals.
    assertThat(quantity(Normal.of(100, 0.001), 100.123456789)).isEqualTo(grams(100.123457));
    // Nothing, as a typical value, has no digits of its own: it counts as one before the point.
    UncertainInput rare = UncertainInput.loss("packing powder", Empirical.of(0, 0, 0.9), INVENTED);
    assertThat(loss(rare, 0.123456789)).isEqualTo(ratio(0.123457));
    UncertainInput price = UncertainInput.price("filament", Rectangular.of(50, 70), INVENTED);
    assertThat(offerOf(drawn(FIXTURE, price, 60.123456789), "filament").price())
        .isEqualByComparingTo(eur("60.123456789"));
    // For derivatives nothing is rounded.
    Binding smooth =
        Binding.of(
            FIXTURE, List.of(filament(Rectangular.of(100, 150))), true, new Problems("plan"));
    assertThat(smooth.figure("quantity of filament").si(new double[] {128.123456789}))
        .isEqualTo(128.123456789 * 0.001);
  }

  @Test
  void keepsToTheNearestValueThatCanBe() {
    assertThat(quantity(Empirical.of(100, 150), -5)).isEqualTo(grams(100));
    UncertainInput loss =
        UncertainInput.loss("packing powder", Rectangular.of(2, 12), INVENTED).in(PERCENT);
    assertThat(loss(loss, 11.5)).isEqualTo(percent(11.5));
    assertThat(loss(loss, 150)).isEqualTo(percent(100));
    assertThat(loss(loss, -1)).isEqualTo(percent(0));
  }

  @Test
  void leavesAloneWhatNoInputActsOn() {
    Binding binding =
        Binding.of(
            FIXTURE, List.of(filament(Rectangular.of(100, 150))), false, new Problems("plan"));
    assertThat(binding.figure("quantity of filament").varies()).isTrue();
    assertThat(binding.figure("quantity of carbon").varies()).isFalse();
    LedgerPlan drawn = drawn(FIXTURE, filament(Rectangular.of(100, 150)), 130);
    assertThat(drawn.prices()).isEqualTo(FIXTURE.prices());
    assertThat(used(drawn, Wearing.class, "crucible"))
        .isEqualTo(used(FIXTURE, Wearing.class, "crucible"));
  }

  private static Offer offerOf(LedgerPlan plan, String item) {
    return plan.prices().offersOf(item).get(0);
  }

  private static LedgerPlan filamentBy(Offer... offers) {
    return LedgerPlan.builder()
        .prices(book().offers(List.of(offers)).build())
        .addResources(consumed("filament", Driver.PART, grams(128)).build())
        .partsPerFiring(1)
        .build();
  }

  /** A tenth more for one spool is a tenth more for each of ten. */
  @Test
  void movesPricesOfLargerOrdersInProportion() {
    Offer spool =
        offer("filament", grams(500), "60").addBreaks(PriceBreak.of(10, eur("50"))).build();
    UncertainInput price = UncertainInput.price("filament", Empirical.of(60, 66), INVENTED);
    assertThat(offerOf(drawn(filamentBy(spool), price, 66), "filament").breaks())
        .singleElement()
        .satisfies(step -> assertThat(step.price()).isEqualByComparingTo(eur("55")));
  }

  @Test
  void measuresLivesAndCountsThem() {
    Wearing nozzle =
        Wearing.builder()
            .item("nozzle")
            .driver(Driver.EXTRUDED_VOLUME)
            .life(cubicCentimetres(500))
            .source(INVENTED)
            .build();
    Depreciated printer =
        Depreciated.builder()
            .item("printer")
            .driver(Driver.PRINTED_MASS)
            .life(grams(800))
            .salvage(eur("0"))
            .source(INVENTED)
            .build();
    Depreciated kiln =
        Depreciated.builder()
            .from(printer)
            .item("kiln")
            .driver(Driver.FIRING)
            .life(ratio(100))
            .build();
    LedgerPlan plan =
        FixturePlan.builder()
            .prices(book().addOffers(offer("nozzle", ratio(1), "12").build()).build())
            .resources(List.of(nozzle, printer, kiln))
            .putAmounts(Driver.EXTRUDED_VOLUME, cubicCentimetres(20))
            .putAmounts(Driver.PRINTED_MASS, grams(20))
            .partsPerFiring(1)
            .build();
    UncertainInput volume =
        UncertainInput.life("nozzle", Rectangular.of(300, 600), INVENTED).in(CUBIC_CENTIMETRE);
    assertThat(used(drawn(plan, volume, 400), Wearing.class, "nozzle").life())
        .isEqualTo(cubicCentimetres(400));
    UncertainInput mass =
        UncertainInput.life("printer", Rectangular.of(100, 900), INVENTED).in(GRAM);
    assertThat(used(drawn(plan, mass, 400), Depreciated.class, "printer").life())
        .isEqualTo(grams(400));
    // A life that is counted lasts for the event in which it ends.
    UncertainInput firings = UncertainInput.life("kiln", Weibull.of(2, 50), INVENTED);
    assertThat(used(drawn(plan, firings, 0.3), Depreciated.class, "kiln").life())
        .isEqualTo(ratio(1));
    assertThat(used(drawn(plan, firings, 30), Depreciated.class, "kiln").life())
        .isEqualTo(ratio(30));
    UncertainInput twenty =
        UncertainInput.amount(Driver.EXTRUDED_VOLUME, Rectangular.of(15, 25), INVENTED)
            .in(CUBIC_CENTIMETRE);
    assertThat(drawn(plan, twenty, 22).amounts())
        .containsEntry(Driver.EXTRUDED_VOLUME, cubicCentimetres(22))
        .containsEntry(Driver.PRINTED_MASS, grams(20));
  }

  private static void assertRefused(LedgerPlan plan, UncertainInput input, String message) {
    assertThatThrownBy(() -> UncertainPlan.of(plan, List.of(input)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("uncertain plan: " + message);
  }

  /** Each ends at what its figure can be, and no input is told twice of one mistake. */
  @Test
  void refusesWhatAFigureCannotBe() {
    assertRefused(
        FIXTURE,
        UncertainInput.quantity("filament", Rectangular.of(-1, 150), INVENTED),
        "quantity of filament is stated in plain numbers; accepted is a unit of mass");
    assertRefused(
        FIXTURE,
        UncertainInput.factor(
            "prints", List.of("printing yield"), Empirical.of(0.9, 1.1), INVENTED),
        "printing yield goes from 0.9 to 1.1; accepted is from 0.001 to 1 but for one draw in a"
            + " million");
    assertRefused(
        FIXTURE,
        UncertainInput.factor("use", List.of("quantity of filament"), Empirical.of(0, 1), INVENTED),
        "use goes down to 0; accepted is more than 0, as it multiplies quantity of filament");
    assertRefused(
        FIXTURE,
        UncertainInput.life("crucible", Empirical.of(0, 9), INVENTED),
        "life of crucible goes from 0 to 9; accepted is more than 0 but for one draw in a million");
    LedgerPlan strands =
        LedgerPlan.builder()
            .from(filamentBy(offer("filament", grams(500), "60").build()))
            .resources(
                List.of(
                    consumed("filament", Driver.PART, grams(128)).tails(Tails.STRANDED).build()))
            .build();
    assertRefused(
        strands,
        filament(Empirical.of(100, 501)),
        "quantity of filament goes from 100 g to 501 g; accepted is more than 0 g and up to 500 g"
            + " but for one draw in a million");
    assertThat(UncertainPlan.of(strands, List.of(filament(Empirical.of(100, 500)))).isCertain())
        .isFalse();
    UncertainInput all = UncertainInput.partYield(Stage.PRINT, Empirical.of(0.001, 1), INVENTED);
    assertThat(UncertainPlan.of(FIXTURE, List.of(all)).isCertain()).isFalse();
  }

  /** 800 at a rate of 0.5 are 100 at 0.0625 and 1,600 at 1; the salvage value is 200. */
  @Test
  void refusesARateThatTakesAPriceTooLow() {
    ExchangeRate dollars =
        ExchangeRate.builder()
            .base(CurrencyUnit.USD)
            .counter(CurrencyUnit.EUR)
            .rate(new BigDecimal("0.5"))
            .date(TODAY)
            .source(INVENTED)
            .build();
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(
                book()
                    .offers(List.of(offer("press", ratio(1), "800").convertedAt(dollars).build()))
                    .build())
            .addResources(
                Depreciated.builder()
                    .item("press")
                    .driver(Driver.PART)
                    .life(ratio(50))
                    .salvage(eur("200"))
                    .source(INVENTED)
                    .build())
            .partsPerFiring(1)
            .build();
    assertRefused(
        plan,
        UncertainInput.exchangeRate(CurrencyUnit.USD, Empirical.of(0.0625, 1), INVENTED),
        "price of press goes from 100 to 1600; accepted is 200 or more but for one draw in a"
            + " million");
  }

  private static boolean isPlain(LedgerPlan plan) {
    return new DrawnPlan(UncertainPlan.of(plan, List.of())).isPlain();
  }

  @Test
  void tellsPlansApartThatTheKernelKnows() {
    assertThat(isPlain(FIXTURE)).isTrue();
    Offer spool = offer("filament", grams(500), "60").build();
    assertThat(isPlain(filamentBy(spool))).isTrue();
    assertThat(isPlain(filamentBy(spool, offer("filament", grams(900), "90").build()))).isFalse();
    assertThat(
            isPlain(
                filamentBy(
                    Offer.builder().from(spool).addBreaks(PriceBreak.of(9, eur("50"))).build())))
        .isFalse();
    Depreciated.Builder kiln =
        Depreciated.builder().item("kiln").driver(Driver.FIRING).salvage(eur("0")).source(INVENTED);
    LedgerPlan.Builder plan = FixturePlan.builder().partsPerFiring(1);
    assertThat(isPlain(plan.resources(List.of(kiln.life(ratio(10)).build())).build())).isTrue();
    assertThat(isPlain(plan.resources(List.of(kiln.straightLine(5, ratio(2)).build())).build()))
        .isTrue();
    assertThat(
            isPlain(
                plan.resources(List.of(kiln.decliningBalance(ratio(2), 5, ratio(2)).build()))
                    .build()))
        .isFalse();
  }

  @Test
  void namesShippingByItsSupplierWhereSeveralShip() {
    Offer parcel = offer("parcel", ratio(1), "7.50").build();
    Offer other = offer("parcel", ratio(1), "9").supplier("supplier B").build();
    Offer letter = offer("letter", ratio(1), "3").supplier("supplier B").build();
    LedgerPlan.Builder plan = FixturePlan.builder().partsPerFiring(1);
    assertThat(UncertainPlan.figures(plan.shipping(List.of(parcel, other)).build()))
        .contains("price of parcel by supplier A", "price of parcel by supplier B")
        .doesNotContain("price of parcel");
    assertThat(UncertainPlan.figures(plan.shipping(List.of(parcel, letter)).build()))
        .contains("price of parcel", "price of letter");
  }

  /** Two fills of one powder would have one name: no input can mean one of them. */
  @Test
  void offersNoNameThatWouldStandForSeveralFigures() {
    ToppedUp powder =
        ToppedUp.builder()
            .item("packing powder")
            .fill(grams(900))
            .loss(percent(5))
            .source(INVENTED)
            .build();
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(book().build())
            .addResources(
                consumed("energy", Driver.FIRING, kilowattHours(28)).build(),
                consumed("energy", Driver.FIRING, kilowattHours(28)).build(),
                powder)
            .partsPerFiring(1)
            .build();
    assertThat(UncertainPlan.figures(plan))
        .contains("price of energy", "fill of packing powder")
        .doesNotContain("quantity of energy", "quantity of energy for each firing");
  }
}
