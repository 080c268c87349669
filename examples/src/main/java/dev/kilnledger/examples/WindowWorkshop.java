package dev.kilnledger.examples;

import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.cubicMetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.volumePercent;
import static dev.kilnledger.units.Amounts.watts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.FilamentPreheater;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.PartingLayer;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.PrintConditions;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.thermal.atmosphere.RoomAir;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.time.LocalDate;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A workshop that restores old windows and needs small latch cams of tin bronze. Workshop,
 * equipment, prices, lives and losses are invented, in round figures; the materials are those of
 * the standard library.
 */
public final class WindowWorkshop {
  private static final Source INVENTED = Source.user("invented for this example");
  private static final MaterialLibrary MATERIALS = MaterialLibrary.standard();

  private WindowWorkshop() {}

  /**
   * {@return a job of a number of latch cams}
   *
   * @param parts how many, 1 or more
   */
  public static Job latchCams(long parts) {
    return Job.builder()
        .part(
            Part.builder()
                .name("latch cam")
                .finishedVolume(cubicCentimetres(2))
                .envelope(Envelope.of(millimetres(30), millimetres(18), millimetres(8)))
                .thickestSection(millimetres(5))
                .build())
        .feedstock(MATERIALS.feedstock("tin bronze 90/10 in polylactide, generic"))
        .conditions(PrintConditions.builder().strandVoids(volumePercent(4)).build())
        .printer(printer())
        .route(FiringRoute.of(debinding(), sintering()))
        .kiln(kiln())
        .crucible(
            Crucible.builder()
                .name("round crucible")
                .material(MATERIALS.crucibleMaterial("stainless steel 310S"))
                .cavity(RoundCavity.of(millimetres(130), millimetres(110)))
                .outside(Envelope.of(millimetres(136), millimetres(136), millimetres(125)))
                .mass(grams(1200))
                .heatCapacity(joulesPerKilogramKelvin(550))
                .build())
        .supplyCircuit(
            SupplyCircuit.builder()
                .name("workshop socket")
                .voltage(volts(230))
                .phases(1)
                .breakerRating(amperes(16))
                .build())
        .thermocouple(Thermocouple.N)
        .oxygenInflow(Sourced.of(Span.of(gramsPerHour(0.01), gramsPerHour(0.05)), INVENTED))
        .room(RoomAir.ofChanges(cubicMetres(60), 6))
        .spacing(Spacing.of(millimetres(10)))
        .partsPerCharge(3)
        .prices(prices())
        .filamentItem("bronze filament")
        .energyItem("electricity")
        .getterItem("carbon")
        .addResources(Durable.toBuy("printer"), Durable.toBuy("kiln"))
        .addResources(
            Wearing.builder()
                .item("crucible")
                .driver(Driver.FIRING)
                .life(12)
                .source(INVENTED)
                .build())
        .addResources(
            ToppedUp.builder()
                .item("alumina")
                .fill(grams(700))
                .loss(percent(5))
                .source(INVENTED)
                .build())
        .parts(parts)
        .build();
  }

  private static Printer printer() {
    return Printer.builder()
        .name("bench printer")
        .buildVolume(Envelope.of(millimetres(200), millimetres(200), millimetres(180)))
        .filamentDiameter(millimetres(1.75))
        .nozzle(Nozzle.of(MATERIALS.nozzleMaterial("hardened tool steel"), millimetres(0.6)))
        .preheater(FilamentPreheater.of("filament warmer", celsius(45), watts(30)))
        .partingLayer(PartingLayer.of("alumina paste", Sourced.of(celsius(1400), INVENTED)))
        .build();
  }

  private static Kiln kiln() {
    return Kiln.builder()
        .name("front loader")
        .peakTemperature(celsius(1150))
        .longestHoldAtPeak(hours(6))
        .chamber(Envelope.of(millimetres(200), millimetres(200), millimetres(200)))
        .power(kilowatts(2.4))
        .voltage(volts(230))
        .phases(1)
        .programmeSegments(8)
        .fastestHeating(kelvinPerHour(300))
        .addWall(
            WallLayer.builder()
                .material("insulating firebrick")
                .thickness(millimetres(100))
                .conductivity(wattsPerMetreKelvin(0.2))
                .density(kilogramsPerCubicMetre(600))
                .heatCapacity(joulesPerKilogramKelvin(1000))
                .build())
        .build();
  }

  private static FiringStage debinding() {
    return FiringStage.debinding()
        .profile(
            Profile.from(celsius(20))
                .rampTo(celsius(260), kelvinPerHour(120))
                .rampTo(celsius(420), kelvinPerHour(12))
                .hold(hours(2))
                .coolTo(celsius(200), kelvinPerHour(22))
                .coolTo(celsius(100), kelvinPerHour(10))
                .build())
        .packing(MATERIALS.packingPowder("alumina"))
        .packingMass(grams(700))
        .build();
  }

  private static FiringStage sintering() {
    return FiringStage.sintering()
        .profile(
            Profile.from(celsius(20))
                .rampTo(celsius(600), kelvinPerHour(150))
                .rampTo(celsius(820), kelvinPerHour(100))
                .hold(hours(3))
                .coolTo(celsius(400), kelvinPerHour(50))
                .coolTo(celsius(200), kelvinPerHour(22))
                .coolTo(celsius(100), kelvinPerHour(10))
                .build())
        .packing(MATERIALS.packingPowder("alumina"))
        .packingMass(grams(700))
        .getter(MATERIALS.getter("granular activated carbon"), grams(60))
        .build();
  }

  private static PriceBook prices() {
    return PriceBook.builder()
        .currency(CurrencyUnit.EUR)
        .asOf(LocalDate.of(2026, 11, 25))
        .addOffers(offer("printer", ratio(1), 600))
        .addOffers(offer("kiln", ratio(1), 1500))
        .addOffers(offer("bronze filament", grams(500), 80))
        .addOffers(offer("crucible", ratio(1), 40))
        .addOffers(offer("alumina", grams(1000), 15))
        .addOffers(offer("carbon", grams(500), 10))
        .addOffers(
            Offer.builder()
                .from(offer("electricity", kilowattHours(1), 0.30))
                .metered(true)
                .build())
        .build();
  }

  private static Offer offer(String item, Amount<?> content, double price) {
    return Offer.builder()
        .item(item)
        .supplier("corner shop")
        .content(content)
        .price(Money.of(CurrencyUnit.EUR, price))
        .date(LocalDate.of(2026, 11, 2))
        .tax(Tax.INCLUDED)
        .source(INVENTED)
        .build();
  }
}
