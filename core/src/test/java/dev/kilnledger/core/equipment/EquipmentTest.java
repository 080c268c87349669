package dev.kilnledger.core.equipment;

import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.watts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvinSquared;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.AMPERE;
import static dev.kilnledger.units.TradeUnits.CUBIC_CENTIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.TestStock;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import org.junit.jupiter.api.Test;

class EquipmentTest {
  static Envelope box(double x, double y, double z) {
    return Envelope.of(millimetres(x), millimetres(y), millimetres(z));
  }

  static Kiln.Builder kiln() {
    return Kiln.builder()
        .name("front loader")
        .peakTemperature(celsius(1200))
        .chamber(box(200, 250, 300))
        .power(kilowatts(3.6))
        .voltage(volts(230))
        .phases(1);
  }

  private static SupplyCircuit.Builder circuit() {
    return SupplyCircuit.builder()
        .name("north wall")
        .voltage(volts(230))
        .phases(1)
        .breakerRating(amperes(16));
  }

  /** P / U and P / (sqrt(3) U): 3.6 kW at 230 V 15.65 A; 11 kW at 400 V 15.88 A (by hand). */
  @Test
  void kilnsDrawTheirRatedCurrent() {
    assertThat(kiln().build().ratedCurrent().in(AMPERE)).isEqualTo(15.65, offset(0.005));
    Kiln three = kiln().power(kilowatts(11)).voltage(volts(400)).phases(3).build();
    assertThat(three.ratedCurrent().in(AMPERE)).isEqualTo(15.88, offset(0.005));
  }

  /** 2 (0.2 x 0.25 + 0.25 x 0.3 + 0.3 x 0.2) = 0.37 m2. */
  @Test
  void kilnsHaveSixInnerFacesAndAFilmOutside() {
    assertThat(kiln().build().innerSurface().si()).isEqualTo(0.37, offset(1e-12));
    assertThat(kiln().build().outsideFilm()).isEqualTo(wattsPerSquareMetreKelvin(10));
  }

  /** The javadoc's example, by hand: 0.2085 - 590 x 0.00015 and 0.2085 + 510 x 0.00015. */
  @Test
  void wallsConductAlongAStraightLineAsTheirDocumentationSays() {
    WallLayer layer =
        WallLayer.builder()
            .material("brick")
            .thickness(millimetres(115))
            .conductivity(wattsPerMetreKelvin(0.2085))
            .conductivityStatedAt(celsius(590))
            .conductivitySlope(wattsPerMetreKelvinSquared(0.00015))
            .density(kilogramsPerCubicMetre(600))
            .heatCapacity(joulesPerKilogramKelvin(1000))
            .build();
    assertThat(layer.conductivityAt(celsius(0)).si()).isEqualTo(0.12, offset(1e-12));
    assertThat(layer.conductivityAt(celsius(1100)).si()).isEqualTo(0.285, offset(1e-12));
    assertThat(layer.isConstant()).isFalse();
  }

  private static WallLayer.Builder brick() {
    return WallLayer.builder()
        .material("brick")
        .thickness(millimetres(115))
        .conductivity(wattsPerMetreKelvin(0.2))
        .density(kilogramsPerCubicMetre(600))
        .heatCapacity(joulesPerKilogramKelvin(1000));
  }

  /** 0.2 at 800 °C falling by 0.00025 per kelvin is zero at 1600 °C; rising, at 0 °C. */
  @Test
  void wallsConductOverTheWholeRangeOfTheKiln() {
    assertThat(brick().build().conductivityAt(celsius(1200))).isEqualTo(wattsPerMetreKelvin(0.2));
    assertThatThrownBy(() -> brick().conductivitySlope(wattsPerMetreKelvinSquared(0.00025)).build())
        .hasMessageContaining("but it is not said at which temperature it is 0.2 W/(m·K)");
    WallLayer.Builder sloping = brick().conductivityStatedAt(celsius(800));
    WallLayer falling = sloping.conductivitySlope(wattsPerMetreKelvinSquared(-0.00025)).build();
    assertThat(kiln().addWall(falling).build().wall()).containsExactly(falling);
    assertThatThrownBy(() -> kiln().peakTemperature(celsius(1601)).addWall(falling).build())
        .hasMessageContaining("conductivity of brick comes to -0.0003 W/(m·K) at 1601 °C")
        .hasMessageContaining("accepted is a line above zero from 0 °C to the peak temperature");
    WallLayer rising = sloping.conductivitySlope(wattsPerMetreKelvinSquared(0.00026)).build();
    assertThatThrownBy(() -> kiln().addWall(rising).build())
        .hasMessageContaining("conductivity of brick comes to -0.0080 W/(m·K) at 0 °C");
    // 0.25 falling by 2^-12 over 1024 K is zero to the last bit
    WallLayer ending =
        brick()
            .conductivity(wattsPerMetreKelvin(0.25))
            .conductivityStatedAt(kelvin(512))
            .conductivitySlope(wattsPerMetreKelvinSquared(-1 / 4096.0))
            .build();
    assertThat(kiln().peakTemperature(kelvin(1535)).addWall(ending).build()).isNotNull();
    assertThatThrownBy(() -> kiln().peakTemperature(kelvin(1536)).addWall(ending).build())
        .hasMessageContaining("conductivity of brick comes to 0.0000 W/(m·K)");
    assertThat(kiln().programmeSegments(1).build().programmeSegments()).hasValue(1);
  }

  @Test
  void factsOfEquipmentMaySayWhereTheyComeFrom() {
    Source sheet = Source.user("invented data sheet");
    assertThat(kiln().build().source()).isEmpty();
    assertThat(kiln().source(sheet).build().source()).contains(sheet);
    Crucible asEntered = EquipmentCheckTest.crucible(box(1, 1, 1)).build();
    assertThat(asEntered.heatCapacity().source()).isEqualTo(Crucible.AS_ENTERED);
    Crucible sourced =
        EquipmentCheckTest.crucible(box(1, 1, 1))
            .heatCapacity(Sourced.of(joulesPerKilogramKelvin(900), "25 to 1000 °C", sheet))
            .build();
    assertThat(sourced.heatCapacity().source()).isEqualTo(sheet);
  }

  @Test
  void refusesImpossibleKilnsWithAllProblems() {
    assertThatThrownBy(
            () ->
                kiln()
                    .name("")
                    .power(watts(0))
                    .voltage(volts(-230))
                    .phases(2)
                    .outsideFilm(wattsPerSquareMetreKelvin(0))
                    .longestHoldAtPeak(hours(0))
                    .fastestHeating(kelvinPerHour(-1))
                    .programmeSegments(0)
                    .build())
        .hasMessageContaining("name is blank")
        .hasMessageContaining("power is 0 W; accepted is more than zero")
        .hasMessageContaining("voltage is -230 V")
        .hasMessageContaining("phases is 2; accepted is 1 or 3")
        .hasMessageContaining("outside film is 0 W/(m²·K)")
        .hasMessageContaining("longest hold at peak is 0 h")
        .hasMessageContaining("fastest heating is -1 K/h")
        .hasMessageContaining("programme segments is 0; accepted is 1 or more, or none");
  }

  /** 80 % of 16 A is 12.8 A: what many codes ask of continuous loads (common practice). */
  @Test
  void circuitsCarryAShareOfTheirRatingForHours() {
    assertThat(circuit().build().continuousRating().in(AMPERE)).isEqualTo(12.8, offset(1e-12));
    assertThat(circuit().continuousShare(ratio(1)).build().continuousRating())
        .isEqualTo(amperes(16));
    assertThat(circuit().phases(3).build().phases()).isEqualTo(3);
    assertThatThrownBy(() -> circuit().continuousShare(ratio(0)).build())
        .hasMessage(
            "supply circuit north wall: continuous share is 0; accepted is above 0 and up to 1");
    assertThatThrownBy(
            () ->
                circuit()
                    .name("")
                    .voltage(volts(0))
                    .phases(0)
                    .breakerRating(amperes(0))
                    .continuousShare(ratio(1.1))
                    .build())
        .hasMessageContaining("name is blank")
        .hasMessageContaining("voltage is 0 V")
        .hasMessageContaining("phases is 0; accepted is 1 or 3")
        .hasMessageContaining("breaker rating is 0 A")
        .hasMessageContaining("continuous share is 1.1; accepted is above 0 and up to 1");
  }

  /** Cylinder 100 x 120 mm: pi/4 x 100 cm2 x 12 cm = 942.478 cm3; box 10 x 20 x 30 cm: 6000 cm3. */
  @Test
  void cavitiesHaveAVolume() {
    RoundCavity round = RoundCavity.of(millimetres(100), millimetres(120));
    assertThat(round.volume().in(CUBIC_CENTIMETRE)).isEqualTo(942.478, offset(5e-4));

    BoxCavity box = BoxCavity.of(millimetres(100), millimetres(200), millimetres(300));
    assertThat(box.volume().in(CUBIC_CENTIMETRE)).isEqualTo(6000, offset(1e-9));

    assertThatThrownBy(() -> RoundCavity.of(millimetres(0), millimetres(-1)))
        .hasMessageContaining("diameter is 0 mm")
        .hasMessageContaining("height is -1 mm");
    assertThatThrownBy(() -> BoxCavity.of(millimetres(0), millimetres(0), millimetres(0)))
        .hasMessageContaining("length is 0 mm")
        .hasMessageContaining("width is 0 mm")
        .hasMessageContaining("height is 0 mm");
  }

  @Test
  void codesOfFindingsStayWhatTheyAre() {
    assertThat(EquipmentFinding.values())
        .extracting(EquipmentFinding::code)
        .containsExactly(
            "nozzle-hardness",
            "nozzle-bore",
            "build-volume",
            "filament-preheater",
            "parting-layer",
            "crucible-space",
            "kiln-space");
  }

  @Test
  void refusesImpossibleSmallEquipment() {
    assertThatThrownBy(
            () ->
                WallLayer.builder()
                    .material("")
                    .thickness(millimetres(0))
                    .conductivity(wattsPerMetreKelvin(0))
                    .density(kilogramsPerCubicMetre(0))
                    .heatCapacity(joulesPerKilogramKelvin(0))
                    .build())
        .hasMessageContaining("material is blank")
        .hasMessageContaining("thickness is 0 mm")
        .hasMessageContaining("conductivity is 0 W/(m·K)")
        .hasMessageContaining("density is 0 kg/m³")
        .hasMessageContaining("heat capacity is 0 J/(kg·K)");
    assertThatThrownBy(() -> Nozzle.of(EquipmentCheckTest.nozzleOf(100, 200), millimetres(0)))
        .hasMessage("nozzle: bore is 0 mm; accepted is more than zero");
    assertThatThrownBy(() -> FilamentPreheater.of(" ", celsius(40), watts(-5)))
        .hasMessageContaining("name is blank")
        .hasMessageContaining("power is -5 W; accepted is zero or more");
    assertThatThrownBy(() -> PartingLayer.of("", TestStock.sourced(celsius(1400))))
        .hasMessage("parting layer: material is blank; accepted is any text");
    assertThatThrownBy(
            () -> EquipmentCheckTest.printer(0.4).filamentDiameter(millimetres(0.4)).build())
        .hasMessage(
            "printer bench: filament diameter is 0.4 mm and the nozzle's bore 0.4 mm; accepted is a"
                + " diameter above the bore");
    assertThatThrownBy(
            () ->
                EquipmentCheckTest.crucible(box(1, 1, 1))
                    .name("")
                    .mass(kilograms(0))
                    .heatCapacity(joulesPerKilogramKelvin(0))
                    .build())
        .hasMessageContaining("name is blank")
        .hasMessageContaining("mass is 0 kg")
        .hasMessageContaining("heat capacity is 0 J/(kg·K)");
  }
}
