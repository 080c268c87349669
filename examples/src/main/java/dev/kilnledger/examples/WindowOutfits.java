package dev.kilnledger.examples;

import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volts;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.outfit.Aim;
import dev.kilnledger.costing.outfit.Choice;
import dev.kilnledger.costing.outfit.Option;
import dev.kilnledger.costing.outfit.OptionGroup;
import dev.kilnledger.costing.outfit.OutfitCatalogue;
import dev.kilnledger.costing.outfit.OutfitQuestion;
import dev.kilnledger.costing.outfit.Routes;
import dev.kilnledger.costing.purchase.Need;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What the window workshop may equip itself with. It owns an old printer with a brass nozzle, a
 * socket and a wire brush. Everything is invented, in round figures; the materials are those of the
 * standard library.
 */
final class WindowOutfits {
  private static final Source INVENTED = Source.user("invented for this example");
  private static final MaterialLibrary MATERIALS = MaterialLibrary.standard();
  private static final String COPPER = "copper in polylactide, generic";
  private static final String STEEL = "low-alloy steel 4605 in wax and polyolefin, generic";

  private final Job cams = WindowWorkshop.latchCams(1);
  private final List<Offer> offers = new ArrayList<>();

  private WindowOutfits() {}

  /** {@return the question: latch cams, rosettes and hinge plates, for some budgets in euros} */
  static OutfitQuestion question(int... budgets) {
    WindowOutfits outfits = new WindowOutfits();
    OutfitCatalogue catalogue = outfits.catalogue();
    outfits.offer("bronze filament", grams(500), 80);
    outfits.offer("alumina", grams(1000), 15);
    OutfitQuestion.Builder question =
        OutfitQuestion.builder()
            .catalogue(catalogue)
            .addAims(outfits.latchCam(), outfits.rosette(), outfits.hingePlate())
            .addStarter(Need.of("bronze filament", grams(20)), Need.of("alumina", grams(1400)))
            .prices(
                PriceBook.builder()
                    .currency(CurrencyUnit.EUR)
                    .asOf(LocalDate.of(2026, 11, 25))
                    .addAllOffers(outfits.offers)
                    .build());
    for (int budget : budgets) {
      question.addBudgets(Money.of(CurrencyUnit.EUR, budget));
    }
    return question.build();
  }

  /** {@return a route for each metal, the bronze's being that of the latch cams} */
  static Routes routes() {
    Job cams = WindowWorkshop.latchCams(1);
    return Routes.of(
        Map.of(
            cams.feedstock().name(),
            cams.route(),
            COPPER,
            FiringRoute.of(cams.route().debinding().get(0), sintering(1030)),
            STEEL,
            FiringRoute.of(waxDebinding(), sintering(1260))));
  }

  private Aim latchCam() {
    return Aim.builder()
        .name("latch cam in bronze")
        .part(cams.part())
        .feedstock(cams.feedstock())
        .conditions(cams.conditions())
        .clearance(cams.spacing().wall())
        .build();
  }

  private Aim rosette() {
    return Aim.builder()
        .name("rosette in copper")
        .part(part("rosette", 3, 32, 32, 6, 4))
        .feedstock(MATERIALS.feedstock(COPPER))
        .clearance(cams.spacing().wall())
        .build();
  }

  private Aim hingePlate() {
    return Aim.builder()
        .name("hinge plate in steel")
        .part(part("hinge plate", 4, 50, 25, 5, 4))
        .feedstock(MATERIALS.feedstock(STEEL))
        .clearance(cams.spacing().wall())
        .build();
  }

  private static Part part(
      String name, double volume, double x, double y, double z, double thickest) {
    return Part.builder()
        .name(name)
        .finishedVolume(cubicCentimetres(volume))
        .envelope(Envelope.of(millimetres(x), millimetres(y), millimetres(z)))
        .thickestSection(millimetres(thickest))
        .build();
  }

  private OutfitCatalogue catalogue() {
    return OutfitCatalogue.of(
        OptionGroup.of(
            "printer",
            Choice.EXACTLY_ONE,
            Option.builder().name("old printer").owned(true).printer(oldPrinter()).build(),
            bought("bench printer", 600).printer(cams.printer()).build()),
        OptionGroup.of(
            "nozzle",
            Choice.AT_MOST_ONE,
            bought("hardened nozzle", 25)
                .nozzle(
                    Nozzle.of(MATERIALS.nozzleMaterial("hardened tool steel"), millimetres(0.6)))
                .build()),
        OptionGroup.of(
            "kiln",
            Choice.EXACTLY_ONE,
            bought("front loader", 1500).kiln(cams.kiln()).build(),
            bought("hot kiln", 3900).kiln(hotKiln()).requires("25 A circuit").build(),
            bought("bead kiln", 400).kiln(beadKiln()).build()),
        OptionGroup.of(
            "supply",
            Choice.EXACTLY_ONE,
            Option.builder()
                .name("workshop socket")
                .owned(true)
                .supplyCircuit(circuit("workshop socket", 16))
                .build(),
            circuitToBuy()),
        OptionGroup.of(
            "crucible",
            Choice.EXACTLY_ONE,
            bought("steel crucible", 40).crucible(cams.crucible()).build(),
            bought("alumina crucible", 160).crucible(aluminaCrucible()).build()),
        OptionGroup.of(
            "getter",
            Choice.AT_MOST_ONE,
            bought("carbon", 10).getter(MATERIALS.getter("granular activated carbon")).build()),
        OptionGroup.of(
            "finishing",
            Choice.EXACTLY_ONE,
            Option.builder().name("wire brush").owned(true).build(),
            bought("tumbler", 320).build()),
        OptionGroup.of("extraction", Choice.EXACTLY_ONE, bought("extraction hood", 350).build()),
        OptionGroup.of("alarm", Choice.EXACTLY_ONE, bought("carbon monoxide alarm", 35).build()));
  }

  /** An electrician's work by the hour, and the material. */
  private Option circuitToBuy() {
    offer("circuit material", ratio(1), 150);
    offers.add(Offer.builder().from(offered("electrician", hours(1), 60)).metered(true).build());
    return Option.builder()
        .name("25 A circuit")
        .supplyCircuit(circuit("25 A circuit", 25))
        .addToBuy(Need.of("electrician", hours(5)))
        .buy("circuit material")
        .build();
  }

  private Option.Builder bought(String name, double price) {
    offer(name, ratio(1), price);
    return Option.builder().name(name).buy(name);
  }

  private void offer(String item, Amount<?> content, double price) {
    offers.add(offered(item, content, price));
  }

  private static Offer offered(String item, Amount<?> content, double price) {
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

  private static Printer oldPrinter() {
    return Printer.builder()
        .name("old printer")
        .buildVolume(Envelope.of(millimetres(80), millimetres(80), millimetres(80)))
        .filamentDiameter(millimetres(1.75))
        .nozzle(Nozzle.of(MATERIALS.nozzleMaterial("brass"), millimetres(0.4)))
        .build();
  }

  private Kiln hotKiln() {
    return Kiln.builder()
        .from(cams.kiln())
        .name("hot kiln")
        .peakTemperature(celsius(1350))
        .power(kilowatts(4))
        .build();
  }

  private Kiln beadKiln() {
    return Kiln.builder()
        .from(cams.kiln())
        .name("bead kiln")
        .peakTemperature(celsius(750))
        .power(kilowatts(1.5))
        .build();
  }

  private static SupplyCircuit circuit(String name, double rating) {
    return SupplyCircuit.builder()
        .name(name)
        .voltage(volts(230))
        .phases(1)
        .breakerRating(amperes(rating))
        .build();
  }

  private static Crucible aluminaCrucible() {
    return Crucible.builder()
        .name("alumina crucible")
        .material(MATERIALS.crucibleMaterial("alumina"))
        .cavity(RoundCavity.of(millimetres(130), millimetres(110)))
        .outside(Envelope.of(millimetres(150), millimetres(150), millimetres(130)))
        .mass(grams(2000))
        .heatCapacity(joulesPerKilogramKelvin(1000))
        .build();
  }

  private static FiringStage waxDebinding() {
    return FiringStage.debinding()
        .profile(
            Profile.from(celsius(20))
                .rampTo(celsius(150), kelvinPerHour(60))
                .rampTo(celsius(500), kelvinPerHour(10))
                .hold(hours(2))
                .coolTo(celsius(200), kelvinPerHour(22))
                .coolTo(celsius(100), kelvinPerHour(10))
                .build())
        .packing(MATERIALS.packingPowder("alumina"))
        .packingMass(grams(700))
        .build();
  }

  private static FiringStage sintering(double peak) {
    return FiringStage.sintering()
        .profile(
            Profile.from(celsius(20))
                .rampTo(celsius(600), kelvinPerHour(150))
                .rampTo(celsius(peak), kelvinPerHour(100))
                .hold(hours(2))
                .coolTo(celsius(400), kelvinPerHour(50))
                .coolTo(celsius(200), kelvinPerHour(22))
                .coolTo(celsius(100), kelvinPerHour(10))
                .build())
        .packing(MATERIALS.packingPowder("alumina"))
        .packingMass(grams(700))
        .getter(MATERIALS.getter("granular activated carbon"), grams(60))
        .build();
  }
}
