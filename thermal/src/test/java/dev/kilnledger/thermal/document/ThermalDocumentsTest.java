package dev.kilnledger.thermal.document;

import static dev.kilnledger.thermal.document.DocumentProof.problems;
import static dev.kilnledger.thermal.document.DocumentProof.read;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.fahrenheit;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerMole;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kelvinPerMinute;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumePercent;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.CurvePoint;
import dev.kilnledger.thermal.burnout.DecompositionStep;
import dev.kilnledger.thermal.burnout.MasterDecompositionCurve;
import dev.kilnledger.thermal.burnout.PorePressureLimit;
import dev.kilnledger.thermal.burnout.ReactionOrder;
import dev.kilnledger.thermal.burnout.WallRateLimit;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.conduction.SurfaceContact;
import dev.kilnledger.thermal.densification.Densification;
import dev.kilnledger.thermal.densification.DensificationRun;
import dev.kilnledger.thermal.densification.DensityReading;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringCurveFit;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.SoakControl;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.ProfileBuilder;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ThermalDocumentsTest {
  private static final Source INVENTED = Source.user("invented for this test");
  private static final MaterialLibrary STANDARD = MaterialLibrary.standard();
  private static final Document<Profile> PROFILE = ThermalDocuments.profile();
  private static final Document<FiringSetup> FIRING = ThermalDocuments.firing(STANDARD);

  static List<Document<?>> documents() {
    return List.of(
        PROFILE,
        ThermalDocuments.route(STANDARD),
        FIRING,
        ThermalDocuments.kinetics(),
        ThermalDocuments.sinteringCurve());
  }

  private static Profile sintering() {
    return Profile.from(celsius(20))
        .rampTo(celsius(820), kelvinPerHour(100))
        .hold(hours(3))
        .coolTo(celsius(100), kelvinPerMinute(2))
        .build();
  }

  /** Every optional input there is. */
  private static FiringSetup everything() {
    return Workbench.informed(Workbench.copper(), 1050)
        .greenMass(grams(60))
        .addKinetics(
            BinderKinetics.builder()
                .name("two reactions")
                .addSteps(
                    DecompositionStep.of(
                        kilojoulesPerMole(120),
                        MasterDecompositionCurve.of(
                            List.of(
                                CurvePoint.of(ratio(-28), ratio(0)),
                                CurvePoint.of(ratio(-27), ratio(0.5)),
                                CurvePoint.of(ratio(-26), ratio(1)))),
                        massFraction(0.25)),
                    DecompositionStep.of(
                        kilojoulesPerMole(191),
                        ReactionOrder.of(Frequencies.perSecond(2.85e13), ratio(1.5)),
                        massFraction(0.75)))
                .range(Span.of(celsius(200), celsius(450)))
                .condition("neat, in nitrogen")
                .source(INVENTED)
                .build())
        .addLossLimits(
            PorePressureLimit.builder()
                .permeability(Amounts.squareMetres(1e-15))
                .viscosity(PorePressureLimit.pascalSeconds(3e-5))
                .molarMass(gramsPerMole(44))
                .binderPerVolume(kilogramsPerCubicMetre(450))
                .halfSection(millimetres(2.5))
                .highest(Amounts.bars(2))
                .source(INVENTED)
                .build(),
            WallRateLimit.builder()
                .wall(millimetres(3))
                .knownWall(millimetres(4))
                .knownRate(Frequencies.perHour(0.2))
                .scaling(WallRateLimit.Scaling.LINEAR)
                .source(INVENTED)
                .build())
        .soakControl(SoakControl.GUARANTEED)
        .packingConductivity(
            Sourced.of(
                PropertyCurve.<ThermalConductivity>builder()
                    .at(celsius(20), wattsPerMetreKelvin(0.15))
                    .at(celsius(800), wattsPerMetreKelvin(0.3))
                    .build(),
                "our alumina",
                INVENTED))
        .contact(SurfaceContact.of(wattsPerSquareMetreKelvin(15), ratio(0.8)))
        .soak(hours(2))
        .soakTemperature(celsius(1000))
        .targetDensity(volumePercent(92))
        .build();
  }

  /** Exact readings of an invented powder of 300 kJ/mol on three ramps. */
  private static FittedSinteringCurve fitted() {
    List<DensificationRun> runs = new ArrayList<>();
    for (double rate : new double[] {60, 200, 600}) {
      List<DensityReading> readings = new ArrayList<>();
      for (double celsius = 900; celsius <= 1300; celsius += 40) {
        Profile part =
            Profile.from(celsius(20)).rampTo(celsius(celsius), kelvinPerHour(rate)).build();
        double logWork =
            Densification.standard().logWork(kilojoulesPerMole(300), TemperatureHistory.of(part));
        readings.add(
            DensityReading.of(
                hours((celsius - 20) / rate),
                Amounts.volumeFraction(0.6 + 0.4 / (1 + Math.exp(-(logWork + 23.5) / 1.3)))));
      }
      Profile whole = Profile.from(celsius(20)).rampTo(celsius(1300), kelvinPerHour(rate)).build();
      runs.add(DensificationRun.of("ramp", TemperatureHistory.of(whole), readings));
    }
    return SinteringCurveFit.standard().fit("invented powder", runs);
  }

  @Test
  void profilesAreReadByTimeOrByRate() {
    DocumentProof.roundTrip(PROFILE, sintering());
    Profile byRate =
        read(
            PROFILE,
            """
            {"document": "profile", "schemaVersion": 1,
             "start": {"value": 20, "unit": "Cel"},
             "segments": [
               {"to": {"value": 820, "unit": "Cel"}, "rate": {"value": 100, "unit": "K/h"}},
               {"to": {"value": 820, "unit": "Cel"}, "duration": {"value": 180, "unit": "min"}},
               {"to": {"value": 100, "unit": "Cel"}, "rate": {"value": 2, "unit": "K/min"}}]}
            """);
    assertThat(byRate).isEqualTo(sintering());
  }

  @Test
  void randomProfilesAreReadBack() {
    Random random = new Random(20261125);
    for (int i = 0; i < 200; i++) {
      DocumentProof.readBack(PROFILE, profile(random));
    }
  }

  /** Any doubles at all: what a computation leaves behind has seventeen digits. */
  private static Profile profile(Random random) {
    ProfileBuilder profile = Profile.from(temperature(random));
    for (int i = 0; i <= random.nextInt(12); i++) {
      switch (random.nextInt(3)) {
        case 0 -> profile.hold(minutes(1e-9 + random.nextDouble() * 1e4));
        case 1 -> profile.rampTo(temperature(random), kelvinPerHour(1 + random.nextInt(300)));
        default -> profile.rampOver(temperature(random), hours(1e-6 + random.nextDouble()));
      }
    }
    return profile.build();
  }

  private static Amount<Temperature> temperature(Random random) {
    double number = random.nextDouble() * 1500;
    return switch (random.nextInt(3)) {
      case 0 -> celsius(number);
      case 1 -> fahrenheit(number);
      default -> Amounts.kelvin(number);
    };
  }

  @Test
  void routesStandWithTheirMaterialsByNameOrInFull() {
    FiringRoute route = everything().route();
    DocumentProof.roundTrip(ThermalDocuments.route(MaterialLibrary.empty()), route);
    DocumentProof.roundTrip(
        ThermalDocuments.route(MaterialLibrary.empty()),
        FiringRoute.of(
            Workbench.debinding().name("first debinding").build(),
            Workbench.sintering(1000).name("only sintering").build()));
    MaterialLibrary known =
        MaterialLibrary.builder()
            .addPackingPowders(Workbench.alumina())
            .addGetters(Workbench.carbon())
            .build();
    Document<FiringRoute> named = ThermalDocuments.route(known);
    DocumentProof.roundTrip(named, route);
    assertThat(named.text(route))
        .contains(
            "\"packing\" : \"" + Workbench.alumina().name() + "\"",
            "\"getter\" : \"" + Workbench.carbon().name() + "\"");
  }

  @Test
  void firingsStandWithAllTheirInputsOrTheFewNeeded() {
    DocumentProof.roundTrip(FIRING, everything());
    DocumentProof.roundTrip(FIRING, Workbench.setup(Workbench.bronze(), 820).build());
  }

  @Test
  void whatWasFittedToMeasurementsIsKept() {
    DocumentProof.roundTrip(ThermalDocuments.sinteringCurve(), fitted());
    for (BinderKinetics kinetics : everything().kinetics()) {
      DocumentProof.roundTrip(ThermalDocuments.kinetics(), kinetics);
    }
  }

  @Test
  void documentsOfTheFirstVersionAreReadForGood() {
    assertThat(DocumentProof.pinned(PROFILE, "v1/profile.json")).isEqualTo(sintering());
    assertThat(DocumentProof.pinned(ThermalDocuments.route(STANDARD), "v1/route.json"))
        .isEqualTo(everything().route());
    assertThat(DocumentProof.pinned(ThermalDocuments.kinetics(), "v1/kinetics.json"))
        .isEqualTo(everything().kinetics().get(0));
    assertThat(DocumentProof.pinned(FIRING, "v1/firing.json").kinetics())
        .isEqualTo(everything().kinetics());
    assertThat(
            DocumentProof.pinned(ThermalDocuments.sinteringCurve(), "v1/sintering-curve.json")
                .degreesOfFreedom())
        .isEqualTo(29); // 33 readings less the four numbers fitted
  }

  @ParameterizedTest
  @MethodSource("documents")
  void schemasInTheJarAreThoseOfTheForms(Document<?> document) throws IOException {
    DocumentProof.shipped(document);
  }

  @Test
  void wrongSegmentsAreAllTold() {
    assertThat(
            problems(
                PROFILE,
                """
                {"document": "profile", "schemaVersion": 1,
                 "start": {"value": -300, "unit": "Cel"},
                 "segments": [
                   {"to": {"value": 820, "unit": "Cel"}},
                   {"to": {"value": 820, "unit": "Cel"}, "rate": {"value": 2, "unit": "Cel/min"},
                    "duration": {"value": 3, "unit": "h"}},
                   {"to": {"value": 100, "unit": "K/h"}, "rate": {"value": 2, "unit": "K"}}]}
                """))
        .hasSizeGreaterThanOrEqualTo(4)
        .anyMatch(p -> p.startsWith("line 2, column 11, /start: "))
        .contains(
            "line 4, column 4, /segments/0: neither duration nor rate is stated; accepted is one of"
                + " the two")
        .anyMatch(p -> p.contains("/segments/2/to: "))
        .anyMatch(p -> p.contains("/segments/2/rate: "));
    assertThat(
            problems(
                PROFILE,
                """
                {"document": "profile", "schemaVersion": 1,
                 "start": {"value": 20, "unit": "Cel"},
                 "segments": [
                   {"to": {"value": 820, "unit": "Cel"}, "rate": {"value": 0, "unit": "K/h"}},
                   {"to": {"value": 820, "unit": "Cel"}, "rate": {"value": 10, "unit": "K/h"}},
                   {"to": {"value": 820, "unit": "Cel"}, "duration": {"value": -1, "unit": "h"}}]}
                """))
        .hasSize(3)
        .allMatch(p -> p.contains("segment "));
    assertThat(
            problems(
                PROFILE,
                """
                {"document": "profile", "schemaVersion": 1,
                 "start": {"value": 20, "unit": "Cel"},
                 "segments": [
                   {"to": {"value": 820, "unit": "Cel"}, "rate": {"value": 2, "unit": "K/min"},
                    "duration": {"value": 3, "unit": "h"}}]}
                """))
        .containsExactly(
            "line 4, column 4, /segments/0: duration and rate are stated; accepted is one of the"
                + " two");
  }

  @Test
  void fitThatIsNoneIsRefused() {
    String text = ThermalDocuments.sinteringCurve().text(fitted());
    assertThat(
            problems(
                ThermalDocuments.sinteringCurve(),
                text.replaceFirst("\"covariance\" : \\[[^]]*]", "\"covariance\" : [-1, 2]")
                    .replace("\"degreesOfFreedom\" : 29", "\"degreesOfFreedom\" : 0")))
        .hasSize(3)
        .anyMatch(p -> p.contains("degrees of freedom are 0"))
        .anyMatch(p -> p.contains("covariance has 2 numbers"))
        .anyMatch(p -> p.contains("number 1 of the covariance is -1.0"));
  }

  @Test
  void segmentsAreThoseOfTheDomain() {
    assertThat(read(PROFILE, PROFILE.text(sintering())).segments())
        .containsExactly(
            Segment.of(celsius(20), celsius(820), hours(8)),
            Segment.of(celsius(820), celsius(820), hours(3)),
            Segment.of(celsius(820), celsius(100), hours(6)));
  }
}
