package dev.kilnledger.core.document;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.fahrenheit;
import static dev.kilnledger.units.Amounts.inches;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.pounds;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.Law;
import dev.kilnledger.core.equipment.BoxCavity;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.EquipmentList;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;

/** Whatever is written is read back equal, and written again byte for byte. */
class DocumentLawsTest {
  private static final MaterialLibrary STANDARD = MaterialLibrary.standard();

  @Provide
  Arbitrary<String> name() {
    // Any text with something to see in it, in any script, that UTF-8 can tell.
    return Arbitraries.strings()
        .withCharRange(' ', '\ud7ff')
        .ofMinLength(1)
        .ofMaxLength(12)
        .filter(text -> !text.isBlank());
  }

  @Provide
  Arbitrary<Kiln> kiln() {
    return Combinators.combine(
            name(),
            Arbitraries.integers().between(200, 1700),
            Arbitraries.integers().between(1, 60).tuple3(),
            number(0.5, 20),
            Arbitraries.of(1, 3),
            wall().list().ofMaxSize(3))
        .as(
            (name, peak, chamber, power, phases, walls) ->
                Kiln.builder()
                    .name(name)
                    .peakTemperature(peak % 2 == 0 ? celsius(peak) : fahrenheit(peak + 0.1))
                    .chamber(
                        Envelope.of(
                            inches(chamber.get1()),
                            millimetres(chamber.get2() * 7.3),
                            inches(chamber.get3() * 0.1)))
                    .power(kilowatts(power))
                    .voltage(volts(230))
                    .phases(phases)
                    .addAllWall(walls)
                    .build());
  }

  private Arbitrary<WallLayer> wall() {
    return Combinators.combine(name(), number(1, 300), number(0.01, 5))
        .as(
            (name, thickness, conductivity) ->
                WallLayer.builder()
                    .material(name)
                    .thickness(millimetres(thickness))
                    .conductivity(wattsPerMetreKelvin(conductivity))
                    .density(kilogramsPerCubicMetre(thickness * 10))
                    .heatCapacity(joulesPerKilogramKelvin(900 + conductivity))
                    .build());
  }

  @Provide
  Arbitrary<Crucible> crucible() {
    return Combinators.combine(
            name(),
            Arbitraries.of(STANDARD.crucibleMaterials()),
            number(20, 400),
            number(20, 400),
            number(0.1, 30),
            Arbitraries.of(true, false))
        .as(
            (name, material, wide, high, mass, round) ->
                Crucible.builder()
                    .name(name)
                    .material(material)
                    .cavity(
                        round
                            ? RoundCavity.of(millimetres(wide), inches(high / 25))
                            : BoxCavity.of(millimetres(wide), millimetres(high), inches(2)))
                    .mass(pounds(mass))
                    .heatCapacity(joulesPerKilogramKelvin(wide))
                    .build());
  }

  @Provide
  Arbitrary<Feedstock> feedstock() {
    return Combinators.combine(
            name(),
            Arbitraries.of(STANDARD.alloys()),
            Arbitraries.of(STANDARD.binders()),
            number(0.3, 0.75),
            name())
        .as(
            (name, alloy, binder, loading, source) ->
                Feedstock.builder()
                    .name(name)
                    .alloy(alloy)
                    .binder(binder)
                    .solidsLoading(Amounts.volumeFraction(loading))
                    .source(Source.user(source))
                    .build());
  }

  private static Arbitrary<Double> number(double low, double high) {
    return Arbitraries.doubles().between(low, high).ofScale(9);
  }

  @Law
  void equipmentIsReadBackAsItWasWritten(
      @ForAll("kiln") Kiln kiln, @ForAll("crucible") Crucible crucible) throws IOException {
    EquipmentList list = EquipmentList.builder().addKilns(kiln).addCrucibles(crucible).build();
    unchanged(CoreDocuments.equipment(STANDARD), list);
  }

  @Law
  void equipmentIsReadBackWithItsMaterialsInFull(@ForAll("crucible") Crucible crucible)
      throws IOException {
    EquipmentList list = EquipmentList.builder().addCrucibles(crucible).build();
    unchanged(CoreDocuments.equipment(MaterialLibrary.empty()), list);
  }

  @Law
  void materialsAreReadBackByNameAndInFull(@ForAll("feedstock") Feedstock feedstock)
      throws IOException {
    MaterialLibrary library = MaterialLibrary.builder().addFeedstocks(feedstock).build();
    unchanged(CoreDocuments.materials(STANDARD), library);
    unchanged(CoreDocuments.materials(MaterialLibrary.empty()), library);
  }

  @Law
  void aLibraryKeepsItsOrder(
      @ForAll("feedstock") Feedstock one, @ForAll("feedstock") Feedstock other) throws IOException {
    if (one.name().equals(other.name())) {
      return;
    }
    MaterialLibrary library = MaterialLibrary.builder().addFeedstocks(other, one).build();
    assertThat(unchanged(CoreDocuments.materials(STANDARD), library).feedstocks())
        .isEqualTo(List.of(other, one));
  }

  private static <T> T unchanged(Document<T> document, T value) throws IOException {
    String text = document.text(value);
    T read = document.read(ByteSource.of(text.getBytes(StandardCharsets.UTF_8)));
    assertThat(read).isEqualTo(value);
    assertThat(document.text(read)).isEqualTo(text);
    return read;
  }
}
