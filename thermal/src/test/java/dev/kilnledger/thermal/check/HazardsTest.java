package dev.kilnledger.thermal.check;

import static dev.kilnledger.thermal.Workbench.alumina;
import static dev.kilnledger.thermal.Workbench.circuit;
import static dev.kilnledger.thermal.Workbench.debindingProfile;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.mullite;
import static dev.kilnledger.thermal.Workbench.sinteringProfile;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.cubicMetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.atmosphere.RoomAir;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.KilnFinding;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Each caution stands where its hazard is, over all standard materials, and nowhere else. */
class HazardsTest {
  private static final MaterialLibrary MATERIALS = MaterialLibrary.standard();
  private static final FiringCheck CHECK = FiringCheck.standard();

  /** Cautions are those of the firing, whatever is asked of it. */
  private static final FiringCheck NO_RULES = new FiringCheck(List.of());

  private static final Getter CARBON = MATERIALS.getter("granular activated carbon");

  /**
   * From this mass fraction on a mixture is classed with a carcinogen of category 1 in it, as are
   * chromium(VI) fume and cobalt; nickel metal is of category 2, from 1 % (Regulation (EC)
   * 1272/2008, annex I, table 3.6.2, from memory).
   */
  private static final double CLASSED = 0.001;

  static Stream<Feedstock> feedstocks() {
    return MATERIALS.feedstocks().stream();
  }

  static Stream<PackingPowder> powders() {
    return MATERIALS.packingPowders().stream();
  }

  static Stream<Alloy> alloys() {
    return MATERIALS.alloys().stream();
  }

  private static FiringSetup.Builder setup(
      Feedstock feedstock, PackingPowder packing, Optional<Getter> getter) {
    FiringStage.Builder sintering =
        FiringStage.sintering()
            .profile(
                sinteringProfile(
                    Math.min(
                        1290, feedstock.alloy().sinteringWindow().value().low().in(CELSIUS) + 10)))
            .packing(packing)
            .packingMass(kilograms(1));
    getter.ifPresent(carbon -> sintering.getter(carbon, grams(60)));
    return FiringSetup.builder()
        .feedstock(feedstock)
        .thickestSection(millimetres(4))
        .partsVolume(cubicCentimetres(10))
        .greenMass(grams(40))
        .route(
            FiringRoute.of(
                FiringStage.debinding()
                    .profile(debindingProfile())
                    .packing(packing)
                    .packingMass(kilograms(1))
                    .build(),
                sintering.build()))
        .kiln(kiln(1300).build())
        .crucible(mullite());
  }

  private static List<Finding> of(FiringReport report, AtmosphereFinding code) {
    return report.findings().stream().filter(finding -> finding.code() == code).toList();
  }

  /** A powder that is fine enough to sinter is fine enough to burn or to be breathed in. */
  @ParameterizedTest
  @MethodSource("alloys")
  void everyMetalPowderIsOne(Alloy alloy) {
    assertThat(alloy.cautions()).contains(Caution.METAL_POWDER);
  }

  @ParameterizedTest
  @MethodSource("alloys")
  void nickelCobaltAndChromiumAreToldWhereTheyAre(Alloy alloy) {
    double share = 0;
    for (Element element : List.of(Element.NICKEL, Element.COBALT, Element.CHROMIUM)) {
      var nominal = alloy.composition().nominal().get(element);
      share += nominal == null ? 0 : nominal.si();
    }
    assertThat(alloy.cautions().contains(Caution.NICKEL_CHROMIUM)).isEqualTo(share >= CLASSED);
  }

  @ParameterizedTest
  @MethodSource("feedstocks")
  void everyFiringCarriesTheCautionsOfItsMaterialsAndNoOthers(Feedstock feedstock) {
    for (Optional<Getter> getter : List.of(Optional.of(CARBON), Optional.<Getter>empty())) {
      // Binder alone makes carbon monoxide; heat and current are there in every firing.
      Set<Caution> expected =
          new java.util.HashSet<>(
              Set.of(
                  Caution.CARBON_MONOXIDE,
                  Caution.BINDER_FUMES,
                  Caution.HOT_WORK,
                  Caution.ELECTRICAL_LOAD,
                  Caution.MINERAL_DUST));
      expected.addAll(feedstock.alloy().cautions());
      assertThat(NO_RULES.check(setup(feedstock, alumina(), getter).build()).cautions())
          .containsExactlyInAnyOrderElementsOf(expected);
    }
  }

  @ParameterizedTest
  @MethodSource("powders")
  void packingPowdersThatAreMineralsAreTold(PackingPowder powder) {
    Feedstock copper = MATERIALS.feedstock("copper in polylactide, generic");
    assertThat(NO_RULES.check(setup(copper, powder, Optional.empty()).build()).cautions())
        .contains(Caution.MINERAL_DUST);
    PackingPowder none =
        PackingPowder.builder().from(powder).name("wet paste").cautions(List.of()).build();
    assertThat(NO_RULES.check(setup(copper, none, Optional.empty()).build()).cautions())
        .doesNotContain(Caution.MINERAL_DUST);
  }

  /** Of 100 mol of air the 20.95 of oxygen turn into 41.9 of monoxide in 120.95: 34.6 %. */
  @ParameterizedTest
  @MethodSource("feedstocks")
  void gasThatBurnsAtTheLidIsToldWithItsShareWhereThereIsCarbon(Feedstock feedstock) {
    FiringCheck check = new FiringCheck(List.of(new CarbonLasts()));
    FiringReport with = check.check(setup(feedstock, alumina(), Optional.of(CARBON)).build());
    assertThat(of(with, AtmosphereFinding.FLAMMABLE_AT_LID))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.NOTE);
              assertThat(finding.message())
                  .contains("35 % by volume of carbon monoxide")
                  .contains("burns when the lid is opened hot");
            });
    FiringReport without = check.check(setup(feedstock, alumina(), Optional.empty()).build());
    assertThat(of(without, AtmosphereFinding.FLAMMABLE_AT_LID)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("feedstocks")
  void fumesAreThoseOfTheBinderAndOfNoOther(Feedstock feedstock) {
    Finding fumes = Rules.first(new BinderFumes(), setup(feedstock, alumina(), Optional.empty()));
    assertThat(fumes.subject()).isEqualTo(feedstock.binder().name());
    assertThat(feedstock.binder().hazardousProducts())
        .isNotEmpty()
        .allSatisfy(product -> assertThat(fumes.message()).contains(product));
    List<String> others = new ArrayList<>();
    for (Binder binder : MATERIALS.binders()) {
      others.addAll(binder.hazardousProducts());
    }
    others.removeIf(
        product ->
            feedstock.binder().hazardousProducts().stream().anyMatch(own -> own.contains(product)));
    assertThat(others).allSatisfy(product -> assertThat(fumes.message()).doesNotContain(product));
    // Formaldehyde is the main product of polyoxymethylene and none of polylactide.
    boolean oxymethylene = feedstock.binder().name().equals("polyoxymethylene");
    boolean polylactide = feedstock.binder().name().equals("polylactide");
    assertThat(fumes.message().contains("formaldehyde, the main product")).isEqualTo(oxymethylene);
    assertThat(fumes.message().contains("formaldehyde")).isEqualTo(!polylactide);
  }

  @Test
  void aBinderOfWhichNothingIsKnownIsToldAsSuch() {
    Feedstock copper = MATERIALS.feedstock("copper in polylactide, generic");
    Feedstock unknown =
        Feedstock.builder()
            .from(copper)
            .binder(
                Binder.builder()
                    .from(copper.binder())
                    .name("nobody's binder")
                    .hazardousProducts(List.of())
                    .build())
            .build();
    FiringReport report = CHECK.check(setup(unknown, alumina(), Optional.empty()).build());
    assertThat(report.of(FiringFinding.BINDER_FUMES).get(0).severity())
        .isEqualTo(Severity.UNDETERMINED);
    assertThat(report.cautions()).contains(Caution.BINDER_FUMES);
  }

  @Test
  void theRoomIsToldWithFiguresOrAsNotStated() {
    Feedstock copper = MATERIALS.feedstock("copper in polylactide, generic");
    FiringSetup.Builder firing = setup(copper, alumina(), Optional.of(CARBON));
    assertThat(of(CHECK.check(firing.build()), AtmosphereFinding.ROOM_CONCENTRATION))
        .singleElement()
        .satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.UNDETERMINED));
    FiringReport small =
        CHECK.check(
            firing
                .room(RoomAir.ofChanges(cubicMetres(10), 0.1))
                .oxygenInflow(
                    Sourced.of(
                        Span.of(gramsPerHour(20), gramsPerHour(40)), Source.user("invented")))
                .build());
    // 40 g/h of oxygen make 70 g/h of monoxide in 1 m3/h: far above any limit.
    assertThat(of(small, AtmosphereFinding.ROOM_CONCENTRATION))
        .anySatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.STOP);
              assertThat(finding.message()).contains("ppm");
            });
  }

  @Test
  void theKilnIsToldAsHotAndAsALoad() {
    Feedstock copper = MATERIALS.feedstock("copper in polylactide, generic");
    FiringSetup.Builder firing = setup(copper, alumina(), Optional.of(CARBON));
    FiringReport report = CHECK.check(firing.build());
    assertThat(report.of(KilnFinding.OPENING))
        .hasSize(2)
        .allSatisfy(finding -> assertThat(finding.message()).contains("cools for"));
    assertThat(report.of(FiringFinding.SUPPLY_CURRENT).get(0).severity())
        .isEqualTo(Severity.UNDETERMINED);
    // 13.0 A for hours: 80 % of 16 A is 12.8 A, of 20 A 16 A.
    for (double breaker : new double[] {16, 20}) {
      Finding current =
          CHECK
              .check(firing.supplyCircuit(circuit(breaker)).build())
              .of(FiringFinding.SUPPLY_CURRENT)
              .get(0);
      assertThat(current.severity()).isEqualTo(breaker < 20 ? Severity.STOP : Severity.PASSED);
      assertThat(current.message()).contains("the local code and a licensed electrician decide");
    }
  }

  /** Short, neutral, with a figure where there is one, and never in the place of who decides. */
  @ParameterizedTest
  @EnumSource(Caution.class)
  void cautionsAreShortAndDeferToWhoDecides(Caution caution) {
    assertThat(caution.text()).hasSizeBetween(40, 330).doesNotContain("!");
    assertThat(caution.text().split("\\. ")).hasSizeLessThanOrEqualTo(5);
    assertThat(caution.text().toLowerCase(Locale.ROOT))
        .doesNotContain("safe ", "harmless", "guarantee", "deadly", "never worry", "you must");
    String decides = caution.text() + " " + caution.source().text();
    assertThat(
            Arrays.asList("safety data sheet", "local", "licensed", "CFR", "NFPA", "hot work")
                .stream()
                .filter(decides::contains))
        .isNotEmpty();
  }

  @Test
  void carbonMonoxideIsToldWithItsFiguresAndAsFlammable() {
    assertThat(Caution.CARBON_MONOXIDE.text())
        .contains("35 ppm", "200 ppm", "50 ppm")
        .contains("flammable when a hot lid is opened");
  }
}
