package dev.kilnledger.thermal;

import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.cubicMetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerCubicCentimetre;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.micrometresPerMetreKelvin;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.CarbonProtection;
import dev.kilnledger.core.material.CarbonProtection.Suitability;
import dev.kilnledger.core.material.Composition;
import dev.kilnledger.core.material.CrucibleMaterial;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.atmosphere.RoomAir;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.DecompositionStep;
import dev.kilnledger.thermal.burnout.ReactionOrder;
import dev.kilnledger.thermal.burnout.WallRateLimit;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringCurve;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.Collections;
import java.util.Set;

/**
 * Materials and equipment for the tests, built here so that the rules are tested and not the facts
 * of the library. Figures are rounded textbook values; kiln and circuit are invented.
 */
public final class Workbench {
  private static final Source SOURCE = Source.fromMemory("rounded for the tests");

  private Workbench() {}

  /** Copper: melts at 1084.62 °C, a fixed point of the ITS-90. */
  public static Alloy copper() {
    return metal("copper", Element.COPPER, 1084.62, 1084.62, 950, 1050, Suitability.PROTECTS, 90)
        .build();
  }

  /** Tin bronze 90/10, whose window reaches above its solidus. */
  public static Alloy bronze() {
    return metal("tin bronze", Element.COPPER, 845, 1000, 760, 870, Suitability.PROTECTS, 90)
        .build();
  }

  public static Alloy stainless() {
    return metal("316L", Element.IRON, 1375, 1400, 1250, 1370, Suitability.PARTLY, 1250)
        .addCautions(Caution.NICKEL_CHROMIUM)
        .build();
  }

  public static Alloy silver() {
    return metal("silver", Element.SILVER, 961.78, 961.78, 850, 930, Suitability.NOT_NEEDED, -1)
        .build();
  }

  public static Alloy titanium() {
    return metal("titanium", Element.TITANIUM, 1668, 1668, 1200, 1350, Suitability.WRONG, -1)
        .addCautions(Caution.METAL_POWDER)
        .build();
  }

  public static Alloy tungsten() {
    return metal("tungsten", Element.TUNGSTEN, 3414, 3414, 1800, 2400, Suitability.WRONG, -1)
        .build();
  }

  private static Alloy.Builder metal(
      String name,
      Element balance,
      double solidus,
      double liquidus,
      double low,
      double high,
      Suitability suitability,
      double reducesAbove) {
    CarbonProtection.Builder carbon =
        CarbonProtection.builder()
            .suitability(suitability)
            .decidingElement(balance)
            .remark("what carbon does to " + name)
            .source(SOURCE);
    if (reducesAbove > 0) {
      carbon.reducesAbove(fact(celsius(reducesAbove)));
    }
    return Alloy.builder()
        .name(name)
        .composition(
            Composition.builder()
                .designation(name)
                .balance(balance)
                .putNominal(balance, massFraction(1))
                .source(SOURCE)
                .build())
        .fullDensity(fact(gramsPerCubicCentimetre(8.9)))
        .solidus(fact(celsius(solidus)))
        .liquidus(fact(celsius(liquidus)))
        .sinteringWindow(fact(Span.of(celsius(low), celsius(high))))
        .sinteringHold(fact(Span.of(hours(1), hours(4))))
        .expectedRelativeDensity(
            fact(Estimate.of(volumeFraction(0.9), volumeFraction(0.94), volumeFraction(0.96))))
        .linearExpansion(fact(micrometresPerMetreKelvin(17)))
        .heatCapacity(fact(joulesPerKilogramKelvin(386)))
        .hotHeatCapacity(fact(joulesPerKilogramKelvin(430)))
        .powderHardness(fact(Span.of(ratio(40), ratio(60))))
        .carbonProtection(carbon.build());
  }

  public static Feedstock feedstock(Alloy alloy) {
    return Feedstock.builder()
        .name(alloy.name() + " in polylactide")
        .alloy(alloy)
        .binder(
            Binder.builder()
                .name("polylactide")
                .density(fact(Estimate.exactly(gramsPerCubicCentimetre(1.24))))
                .decomposition(fact(Span.of(celsius(250), celsius(400))))
                .residue(fact(Estimate.exactly(massFraction(0))))
                .addHazardousProducts("acetaldehyde", "carbon monoxide")
                .build())
        .metalMassFraction(massFraction(0.9))
        .source(SOURCE)
        .generic(true)
        .build();
  }

  public static PackingPowder alumina() {
    return powder("alumina", 1700, "melts far above")
        .addUses(PackingPowder.Use.DEBINDING, PackingPowder.Use.SINTERING)
        .build();
  }

  public static PackingPowder talc() {
    return powder("talc", 800, "gives off its water above")
        .addUses(PackingPowder.Use.DEBINDING)
        .build();
  }

  private static PackingPowder.Builder powder(String name, double limit, String reason) {
    return PackingPowder.builder()
        .name(name)
        .skeletalDensity(fact(gramsPerCubicCentimetre(3.9)))
        .apparentDensity(fact(Span.of(gramsPerCubicCentimetre(0.8), gramsPerCubicCentimetre(1.2))))
        .tapDensity(fact(Span.of(gramsPerCubicCentimetre(1), gramsPerCubicCentimetre(1.5))))
        .temperatureLimit(Sourced.of(celsius(limit), reason, SOURCE))
        .heatCapacity(fact(joulesPerKilogramKelvin(1100)))
        .addCautions(Caution.MINERAL_DUST);
  }

  public static Getter carbon() {
    return Getter.builder()
        .name("granular carbon")
        .grain(Getter.Grain.GRANULAR)
        .bulkDensity(fact(Span.of(gramsPerCubicCentimetre(0.4), gramsPerCubicCentimetre(0.5))))
        .ash(fact(Span.of(massFraction(0.02), massFraction(0.1))))
        .oxidationOnset(fact(Span.of(celsius(350), celsius(450))))
        .build();
  }

  public static Crucible crucible(String material, double limit) {
    return Crucible.builder()
        .name("round, 160 mm")
        .material(
            CrucibleMaterial.builder()
                .name(material)
                .serviceLimit(fact(celsius(limit)))
                .remark("")
                .build())
        .cavity(RoundCavity.of(millimetres(160), millimetres(140)))
        .mass(kilograms(1.2))
        .heatCapacity(joulesPerKilogramKelvin(1100))
        .build();
  }

  /** Mullite, 1650 °C (handbook value from memory). */
  public static Crucible mullite() {
    return crucible("mullite", 1650);
  }

  /** A kiln of one phase, 3 kW at 230 V: 13.04 A. */
  public static Kiln.Builder kiln(double peakCelsius) {
    return Kiln.builder()
        .name("front loader")
        .peakTemperature(celsius(peakCelsius))
        .longestHoldAtPeak(hours(4))
        .chamber(Envelope.of(millimetres(250), millimetres(250), millimetres(250)))
        .power(kilowatts(3))
        .voltage(volts(230))
        .phases(1)
        .programmeSegments(8)
        .fastestHeating(kelvinPerHour(300))
        .addWall(layer("firebrick", 115, 0.35, 800), layer("fibre board", 50, 0.12, 260));
  }

  public static WallLayer layer(String material, double mm, double k, double density) {
    return WallLayer.builder()
        .material(material)
        .thickness(millimetres(mm))
        .conductivity(wattsPerMetreKelvin(k))
        .density(kilogramsPerCubicMetre(density))
        .heatCapacity(joulesPerKilogramKelvin(1000))
        .build();
  }

  /** A circuit of one phase at 230 V whose breaker carries 0.8 of its rating for hours. */
  public static SupplyCircuit circuit(double breakerAmperes) {
    return SupplyCircuit.builder()
        .name("north wall")
        .voltage(volts(230))
        .phases(1)
        .breakerRating(amperes(breakerAmperes))
        .build();
  }

  /** Up to 420 °C, 30 K/h through the range of the binder. */
  public static Profile debindingProfile() {
    return Profile.from(celsius(20))
        .rampTo(celsius(200), kelvinPerHour(100))
        .rampTo(celsius(420), kelvinPerHour(30))
        .hold(hours(2))
        .build();
  }

  public static Profile sinteringProfile(double peakCelsius) {
    return Profile.from(celsius(20))
        .rampTo(celsius(600), kelvinPerHour(150))
        .hold(minutes(30))
        .rampTo(celsius(peakCelsius), kelvinPerHour(100))
        .hold(hours(3))
        .coolTo(celsius(500), kelvinPerHour(150))
        .build();
  }

  public static FiringStage.Builder debinding() {
    return FiringStage.debinding()
        .profile(debindingProfile())
        .packing(alumina())
        .packingMass(kilograms(1.5));
  }

  public static FiringStage.Builder sintering(double peakCelsius) {
    return FiringStage.sintering()
        .profile(sinteringProfile(peakCelsius))
        .packing(alumina())
        .packingMass(kilograms(1.5));
  }

  public static FiringRoute route(double peakCelsius) {
    return FiringRoute.of(
        debinding().build(), sintering(peakCelsius).getter(carbon(), grams(300)).build());
  }

  /** A firing of a 3 mm wall in a kiln of 1300 °C on a breaker of 20 A. */
  public static FiringSetup.Builder setup(Alloy alloy, double peakCelsius) {
    return FiringSetup.builder()
        .feedstock(feedstock(alloy))
        .thickestSection(millimetres(3))
        .partsVolume(cubicCentimetres(10))
        .route(route(peakCelsius))
        .kiln(kiln(1300).build())
        .crucible(mullite())
        .supplyCircuit(circuit(20));
  }

  /**
   * The same with all that only a user can know: kinetics, a rate that the wall stands, a sintering
   * curve, the oxygen that gets in, the room, the thermocouple. Invented.
   */
  public static FiringSetup.Builder informed(Alloy alloy, double peakCelsius) {
    return setup(alloy, peakCelsius)
        .addKinetics(kinetics())
        .addLossLimits(wallLimit())
        .sinteringCurve(sinteringCurve())
        .oxygenInflow(
            Sourced.of(Span.of(gramsPerHour(0.05), gramsPerHour(0.2)), Source.user("weighed")))
        .room(RoomAir.ofChanges(cubicMetres(50), 10))
        .thermocouple(Thermocouple.S);
  }

  /** 150 kJ/mol, 1e9 1/s, first order: 99 % gone at 665.349 K when heated at 30 K/h. */
  public static BinderKinetics kinetics() {
    return BinderKinetics.builder()
        .name("polylactide, own run")
        .addSteps(
            DecompositionStep.of(
                kilojoulesPerMole(150), ReactionOrder.first(Frequencies.perSecond(1e9))))
        .range(Span.of(celsius(200), celsius(500)))
        .condition("made for the tests")
        .source(Source.user("thermogravimetry"))
        .build();
  }

  /** A wall of 3 mm that stands 60 % an hour. */
  public static WallRateLimit wallLimit() {
    return WallRateLimit.builder()
        .wall(millimetres(3))
        .knownWall(millimetres(3))
        .knownRate(Frequencies.perSecond(0.6 / 3600))
        .source(Source.user("parts that came through"))
        .build();
  }

  /** 210 kJ/mol; a and b such that copper gets to some 97 % in 3 h at 1000 °C. */
  public static FittedSinteringCurve sinteringCurve() {
    return FittedSinteringCurve.builder()
        .curve(
            SinteringCurve.builder()
                .name("own copper powder")
                .activationEnergy(kilojoulesPerMole(210))
                .base(SinteringCurve.Base.NATURAL)
                .location(ratio(-19.5))
                .width(ratio(0.8))
                .initialDensity(volumeFraction(0.55))
                .range(Span.of(celsius(600), celsius(1060)))
                .source(Source.user("three dilatometer runs"))
                .build())
        .activationEnergy(Estimate.exactly(kilojoulesPerMole(210)))
        .location(Estimate.exactly(ratio(-19.5)))
        .width(Estimate.exactly(ratio(0.8)))
        .initialDensity(Estimate.exactly(volumeFraction(0.55)))
        .confidence(ratio(0.95))
        .scatter(volumeFraction(0.005))
        .degreesOfFreedom(30)
        .densities(Span.of(volumeFraction(0.55), volumeFraction(0.99)))
        .reference(celsius(900))
        .covariance(Collections.nCopies(16, 0.0))
        .build();
  }

  private static <T extends Serializable> Sourced<T> fact(T value) {
    return Sourced.of(value, SOURCE);
  }

  /** The cautions that go with every firing of the setup above. */
  public static Set<Caution> everyFiring() {
    return Set.of(
        Caution.CARBON_MONOXIDE,
        Caution.BINDER_FUMES,
        Caution.MINERAL_DUST,
        Caution.HOT_WORK,
        Caution.ELECTRICAL_LOAD);
  }

  /** What a value comes back as from serialization. */
  public static Object thawed(Serializable value) throws IOException, ClassNotFoundException {
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
