package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.Law;
import dev.kilnledger.costing.breakeven.BreakEven;
import dev.kilnledger.costing.breakeven.Crossing;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.units.Amount;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import javax.measure.quantity.Mass;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.joda.money.BigMoney;

/** What holds for every plan: cash and stock are conserved, to the last cent and gram. */
class LedgerLawsTest {
  private static final Ledger LEDGER = Ledger.standard();

  /** How a thing is used up. */
  enum Use {
    PER_PART,
    PER_FIRING,
    WEARS,
    TOPPED_UP,
    LASTS
  }

  /** One thing: how it is used, how much of it, how much is in a pack, and its price in cents. */
  record Thing(Use use, int need, int content, int cents) {
    Resource resource(String name) {
      return switch (use) {
        case PER_PART -> consumed(name, Driver.PART, grams(need)).build();
        case PER_FIRING -> consumed(name, Driver.FIRING, grams(need)).build();
        case WEARS ->
            Wearing.builder().item(name).driver(Driver.FIRING).life(need).source(INVENTED).build();
        case TOPPED_UP ->
            ToppedUp.builder()
                .item(name)
                .fill(grams(need * 10))
                .loss(percent(5))
                .source(INVENTED)
                .build();
        case LASTS -> Durable.toBuy(name);
      };
    }

    boolean isWeighed() {
      return use != Use.WEARS && use != Use.LASTS;
    }

    Offer offer(String name, boolean inKilograms, int times) {
      Amount<?> packed =
          !isWeighed() ? ratio(1) : inKilograms ? kilograms(content / 1000.0) : grams(content);
      return FixturePlan.offer(name, packed, BigDecimal.valueOf((long) cents * times, 2).toString())
          .build();
    }
  }

  /** A workshop's things and how many parts it fires at once. */
  record Shop(List<Thing> things, int perFiring) {
    LedgerPlan plan() {
      return plan(false, 1, BuyingRule.AS_NEEDED);
    }

    LedgerPlan plan(boolean inKilograms, int times, BuyingRule rule) {
      List<Offer> offers = new ArrayList<>();
      List<Resource> resources = new ArrayList<>();
      for (int i = 0; i < things.size(); i++) {
        offers.add(things.get(i).offer("thing " + i, inKilograms, times));
        resources.add(things.get(i).resource("thing " + i));
      }
      return plan(offers, resources, perFiring, rule);
    }

    static LedgerPlan plan(
        List<Offer> offers, List<Resource> resources, int perFiring, BuyingRule rule) {
      return LedgerPlan.builder()
          .prices(FixturePlan.book().offers(offers).build())
          .resources(resources)
          .partsPerFiring(perFiring)
          .buying(rule)
          .build();
    }
  }

  @Provide
  Arbitrary<Shop> shop() {
    Arbitrary<Thing> thing =
        Combinators.combine(
                Arbitraries.of(Use.class),
                Arbitraries.integers().between(1, 400),
                Arbitraries.integers().between(1, 2000),
                Arbitraries.integers().between(0, 99_999))
            .as(Thing::new);
    return Combinators.combine(
            thing.list().ofMinSize(1).ofMaxSize(5), Arbitraries.integers().between(1, 12))
        .as(Shop::new);
  }

  @Law
  void costsForAllPartsWhatTheySeverallyCost(
      @ForAll("shop") Shop shop,
      @ForAll BuyingRule rule,
      @ForAll @IntRange(min = 1, max = 60) int parts) {
    LedgerPlan plan = shop.plan(false, 1, rule);
    BigMoney sum = eur("0");
    for (int part = 1; part <= parts; part++) {
      sum = sum.plus(LEDGER.part(plan, part, parts).total());
    }
    assertThat(sum).isEqualByComparingTo(LEDGER.through(plan, parts).total());
  }

  @Law
  void stepsUpTheStaircaseByWhatEachPartCosts(
      @ForAll("shop") Shop shop,
      @ForAll @IntRange(min = 1, max = 500) int first,
      @ForAll @IntRange(max = 30) int more) {
    LedgerPlan plan = shop.plan();
    BigMoney through = first == 1 ? eur("0") : LEDGER.through(plan, first - 1).total();
    for (CostStep step : LEDGER.staircase(plan, first, first + more)) {
      through = through.plus(step.cash().total());
      assertThat(step.through()).isEqualByComparingTo(through);
      assertThat(step.cash().total().isNegative()).isFalse();
    }
  }

  @Law
  void isNeverCheaperForMoreParts(
      @ForAll("shop") Shop shop,
      @ForAll BuyingRule rule,
      @ForAll @IntRange(min = 1, max = 100_000) int parts,
      @ForAll @IntRange(max = 100_000) int more) {
    LedgerPlan plan = shop.plan(false, 1, rule);
    assertThat(LEDGER.through(plan, parts + more).total())
        .isGreaterThanOrEqualTo(LEDGER.through(plan, parts).total());
  }

  @Law
  void coversInCashAtLeastWhatIsUsed(
      @ForAll("shop") Shop shop, @ForAll @IntRange(min = 1, max = 100_000) int parts) {
    LedgerPlan plan = shop.plan();
    // Usage may be a fraction that has been rounded at its 34th digit.
    BigMoney used = LEDGER.usage(plan).total().multipliedBy(parts).minus(eur("0.0001"));
    assertThat(LEDGER.through(plan, parts).total()).isGreaterThanOrEqualTo(used);
  }

  @Law
  void leavesOnTheShelfWhatIsBoughtAndNotUsed(
      @ForAll("shop") Shop shop, @ForAll @IntRange(min = 1, max = 10_000) int parts) {
    LedgerPlan plan = shop.plan();
    Statement statement = LEDGER.statement(plan, parts);
    long firings = (parts + shop.perFiring() - 1L) / shop.perFiring();
    for (int i = 0; i < shop.things().size(); i++) {
      Thing thing = shop.things().get(i);
      if (thing.use() != Use.PER_PART && thing.use() != Use.PER_FIRING) {
        continue;
      }
      String item = "thing " + i;
      long used = (long) thing.need() * (thing.use() == Use.PER_PART ? parts : firings);
      BigDecimal packs =
          statement.allParts().lines().stream()
              .filter(line -> line.item().equals(item))
              .map(Line::packs)
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      Stock stock =
          statement.stocks().stream().filter(s -> s.item().equals(item)).findFirst().orElseThrow();
      @SuppressWarnings("unchecked") // things of these uses are weighed
      Amount<Mass> left = (Amount<Mass>) stock.left();
      assertThat(packs.multiply(BigDecimal.valueOf(thing.content())))
          .isEqualByComparingTo(left.decimalIn(GRAM).add(BigDecimal.valueOf(used)));
      // The last pack was needed.
      assertThat(left.in(GRAM)).isBetween(0.0, thing.content() - 1.0);
      long lasts = stock.furtherParts().orElseThrow();
      assertThat(statement.nextPurchase().orElseThrow().part())
          .isLessThanOrEqualTo(parts + lasts + 1);
    }
  }

  @Law
  void isTheSameInAnyOrderOfRows(
      @ForAll("shop") Shop shop,
      @ForAll BuyingRule rule,
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 5_000) int parts) {
    LedgerPlan plan = shop.plan(false, 1, rule);
    List<Offer> offers = new ArrayList<>(plan.prices().offers());
    List<Resource> resources = new ArrayList<>(plan.resources());
    Collections.shuffle(offers, new Random(seed));
    Collections.shuffle(resources, new Random(seed + 1L));
    LedgerPlan other = Shop.plan(offers, resources, shop.perFiring(), rule);
    assertThat(LEDGER.through(other, parts).total())
        .isEqualByComparingTo(LEDGER.through(plan, parts).total());
    assertThat(LEDGER.usage(other).total()).isEqualByComparingTo(LEDGER.usage(plan).total());
  }

  @Law
  void isTheSameInGramsAndKilograms(
      @ForAll("shop") Shop shop, @ForAll @IntRange(min = 1, max = 5_000) int parts) {
    LedgerPlan kilograms = shop.plan(true, 1, BuyingRule.AS_NEEDED);
    assertThat(LEDGER.through(kilograms, parts).total())
        .isEqualByComparingTo(LEDGER.through(shop.plan(), parts).total());
  }

  @Law
  void costsTwiceAsMuchAtTwiceThePrices(
      @ForAll("shop") Shop shop,
      @ForAll @IntRange(min = 2, max = 9) int times,
      @ForAll @IntRange(min = 1, max = 5_000) int parts) {
    LedgerPlan dearer = shop.plan(false, times, BuyingRule.AS_NEEDED);
    assertThat(LEDGER.through(dearer, parts).total())
        .isEqualByComparingTo(LEDGER.through(shop.plan(), parts).total().multipliedBy(times));
  }

  @Law
  void isNeverDearerWithMorePartsInAFiring(
      @ForAll("shop") Shop shop,
      @ForAll @IntRange(min = 1, max = 10) int more,
      @ForAll @IntRange(min = 1, max = 5_000) int parts) {
    Shop fuller = new Shop(shop.things(), shop.perFiring() + more);
    assertThat(LEDGER.through(fuller.plan(), parts).total())
        .isLessThanOrEqualTo(LEDGER.through(shop.plan(), parts).total());
  }

  @Law
  void plansNoDearerThanBuyingAsNeeded(
      @ForAll("shop") Shop shop, @ForAll @IntRange(min = 1, max = 5_000) int parts) {
    LedgerPlan planned = shop.plan(false, 1, BuyingRule.PLANNED_FOR_N);
    assertThat(LEDGER.through(planned, parts).total())
        .isLessThanOrEqualTo(LEDGER.through(shop.plan(), parts).total());
  }

  @Law
  void breaksEvenAtThePartItNamesAndNoneBefore(
      @ForAll("shop") Shop shop, @ForAll @IntRange(min = 1, max = 50_000) int cents) {
    BigMoney outside = eur(BigDecimal.valueOf(cents, 2).toString());
    LedgerPlan plan = shop.plan();
    Crossing crossing = BreakEven.standard().find(plan, outside);
    crossing
        .first()
        .ifPresent(
            first -> {
              assertThat(LEDGER.through(plan, first).total())
                  .isLessThanOrEqualTo(outside.multipliedBy(first));
              for (long part = Math.max(1, first - 50); part < first; part++) {
                assertThat(LEDGER.through(plan, part).total())
                    .isGreaterThan(outside.multipliedBy(part));
              }
            });
    if (crossing.first().isPresent() && crossing.permanent().isPresent()) {
      assertThat(crossing.permanent().get()).isGreaterThanOrEqualTo(crossing.first().get());
    }
  }

  @Law
  void comesBackFromItsBytes(
      @ForAll("shop") Shop shop, @ForAll @IntRange(min = 1, max = 500) int parts) throws Exception {
    Statement statement = LEDGER.statement(shop.plan(), parts);
    assertThat(copied(statement)).isEqualTo(statement);
  }

  private static Object copied(Object value) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }
}
