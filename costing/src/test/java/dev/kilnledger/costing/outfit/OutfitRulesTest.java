package dev.kilnledger.costing.outfit;

import static dev.kilnledger.costing.outfit.Shop.euros;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Small catalogues whose best outfits and reasons are found by hand. */
class OutfitRulesTest {
  private static final String BRONZE = "tin bronze 90/10";
  private static final String STEEL = "stainless steel 316L";

  private final Shop shop = new Shop();

  private static OutfitPlan plan(OutfitQuestion.Builder question) {
    return plan(question, Workshop.ROUTES);
  }

  private static OutfitPlan plan(OutfitQuestion.Builder question, Routes routes) {
    return new OutfitPlanner(routes, Workshop.fewRules()).plan(question.build());
  }

  private OutfitPlan plan(List<Aim> aims, OptionGroup... groups) {
    return plan(shop.question(groups).addAims(aims.toArray(Aim[]::new)).prices(shop.book()));
  }

  private static Aim bronze(double length) {
    return Workshop.aim(Workshop.BRONZE, length, 10).build();
  }

  private static Aim steel() {
    return Workshop.aim(Workshop.STEEL, 30, 10).build();
  }

  private Option printer(String name, double price, double side) {
    return shop.option(name, price).printer(Workshop.printer(name, side, true)).build();
  }

  private Option.Builder kiln(String name, double price, double peak) {
    return shop.option(name, price).kiln(Workshop.kiln(name, peak, 160, 3));
  }

  private Option crucible(String name, double price) {
    return shop.option(name, price).crucible(Workshop.crucible(name, 100)).build();
  }

  private Option kit(double price) {
    return kiln("kit", price, 1100).crucible(Workshop.crucible("kit crucible", 100)).build();
  }

  private static OptionGroup one(String name, Option... options) {
    return OptionGroup.of(name, Choice.EXACTLY_ONE, options);
  }

  private OptionGroup printers() {
    return one("printer", printer("printer", 500, 150));
  }

  private OptionGroup crucibles() {
    return one("crucible", crucible("crucible", 40));
  }

  private static List<String> texts(OutfitPlan plan) {
    return plan.front().stream().map(Outfit::text).toList();
  }

  private static List<String> rejected(OutfitPlan plan) {
    return plan.rejected().stream().map(Rejection::text).toList();
  }

  /** Sets that bring everything: 900 for bronze, 3,500 and a circuit of 600 for steel too. */
  @Test
  void weighsSetsThatPrintAndFire() {
    Option small =
        shop.option("small set", 900)
            .printer(Workshop.printer("small", 150, true))
            .kiln(Workshop.kiln("small kiln", 1100, 160, 3))
            .crucible(Workshop.crucible("small crucible", 100))
            .build();
    Option large =
        shop.option("large set", 3500)
            .printer(Workshop.printer("large", 150, true))
            .kiln(Workshop.kiln("large kiln", 1450, 160, 3))
            .crucible(Workshop.crucible("large crucible", 100))
            .requires("cable")
            .build();
    OutfitPlan plan =
        plan(
            List.of(bronze(30), steel()),
            one("set", small, large),
            OptionGroup.of("cable", Choice.ANY_NUMBER, shop.option("cable", 600).build()));
    assertThat(texts(plan))
        .containsExactly("small set for EUR 900.00", "large set, cable for EUR 4100.00");
    assertThat(plan.front().get(1).reached()).containsExactly(BRONZE, STEEL);
  }

  /** The same sets without crucibles, of which one is chosen beside them. */
  @Test
  void weighsSetsBesideWhatOnlyFires() {
    Option small =
        shop.option("small set", 900)
            .printer(Workshop.printer("small", 150, true))
            .kiln(Workshop.kiln("small kiln", 1100, 160, 3))
            .build();
    Option large =
        shop.option("large set", 3500)
            .printer(Workshop.printer("large", 150, true))
            .kiln(Workshop.kiln("large kiln", 1450, 160, 3))
            .build();
    OutfitPlan plan =
        plan(
            List.of(bronze(30), steel()),
            one("set", small, large),
            one("crucible", crucible("crucible", 40), crucible("dear crucible", 50)));
    assertThat(texts(plan))
        .containsExactly(
            "small set, crucible for EUR 940.00", "large set, crucible for EUR 3540.00");
  }

  /** A point for each pretty thing, ten for steel: the cool kiln costs more and scores less. */
  @Test
  void countsTheScoresOfAimsAgainstThoseOfOptions() {
    OutfitPlan plan =
        plan(
            List.of(bronze(30), Workshop.aim(Workshop.STEEL, 30, 10).score(10).build()),
            printers(),
            one(
                "kiln",
                kiln("cool kiln", 1200, 1100).score(5).build(),
                kiln("hot kiln", 1000, 1450).build()),
            crucibles());
    assertThat(texts(plan)).containsExactly("printer, hot kiln, crucible for EUR 1540.00");
    assertThat(plan.front().get(0).score()).isEqualTo(10);
  }

  @Test
  void ofOneCostTakesWhatScoresMore() {
    OutfitPlan plan =
        plan(shop.question(one("lamp", shop.scored("dull", 10, 1), shop.scored("bright", 10, 5))));
    assertThat(texts(plan)).containsExactly("bright for EUR 10.00");
  }

  /** 100 + 1050 for two pieces, 110 + 1000 + 40 for three. */
  @Test
  void countsThePiecesOfPrintingAndFiringTogether() {
    Option first =
        shop.option("first printer", 110)
            .printer(Workshop.printer("first", 150, true))
            .requires("kiln")
            .build();
    Option second =
        shop.option("second printer", 100)
            .printer(Workshop.printer("second", 150, true))
            .requires("kit")
            .build();
    Option kit = kit(1050);
    OutfitPlan plan =
        plan(
            List.of(bronze(30)),
            one("printer", first, second),
            one("kiln", kiln("kiln", 1000, 1100).requires("crucible").build(), kit),
            OptionGroup.of("crucible", Choice.AT_MOST_ONE, crucible("crucible", 40)));
    assertThat(texts(plan)).containsExactly("second printer, kit for EUR 1150.00");
  }

  /** Both printers are too small for a green part of 65 mm; each outfit is told its own. */
  @Test
  void tellsWhatStandsInTheWayOfTheOutfitItself() {
    OutfitPlan plan =
        plan(
            List.of(bronze(30), Workshop.aim(Workshop.BRONZE, 55, 10).name("large").build()),
            one("printer", printer("small", 100, 60), printer("larger", 300, 62)),
            one("kiln", kiln("kiln", 1000, 1100).build()),
            crucibles());
    assertThat(plan.front()).hasSize(2);
    assertThat(plan.front().get(0).capabilities().get(1).text())
        .endsWith("does not fit into 60.0 mm x 60.0 mm x 60.0 mm");
    assertThat(plan.front().get(1).capabilities().get(1).text())
        .endsWith("does not fit into 62.0 mm x 62.0 mm x 62.0 mm");
  }

  /** The printer wants the dearer of two kilns that do the same, and nothing else is decided. */
  @Test
  void heedsWhatAPrinterRequiresOfTheKiln() {
    Option printer =
        shop.option("printer", 500)
            .printer(Workshop.printer("printer", 150, true))
            .requires("other kiln")
            .build();
    OutfitPlan plan =
        plan(
            List.of(bronze(30)),
            one("printer", printer),
            one("kiln", kiln("kiln", 1000, 1100).build(), kiln("other kiln", 1200, 1100).build()),
            crucibles());
    assertThat(texts(plan)).containsExactly("printer, other kiln, crucible for EUR 1740.00");
  }

  /** A kiln with its crucible costs as much as both apart, and is one piece less. */
  @Test
  void ofEqualsTakesTheFewestPieces() {
    Option kit = kit(1040);
    OutfitPlan plan =
        plan(
            List.of(bronze(30)),
            printers(),
            one("kiln", kiln("kiln", 1000, 1100).requires("crucible").build(), kit),
            OptionGroup.of("crucible", Choice.AT_MOST_ONE, crucible("crucible", 40)));
    assertThat(texts(plan)).containsExactly("printer, kit for EUR 1540.00");
  }

  /** At one price the larger printer is no longer beaten by the smaller one, but beats it. */
  @Test
  void ofOneCostTakesWhatDoesMore() {
    OutfitPlan plan =
        plan(
            List.of(bronze(30)),
            one("printer", printer("small", 500, 60), printer("large", 500, 150)),
            one("kiln", kiln("kiln", 1000, 1100).build()),
            crucibles());
    assertThat(texts(plan)).containsExactly("large, kiln, crucible for EUR 1540.00");
  }

  /** The two pairs cost 30 each; the first option of the first group decides. */
  @Test
  void ofEqualPairsTakesTheFirstInTheCatalogue() {
    Option c = shop.option("c", 20).build();
    Option d = shop.option("d", 10).build();
    Option a = shop.option("a", 10).requires("c").build();
    Option b = shop.option("b", 20).requires("d").build();
    OutfitPlan plan = plan(shop.question(one("first", a, b), one("second", d, c)));
    assertThat(texts(plan)).containsExactly("a, c for EUR 30.00");
  }

  /** The gadget of 10 does nothing by itself, and without it the lamp of 50 points is no use. */
  @Test
  void keepsWhatALaterChoiceRequires() {
    OutfitPlan plan =
        plan(
            shop.question(
                OptionGroup.of("gadget", Choice.ANY_NUMBER, shop.option("gadget", 10).build()),
                OptionGroup.of(
                    "lamp",
                    Choice.ANY_NUMBER,
                    shop.option("lamp", 20).score(50).requires("gadget").build())));
    assertThat(texts(plan)).containsExactly(" for EUR 0.00", "gadget, lamp for EUR 30.00");
  }

  /** The only crucible and the hot kiln's gadget take the same place. */
  @Test
  void knowsThatNothingReachesWhatCannotStandTogether() {
    OptionGroup place = one("place", crucible("crucible", 40), shop.option("gadget", 10).build());
    OutfitPlan plan =
        plan(
            List.of(bronze(30), steel()),
            printers(),
            one(
                "kiln",
                kiln("cool kiln", 1000, 1100).build(),
                kiln("hot kiln", 3000, 1450).requires("gadget").build()),
            place);
    assertThat(texts(plan)).containsExactly("printer, cool kiln, crucible for EUR 1540.00");
    assertThat(plan.unreachable()).extracting(each -> each.aim().name()).containsExactly(STEEL);
    OutfitPlan none =
        plan(
            List.of(bronze(30)),
            printers(),
            one("all", kiln("lone kiln", 1000, 1450).build(), crucible("pot", 40)));
    assertThat(none.front()).isEmpty();
    assertThat(none.unreachable()).extracting(each -> each.aim().name()).containsExactly(BRONZE);
  }

  /** The cable that the kiln requires is the first option of the catalogue. */
  @Test
  void findsARequirementThatComesFirst() {
    OutfitPlan plan =
        plan(
            List.of(bronze(30)),
            one("cable", shop.option("cable", 60).build(), shop.option("rope", 1).build()),
            printers(),
            one("kiln", kiln("kiln", 1000, 1100).requires("cable").build()),
            crucibles());
    assertThat(texts(plan)).containsExactly("cable, printer, kiln, crucible for EUR 1600.00");
    // No requirement of its own keeps the rope out.
    assertThat(rejected(plan)).containsExactly("rope: no outfit can be put together with it");
  }

  /** The old printer's 60 mm hold a part of 30 mm, and not one of 55 mm that shrinks into it. */
  @Test
  void reachesNothingThatNoPrinterPrints() {
    Aim large = Workshop.aim(Workshop.BRONZE, 55, 10).name("large").build();
    OutfitPlan plan =
        plan(
            List.of(bronze(30), large),
            one("printer", printer("old printer", 100, 60)),
            one("kiln", kiln("kiln", 1000, 1100).build()),
            crucibles());
    assertThat(plan.front().get(0).reached()).containsExactly(BRONZE);
    assertThat(plan.unreachable()).extracting(each -> each.aim().name()).containsExactly("large");
    // The firing passes, so what is told is why it cannot be printed.
    assertThat(plan.unreachable().get(0).text())
        .endsWith("does not fit into 60.0 mm x 60.0 mm x 60.0 mm");
    assertThat(plan.front().get(0).capabilities().get(1).text())
        .startsWith("large is out of reach: ")
        .endsWith("does not fit into 60.0 mm x 60.0 mm x 60.0 mm");
  }

  /** Two kilns ask for two peaks of one metal, and each outfit has the parts of its own. */
  @Test
  void keepsThePeaksOfAMetalApart() {
    Routes routes =
        (aim, place) ->
            RouteAnswer.of(
                Optional.of(
                    Workshop.route(place.kiln().name().equals("second") ? 850 : 820, false)),
                List.of());
    OutfitPlan plan =
        plan(
            shop.question(
                    printers(),
                    OptionGroup.of(
                        "kiln",
                        Choice.EXACTLY_ONE,
                        kiln("first", 1000, 830).build(),
                        kiln("second", 900, 1100).build()),
                    crucibles())
                .addAims(bronze(30))
                .prices(shop.book()),
            routes);
    assertThat(texts(plan)).containsExactly("printer, second, crucible for EUR 1440.00");
    assertThat(plan.front().get(0).capabilities().get(0).route())
        .contains(Workshop.route(850, false));
  }

  @Test
  void tellsWhyOptionsThatReachNothingOrTooLittleAreLeftOut() {
    OutfitPlan plan =
        plan(
            List.of(Workshop.aim(Workshop.STEEL, 30, 10).required(true).build()),
            printers(),
            one("kiln", kiln("kiln", 1000, 1450).requires("cable").build()),
            crucibles(),
            one("supply", shop.option("cable", 60).build(), shop.option("lamp", 5).build()),
            one("alarm", shop.option("alarm", 30).build(), shop.option("bell", 40).build()),
            OptionGroup.of("extra", Choice.ANY_NUMBER, shop.option("ribbon", 7).build()));
    assertThat(rejected(plan))
        .containsExactly(
            "lamp: no outfit can be put together with it",
            "bell: the cheapest outfit with it costs EUR 1640.00; the same with alarm instead costs"
                + " EUR 1630.00 and does as much or more",
            "ribbon: the cheapest outfit with it costs EUR 1637.00; the same without it costs EUR"
                + " 1630.00 and does as much or more");
  }

  /** The lamp takes the place of the hot kiln's cable, so with it no outfit reaches steel. */
  @Test
  void tellsWhatKeepsAnAimOutOfReach() {
    OutfitPlan plan =
        plan(
            List.of(Workshop.aim(Workshop.STEEL, 30, 10).required(true).build()),
            printers(),
            one(
                "kiln",
                kiln("cool kiln", 900, 1100).build(),
                kiln("hot kiln", 1000, 1450).requires("cable").build()),
            one(
                "crucible",
                crucible("crucible", 40),
                shop.option("wide crucible", 90)
                    .crucible(Workshop.crucible("wide crucible", 150))
                    .build()),
            one("supply", shop.option("cable", 60).build(), shop.option("lamp", 5).build()));
    assertThat(rejected(plan))
        .contains("lamp: no outfit with it reaches what is asked")
        // The wide crucible does not even fit; with the other one the peak stands in the way.
        .contains("cool kiln: it reaches no aim: for " + STEEL + " cool kiln is not hot enough");
  }

  /** Nothing fires titanium, which is no fault of the small crucible that nothing fits. */
  @Test
  void blamesNoPieceForWhatNothingReaches() {
    Aim titanium =
        Workshop.aim(
                Workshop.MATERIALS.feedstock("titanium grade 2 in wax and polyolefin, generic"),
                30,
                10)
            .build();
    OutfitPlan plan = plan(Workshop.question(shop).addAims(titanium));
    assertThat(rejected(plan))
        .singleElement()
        .asString()
        .startsWith("wide crucible: it reaches no aim")
        .doesNotContain("titanium");
    OutfitPlan alone = plan(Workshop.question(shop).aims(List.of(titanium)));
    assertThat(rejected(alone))
        .anyMatch(text -> text.startsWith("cool kiln: it reaches no aim: for titanium"));
  }

  /** Where no aims are stated a printer is an option like others. */
  @Test
  void comparesEquipmentByItsPriceWhereThereAreNoAims() {
    OutfitPlan plan =
        plan(
            shop.question(
                one("printer", printer("printer", 500, 150), printer("second printer", 600, 150))));
    assertThat(rejected(plan))
        .containsExactly(
            "second printer: the cheapest outfit with it costs EUR 600.00; the same with printer"
                + " instead costs EUR 500.00 and does as much or more");
  }

  @Test
  void comesCloserByALaterStepOrLessInTheWay() {
    Finding finding =
        Finding.builder()
            .code(OutfitFinding.ROUTE)
            .severity(Severity.STOP)
            .subject("kiln")
            .message("made up")
            .basis(Shop.MADE)
            .build();
    Trial early = Trial.failed(0, List.of(finding));
    Trial late = Trial.failed(2, List.of(finding, finding));
    Trial less = Trial.failed(2, List.of(finding));
    assertThat(late.closerThan(early)).isTrue();
    assertThat(early.closerThan(late)).isFalse();
    assertThat(less.closerThan(late)).isTrue();
    assertThat(late.closerThan(less)).isFalse();
    assertThat(less.closerThan(less)).isFalse();
    assertThat(early.closerThan(less)).isFalse();
  }

  /** The largest whole number up to a most for which something holds, by trying all of them. */
  @Test
  void bisectsExactly() {
    for (int most = 0; most <= 40; most++) {
      for (int last = 0; last <= most; last++) {
        int largest = last;
        int bound = most;
        Set<Integer> asked = new TreeSet<>();
        assertThat(
                Bisection.largest(
                    most,
                    number -> {
                      asked.add(number);
                      return number <= largest;
                    }))
            .isEqualTo(last);
        assertThat(asked).allSatisfy(number -> assertThat(number).isBetween(1, bound));
      }
    }
  }

  @Test
  void readsWhatIsKeptAndBought() {
    OutfitPlan plan =
        plan(
            shop.question(
                OptionGroup.of(
                    "lamp",
                    Choice.ANY_NUMBER,
                    Shop.owned("old lamp"),
                    shop.option("lamp", 20).score(5).build())));
    assertThat(plan.front()).extracting(Outfit::cost).containsExactly(euros(0), euros(20));
    List<String> lines = new ArrayList<>();
    plan.front().forEach(outfit -> outfit.groups().forEach(group -> lines.add(group.text())));
    assertThat(lines.get(0)).isEqualTo("lamp, EUR 0.00: keep old lamp");
    assertThat(lines.get(1)).startsWith("lamp, EUR 20.00: keep old lamp; lamp: 1 x 1");
  }
}
