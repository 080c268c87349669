package dev.kilnledger.costing.outfit;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.outfit.Shop.euros;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.purchase.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** What outfits, steps and answers say, over the workshop's four unbeaten outfits. */
class OutfitTextTest {
  private static final String BRONZE = "tin bronze 90/10";
  private static final String STEEL = "stainless steel 316L";
  private static final String COOL = "printer, cool kiln, crucible, socket, alarm for EUR 1570.00";
  private static final String HOT =
      "printer, hot kiln, crucible, heavy circuit, alarm for EUR 4170.00";

  private final Shop shop = new Shop();

  private OutfitQuestion.Builder workshop() {
    return Workshop.question(shop);
  }

  private static OutfitPlan plan(OutfitQuestion question) {
    return new OutfitPlanner(Workshop.ROUTES, Workshop.fewRules()).plan(question);
  }

  @Test
  void readsAPlanForBudgets() {
    OutfitPlan plan = plan(workshop().addBudgets(euros(1000), euros(2000), euros(5000)).build());
    assertThat(plan.explanation())
        .startsWith(
            "4 outfits are beaten by none",
            "old printer, cool kiln, crucible, socket, alarm for EUR 1070.00",
            COOL,
            "old printer, hot kiln, crucible, heavy circuit, alarm for EUR 3670.00",
            HOT,
            // 1000 + 40 + 30 less 1000; where nothing can be bought nothing is over the budget
            "A budget of EUR 1000.00 buys no outfit: EUR 70.00 are missing for the cheapest")
        .contains(
            "A budget of EUR 2000.00 buys " + COOL + " and leaves EUR 430.00",
            "A budget of EUR 5000.00 buys " + HOT + " and leaves EUR 830.00",
            "no longer used: old printer, socket",
            // 3000 for the kiln and 600 for its circuit
            "From " + COOL + " to " + HOT + ": EUR 3600.00 more, EUR 5170.00 in all",
            "idle from then on: cool kiln, socket",
            "gained: " + STEEL)
        .noneMatch(line -> line.startsWith("lost: ") || line.startsWith("comes into use again"))
        .anyMatch(line -> line.startsWith("buy hot kiln: 1 x 1"));
    assertThat(plan.answers().get(0).explanation())
        .hasSize(2)
        .element(1)
        .asString()
        .startsWith("rejected: wide crucible: it reaches no aim");
    assertThat(plan.answers().get(1).explanation())
        .anyMatch(line -> line.startsWith("rejected: hot kiln: the cheapest outfit with it costs"))
        .anyMatch(line -> line.startsWith("rejected: wide crucible"));
    // The steps lead from one outfit to another, not from one to itself.
    OutfitPlan same = plan(workshop().addBudgets(euros(2000), euros(2001)).build());
    assertThat(same.upgrades()).isEmpty();
  }

  @Test
  void readsAPlanWithoutBudgets() {
    assertThat(plan(workshop().build()).explanation())
        .hasSize(6)
        .element(5)
        .asString()
        .startsWith("rejected: wide crucible: it reaches no aim: for " + BRONZE);
  }

  @Test
  void readsAnAimOutOfReach() {
    Aim titanium =
        Workshop.aim(
                Workshop.MATERIALS.feedstock("titanium grade 2 in wax and polyolefin, generic"),
                30,
                10)
            .build();
    assertThat(plan(workshop().addAims(titanium).build()).explanation())
        .anyMatch(
            line -> line.startsWith("titanium grade 2 is out of reach of the whole catalogue: "));
  }

  @Test
  void readsAnOutfit() {
    Outfit outfit = plan(workshop().build()).front().get(0);
    assertThat(outfit.bought())
        .extracting(Option::name)
        .containsExactly("cool kiln", "crucible", "alarm");
    assertThat(outfit.kept()).extracting(Option::name).containsExactly("old printer", "socket");
    Capability bronze = outfit.capabilities().get(0);
    String size = bronze.largestEnvelope().orElseThrow().format();
    assertThat(bronze.text())
        .isEqualTo(
            BRONZE
                + " comes out, "
                + bronze.partsPerFiring()
                + " to a firing, up to "
                + size
                + ", with old printer, cool kiln, crucible, socket");
    assertThat(outfit.explanation())
        .startsWith(outfit.text(), "printer, EUR 0.00: keep old printer")
        .contains(bronze.text(), STEEL + " is out of reach: cool kiln is not hot enough")
        // The shop's terms of sending are not stated.
        .contains("corner shop: what it asks for sending is not known and counts as nothing");
    bronze
        .findings()
        .forEach(
            finding ->
                assertThat(outfit.explanation()).contains(BRONZE + ": " + finding.message()));
    assertThat(bronze.findings()).isNotEmpty();
    // What stands in the way of steel is told once, by the capability.
    assertThat(outfit.explanation()).noneMatch(line -> line.startsWith(STEEL + ": "));
  }

  /** 3 for the alarm, 10 for bronze and 100 for steel. */
  @Test
  void sumsTheScoresOfOptionsAndAims() {
    OutfitQuestion question = workshop().build();
    List<OptionGroup> groups = new ArrayList<>(question.catalogue().groups());
    groups.set(4, OptionGroup.of("alarm", Choice.EXACTLY_ONE, shop.scored("alarm", 30, 3)));
    OutfitPlan plan =
        plan(
            OutfitQuestion.builder()
                .from(question)
                .catalogue(OutfitCatalogue.of(groups))
                .aims(
                    List.of(
                        Workshop.aim(Workshop.BRONZE, 30, 10).score(10).build(),
                        Workshop.aim(Workshop.STEEL, 30, 10).score(100).build()))
                .addBudgets(euros(1100), euros(3700))
                .build());
    assertThat(plan.front()).extracting(Outfit::score).containsExactly(13L, 13L, 113L, 113L);
    assertThat(plan.upgrades().get(0).explanation()).contains("score 13 to 113");
  }

  @Test
  void readsAStepBack() {
    List<Outfit> front = plan(workshop().build()).front();
    Upgrade back = Upgrade.of(front.get(3), front.get(0));
    assertThat(back.lost()).containsExactly(STEEL);
    assertThat(back.reused()).extracting(Option::name).containsExactly("old printer", "socket");
    Capability large = front.get(3).capabilities().get(0);
    Capability small = front.get(0).capabilities().get(0);
    assertThat(back.explanation())
        .contains("comes into use again: old printer, socket", "lost: " + STEEL)
        .contains(
            BRONZE
                + ": up to "
                + small.largestEnvelope().map(Envelope::format).orElseThrow()
                + " instead of "
                + large.largestEnvelope().map(Envelope::format).orElseThrow())
        .noneMatch(line -> line.startsWith("gained: ") || line.contains("parts to a firing"))
        .noneMatch(line -> line.startsWith(STEEL + ": "));
    int parts = small.partsPerFiring();
    Outfit more =
        Outfit.builder()
            .from(front.get(0))
            .capabilities(
                List.of(
                    Capability.builder().from(small).partsPerFiring(parts + 2).build(),
                    front.get(0).capabilities().get(1)))
            .build();
    assertThat(Upgrade.of(front.get(0), more).explanation())
        .containsExactly(
            "From "
                + front.get(0).text()
                + " to "
                + more.text()
                + ": EUR 0.00 more, EUR 1070.00 in"
                + " all",
            BRONZE + ": " + parts + " to " + (parts + 2) + " parts to a firing");
  }

  @Test
  void namesAnAimByPartAndFeedstock() {
    Aim aim =
        Aim.builder()
            .part(Workshop.aim(Workshop.BRONZE, 30, 10).build().part())
            .feedstock(Workshop.BRONZE)
            .clearance(millimetres(10))
            .build();
    assertThat(aim.name()).isEqualTo("cam in " + Workshop.BRONZE.name());
    assertThat(Choice.values())
        .extracting(Choice::words)
        .containsExactly("exactly one", "at most one", "any number");
    assertThat(OutfitFinding.SHIPPING.code()).isEqualTo("outfit-shipping");
  }

  /** As many parts as the crucible holds are reached, and one more are not. */
  @Test
  void asksForNoMorePartsThanTheCrucibleHolds() {
    int most = plan(workshop().build()).front().get(0).capabilities().get(0).partsPerFiring();
    Aim.Builder bronze = Workshop.aim(Workshop.BRONZE, 30, 10);
    OutfitPlan full =
        plan(workshop().aims(List.of(bronze.leastPartsPerFiring(most).build())).build());
    assertThat(full.front().get(0).capabilities().get(0).partsPerFiring()).isEqualTo(most);
    OutfitPlan over =
        plan(workshop().aims(List.of(bronze.leastPartsPerFiring(most + 1).build())).build());
    assertThat(over.front()).isEmpty();
    assertThat(over.unreachable().get(0).text())
        .startsWith(BRONZE + " is out of reach of the whole catalogue: the crucible holds " + most)
        .endsWith("wanted are " + (most + 1) + " at least");
    OutfitPlan large =
        plan(workshop().aims(List.of(Workshop.aim(Workshop.BRONZE, 90, 90).build())).build());
    assertThat(large.unreachable().get(0).text())
        .contains("the crucible holds no part, green ")
        .endsWith("wanted is one at least");
  }

  /** Half a kilowatt hour of a supplier who would send for 9, and a crucible sent for 7. */
  @Test
  void tellsWhatSendingWouldCost() {
    OutfitQuestion question = workshop().build();
    PriceBook.Builder prices = PriceBook.builder().from(question.prices());
    prices.addOffers(
        Offer.builder()
            .item("electricity")
            .supplier("grid")
            .content(kilowattHours(1))
            .price(euros(0.3))
            .tax(Tax.INCLUDED)
            .metered(true)
            .source(INVENTED)
            .build());
    prices.addShipping(terms("corner shop", 7), terms("grid", 9));
    OutfitQuestion sent =
        OutfitQuestion.builder()
            .from(question)
            .prices(prices.build())
            .addStarter(Need.of("electricity", kilowattHours(0.5)))
            .build();
    assertThat(plan(sent).front().get(0).priceFindings())
        .filteredOn(finding -> finding.code() == OutfitFinding.SHIPPING)
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.message())
                    .isEqualTo("sending is not in the cost of the outfit: shipping EUR 7.00"));
    PriceBook.Builder free = PriceBook.builder().from(question.prices());
    free.addShipping(terms("corner shop", 0));
    assertThat(
            plan(OutfitQuestion.builder().from(question).prices(free.build()).build())
                .front()
                .get(0)
                .priceFindings())
        .noneMatch(finding -> finding.code() == OutfitFinding.SHIPPING);
  }

  private static ShippingTerms terms(String supplier, double charge) {
    return ShippingTerms.builder()
        .supplier(supplier)
        .charge(euros(charge).toBigMoney())
        .tax(Tax.INCLUDED)
        .source(INVENTED)
        .build();
  }

  @Test
  void refusesPricesOfTwoTaxBasesAndAimsOfOneName() {
    OutfitQuestion question = workshop().build();
    PriceBook mixed =
        PriceBook.builder()
            .from(question.prices())
            .offers(
                question.prices().offers().stream()
                    .map(
                        offer ->
                            offer.item().equals("alarm")
                                ? Offer.builder().from(offer).tax(Tax.EXCLUDED).build()
                                : offer)
                    .toList())
            .build();
    OutfitQuestion both = OutfitQuestion.builder().from(question).prices(mixed).build();
    assertThatThrownBy(() -> plan(both))
        .hasMessageContaining(
            "some prices hold the tax and others do not; accepted is a price book on one basis");
    Aim bronze = Workshop.aim(Workshop.BRONZE, 30, 10).build();
    assertThatThrownBy(() -> workshop().aims(List.of(bronze, bronze)).build())
        .hasMessageContaining("aim " + BRONZE + " stands 2 times; accepted is once");
    assertThatThrownBy(() -> OptionGroup.of(" ", Choice.ANY_NUMBER))
        .hasMessageContaining("name is blank")
        .hasMessageContaining("it has no option; accepted is one or more");
    assertThatThrownBy(() -> Requirement.anyOf(new String[0]))
        .hasMessage("requirement: it names no option; accepted is one or more");
  }

  @Test
  void endsWhenInterrupted() {
    OutfitQuestion question = workshop().build();
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> plan(question)).isInstanceOf(CancellationException.class);
    assertThat(Thread.interrupted()).isTrue();
    assertThat(plan(question).front()).isNotEmpty();
  }

  /** Half are the checks, of two kilns, crucibles and circuits each; then come five groups. */
  @Test
  void tellsHowFarItIs() {
    List<Double> told = new ArrayList<>();
    new OutfitPlanner(Workshop.ROUTES, Workshop.fewRules()).plan(workshop().build(), told::add);
    assertThat(told).hasSize(8 + 5);
    for (int i = 0; i < 8; i++) {
      assertThat(told.get(i)).isCloseTo((i + 1) / 16.0, within(1e-12));
    }
    for (int i = 0; i < 5; i++) {
      assertThat(told.get(8 + i)).isCloseTo(0.5 + (i + 1) / 10.0, within(1e-12));
    }
  }
}
