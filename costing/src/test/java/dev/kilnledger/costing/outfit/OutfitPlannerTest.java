package dev.kilnledger.costing.outfit;

import static dev.kilnledger.costing.outfit.Shop.euros;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.EquipmentFinding;
import dev.kilnledger.core.equipment.FilamentPreheater;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.PartingLayer;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.burnout.BurnOutFinding;
import dev.kilnledger.thermal.check.FiringFinding;
import dev.kilnledger.units.Amounts;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Outfits held against the checks. */
class OutfitPlannerTest {
  private static final String BRONZE = "tin bronze 90/10";
  private static final String STEEL = "stainless steel 316L";

  private final Shop shop = new Shop();

  private static OutfitPlanner planner() {
    return new OutfitPlanner(Workshop.ROUTES, Workshop.fewRules());
  }

  private OutfitQuestion.Builder workshop() {
    return Workshop.question(shop);
  }

  @Test
  void findsTheFrontOfCostAndCapability() {
    OutfitPlan plan =
        planner().plan(workshop().addBudgets(euros(1000), euros(2000), euros(5000)).build());
    // By hand: bronze needs 1000 + 40 + 30; the printer for 500 makes larger parts; steel needs
    // the hot kiln, 3000, and its circuit, 600. The wide crucible, 170 mm outside, fits no kiln.
    assertThat(plan.front())
        .extracting(Outfit::text)
        .containsExactly(
            "old printer, cool kiln, crucible, socket, alarm for EUR 1070.00",
            "printer, cool kiln, crucible, socket, alarm for EUR 1570.00",
            "old printer, hot kiln, crucible, heavy circuit, alarm for EUR 3670.00",
            "printer, hot kiln, crucible, heavy circuit, alarm for EUR 4170.00");
    assertThat(plan.front().get(0).reached()).containsExactly(BRONZE);
    assertThat(plan.front().get(2).reached()).containsExactly(BRONZE, STEEL);
    assertThat(plan.front().get(0).unused()).isEmpty();
    assertThat(plan.front().get(3).unused())
        .extracting(Option::name)
        .containsExactly("old printer", "socket");
    assertThat(plan.answers().get(0).shortfall()).contains(euros(70));
    assertThat(plan.answers().get(1).best()).contains(plan.front().get(1));
    assertThat(plan.answers().get(2).best()).contains(plan.front().get(3));
    assertThat(plan.unreachable()).isEmpty();

    Upgrade upgrade = plan.upgrades().get(0);
    assertThat(upgrade.gained()).containsExactly(STEEL);
    assertThat(upgrade.lost()).isEmpty();
    assertThat(upgrade.extraCost()).isEqualTo(euros(3600));
    assertThat(upgrade.idle()).extracting(Option::name).containsExactly("cool kiln", "socket");
    assertThat(upgrade.reused()).isEmpty();
  }

  /**
   * The green part is the oversize factor k times 30 mm square. The old printer's 60 mm and the
   * crucible's 100 mm less twice 10 mm of packing leave 60 and 80 mm: 60 / (30 k) times the part.
   */
  @Test
  void followsPrinterAndCrucibleThroughTheShrinkage() {
    OutfitPlan plan = planner().plan(workshop().build());
    Aim bronze = Workshop.aim(Workshop.BRONZE, 30, 10).build();
    Passage passage = MassBalancePassage.standard().passage(bronze.part(), bronze.feedstock());
    double oversize = passage.oversize().x().expected().si();
    Capability small = plan.front().get(0).capabilities().get(0);
    Capability large = plan.front().get(1).capabilities().get(0);
    // In whole thousandths of 30 mm, rounded down: up to 0.03 mm less.
    assertThat(small.largestEnvelope().orElseThrow().x().in(MILLIMETRE))
        .isCloseTo(60 / oversize - 0.015, within(0.015 + 1e-6));
    assertThat(large.largestEnvelope().orElseThrow().x().in(MILLIMETRE))
        .isCloseTo(80 / oversize - 0.015, within(0.015 + 1e-6));
    // 100 mm less 10 mm at each wall, and 10 mm between parts: so many in a row, so many layers.
    int row = (int) ((80 + 10) / (30 * oversize + 10));
    int layers = (int) ((80 + 10) / (10 * oversize + 10));
    assertThat(small.partsPerFiring()).isEqualTo(row * row * layers);
    assertThat(small.madeWith()).containsExactly("old printer", "cool kiln", "crucible", "socket");
    assertThat(small.route()).contains(Workshop.route(820, true));
  }

  @Test
  void letsTheRulesLimitThePartsOfAFiring() {
    Aim thick = Workshop.aim(Workshop.BRONZE, 30, 10).clearance(millimetres(1)).build();
    OutfitPlan plan = planner().plan(workshop().aims(List.of(thick)).build());
    Passage passage = MassBalancePassage.standard().passage(thick.part(), thick.feedstock());
    double part = passage.green().volume().si() * 1e9;
    assertThat(plan.front().get(0).capabilities().get(0).partsPerFiring())
        .isEqualTo((int) (1e6 / 6 / part));
  }

  @Test
  void tellsWhyAPieceIsRejectedAndWhyAnAimIsNotReached() {
    OutfitPlan plan = planner().plan(workshop().addBudgets(euros(2000)).build());
    assertThat(plan.rejected())
        .extracting(Rejection::text)
        .containsExactly(
            "wide crucible: it reaches no aim: for tin bronze 90/10 the crucible wide crucible,"
                + " 170.0 mm x 170.0 mm x 170.0 mm, does not fit into the chamber of 160.0 mm x"
                + " 160.0 mm x 160.0 mm; for stainless steel 316L the crucible wide crucible, 170.0"
                + " mm x 170.0 mm x 170.0 mm, does not fit into the chamber of 160.0 mm x 160.0 mm x"
                + " 160.0 mm");
    assertThat(plan.rejected().get(0).findings())
        .extracting(finding -> (Object) finding.code())
        .containsOnly(EquipmentFinding.KILN_SPACE);
    BudgetAnswer answer = plan.answers().get(0);
    assertThat(answer.rejected())
        .extracting(rejection -> rejection.option().name() + " " + rejection.reason())
        .containsExactly(
            "hot kiln OVER_BUDGET", "wide crucible FAILS_CHECKS", "heavy circuit BEATEN");
    assertThat(answer.rejected().get(0).cheapestWith()).contains(euros(3670));
    Capability steel = plan.front().get(0).capabilities().get(1);
    assertThat(steel.text())
        .isEqualTo("stainless steel 316L is out of reach: cool kiln is not hot enough");
  }

  @Test
  void tellsAPieceThatCannotStandBesideWhatItRequires() {
    OutfitQuestion question = workshop().build();
    List<OptionGroup> groups = new ArrayList<>(question.catalogue().groups());
    groups.add(
        OptionGroup.of(
            "spare",
            Choice.ANY_NUMBER,
            shop.option("spare kiln", 10)
                .kiln(Workshop.kiln("spare kiln", 1100, 160, 2))
                .requires("hot kiln")
                .requires("socket")
                .build()));
    OutfitPlan plan =
        planner()
            .plan(
                OutfitQuestion.builder()
                    .from(question)
                    .catalogue(OutfitCatalogue.of(groups))
                    .prices(shop.book())
                    .build());
    // The hot kiln requires the heavy circuit, which takes the place of the socket.
    assertThat(plan.rejected())
        .extracting(rejection -> rejection.option().name() + " " + rejection.reason())
        .containsExactly("wide crucible FAILS_CHECKS", "spare kiln NOT_ALLOWED");
  }

  @Test
  void tellsAnAimThatNothingReaches() {
    Aim titanium =
        Workshop.aim(
                Workshop.MATERIALS.feedstock("titanium grade 2 in wax and polyolefin, generic"),
                30,
                10)
            .required(true)
            .build();
    OutfitPlan plan = planner().plan(workshop().addAims(titanium).addBudgets(euros(9000)).build());
    assertThat(plan.front()).isEmpty();
    assertThat(plan.cheapest()).isEmpty();
    assertThat(plan.unreachable()).hasSize(1);
    assertThat(plan.unreachable().get(0).findings())
        .extracting(finding -> (Object) finding.code())
        .containsExactly(OutfitFinding.ROUTE);
    BudgetAnswer answer = plan.answers().get(0);
    assertThat(answer.best()).isEmpty();
    assertThat(answer.shortfall()).isEmpty();
    assertThat(answer.explanation())
        .startsWith("A budget of EUR 9000.00 buys no outfit: there is none, whatever it may cost");
    assertThat(plan.upgrades()).isEmpty();
  }

  @Test
  void wantsTheGetterOfTheRouteWhereGettersAreOptions() {
    OutfitQuestion question = workshop().build();
    List<OptionGroup> groups = new ArrayList<>(question.catalogue().groups());
    groups.add(
        OptionGroup.of(
            "getter",
            Choice.AT_MOST_ONE,
            shop.option("graphite", 20)
                .getter(Workshop.MATERIALS.getter("graphite powder"))
                .build(),
            shop.option("carbon", 25)
                .getter(Workshop.MATERIALS.getter("granular activated carbon"))
                .build()));
    OutfitPlan plan =
        planner()
            .plan(
                OutfitQuestion.builder()
                    .from(question)
                    .catalogue(OutfitCatalogue.of(groups))
                    .prices(shop.book())
                    .measures(List.of())
                    .build());
    // Bronze takes carbon, 1070 + 25; steel's route takes none, 3670; both metals 3670 + 25.
    assertThat(plan.front())
        .extracting(outfit -> outfit.cost() + " " + outfit.reached())
        .containsExactly(
            "EUR 1095.00 [tin bronze 90/10]",
            "EUR 3670.00 [stainless steel 316L]",
            "EUR 3695.00 [tin bronze 90/10, stainless steel 316L]");
    assertThat(plan.front().get(0).capabilities().get(0).madeWith()).contains("carbon");
  }

  @Test
  void fitsNozzlesPreheatersAndPartingLayersToThePrinter() {
    OutfitQuestion.Builder question =
        shop.question(
                OptionGroup.of(
                    "printer",
                    Choice.EXACTLY_ONE,
                    shop.option("brass printer", 200)
                        .printer(Workshop.printer("brass printer", 100, false))
                        .build()),
                OptionGroup.of(
                    "nozzle",
                    Choice.ANY_NUMBER,
                    shop.option("steel nozzle", 15).nozzle(nozzle(0.6)).build(),
                    shop.option("pipe", 1).nozzle(nozzle(2)).build()),
                OptionGroup.of(
                    "fittings",
                    Choice.ANY_NUMBER,
                    shop.option("warmer", 40)
                        .preheater(
                            FilamentPreheater.of("warmer", Amounts.celsius(45), Amounts.watts(30)))
                        .build(),
                    shop.option("paste", 10)
                        .partingLayer(
                            PartingLayer.of("paste", Sourced.of(Amounts.celsius(1400), Shop.MADE)))
                        .build()),
                OptionGroup.of(
                    "kiln with crucible",
                    Choice.EXACTLY_ONE,
                    shop.option("kit", 2000)
                        .kiln(Workshop.kiln("kit kiln", 1400, 160, 3))
                        .crucible(Workshop.crucible("kit crucible", 100))
                        .build()))
            .addAims(Workshop.aim(Workshop.STEEL, 30, 10).build());
    OutfitPlan plan = planner().plan(question.prices(shop.book()).build());
    // Brass is not three times as hard as steel powder, so the nozzle is needed.
    assertThat(plan.front())
        .extracting(Outfit::text)
        .containsExactly("brass printer, steel nozzle, kit for EUR 2215.00");
    assertThat(plan.rejected())
        .extracting(rejection -> rejection.option().name() + " " + rejection.reason())
        .containsExactly("pipe FAILS_CHECKS", "warmer BEATEN", "paste BEATEN");
    assertThat(plan.rejected().get(0).message())
        .isEqualTo(
            "it reaches no aim: for stainless steel 316L the nozzle's bore is 2 mm and the filament"
                + " of brass printer 1.75 mm thick; accepted is a finer bore");
    // Nothing but passed findings is asked for: now warmer and paste are needed as well.
    OutfitPlan strict =
        planner()
            .plan(
                question
                    .prices(shop.book())
                    .worstAccepted(Severity.PASSED)
                    .aims(List.of(Workshop.aim(Workshop.STEEL, 30, 10).build()))
                    .build());
    assertThat(strict.front())
        .extracting(Outfit::text)
        .containsExactly("brass printer, steel nozzle, warmer, paste, kit for EUR 2265.00");
  }

  private static Nozzle nozzle(double bore) {
    return Nozzle.of(Workshop.MATERIALS.nozzleMaterial("hardened tool steel"), millimetres(bore));
  }

  @Test
  void asksForTheRouteOfEachPlaceOnce() {
    List<FiringPlace> asked = new ArrayList<>();
    Routes routes =
        (aim, place) -> {
          asked.add(place);
          return RouteAnswer.of(
              Optional.of(Workshop.route(820, false)),
              List.of(
                  Finding.builder()
                      .code(OutfitFinding.ROUTE)
                      .severity(
                          place.kiln().name().equals("hot kiln") ? Severity.WARNING : Severity.NOTE)
                      .subject("route")
                      .message("made up")
                      .basis(Shop.MADE)
                      .build()));
        };
    OutfitPlan plan =
        new OutfitPlanner(routes, Workshop.fewRules())
            .plan(workshop().aims(List.of(Workshop.aim(Workshop.BRONZE, 30, 10).build())).build());
    // The wide crucible fits no kiln, so there are two places.
    assertThat(asked).doesNotHaveDuplicates().hasSize(2);
    assertThat(plan.front()).extracting(Outfit::cost).containsExactly(euros(1070), euros(1570));
    assertThat(plan.rejected())
        .extracting(Rejection::text)
        .contains("hot kiln: it reaches no aim: for tin bronze 90/10 made up");
    assertThat(plan.front().get(0).capabilities().get(0).findings())
        .extracting(Finding::message)
        .contains("made up");
  }

  @Test
  void answersByTheStandardChecksWithFindingsAndCautions() throws Exception {
    OutfitPlan plan =
        OutfitPlanner.standard(Workshop.ROUTES)
            .plan(workshop().worstAccepted(Severity.WARNING).addBudgets(euros(2000)).build());
    Capability bronze = plan.front().get(0).capabilities().get(0);
    assertThat(bronze.reached()).isTrue();
    assertThat(bronze.findings())
        .extracting(finding -> (Object) finding.code())
        .contains(FiringFinding.BINDER_FUMES, BurnOutFinding.BINDER_REMAINING);
    assertThat(plan.front().get(0).cautions())
        .contains(Caution.CARBON_MONOXIDE, Caution.ELECTRICAL_LOAD, Caution.MINERAL_DUST);
    assertThat(plan.front().get(0).explanation())
        .anyMatch(line -> line.startsWith("Caution: Carbon in a hot crucible"));
    // Steel needs 1,350 degrees: by the standard checks too the kiln of 1,100 stops it.
    assertThat(plan.front().get(0).capabilities().get(1).findings())
        .extracting(finding -> (Object) finding.code())
        .contains(FiringFinding.KILN_REACHES_PEAK);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(plan);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(in.readObject()).isEqualTo(plan);
    }
  }

  @Test
  void refusesAimsWithoutEquipmentAndPartsThatContradictThemselves() {
    OptionGroup alarm =
        OptionGroup.of("alarm", Choice.EXACTLY_ONE, shop.option("alarm", 30).build());
    assertThatThrownBy(
            () ->
                shop.question(alarm).addAims(Workshop.aim(Workshop.BRONZE, 30, 10).build()).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "outfit question: no option brings a printer; accepted is one at least where there are"
                + " aims; and no option brings a kiln; accepted is one at least where there are"
                + " aims; and no option brings a crucible; accepted is one at least where there are"
                + " aims");
    assertThatThrownBy(
            () ->
                Workshop.aim(Workshop.BRONZE, 30, 10)
                    .clearance(millimetres(-1))
                    .leastPartsPerFiring(0)
                    .build())
        .hasMessage(
            "aim tin bronze 90/10: clearance is -1 mm; accepted is zero or more; and least parts"
                + " per firing is 0; accepted is 1 or more");
    Aim heavy =
        Aim.builder()
            .from(Workshop.aim(Workshop.BRONZE, 30, 10).build())
            .part(
                Part.builder()
                    .from(Workshop.aim(Workshop.BRONZE, 30, 10).build().part())
                    .finishedMass(Amounts.kilograms(1))
                    .build())
            .build();
    OutfitQuestion question = workshop().aims(List.of(heavy)).build();
    OutfitPlanner none = OutfitPlanner.standard(Routes.of(Map.of()));
    assertThatThrownBy(() -> none.plan(question))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("outfit plan: ")
        .hasMessageContaining("cam");
  }
}
