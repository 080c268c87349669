package dev.kilnledger.thermal.load;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.KILOGRAM;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.ChargePart;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.EquipmentFinding;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.LinearShrinkage;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.part.Outline;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.part.PrintAxis;
import dev.kilnledger.core.part.PrintConditions;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import java.util.List;
import org.junit.jupiter.api.Test;
import si.uom.quantity.MassFlowRate;

class LoadPlannerTest {
  private static final LoadPlanner PLANNER = LoadPlanner.standard();

  /** 20 to 1000 °C in 7 h, 3 h of hold, back to 20 °C in 9.8 h. */
  private static final Profile SINTERING =
      Profile.from(celsius(20))
          .rampTo(celsius(1000), kelvinPerHour(140))
          .hold(hours(3))
          .coolTo(celsius(20), kelvinPerHour(100))
          .build();

  /** Discs of 25 x 8.333 mm that shrink by a sixth: 30 x 10 mm green, 7.0686 cm3. */
  private static final Passage DISC =
      MassBalancePassage.standard()
          .passage(
              Part.builder()
                  .name("disc")
                  .envelope(Envelope.of(millimetres(25), millimetres(25), millimetres(25.0 / 3)))
                  .finishedVolume(cubicCentimetres(Math.PI / 4 * 6.25 * 2.5 / 3))
                  .thickestSection(millimetres(8))
                  .build(),
              Workbench.feedstock(Workbench.copper()),
              PrintConditions.builder()
                  .measuredShrinkage(
                      Sourced.of(
                          LinearShrinkage.exactly(ratio(1.0 / 6), ratio(1.0 / 6), ratio(1.0 / 6)),
                          Source.user("test")))
                  .build());

  private static LoadTask.Builder task() {
    return LoadTask.builder()
        .passage(DISC)
        .part(ChargePart.builder().envelope(DISC.green().envelope()).outline(Outline.ROUND).build())
        .spacing(Spacing.of(millimetres(10)))
        .addStages(
            PlannedStage.debinding()
                .profile(Workbench.debindingProfile())
                .packing(Workbench.alumina())
                .build(),
            PlannedStage.sintering()
                .profile(SINTERING)
                .packing(Workbench.alumina())
                .getter(Workbench.carbon())
                .build());
  }

  private static LoadTask.Builder task(double low, double high) {
    return task()
        .oxygenInflow(
            Sourced.of(Span.of(gramsPerHour(low), gramsPerHour(high)), Source.user("test")));
  }

  private static Crucible.Builder crucible(String name, double diameter, double height) {
    return Crucible.builder()
        .name(name)
        .material(Workbench.mullite().material())
        .cavity(RoundCavity.of(millimetres(diameter), millimetres(height)))
        .mass(kilograms(1))
        .heatCapacity(joulesPerKilogramKelvin(1100));
  }

  private static Finding finding(List<Finding> findings, FindingCode code) {
    return findings.stream().filter(f -> f.code() == code).findFirst().orElseThrow();
  }

  /**
   * The example of the class. By hand: 9 to a layer (q = 3.75), (140 - 20 + 10) / 20 = 6 layers,
   * 130 mm high; pi/4 x 16^2 x 13 - 54 x 7.0686 = 2232.1 cm3; powder of 0.8 g/cm3 poured and 1.0 to
   * 1.5 tapped.
   */
  @Test
  void fillsTheCrucibleAroundAsManyPartsAsFit() {
    LoadPlan plan = PLANNER.plan(task(0.1, 0.2).build(), Workbench.mullite());
    assertThat(plan.parts()).isEqualTo(54);
    assertThat(plan.fits()).isTrue();
    StageLoad debinding = plan.stages().get(0);
    assertThat(debinding.fillHeight().in(MILLIMETRE)).isCloseTo(130, within(1e-6));
    assertThat(debinding.packingVolume().in(CUBIC_CENTIMETRE)).isCloseTo(2232.1, within(0.05));
    assertThat(debinding.packingMass().span().low().in(KILOGRAM)).isCloseTo(1.7857, within(5e-5));
    assertThat(debinding.packingMass().expected().in(KILOGRAM)).isCloseTo(2.7901, within(1e-4));
    assertThat(debinding.packingMass().span().high().in(KILOGRAM)).isCloseTo(3.3481, within(1e-4));
    assertThat(debinding.getter()).isEmpty();
    assertThat(debinding.roomLeft().in(MILLIMETRE)).isCloseTo(10, within(1e-6));
    assertThat(plan.cautions())
        .containsExactlyInAnyOrder(
            Caution.HOT_WORK, Caution.MINERAL_DUST, Caution.CARBON_MONOXIDE, Caution.BINDER_FUMES);
    assertThat(finding(plan.findings(), LoadFinding.PACKING_MASS).message())
        .isEqualTo(
            "the debinding stage takes 2.23 L of alumina, 1.79 to 3.35 kg by grade and by how"
                + " densely it is packed, about 2.79 kg tapped");
  }

  /**
   * By hand. Carbon burns from 350 °C: 650 / 140 + 3 + 650 / 100 = 14.143 h at 0.2 g/h are 2.8286 g
   * of oxygen. The gas: 2814.9 cm3 less 1785.7 g / 3.9 and 54 x 7.0686 x 0.5563 cm3 of metal are
   * 2.145 litres with 0.27862 g at the start and, by the ideal gas law, 0.06692 g a litre drawn in
   * down to 350 °C. Of 3.5697 g of oxygen to monoxide 0.75073 is carbon: 2.680 g; x 1.5 / 0.9 =
   * 4.467 g.
   */
  @Test
  void laysInGetterForTheMostOxygenAshAndReserve() {
    LoadPlan plan = PLANNER.plan(task(0.1, 0.2).build(), Workbench.mullite());
    GetterLoad getter = plan.stages().get(1).getter().orElseThrow();
    assertThat(getter.budget().carbonNeeded().high().in(GRAM)).isCloseTo(2.680, within(0.001));
    assertThat(getter.fill().mass().in(GRAM)).isCloseTo(4.5, within(1e-9));
    // 4.5 g of 0.4 to 0.5 g/cm3 on 201.06 cm2
    assertThat(getter.depth().low().in(MILLIMETRE)).isCloseTo(0.4476, within(1e-4));
    assertThat(getter.depth().high().in(MILLIMETRE)).isCloseTo(0.5595, within(1e-4));
    assertThat(finding(plan.findings(), LoadFinding.GETTER_ROOM).message())
        .isEqualTo(
            "the getter of the sintering stage lies 0.4 to 0.6 mm deep, and over the packing there"
                + " are 10.0 mm");
    Finding mass = finding(plan.findings(), LoadFinding.GETTER_MASS);
    assertThat(mass.severity()).isEqualTo(Severity.PASSED);
    assertThat(mass.message())
        .isEqualTo(
            "the oxygen of the sintering stage may ask for 2.7 g of carbon; with the highest ash"
                + " and 50 % in reserve that is 4.5 g of granular carbon");
    // the balance agrees that it lasts
    assertThat(getter.budget().spentAtEarliest()).isEmpty();
  }

  /** Without the inflow the crucible's own air asks for 2.145 x 0.34554 x 0.75073 = 0.556 g. */
  @Test
  void withoutTheExchangeTheGetterIsOnlyBounded() {
    LoadPlan plan = PLANNER.plan(task().build(), Workbench.mullite());
    GetterLoad getter = plan.stages().get(1).getter().orElseThrow();
    assertThat(getter.enough()).isFalse();
    assertThat(getter.fill().mass().in(GRAM)).isCloseTo(1.0, within(1e-9)); // 0.927 rounded up
    Finding mass = finding(plan.findings(), LoadFinding.GETTER_MASS);
    assertThat(mass.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(mass.message())
        .endsWith(
            "from the crucible's own air alone; with the highest ash and 50 % in reserve that is at"
                + " least 1.0 g of granular carbon, and the exchange through lid and packing, which"
                + " decides, is not stated");
  }

  /** 20 g/h: 213 g of carbon and about 355 g of getter, 44 mm deep; 4 layers leave 50 mm. */
  @Test
  void leavesLayersOutForTheGetter() {
    LoadPlan plan = PLANNER.plan(task(10, 20).build(), Workbench.mullite());
    assertThat(plan.parts()).isEqualTo(36);
    StageLoad sintering = plan.stages().get(1);
    double depth = sintering.getter().orElseThrow().depth().high().in(MILLIMETRE);
    assertThat(depth).isBetween(44.0, 44.5);
    assertThat(sintering.roomLeft().in(MILLIMETRE)).isCloseTo(50 - depth, within(1e-6));
    assertThat(plan.fits()).isTrue();

    LoadPlan asked = PLANNER.plan(task(10, 20).parts(54).build(), Workbench.mullite());
    assertThat(asked.parts()).isEqualTo(54);
    assertThat(asked.fits()).isFalse();
    Finding room = finding(asked.findings(), LoadFinding.GETTER_ROOM);
    assertThat(room.severity()).isEqualTo(Severity.STOP);
    assertThat(room.message())
        .startsWith("the getter of the sintering stage lies 35.")
        .endsWith("over the packing there are 10.0 mm: fewer layers or a taller crucible");
  }

  /** Carbon does not burn below 350 °C, and the firing ends at 300. */
  @Test
  void laysInNoGetterWhereTheFiringStaysTooCoolForIt() {
    PlannedStage cool =
        PlannedStage.sintering()
            .profile(Profile.from(celsius(20)).rampTo(celsius(300), kelvinPerHour(140)).build())
            .packing(Workbench.alumina())
            .getter(Workbench.carbon())
            .build();
    LoadPlan plan = PLANNER.plan(task(10, 20).stages(List.of(cool)).build(), Workbench.mullite());
    assertThat(plan.stages().get(0).getter()).isEmpty();
    assertThat(plan.stages().get(0).roomLeft().in(MILLIMETRE)).isCloseTo(10, within(1e-6));
    assertThat(plan.fits()).isTrue();
    assertThat(plan.cautions())
        .as("no binder burns")
        .containsExactlyInAnyOrder(Caution.HOT_WORK, Caution.MINERAL_DUST, Caution.CARBON_MONOXIDE);
    Finding mass = finding(plan.findings(), LoadFinding.GETTER_MASS);
    assertThat(mass.severity()).isEqualTo(Severity.NOTE);
    assertThat(mass.message())
        .isEqualTo(
            "the sintering stage stays too cool for granular carbon to burn: none is laid in");
  }

  /** 140 - 130 = 10 mm over six layers; 0.5595 mm of getter and 5 mm free above it have room. */
  @Test
  void keepsTheHeadroomFreeOverTheGetter() {
    Spacing spacing =
        Spacing.builder().from(Spacing.of(millimetres(10))).headroom(millimetres(5)).build();
    LoadPlan plan = PLANNER.plan(task(0.1, 0.2).spacing(spacing).build(), Workbench.mullite());
    assertThat(plan.parts()).isEqualTo(54);
    Finding room = finding(plan.findings(), LoadFinding.GETTER_ROOM);
    assertThat(room.severity()).isEqualTo(Severity.PASSED);
    assertThat(room.message())
        .contains("deep and 5 mm are to stay free over it, and over the packing there are 10.0 mm");
    assertThat(room.measured().orElseThrow().si()).isCloseTo(0.0055595, within(1e-6));
    assertThat(room.limit().orElseThrow().si()).isCloseTo(0.010, within(1e-9));
  }

  /**
   * 2.7 g/h are 38.2 g of oxygen, with the gas some 49 g of getter, 6 mm deep: it has room over six
   * layers in 10 mm, but not with 5 mm free above it; five layers leave 30 mm.
   */
  @Test
  void leavesALayerOutForGetterAndHeadroomTogether() {
    Spacing spacing =
        Spacing.builder().from(Spacing.of(millimetres(10))).headroom(millimetres(5)).build();
    assertThat(PLANNER.plan(task(1, 2.7).build(), Workbench.mullite()).parts()).isEqualTo(54);
    LoadPlan plan = PLANNER.plan(task(1, 2.7).spacing(spacing).build(), Workbench.mullite());
    assertThat(plan.parts()).isEqualTo(45);
    assertThat(plan.fits()).isTrue();
  }

  /**
   * Bars of 20 x 20 x 100 mm, any side down. Upright 4 + 4 + 3 + 3 stand in rows 30 mm apart, in
   * one layer with 140 - 120 = 20 mm over it; lying, three to a layer, two layers fill 70 mm. The
   * getter for 20 g/h is 44 mm deep, as above.
   */
  @Test
  void laysPartsOnAnotherSideWhereThatLeavesRoomForTheGetter() {
    LoadTask task =
        task(10, 20)
            .part(
                ChargePart.builder()
                    .envelope(box(20, 20, 100))
                    .addUpright(PrintAxis.X, PrintAxis.Y, PrintAxis.Z)
                    .build())
            .parts(6)
            .build();
    LoadPlan plan = PLANNER.plan(task, Workbench.mullite());
    assertThat(plan.arrangement().orElseThrow().up()).isNotEqualTo(PrintAxis.Z);
    assertThat(plan.parts()).isEqualTo(6);
    assertThat(plan.stages().get(0).fillHeight().in(MILLIMETRE)).isCloseTo(70, within(1e-6));
    assertThat(plan.fits()).isTrue();
    assertThat(
            PLANNER
                .plan(
                    LoadTask.builder().from(task).oxygenInflow(noInflow()).build(),
                    Workbench.mullite())
                .arrangement()
                .orElseThrow()
                .up())
        .as("where the getter is thin they stand as most of them do")
        .isEqualTo(PrintAxis.Z);
  }

  private static Sourced<Span<MassFlowRate>> noInflow() {
    return Sourced.of(Span.of(gramsPerHour(0), gramsPerHour(0)), Source.user("test"));
  }

  /** What may spoil the part or the equipment counts as not fitting. */
  @Test
  void doesNotFitWhereSomethingWarns() {
    LoadPlan plan = PLANNER.plan(task(0.1, 0.2).build(), Workbench.mullite());
    Finding finding = finding(plan.findings(), LoadFinding.GETTER_ROOM);
    for (Severity severity : Severity.values()) {
      Finding other = Finding.builder().from(finding).severity(severity).build();
      assertThat(LoadPlan.builder().from(plan).addFindings(other).build().fits())
          .as(severity.name())
          .isEqualTo(severity != Severity.WARNING && severity != Severity.STOP);
    }
  }

  @Test
  void takesOnePartOfTheGreenSizeUnlessTold() {
    LoadTask task =
        LoadTask.builder()
            .passage(DISC)
            .spacing(Spacing.of(millimetres(10)))
            .parts(1)
            .stages(task().build().stages())
            .build();
    assertThat(task.part()).isEqualTo(ChargePart.of(DISC.green().envelope()));
    assertThat(PLANNER.plan(task, Workbench.mullite()).parts()).isEqualTo(1);
  }

  @Test
  void planBecomesARoute() {
    LoadPlan plan = PLANNER.plan(task(0.1, 0.2).parts(9).build(), Workbench.mullite());
    FiringRoute route = plan.route();
    assertThat(route.stages()).hasSize(2);
    assertThat(route.getterMass())
        .isEqualTo(plan.stages().get(1).getter().orElseThrow().fill().mass());
    FiringStage weighed = plan.stages().get(0).stage(kilograms(0.5));
    assertThat(weighed.packingMass()).isEqualTo(kilograms(0.5));
    // and its stages are those planned
    assertThat(task().stages(List.of()).route(route).build().stages())
        .isEqualTo(plan.task().stages());
    // one layer: 10 + 10 + 10 mm, 603.2 - 63.6 cm3
    assertThat(plan.stages().get(0).packingVolume().in(CUBIC_CENTIMETRE))
        .isCloseTo(539.6, within(0.05));
  }

  @Test
  void tellsWhatDoesNotFit() {
    LoadPlan tooMany = PLANNER.plan(task(0.1, 0.2).parts(55).build(), Workbench.mullite());
    assertThat(tooMany.parts()).isEqualTo(54);
    assertThat(finding(tooMany.findings(), EquipmentFinding.CRUCIBLE_SPACE).severity())
        .isEqualTo(Severity.STOP);
    LoadPlan none = PLANNER.plan(task().build(), crucible("cup", 40, 40).build());
    assertThat(none.parts()).isZero();
    assertThat(none.stages()).isEmpty();
    assertThat(none.fits()).isFalse();
  }

  /** q is 2.75 in 120 mm: 5 to a layer, 4 layers in 100 mm are 20. The kiln's chamber is a cube. */
  @Test
  void choosesTheSmallestCrucibleThatSuits() {
    Crucible small = crucible("small", 120, 100).outside(box(130, 130, 110)).build();
    Crucible right = crucible("right", 160, 140).outside(box(170, 170, 150)).build();
    Crucible unknown = crucible("unknown", 165, 140).build();
    Crucible wide = crucible("wide", 240, 140).outside(box(260, 260, 150)).build();
    Crucible large = crucible("large", 170, 140).outside(box(180, 180, 150)).build();
    Kiln kiln = Workbench.kiln(1300).build();
    CrucibleChoice choice =
        PLANNER.smallest(
            task(0.1, 0.2).parts(50).build(),
            List.of(wide, large, small, unknown, right),
            kiln,
            millimetres(20));
    assertThat(choice.options())
        .extracting(option -> option.crucible().name())
        .containsExactly("small", "right", "unknown", "large", "wide");
    assertThat(choice.chosen().orElseThrow().crucible()).isEqualTo(right);
    assertThat(choice.chosen().orElseThrow().inChamber()).isEqualTo(1);
    assertThat(choice.rejected())
        .extracting(option -> option.crucible().name())
        .containsExactly("small", "unknown", "wide");
    assertThat(choice.rejected().get(0).reasons())
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("there is room for 20, in 4 layers of 5"));
    assertThat(choice.rejected().get(1).reasons())
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("outer size of the crucible unknown"));
    assertThat(finding(choice.options().get(1).findings(), LoadFinding.CRUCIBLES_IN_CHAMBER))
        .satisfies(one -> assertThat(one.severity()).isEqualTo(Severity.PASSED))
        .satisfies(one -> assertThat(one.measured()).contains(ratio(1)))
        .extracting(Finding::message)
        .isEqualTo("one crucible right stands in the chamber with 20 mm around");
    assertThat(finding(choice.options().get(4).findings(), LoadFinding.CRUCIBLES_IN_CHAMBER))
        .satisfies(one -> assertThat(one.severity()).isEqualTo(Severity.STOP))
        .extracting(Finding::message)
        .isEqualTo("no crucible wide stands in the chamber with 20 mm around");
    assertThat(choice.rejected().get(2).reasons())
        .extracting(Finding::code)
        .containsExactly(EquipmentFinding.KILN_SPACE, LoadFinding.CRUCIBLES_IN_CHAMBER);
  }

  /** 2 x 170 + 3 x 20 = 400 of 420 mm, but 210 of 250 mm across: two. */
  @Test
  void countsTheCruciblesThatStandSideBySide() {
    Crucible crucible = crucible("right", 160, 140).outside(box(170, 170, 150)).build();
    Kiln kiln = Workbench.kiln(1300).chamber(box(250, 420, 320)).build();
    CrucibleOption option =
        PLANNER
            .smallest(task().parts(9).build(), List.of(crucible), kiln, millimetres(20))
            .chosen()
            .orElseThrow();
    assertThat(option.inChamber()).isEqualTo(2);
    assertThat(finding(option.findings(), LoadFinding.CRUCIBLES_IN_CHAMBER).message())
        .isEqualTo(
            "2 crucibles right stand in the chamber with 20 mm around, side by side; stacking is"
                + " not counted");
  }

  @Test
  void crucibleThatDoesNotStandThePeakIsRuledOut() {
    Crucible steel =
        crucible("steel", 160, 140)
            .outside(box(170, 170, 150))
            .material(Workbench.crucible("steel", 900).material())
            .build();
    CrucibleChoice choice =
        PLANNER.smallest(
            task().parts(9).build(), List.of(steel), Workbench.kiln(1300).build(), millimetres(0));
    assertThat(choice.chosen()).isEmpty();
    assertThat(choice.rejected().get(0).reasons())
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.message())
                    .isEqualTo("steel stands 900 °C in air, and the peak is 1000 °C"));
  }

  @Test
  void crucibleThatJustStandsThePeakCanBeTaken() {
    Crucible just =
        crucible("just", 160, 140)
            .outside(box(170, 170, 150))
            .material(Workbench.crucible("just", 1000).material())
            .build();
    Finding stands =
        finding(
            PLANNER
                .smallest(
                    task().parts(9).build(),
                    List.of(just),
                    Workbench.kiln(1300).build(),
                    millimetres(0))
                .chosen()
                .orElseThrow()
                .findings(),
            LoadFinding.CRUCIBLE_STANDS_PEAK);
    assertThat(stands.severity()).isEqualTo(Severity.PASSED);
    assertThat(stands.measured()).contains(celsius(1000));
    assertThat(stands.limit()).contains(celsius(1000));
  }

  @Test
  void refusesTasksThatAskForNothing() {
    assertThatThrownBy(
            () ->
                PlannedStage.sintering()
                    .name(" ")
                    .profile(SINTERING)
                    .packing(Workbench.alumina())
                    .build())
        .hasMessage("planned stage: name is blank; accepted is any text");
    assertThatThrownBy(() -> task(-0.1, 0.2).build())
        .hasMessageContaining("lowest oxygen inflow is -0.1 g/h; accepted is zero or more");
    assertThatThrownBy(() -> task().stages(List.of()).parts(0).getterReserve(percent(-1)).build())
        .hasMessageContaining("there is no stage")
        .hasMessageContaining("parts is 0; accepted is 1 or more")
        .hasMessageContaining("getter reserve is -1 %");
    assertThatThrownBy(
            () ->
                PLANNER.smallest(
                    task().build(), List.of(), Workbench.kiln(1300).build(), millimetres(-1)))
        .hasMessageContaining("parts is not given")
        .hasMessageContaining("distance around a crucible is -1 mm");
  }

  @Test
  void plansComeBackFromSerialization() throws Exception {
    LoadPlan plan = PLANNER.plan(task(0.1, 0.2).build(), Workbench.mullite());
    assertThat(Workbench.thawed(plan)).isEqualTo(plan);
  }

  private static Envelope box(double x, double y, double z) {
    return Envelope.of(millimetres(x), millimetres(y), millimetres(z));
  }
}
