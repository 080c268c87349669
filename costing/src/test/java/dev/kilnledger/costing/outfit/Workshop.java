package dev.kilnledger.costing.outfit;

import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicMillimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.volts;

import dev.kilnledger.core.equipment.BoxCavity;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.EquipmentFinding;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import java.util.List;
import java.util.Map;

/** Equipment, aims and routes for tests, in round figures. */
final class Workshop {
  static final MaterialLibrary MATERIALS = MaterialLibrary.standard();
  static final Feedstock BRONZE = MATERIALS.feedstock("tin bronze 90/10 in polylactide, generic");
  static final Feedstock STEEL =
      MATERIALS.feedstock("stainless steel 316L in wax and polyolefin, generic");

  /** Bronze at 820 degrees with carbon, steel at 1,350 without. */
  static final Routes ROUTES =
      Routes.of(Map.of(BRONZE.name(), route(820, true), STEEL.name(), route(1350, false)));

  private Workshop() {}

  static FiringRoute route(double peak, boolean carbon) {
    FiringStage.Builder sintering =
        FiringStage.sintering()
            .profile(
                Profile.from(celsius(20))
                    .rampTo(celsius(peak), kelvinPerHour(100))
                    .hold(hours(3))
                    .build())
            .packing(MATERIALS.packingPowder("alumina"))
            .packingMass(grams(300));
    if (carbon) {
      sintering.getter(MATERIALS.getter("granular activated carbon"), grams(30));
    }
    return FiringRoute.of(
        FiringStage.debinding()
            .profile(
                Profile.from(celsius(20))
                    .rampTo(celsius(450), kelvinPerHour(10))
                    .hold(hours(2))
                    .build())
            .packing(MATERIALS.packingPowder("alumina"))
            .packingMass(grams(300))
            .build(),
        sintering.build());
  }

  /**
   * Rules of this test's own in the place of the standard ones: the kiln reaches the peak, the
   * circuit carries the current, and the parts fill a sixth of the crucible at most.
   */
  static FiringCheck fewRules() {
    return new FiringCheck(
        List.of(
            forecast ->
                List.of(
                    rule(
                        EquipmentFinding.KILN_SPACE,
                        !forecast
                            .setup()
                            .kiln()
                            .peakTemperature()
                            .isLessThan(forecast.setup().route().peak()),
                        forecast.setup().kiln().name() + " is not hot enough")),
            forecast ->
                List.of(
                    rule(
                        EquipmentFinding.BUILD_VOLUME,
                        forecast
                            .setup()
                            .supplyCircuit()
                            .filter(
                                circuit ->
                                    circuit
                                        .continuousRating()
                                        .isLessThan(forecast.setup().kiln().ratedCurrent()))
                            .isEmpty(),
                        forecast.setup().kiln().name() + " takes too much current")),
            forecast ->
                List.of(
                    rule(
                        EquipmentFinding.CRUCIBLE_SPACE,
                        6 * forecast.setup().partsVolume().orElseThrow().si()
                            <= forecast.setup().crucible().cavity().volume().si(),
                        forecast.setup().crucible().name() + " is too full"))));
  }

  private static Finding rule(FindingCode code, boolean passed, String message) {
    return Finding.builder()
        .code(code)
        .severity(passed ? Severity.PASSED : Severity.STOP)
        .subject("test")
        .message(message)
        .basis(Shop.MADE)
        .build();
  }

  static Aim.Builder aim(Feedstock feedstock, double length, double height) {
    return Aim.builder()
        .name(feedstock.alloy().name())
        .feedstock(feedstock)
        .part(
            Part.builder()
                .name("cam")
                .finishedVolume(cubicMillimetres(length * length * height / 2))
                .envelope(
                    Envelope.of(millimetres(length), millimetres(length), millimetres(height)))
                .thickestSection(millimetres(5))
                .build())
        .clearance(millimetres(10));
  }

  /** A cube of a build volume; a brass nozzle wears. */
  static Printer printer(String name, double side, boolean hard) {
    return Printer.builder()
        .name(name)
        .buildVolume(Envelope.of(millimetres(side), millimetres(side), millimetres(side)))
        .filamentDiameter(millimetres(1.75))
        .nozzle(
            Nozzle.of(
                MATERIALS.nozzleMaterial(hard ? "hardened tool steel" : "brass"), millimetres(0.6)))
        .build();
  }

  static Kiln kiln(String name, double peak, double side, double power) {
    return Kiln.builder()
        .name(name)
        .peakTemperature(celsius(peak))
        .chamber(Envelope.of(millimetres(side), millimetres(side), millimetres(side)))
        .power(kilowatts(power))
        .voltage(volts(230))
        .phases(1)
        .programmeSegments(10)
        .build();
  }

  /** A cube inside, with walls of 10 mm, of alumina ceramic. */
  static Crucible crucible(String name, double side) {
    return Crucible.builder()
        .name(name)
        .material(MATERIALS.crucibleMaterial("alumina"))
        .cavity(BoxCavity.of(millimetres(side), millimetres(side), millimetres(side)))
        .outside(
            Envelope.of(millimetres(side + 20), millimetres(side + 20), millimetres(side + 20)))
        .mass(grams(1500))
        .heatCapacity(joulesPerKilogramKelvin(900))
        .build();
  }

  /** A small owned printer and one for sale, two kilns, two crucibles, two circuits. */
  static OutfitQuestion.Builder question(Shop shop) {
    return shop.question(
            OptionGroup.of(
                "printer",
                Choice.EXACTLY_ONE,
                Option.builder()
                    .name("old printer")
                    .owned(true)
                    .printer(printer("old printer", 60, true))
                    .build(),
                shop.option("printer", 500).printer(printer("printer", 150, true)).build()),
            OptionGroup.of(
                "kiln",
                Choice.EXACTLY_ONE,
                shop.option("cool kiln", 1000).kiln(kiln("cool kiln", 1100, 160, 2)).build(),
                shop.option("hot kiln", 3000)
                    .kiln(kiln("hot kiln", 1450, 160, 5))
                    .requires("heavy circuit")
                    .build()),
            OptionGroup.of(
                "crucible",
                Choice.EXACTLY_ONE,
                shop.option("crucible", 40).crucible(crucible("crucible", 100)).build(),
                shop.option("wide crucible", 90).crucible(crucible("wide crucible", 150)).build()),
            OptionGroup.of(
                "supply",
                Choice.AT_MOST_ONE,
                Option.builder()
                    .name("socket")
                    .owned(true)
                    .supplyCircuit(circuit("socket", 16))
                    .build(),
                shop.option("heavy circuit", 600)
                    .supplyCircuit(circuit("heavy circuit", 32))
                    .build()),
            OptionGroup.of("alarm", Choice.EXACTLY_ONE, shop.option("alarm", 30).build()))
        .addAims(aim(BRONZE, 30, 10).build(), aim(STEEL, 30, 10).build())
        .prices(shop.book());
  }

  private static SupplyCircuit circuit(String name, double rating) {
    return SupplyCircuit.builder()
        .name(name)
        .voltage(volts(230))
        .phases(1)
        .breakerRating(amperes(rating))
        .build();
  }
}
