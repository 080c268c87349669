package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.days;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Expected values are worked out by hand beside each check, from the project's fixture. */
class RulesTest {
  private static final Ledger LEDGER = Ledger.standard();
  private static final Offer ORDER = offer("shipping", ratio(1), "10").build();

  @Test
  void buysAllPacksAtTheStartWherePlannedForN() {
    // 10 parts: 3 spools, 2 crucibles, ceil(1.8 x 1.45) = 3 kg, 3 kg carbon, 280 kWh.
    LedgerPlan plan =
        FixturePlan.builder().partsPerFiring(1).buying(BuyingRule.PLANNED_FOR_N).build();
    Statement ten = LEDGER.statement(plan, 10);
    assertThat(ten.firstPart().total()).isEqualByComparingTo(eur("4498.40"));
    assertThat(ten.secondPart().total()).isEqualByComparingTo(eur("8.40"));
    assertThat(ten.lastPart().total()).isEqualByComparingTo(eur("8.40"));
    assertThat(ten.allParts().total())
        .isEqualByComparingTo(LEDGER.through(FixturePlan.of(1), 10).total());
    assertThat(ten.plan().buying().words()).isEqualTo("planned for n");
    // A part beyond those planned is bought as needed: part 13 takes a crucible.
    assertThat(LEDGER.part(plan, 13, 10).lines()).extracting(Line::item).contains("crucible");
    assertThatThrownBy(() -> LEDGER.part(plan, 3))
        .hasMessage(
            "packs are bought for n parts at the start, so the cash for part 3 depends on n;"
                + " accepted is to state n");
  }

  @Test
  void paysForEveryOrder() {
    LedgerPlan plan = FixturePlan.builder().partsPerFiring(1).addShipping(ORDER).build();
    // All of part 1 comes in one order; part 4 orders filament, powder and carbon together.
    assertThat(LEDGER.part(plan, 1).total()).isEqualByComparingTo(eur("4281.40"));
    assertThat(LEDGER.part(plan, 2).total()).isEqualByComparingTo(eur("8.40"));
    assertThat(LEDGER.part(plan, 4).total()).isEqualByComparingTo(eur("118.40"));
    // Long run: parts in which a spool, a crucible, powder or carbon runs short, of the 1500 after
    // which all four are where they were.
    long orders =
        LongStream.rangeClosed(1501, 3000)
            .filter(
                n ->
                    packs(128 * n, 500) > packs(128 * (n - 1), 500)
                        || packs(n, 6) > packs(n - 1, 6)
                        || packs(1800 + 90 * (n - 1), 1000) > packs(1800 + 90 * (n - 2), 1000)
                        || packs(300 * n, 1000) > packs(300 * (n - 1), 1000))
            .count();
    assertThat(LEDGER.usage(plan).lines().get(5).packs().doubleValue())
        .isCloseTo(orders / 1500.0, within(1e-12));
    assertThat(LEDGER.statement(plan, 1).caveats())
        .extracting(Caveat::code)
        .doesNotContain(CaveatCode.SHIPPING_EXCLUDED);
    LedgerPlan planned = LedgerPlan.builder().from(plan).buying(BuyingRule.PLANNED_FOR_N).build();
    assertThat(LEDGER.through(planned, 10).lines().get(7).text())
        .isEqualTo("shipping: shipped 1 x 1 at EUR 10.00");
    assertThat(LEDGER.part(planned, 5, 10).total()).isEqualByComparingTo(eur("8.40"));
  }

  private static long packs(long need, long content) {
    return (need + content - 1) / content;
  }

  @Test
  void ordersSeveralPacksAtOnceWhereOneEventNeedsThem() {
    // 1200 g a firing from packs of 500 g: 3, 2, 3, 2, 2 packs, and one order each time.
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(book().build())
            .addResources(consumed("filament", Driver.PART, grams(1200)).build())
            .partsPerFiring(1)
            .addShipping(ORDER)
            .build();
    assertThat(LEDGER.through(plan, 5).lines())
        .extracting(Line::item, Line::count)
        .containsExactly(
            tuple("filament", BigInteger.valueOf(12)), tuple("shipping", BigInteger.valueOf(5)));
  }

  @Test
  void paysLabourByStepAndOverheadOnANamedBase() {
    LedgerPlan plan =
        FixturePlan.builder()
            .prices(book().addOffers(offer("work", hours(1), "30").metered(true).build()).build())
            .addResources(
                consumed("work", Driver.PART, minutes(20)).build(),
                consumed("work", Driver.FIRING, minutes(90)).build())
            .partsPerFiring(4)
            .addOverheads(
                Overhead.of(OverheadBase.TIME, percent(50), INVENTED),
                Overhead.of(OverheadBase.MATERIAL, percent(10), INVENTED),
                Overhead.of(OverheadBase.ALL_COSTS, percent(1), INVENTED))
            .build();
    Account usage = LEDGER.usage(plan);
    // Fixture at 4 a firing: 21.39, of which energy 2.10; work 10 + 45 / 4 = 21.25.
    assertThat(usage.surcharges())
        .extracting(Surcharge::title, surcharge -> surcharge.amount().getAmount().doubleValue())
        .containsExactly(
            tuple("overhead on labour and machine time", 10.625),
            tuple("overhead on material", 1.929),
            tuple("overhead on all costs", 0.4264));
    assertThat(usage.total()).isEqualByComparingTo(eur("55.6204"));
    assertThat(usage.surcharges().get(1).inputs().get(0).source()).isEqualTo(INVENTED);
  }

  @Test
  void addsOrDeductsTaxByPolicy() {
    Offer net = offer("wax", grams(100), "100").tax(Tax.EXCLUDED).build();
    Offer gross = offer("nozzle", ratio(1), "119").tax(Tax.INCLUDED).build();
    Offer silent = offer("kiln", ratio(1), "7").tax(Tax.UNKNOWN).build();
    LedgerPlan.Builder plan =
        LedgerPlan.builder()
            .prices(book().offers(List.of(net, gross, silent)).build())
            .addResources(
                consumed("wax", Driver.PART, grams(100)).build(),
                Durable.toBuy("nozzle"),
                Durable.toBuy("kiln"))
            .partsPerFiring(1);
    Statement added =
        LEDGER.statement(plan.tax(TaxPolicy.of(TaxRule.ADDED, percent(19), INVENTED)).build(), 1);
    assertThat(added.allParts().total()).isEqualByComparingTo(eur("245")); // 119 + 119 + 7
    assertThat(added.allParts().surcharges().get(0).text())
        .isEqualTo("tax added to prices without tax: EUR 19.0000 on EUR 100.00");
    assertThat(added.allParts().surcharges().get(0).formula()).isEqualTo("rate x base");
    assertThat(exact(added.plan())).isEqualByComparingTo("245");
    assertThat(added.caveats())
        .extracting(Caveat::code)
        .contains(CaveatCode.TAX_UNKNOWN)
        .doesNotContain(CaveatCode.TAX_MIXED, CaveatCode.TAX_EXCLUDED);
    Statement deducted =
        LEDGER.statement(
            plan.tax(TaxPolicy.of(TaxRule.DEDUCTED, percent(19), INVENTED)).build(), 1);
    assertThat(deducted.allParts().total()).isEqualByComparingTo(eur("207")); // 100 + 100 + 7
    assertThat(deducted.allParts().surcharges().get(0).formula())
        .isEqualTo("-rate / (1 + rate) x base");
    assertThat(exact(deducted.plan())).isEqualByComparingTo("207");
    assertThatThrownBy(() -> TaxPolicy.of(TaxRule.ADDED, percent(119), INVENTED))
        .hasMessage("tax policy: rate is 119 %; accepted is from 0 to 1");
    assertThatThrownBy(() -> Overhead.of(OverheadBase.TIME, percent(-1), INVENTED))
        .hasMessageContaining("rate is -1 %; accepted is zero or more");
  }

  /** The cash for one part as it is compared, in whole numbers over a common denominator. */
  private static BigDecimal exact(LedgerPlan plan) {
    ExactCash cash = ExactCash.of(plan);
    return new BigDecimal(cash.through(1)).divide(new BigDecimal(cash.denominator()));
  }

  @Test
  void valuesLeftoversByARule() {
    LedgerPlan.Builder plan = FixturePlan.builder().partsPerFiring(1);
    assertThat(LEDGER.statement(plan.build(), 1).leftovers().total())
        .isEqualByComparingTo(eur("0"));
    Statement shared = LEDGER.statement(plan.leftovers(Leftovers.atCostShare()).build(), 1);
    // 5 / 6 x 45 + 372 / 500 x 60 + 1.91 x 18 + 0.7 x 22 = 37.5 + 44.64 + 34.38 + 15.4
    assertThat(shared.leftovers().total()).isEqualByComparingTo(eur("131.92"));
    assertThat(shared.averageLessLeftovers()).isEqualByComparingTo(eur("4139.48"));
    assertThat(shared.caveats())
        .extracting(Caveat::code)
        .doesNotContain(CaveatCode.LEFTOVERS_NOT_VALUED);
    // One part in 10 days and filament good for 25 days: 2 more parts of 128 g are worth 30.72.
    PriceBook.Builder perishing = book();
    perishing.offers(
        book().build().offers().stream()
            .map(
                offer ->
                    offer.item().equals("filament")
                        ? Offer.builder().from(offer).shelfLife(days(25)).build()
                        : offer)
            .toList());
    LedgerPlan.Builder aging =
        plan.prices(perishing.build()).leftovers(Leftovers.atCostShareWithinShelfLife());
    assertThatThrownBy(aging::build).hasMessageContaining("time per part is not stated");
    assertThat(LEDGER.statement(aging.timePerPart(days(10)).build(), 1).leftovers().total())
        .isEqualByComparingTo(eur("118.00"));
    assertThat(LEDGER.statement(aging.timePerPart(days(10)).build(), 1).leftovers().lines())
        .extracting(Line::formula)
        .containsOnly("packs bought x min(left, bought, used within the shelf life) / bought");
    assertThatThrownBy(() -> aging.timePerPart(days(0)).build())
        .hasMessageContaining("time per part is 0 d; accepted is more than zero");
  }

  @Test
  void valuesNoLeftoverThatWasNotBought() {
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(book().build())
            .addResources(consumed("filament", Driver.PART, grams(100)).owned(grams(1000)).build())
            .partsPerFiring(1)
            .leftovers(Leftovers.atCostShare())
            .build();
    assertThat(LEDGER.statement(plan, 5).leftovers().lines()).isEmpty();
    assertThat(LEDGER.statement(plan, 11).leftovers().total()).isEqualByComparingTo(eur("48"));
  }

  @Test
  void chargesEquipmentByDepreciation() {
    List<Resource> resources = new ArrayList<>(FixturePlan.resources());
    resources.set(
        1,
        Depreciated.builder()
            .item("kiln")
            .driver(Driver.FIRING)
            .life(ratio(1000))
            .salvage(eur("200"))
            .source(INVENTED)
            .build());
    LedgerPlan plan =
        LedgerPlan.builder().prices(book().build()).resources(resources).partsPerFiring(1).build();
    // 3000 / 1000 a firing instead of 3200 with the first, up to 3000.
    assertThat(LEDGER.part(plan, 1).total()).isEqualByComparingTo(eur("1074.40"));
    assertThat(LEDGER.part(plan, 1000).lines()).extracting(Line::entry).contains(Entry.DEPRECIATED);
    assertThat(LEDGER.part(plan, 1001).lines()).extracting(Line::item).doesNotContain("kiln");
    assertThat(LEDGER.usage(plan).total()).isEqualByComparingTo(eur("42.48"));
    Statement statement = LEDGER.statement(plan, 1);
    assertThat(statement.stocks().get(1).text()).isEqualTo("999 firings");
    assertThat(statement.caveats())
        .extracting(Caveat::code)
        .contains(CaveatCode.DEPRECIATION_NOT_CASH);
    assertThat(statement.caveats())
        .extracting(Caveat::text)
        .as("the life that is left of the kiln is no leftover")
        .contains("What is left over is not deducted: crucible, filament, packing powder, carbon.");
  }

  @Test
  void countsSurchargesInTheExactCashAsInTheAccounts() {
    SplittableRandom random = new SplittableRandom(11);
    for (int trial = 0; trial < 200; trial++) {
      LedgerPlan plan =
          LedgerPlan.builder()
              .from(new Simulated(random, true).plan)
              .buying(random.nextBoolean() ? BuyingRule.AS_NEEDED : BuyingRule.PLANNED_FOR_N)
              .addOverheads(
                  Overhead.of(
                      List.of(OverheadBase.values()).get(random.nextInt(3)),
                      percent(random.nextInt(50)),
                      INVENTED))
              .tax(
                  TaxPolicy.of(
                      List.of(TaxRule.values()).get(random.nextInt(3)),
                      percent(random.nextInt(30)),
                      INVENTED))
              .build();
      ExactCash exact = ExactCash.of(plan);
      CashLines lines = exact.lines();
      for (int i = 0; i < 20; i++) {
        long parts = random.nextLong(1, 1000);
        BigDecimal total = LEDGER.through(plan, parts).total().getAmount();
        // Quotients without end are given with 34 digits.
        assertThat(total.multiply(new BigDecimal(exact.denominator())))
            .usingComparator(
                (a, b) -> a.subtract(b).abs().compareTo(b.abs().movePointLeft(30)) <= 0 ? 0 : 1)
            .isEqualTo(new BigDecimal(exact.through(parts)));
        assertThat(exact.through(parts).multiply(lines.scale()))
            .isBetween(
                lines.lowGrowth().multiply(BigInteger.valueOf(parts)).add(lines.lowest()),
                lines.highGrowth().multiply(BigInteger.valueOf(parts)).add(lines.highest()));
      }
    }
  }

  @Test
  void refusesShippingThatCannotBeCounted() {
    assertThatThrownBy(
            () ->
                FixturePlan.builder()
                    .partsPerFiring(1)
                    .addShipping(ORDER, offer("kiln", Amounts.kilograms(1), "3").build())
                    .putAmounts(Driver.PART, ratio(1))
                    .putAmounts(Driver.PRINTED_MASS, grams(0))
                    .build())
        .hasMessageContaining("shipping by supplier A is stated 2 times; accepted is once")
        .hasMessageContaining("kiln is offered for 1 kg; accepted is one order, 1 piece")
        .hasMessageContaining("kiln is a resource; accepted is shipping under a name of its own")
        .hasMessageContaining("mass of a print is 0 g; accepted is more than zero")
        .hasMessageContaining("each part is counted; accepted are amounts of what is measured");
  }

  /** 10 % on the filament of 60 with the first part, not on the printer of 900. */
  @Test
  void countsNoEquipmentAsMaterial() {
    LedgerPlan plan =
        new Bench()
            .machine("printer", "900")
            .packs("filament", 500, "60", 128)
            .planWith(Overhead.of(OverheadBase.MATERIAL, percent(10), INVENTED));
    Account first = LEDGER.part(plan, 1);
    assertThat(first.surcharges().get(0).items()).containsExactly("filament");
    assertThat(first.total()).isEqualByComparingTo(eur("966"));
  }

  /** 1 + 0.19 + 0.1 where tax is added; (100 + 10 % of 119) / 119 where it is deducted. */
  @Test
  void tellsAllSurchargesOnAPriceAsOneFactor() {
    Offer net = offer("wax", grams(100), "100").tax(Tax.EXCLUDED).build();
    Offer gross = offer("resin", grams(100), "119").tax(Tax.INCLUDED).build();
    LedgerPlan.Builder plan =
        LedgerPlan.builder()
            .prices(book().offers(List.of(net, gross)).build())
            .addResources(
                consumed("wax", Driver.PART, grams(100)).build(),
                consumed("resin", Driver.PART, grams(100)).build())
            .partsPerFiring(1)
            .addOverheads(Overhead.of(OverheadBase.MATERIAL, percent(10), INVENTED));
    LedgerPlan added = plan.tax(TaxPolicy.of(TaxRule.ADDED, percent(19), INVENTED)).build();
    assertThat(PriceLoad.factor(net, added)).isCloseTo(1.29, within(1e-15));
    assertThat(PriceLoad.factor(gross, added)).isCloseTo(1.1, within(1e-15));
    LedgerPlan deducted = plan.tax(TaxPolicy.of(TaxRule.DEDUCTED, percent(19), INVENTED)).build();
    assertThat(PriceLoad.factor(gross, deducted)).isCloseTo(111.9 / 119, within(1e-15));
  }

  @Test
  void hasAStaircaseForEachResource() {
    LedgerPlan plan = FixturePlan.of(1);
    assertThat(plan.staircases()).hasSameSizeAs(plan.resources());
    // 4 x 128 g take two spools of 500 g.
    assertThat(plan.staircases().get(3).count(4)).isEqualTo(2);
  }

  @Test
  void assumesNoLifeOfWhatIsConsumed() {
    LedgerPlan plan = new Bench().packs("filament", 500, "60", 128).plan();
    assertThat(LEDGER.statement(plan, 1).caveats())
        .extracting(Caveat::code)
        .doesNotContain(CaveatCode.LIFE_ASSUMED);
    Bench kiln = new Bench().offers(offer("kiln", ratio(1), "3200"));
    kiln.uses(
        Depreciated.builder()
            .item("kiln")
            .driver(Driver.FIRING)
            .life(ratio(1000))
            .salvage(eur("200"))
            .source(INVENTED)
            .build());
    assertThat(LEDGER.statement(kiln.plan(), 1).caveats())
        .filteredOn(caveat -> caveat.code() == CaveatCode.LIFE_ASSUMED)
        .singleElement()
        .extracting(Caveat::text)
        .isEqualTo("How long it lasts is an assumption: kiln.");
  }

  @Test
  void tellsOfNoOrdersThatCostNothing() {
    LedgerPlan plan = new Bench().packs("filament", 500, "60", 128).sent("0").plan();
    assertThat(LEDGER.through(plan, 9).lines()).extracting(Line::item).containsExactly("filament");
    assertThat(LEDGER.usage(plan).lines()).extracting(Line::item).containsExactly("filament");
  }

  /** Of 5 packs at 5 the plan for 4 parts leaves one; then only packs at 10 can be had. */
  @Test
  void buysBeyondThePlanWhatThePlanHasLeft() {
    LedgerPlan plan =
        new Bench()
            .offers(
                Bench.pack("wax", 100, "5").available(5L),
                Bench.pack("wax", 100, "10").supplier("supplier B"))
            .takes("wax", 100)
            .planned();
    assertThat(LEDGER.through(plan, 4).total()).isEqualByComparingTo(eur("20"));
    assertThat(LEDGER.part(plan, 5, 4).total()).isEqualByComparingTo(eur("5"));
    assertThat(LEDGER.part(plan, 6, 4).total()).isEqualByComparingTo(eur("10"));
  }

  /** The terms of a supplier of whom nothing is bought do not make items one order. */
  @Test
  void weighsNoShippingOfOthers() {
    Bench bench =
        new Bench()
            .packs("wax", 100, "5", 30)
            .sent(Bench.terms("supplier B", "7").freeFrom(eur("50")));
    bench.prices.addOffers(
        offer("gas", grams(1), "1").supplier("supplier B").metered(true).build());
    LedgerPlan plan = bench.takes("gas", 1).planned();
    assertThat(LEDGER.through(plan, 7).lines().get(0).formula())
        .startsWith("packs(n) = max(0, ceil(x)), x = ");
  }

  @Test
  void tellsASingleStepAndAKilnAsFullAsItIs() {
    LedgerPlan plan = FixturePlan.of(4);
    assertThat(LEDGER.staircase(plan, 3, 3))
        .singleElement()
        .extracting(CostStep::part)
        .isEqualTo(3L);
    assertThat(LEDGER.loadings(plan, 4, 8).filled()).isEqualTo(LEDGER.statement(plan, 8));
    assertThatThrownBy(() -> LEDGER.loadings(plan, 3, 8))
        .hasMessage("capacity is 3; accepted is 4 or more, the parts per firing of the plan");
  }
}
