package dev.kilnledger.core.document;

import static dev.kilnledger.core.document.DocumentProof.problems;
import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.watts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.equipment.BoxCavity;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.EquipmentList;
import dev.kilnledger.core.equipment.FilamentPreheater;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.PartingLayer;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoreDocumentsTest {
  private static final MaterialLibrary STANDARD = MaterialLibrary.standard();
  private static final Source INVENTED = Source.user("invented for this test");
  private static final Document<MaterialLibrary> IN_FULL =
      CoreDocuments.materials(MaterialLibrary.empty());
  private static final Document<EquipmentList> EQUIPMENT = CoreDocuments.equipment(STANDARD);

  static List<Document<?>> documents() {
    return List.of(IN_FULL, EQUIPMENT, CoreDocuments.problems());
  }

  private static EquipmentList equipment() {
    return EquipmentList.builder()
        .addPrinters(
            Printer.builder()
                .name("bench printer")
                .buildVolume(Envelope.of(millimetres(200), millimetres(200), millimetres(180)))
                .filamentDiameter(millimetres(1.75))
                .nozzle(Nozzle.of(STANDARD.nozzleMaterial("hardened tool steel"), millimetres(0.6)))
                .preheater(FilamentPreheater.of("filament warmer", celsius(45), watts(30)))
                .partingLayer(PartingLayer.of("alumina paste", Sourced.of(celsius(1400), INVENTED)))
                .build(),
            Printer.builder()
                .name("bare printer")
                .buildVolume(Envelope.of(millimetres(100), millimetres(100), millimetres(100)))
                .filamentDiameter(millimetres(2.85))
                .nozzle(Nozzle.of(STANDARD.nozzleMaterials().get(0), millimetres(0.8)))
                .build())
        .addKilns(
            Kiln.builder()
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
                        .conductivityStatedAt(celsius(600))
                        .density(kilogramsPerCubicMetre(600))
                        .heatCapacity(joulesPerKilogramKelvin(1000))
                        .build())
                .outsideFilm(wattsPerSquareMetreKelvin(12))
                .source(INVENTED)
                .build(),
            Kiln.builder()
                .name("unknown kiln")
                .peakTemperature(celsius(1000))
                .chamber(Envelope.of(millimetres(150), millimetres(150), millimetres(150)))
                .power(kilowatts(3))
                .voltage(volts(400))
                .phases(3)
                .build())
        .addCrucibles(
            Crucible.builder()
                .name("round crucible")
                .material(STANDARD.crucibleMaterial("stainless steel 310S"))
                .cavity(RoundCavity.of(millimetres(130), millimetres(110)))
                .outside(Envelope.of(millimetres(136), millimetres(136), millimetres(125)))
                .mass(grams(1200))
                .heatCapacity(joulesPerKilogramKelvin(550))
                .build(),
            Crucible.builder()
                .name("box crucible")
                .material(STANDARD.crucibleMaterials().get(0))
                .cavity(BoxCavity.of(millimetres(120), millimetres(80), millimetres(60)))
                .mass(grams(900))
                .heatCapacity(joulesPerKilogramKelvin(1000))
                .build())
        .addSupplyCircuits(
            SupplyCircuit.builder()
                .name("workshop socket")
                .voltage(volts(230))
                .phases(1)
                .breakerRating(amperes(16))
                .continuousShare(percent(75))
                .build())
        .build();
  }

  /** One material of the standard library, and one feedstock of the workshop's own. */
  private static MaterialLibrary own() {
    return MaterialLibrary.builder()
        .addBinders(STANDARD.binder("polylactide"))
        .addFeedstocks(
            Feedstock.builder()
                .name("our bronze filament")
                .alloy(STANDARD.alloy("tin bronze 90/10"))
                .binder(STANDARD.binder("polylactide"))
                .metalMassFraction(massFraction(0.89))
                .metalMassFractionRange(
                    Sourced.of(
                        Span.of(massFraction(0.88), massFraction(0.9)), "three spools", INVENTED))
                .source(INVENTED)
                .build())
        .build();
  }

  @Test
  void standardLibraryStandsInFull() {
    DocumentProof.roundTrip(IN_FULL, STANDARD);
  }

  @Test
  void factsOfAGetterThatAreItsOwnAreKept() {
    Getter own =
        Getter.builder()
            .from(STANDARD.getter("powdered carbon"))
            .heatCapacity(Sourced.of(joulesPerKilogramKelvin(900), INVENTED))
            .build();
    DocumentProof.roundTrip(IN_FULL, MaterialLibrary.builder().addGetters(own).build());
  }

  @Test
  void materialsThatAreKnownStandByTheirNames() {
    Document<MaterialLibrary> known = CoreDocuments.materials(STANDARD);
    DocumentProof.roundTrip(known, STANDARD);
    assertThat(known.text(STANDARD).chars().filter(c -> c == '{').count()).isEqualTo(1);
    assertThat(known.text(own()))
        .contains("\"alloy\" : \"tin bronze 90/10\"", "\"binders\" : [\n    \"polylactide\"\n  ]");
    // whoever does not know them is told which names there are
    assertThat(problems(IN_FULL, known.text(own())))
        .first()
        .asString()
        .isEqualTo(
            "line 5, column 5, /binders/0: \"polylactide\" is not known; accepted is an object");
  }

  @Test
  void materialOfAKnownNameButOtherFactsStandsInFull() {
    MaterialLibrary changed =
        MaterialLibrary.builder()
            .addFeedstocks(
                Feedstock.builder()
                    .from(STANDARD.feedstocks().get(0))
                    .source(Source.user("a spool of our own"))
                    .build())
            .build();
    Document<MaterialLibrary> known = CoreDocuments.materials(STANDARD);
    DocumentProof.roundTrip(known, changed);
    assertThat(known.text(changed)).contains("a spool of our own");
  }

  @Test
  void equipmentStandsWithAndWithoutWhatMayBeLeftOut() {
    DocumentProof.roundTrip(EQUIPMENT, equipment());
    DocumentProof.roundTrip(EQUIPMENT, EquipmentList.builder().build());
    DocumentProof.roundTrip(CoreDocuments.equipment(MaterialLibrary.empty()), equipment());
  }

  @Test
  void documentsOfTheFirstVersionAreReadForGood() {
    assertThat(DocumentProof.pinned(EQUIPMENT, "v1/equipment.json")).isEqualTo(equipment());
    assertThat(DocumentProof.pinned(CoreDocuments.materials(STANDARD), "v1/materials.json"))
        .isEqualTo(own());
    assertThat(DocumentProof.pinned(IN_FULL, "v1/materials-in-full.json"))
        .satisfies(library -> assertThat(library.alloys()).hasSize(1))
        .satisfies(library -> assertThat(library.nozzleMaterials()).hasSize(1));
    assertThat(DocumentProof.pinned(CoreDocuments.problems(), "v1/problems.json"))
        .containsExactly(
            InputProblem.of("line 1, column 2, /a", "/a", "5 stands there", "text"),
            InputProblem.of("job", "it is none", "one"));
  }

  @ParameterizedTest
  @MethodSource("documents")
  void schemasInTheJarAreThoseOfTheForms(Document<?> document) throws IOException {
    DocumentProof.shipped(document);
  }

  @Test
  void everythingThatIsWrongIsToldAtOnce() {
    assertThat(
            problems(
                EQUIPMENT,
                """
                {"document": "equipment", "schemaVersion": 1,
                 "kilns": [{
                   "name": "k", "power": {"value": 2.4, "unit": "kV"}, "phases": "one",
                   "peakTemperature": {"value": 1e999, "unit": "Cel"},
                   "chamber": {"x": {"value": 1, "unit": "m"}, "y": {"value": 1, "unit": "m"}},
                   "voltage": {"value": 0, "unit": "V"}
                 }],
                 "crucibles": [{"name": " ", "material": "cheese",
                   "cavity": {"type": "round",
                     "diameter": {"value": 1, "unit": "cm"}, "height": {"value": 0, "unit": "cm"}},
                   "mass": {"value": -1, "unit": "g"},
                   "heatCapacity": {"value": {"value": 1, "unit": "J/(kg.K)"},
                     "source": {"text": "", "standing": "user"}}}],
                 "supplyCircuits": [{"name": "", "voltage": {"value": 230, "unit": "V"},
                   "phases": 2, "breakerRating": {"value": 0, "unit": "A"}}],
                 "kettles": []}
                """))
        .anyMatch(p -> p.startsWith("line 4, column 23, /kilns/0/peakTemperature: "))
        .contains(
            "line 5, column 15, /kilns/0/chamber: the field z is missing; accepted is length such"
                + " as {\"value\": 1.5, \"unit\": \"m\"}")
        .anyMatch(p -> p.startsWith("line 3, column 26, /kilns/0/power: ") && p.contains("kV"))
        .contains(
            "line 3, column 66, /kilns/0/phases: \"one\" stands there; accepted is a whole number up"
                + " to 2147483647")
        .anyMatch(p -> p.contains("/crucibles/0/material: \"cheese\" is not known; accepted is an"))
        .anyMatch(p -> p.contains("/crucibles/0/cavity: "))
        .anyMatch(p -> p.contains("/crucibles/0/heatCapacity/source: source: text is blank"))
        .anyMatch(p -> p.contains("/supplyCircuits/0: ") && p.contains("name is blank"))
        .anyMatch(p -> p.contains("/supplyCircuits/0: ") && p.contains("breaker rating"))
        .anyMatch(p -> p.contains("/kettles: the field is not known"));
  }

  @Test
  void kindsOfQuantityAreToldApart() {
    String circuit = EQUIPMENT.text(equipment());
    assertThat(problems(EQUIPMENT, circuit.replace("\"kW\"", "\"kg\""))).hasSize(2);
    assertThat(problems(EQUIPMENT, circuit.replace("\"value\" : 16", "\"value\" : \"16\"")))
        .singleElement()
        .asString()
        .contains("\"16\" stands there; accepted is a number");
    assertThat(problems(EQUIPMENT, circuit.replace("\"value\" : 16", "\"value\" : NaN")))
        .singleElement()
        .asString()
        .contains("it is no JSON");
    assertThat(problems(EQUIPMENT, circuit.replace("\"phases\" : 3", "\"phases\" : null")))
        .singleElement()
        .asString()
        .contains("null stands there");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"\\ud83d\"", "\"\\ude00 x\""})
  void halfACharacterIsRefused(String name) {
    assertThat(
            problems(
                EQUIPMENT,
                "{\"document\": \"equipment\", \"schemaVersion\": 1, \"supplyCircuits\": [{"
                    + "\"name\": "
                    + name
                    + ", \"phases\": 1, \"voltage\": {\"value\": 230, \"unit\": \"V\"},"
                    + " \"breakerRating\": {\"value\": 16, \"unit\": \"A\"}}]}"))
        .singleElement()
        .asString()
        .contains("half a Unicode character");
  }

  @Test
  void repeatedWordsOfASetAreRefused() {
    String text = IN_FULL.text(STANDARD);
    String twice = text.replaceFirst("(\"cautions\" : \\[\\s*)(\"[a-z-]+\")", "$1$2, $2");
    assertThat(twice).isNotEqualTo(text);
    assertThat(problems(IN_FULL, twice))
        .singleElement()
        .asString()
        .contains("stands twice; accepted is each once");
    assertThat(DocumentProof.violations(IN_FULL, twice)).isNotEmpty();
  }
}
