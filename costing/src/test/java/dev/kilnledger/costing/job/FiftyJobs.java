package dev.kilnledger.costing.job;

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
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static java.nio.charset.StandardCharsets.UTF_8;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.thermal.atmosphere.RoomAir;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.DecompositionStep;
import dev.kilnledger.thermal.burnout.ReactionOrder;
import dev.kilnledger.thermal.burnout.WallRateLimit;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringCurve;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The jobs of {@code fifty-jobs.csv}. Kilns, prices and what is known of them are invented. */
final class FiftyJobs {
  private static final Source INVENTED = Source.user("invented for the tests");
  private static final MaterialLibrary MATERIALS = MaterialLibrary.standard();

  private FiftyJobs() {}

  /** One line: a job, what has to be found, and why. */
  record Row(String name, Job job, Severity worst, List<String> must, String reason) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Row> rows() {
    try (InputStream in = FiftyJobs.class.getResourceAsStream("/fifty-jobs.csv")) {
      return new String(in.readAllBytes(), UTF_8)
          .lines().skip(1).map(line -> row(line.split("\\|"))).toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Row row(String[] cells) {
    return new Row(
        cells[0],
        job(cells),
        Severity.valueOf(cells[21]),
        List.of(cells[22].split(" ")),
        cells[23]);
  }

  private static double number(String cell) {
    return Double.parseDouble(cell);
  }

  private static Job job(String[] cells) {
    Feedstock feedstock = MATERIALS.feedstock(cells[1]);
    Job.Builder job =
        Job.builder()
            .part(
                Part.builder()
                    .name(cells[0])
                    .envelope(
                        Envelope.of(
                            millimetres(number(cells[2])),
                            millimetres(number(cells[3])),
                            millimetres(number(cells[4]))))
                    .finishedVolume(cubicCentimetres(number(cells[5])))
                    .thickestSection(millimetres(number(cells[6])))
                    .build())
            .feedstock(feedstock)
            .printer(printer())
            .crucible(
                Crucible.builder()
                    .name("crucible")
                    .material(MATERIALS.crucibleMaterial(cells[8]))
                    .cavity(
                        RoundCavity.of(
                            millimetres(number(cells[9])), millimetres(number(cells[10]))))
                    .mass(grams(1200))
                    .heatCapacity(joulesPerKilogramKelvin(900))
                    .build())
            .route(route(cells, feedstock))
            .spacing(Spacing.of(millimetres(10)))
            .partsPerCharge(Integer.parseInt(cells[19]))
            .prices(prices())
            .filamentItem("filament")
            .energyItem("electricity")
            .getterItem("carbon")
            .addResources(
                Durable.toBuy("printer"),
                Durable.toBuy("kiln"),
                Wearing.builder()
                    .item("crucible")
                    .driver(Driver.FIRING)
                    .life(12)
                    .source(INVENTED)
                    .build(),
                ToppedUp.builder()
                    .item("packing")
                    .fill(grams(number(cells[12])))
                    .loss(percent(5))
                    .source(INVENTED)
                    .build())
            .parts(100);
    workshop(job, cells[7]);
    if (cells[20].equals("much")) {
      knowing(job);
    }
    return job.build();
  }

  private static Printer printer() {
    return Printer.builder()
        .name("bench printer")
        .buildVolume(Envelope.of(millimetres(200), millimetres(200), millimetres(180)))
        .filamentDiameter(millimetres(1.75))
        .nozzle(Nozzle.of(MATERIALS.nozzleMaterial("hardened tool steel"), millimetres(0.6)))
        .build();
  }

  private static FiringRoute route(String[] cells, Feedstock feedstock) {
    double slowFrom = feedstock.binder().decomposition().value().low().in(CELSIUS) - 20;
    double debound = number(cells[14]);
    FiringStage debinding =
        FiringStage.debinding()
            .profile(
                Profile.from(celsius(20))
                    .rampTo(celsius(slowFrom), kelvinPerHour(120))
                    .rampTo(celsius(debound), kelvinPerHour(number(cells[13])))
                    .hold(hours(number(cells[15])))
                    .coolTo(celsius(200), kelvinPerHour(22))
                    .coolTo(celsius(100), kelvinPerHour(10))
                    .build())
            .packing(MATERIALS.packingPowder(cells[11]))
            .packingMass(grams(number(cells[12])))
            .build();
    FiringStage.Builder sintering =
        FiringStage.sintering()
            .profile(
                Profile.from(celsius(20))
                    .rampTo(celsius(600), kelvinPerHour(150))
                    .rampTo(celsius(number(cells[16])), kelvinPerHour(100))
                    .hold(hours(number(cells[17])))
                    .coolTo(celsius(400), kelvinPerHour(50))
                    .coolTo(celsius(200), kelvinPerHour(22))
                    .coolTo(celsius(100), kelvinPerHour(10))
                    .build())
            .packing(MATERIALS.packingPowder(cells[11]))
            .packingMass(grams(number(cells[12])));
    if (number(cells[18]) > 0) {
      sintering.getter(MATERIALS.getter("granular activated carbon"), grams(number(cells[18])));
    }
    return FiringRoute.of(debinding, sintering.build());
  }

  /** The kilns by name, each with the circuit it hangs on. */
  private static void workshop(Job.Builder job, String name) {
    switch (name) {
      case "bench" -> bench(job, 2.4, 300, 8);
      case "weak" -> bench(job, 0.25, 300, 8);
      case "gentle" -> bench(job, 2.4, 100, 8);
      case "three segments" -> bench(job, 2.4, 300, 3);
      case "two segments" -> bench(job, 2.4, 300, 2);
      case "tall" -> tall(job, 20);
      case "tall on 16 A" -> tall(job, 16);
      case "hot" -> hot(job, 400, 3);
      case "hot on one phase" -> hot(job, 230, 1);
      default -> throw new IllegalArgumentException("no kiln " + name);
    }
  }

  private static void bench(Job.Builder job, double kilowatts, double rate, int segments) {
    job.kiln(
            Kiln.builder()
                .name("bench kiln")
                .peakTemperature(celsius(1150))
                .longestHoldAtPeak(hours(6))
                .chamber(Envelope.of(millimetres(200), millimetres(200), millimetres(200)))
                .power(kilowatts(kilowatts))
                .voltage(volts(230))
                .phases(1)
                .programmeSegments(segments)
                .fastestHeating(kelvinPerHour(rate))
                .addWall(layer("insulating firebrick", 100, 0.2, 600))
                .build())
        .supplyCircuit(circuit(230, 1, 16));
  }

  private static void tall(Job.Builder job, double breaker) {
    job.kiln(
            Kiln.builder()
                .name("tall kiln")
                .peakTemperature(celsius(1300))
                .longestHoldAtPeak(hours(4))
                .chamber(Envelope.of(millimetres(250), millimetres(250), millimetres(300)))
                .power(kilowatts(3.6))
                .voltage(volts(230))
                .phases(1)
                .programmeSegments(12)
                .fastestHeating(kelvinPerHour(250))
                .addWall(layer("insulating firebrick", 120, 0.25, 700))
                .build())
        .supplyCircuit(circuit(230, 1, breaker));
  }

  private static void hot(Job.Builder job, double volts, int phases) {
    job.kiln(
            Kiln.builder()
                .name("hot kiln")
                .peakTemperature(celsius(1600))
                .longestHoldAtPeak(hours(4))
                .chamber(Envelope.of(millimetres(220), millimetres(220), millimetres(220)))
                .power(kilowatts(8))
                .voltage(volts(400))
                .phases(3)
                .programmeSegments(12)
                .fastestHeating(kelvinPerHour(400))
                .addWall(layer("fibre board", 60, 0.25, 400), layer("firebrick", 100, 0.3, 800))
                .build())
        .supplyCircuit(circuit(volts, phases, 16));
  }

  private static WallLayer layer(String material, double mm, double conductivity, double density) {
    return WallLayer.builder()
        .material(material)
        .thickness(millimetres(mm))
        .conductivity(wattsPerMetreKelvin(conductivity))
        .density(kilogramsPerCubicMetre(density))
        .heatCapacity(joulesPerKilogramKelvin(1000))
        .build();
  }

  private static SupplyCircuit circuit(double volts, int phases, double breaker) {
    return SupplyCircuit.builder()
        .name("workshop socket")
        .voltage(volts(volts))
        .phases(phases)
        .breakerRating(amperes(breaker))
        .build();
  }

  /** What a workshop may have measured; invented. */
  private static void knowing(Job.Builder job) {
    job.addKinetics(
            BinderKinetics.builder()
                .name("polylactide, own run")
                .addSteps(
                    DecompositionStep.of(
                        kilojoulesPerMole(150), ReactionOrder.first(Frequencies.perSecond(1e9))))
                .range(Span.of(celsius(200), celsius(500)))
                .condition("made for the tests")
                .source(INVENTED)
                .build())
        .addLossLimits(
            WallRateLimit.builder()
                .wall(millimetres(7))
                .knownWall(millimetres(7))
                .knownRate(Frequencies.perSecond(0.6 / 3600))
                .source(INVENTED)
                .build())
        .sinteringCurve(copperCurve())
        .oxygenInflow(Sourced.of(Span.of(gramsPerHour(0.05), gramsPerHour(0.2)), INVENTED))
        .room(RoomAir.ofChanges(cubicMetres(60), 10))
        .thermocouple(Thermocouple.N);
  }

  private static FittedSinteringCurve copperCurve() {
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
                .source(INVENTED)
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

  private static PriceBook prices() {
    return PriceBook.builder()
        .currency(CurrencyUnit.EUR)
        .asOf(LocalDate.of(2026, 11, 25))
        .addOffers(
            offer("printer", ratio(1), 600),
            offer("kiln", ratio(1), 1500),
            offer("filament", grams(500), 80),
            offer("crucible", ratio(1), 40),
            offer("packing", grams(1000), 15),
            offer("carbon", grams(500), 10),
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
        .source(INVENTED)
        .build();
  }
}
