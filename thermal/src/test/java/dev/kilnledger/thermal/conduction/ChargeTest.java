package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.thermal.Workbench.alumina;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.mullite;
import static dev.kilnledger.thermal.conduction.Bodies.body;
import static dev.kilnledger.thermal.conduction.Bodies.material;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.joulesPerGram;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.BoxCavity;
import dev.kilnledger.core.equipment.Cavity;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.quantity.SpecificEnergy;
import dev.kilnledger.units.quantity.ThermalConductivity;
import org.junit.jupiter.api.Test;

class ChargeTest {
  private static PackedCharge.Builder packed(Cavity cavity) {
    return PackedCharge.builder()
        .crucible(
            Crucible.builder()
                .name("test crucible")
                .material(mullite().material())
                .cavity(cavity)
                .mass(kilograms(1))
                .heatCapacity(joulesPerKilogramKelvin(1100))
                .build())
        .powder(alumina())
        .alloy(copper())
        .metal(grams(500));
  }

  /** Metal and powder, in mm. */
  private static double withoutWall(Charge charge) {
    return charge.layers().stream().limit(2).mapToDouble(l -> l.thickness().in(MILLIMETRE)).sum();
  }

  /** By hand: 500 g / (8.9 x 0.6 g/cm3) = 93.63 cm3 in 942.48 cm3, radius 50 mm x sqrt(0.09935). */
  @Test
  void gathersTheMetalInTheMiddleOfTheCrucible() {
    Charge round = packed(RoundCavity.of(millimetres(100), millimetres(120))).build().charge();
    assertThat(round.shape()).isEqualTo(BodyShape.CYLINDER);
    assertThat(withoutWall(round)).isCloseTo(50, within(1e-9));
    assertThat(round.layers().get(0).thickness().in(MILLIMETRE)).isCloseTo(15.760, within(1e-3));
    ChargeMaterial parts = round.layers().get(0).material();
    assertThat(parts.density().si()).isCloseTo(5340, within(1e-6)); // 8900 x 0.6
    assertThat(round.layers().get(1).material().density().si()).isCloseTo(1250, within(1e-9));
  }

  /** D2/16 against H2/8, the lags of cylinder and slab: the slab is quicker below H = D/sqrt 2. */
  @Test
  void takesTheQuickerWayIntoACrucible() {
    Charge flat = packed(RoundCavity.of(millimetres(150), millimetres(100))).build().charge();
    assertThat(flat.shape()).isEqualTo(BodyShape.SLAB);
    assertThat(withoutWall(flat)).isCloseTo(50, within(1e-9));
    Charge box =
        packed(BoxCavity.of(millimetres(200), millimetres(80), millimetres(120))).build().charge();
    assertThat(box.shape()).isEqualTo(BodyShape.SLAB);
    assertThat(withoutWall(box)).isCloseTo(40, within(1e-9));
    double share = 0.5 / 5340 / (0.2 * 0.08 * 0.12);
    assertThat(box.layers().get(0).thickness().in(MILLIMETRE)).isCloseTo(40 * share, within(1e-9));
  }

  /** The quasi-steady lag goes as one over the conductivity: 1.5 times, and by 1.5. */
  @Test
  void spansWhatTheConductivityLeavesOpen() {
    Charge charge = packed(RoundCavity.of(millimetres(100), millimetres(120))).build().charge();
    Profile profile = Profile.from(celsius(20)).rampTo(celsius(1000), kelvinPerHour(50)).build();
    EnthalpyConduction model = EnthalpyConduction.standard();
    CoreHistory expected = model.forecast(charge, profile);
    double lag = expected.greatestLag().lag().si();
    double slow = model.forecast(charge.slow(), profile).greatestLag().lag().si();
    double quick = model.forecast(charge.quick(), profile).greatestLag().lag().si();
    assertThat(slow).isCloseTo(1.5 * lag, within(0.01 * lag)); // what is left of the start
    assertThat(quick).isCloseTo(lag / 1.5, within(0.01 * lag));
    assertThat(expected.findings())
        .filteredOn(finding -> finding.code() == ConductionFinding.CONDUCTIVITY_KNOWN)
        .hasSize(3)
        .allMatch(finding -> finding.severity() == NOTE);
    // By hand: r/k (rho c of the metal r1^2/2 ln(R/r1) + that of the powder's ring) and the core's.
    double r = 50 / 3600.0;
    double r1 = charge.layers().get(0).thickness().si();
    double metal = 5340 * 430;
    double powder = 1250 * 1100;
    double ring =
        powder * (0.05 * 0.05 - r1 * r1) / 4 + (metal - powder) * r1 * r1 / 2 * Math.log(0.05 / r1);
    double byHand = r * (ring / 0.3 + metal * r1 * r1 / 4 / 5);
    assertThat(lag).isCloseTo(byHand, within(0.002 * byHand)); // grid, and the start
  }

  @Test
  void refusesChargesThatCannotBe() {
    RoundCavity cavity = RoundCavity.of(millimetres(100), millimetres(120));
    assertThatThrownBy(packed(cavity).relativeDensity(volumeFraction(1.1))::build)
        .hasMessageContaining("relative density is 1.1 m³/m³; accepted is above 0 up to 1");
    assertThatThrownBy(packed(cavity).relativeDensity(volumeFraction(0))::build)
        .hasMessageContaining("relative density is 0 m³/m³; accepted is above 0 up to 1");
    assertThat(packed(cavity).relativeDensity(volumeFraction(1)).build().relativeDensity().si())
        .isEqualTo(1);
    // 9 kg / 5.34 g/cm3 = 1685 cm3 of 942.5 cm3.
    assertThatThrownBy(packed(cavity).metal(kilograms(9))::build)
        .hasMessageContaining("9 kg of metal would fill 179 % of the cavity");
    assertThatThrownBy(() -> Charge.builder().name(" ").shape(BodyShape.SPHERE).build())
        .hasMessageContainingAll("name is blank", "there is no layer");
    assertThatThrownBy(
            () ->
                body(BodyShape.SPHERE, 1, 1e-6)
                    .back(BackFace.of(SurfaceContact.perfect(), celsius(0)))
                    .build())
        .hasMessageContaining("a SPHERE has no back face; accepted is one for a SLAB");
    assertThatThrownBy(() -> ChargeLayer.of(material(1, 1, 1), metres(0)))
        .hasMessageContaining("layer of test material: thickness is 0 m");
    assertThatThrownBy(() -> SurfaceContact.of(wattsPerSquareMetreKelvin(0)))
        .hasMessageContaining("neither convection nor radiation");
    assertThatThrownBy(() -> SurfaceContact.of(wattsPerSquareMetreKelvin(-1), ratio(2)))
        .hasMessageContainingAll("emissivity is 2", "convection is -1");
  }

  @Test
  void refusesMaterialsThatCannotBe() {
    assertThatThrownBy(() -> ChargeMaterial.builder().from(material(0, 0, 1000)).build())
        .hasMessageContainingAll("density is 0", "conductivity is 0");
    PropertyCurve<SpecificEnergy> falling =
        PropertyCurve.<SpecificEnergy>builder()
            .at(celsius(0), joulesPerGram(2))
            .at(celsius(10), joulesPerGram(1))
            .build();
    ChargeMaterial sound = material(1, 1, 1);
    assertThatThrownBy(
            () ->
                ChargeMaterial.builder()
                    .from(sound)
                    .conductivityFactor(ratio(0.5))
                    .enthalpy(falling)
                    .build())
        .hasMessageContainingAll(
            "conductivity factor is 0.5; accepted is 1 or more",
            "heat capacity and enthalpy are both given",
            "enthalpy falls or stays from 2 J/g to 1 J/g");
    assertThatThrownBy(
            () ->
                ChargeMaterial.builder()
                    .name("x")
                    .density(kilogramsPerCubicMetre(1))
                    .conductivity(PropertyCurve.constant(wattsPerMetreKelvin(1)))
                    .enthalpy(PropertyCurve.constant(joulesPerGram(1)))
                    .source(Bodies.SOURCE)
                    .build())
        .hasMessage(
            "charge material x: the enthalpy has one point; accepted are two points or more");
    assertThatThrownBy(
            () ->
                ChargeMaterial.builder()
                    .name("x")
                    .density(kilogramsPerCubicMetre(1))
                    .conductivity(PropertyCurve.constant(wattsPerMetreKelvin(1)))
                    .source(Bodies.SOURCE)
                    .build())
        .hasMessageContaining("neither given; accepted is one of them");
    assertThatThrownBy(() -> PropertyCurve.<ThermalConductivity>builder().build())
        .hasMessageContaining("there is no point");
    assertThatThrownBy(
            () ->
                PropertyCurve.<ThermalConductivity>builder()
                    .at(celsius(10), wattsPerMetreKelvin(1))
                    .at(celsius(10), wattsPerMetreKelvin(2))
                    .addTemperatures(celsius(20))
                    .build())
        .hasMessageContainingAll("3 temperatures and 2 values", "point 2 is at 10 °C after 10 °C");
  }

  /** Of 10 J/g in and 2 J/g out 7.9 J/g stayed: 0.1 of 12 is not accounted for. */
  @Test
  void tellsWhatOfTheHeatDoesNotBalance() {
    HeatBalance balance =
        ImmutableHeatBalance.of(joulesPerGram(10), joulesPerGram(2), joulesPerGram(7.9));
    assertThat(balance.imbalance().si()).isCloseTo(0.1 / 12, within(1e-12));
    HeatBalance nothing =
        ImmutableHeatBalance.of(joulesPerGram(0), joulesPerGram(0), joulesPerGram(0));
    assertThat(nothing.imbalance().si()).isZero();
  }

  @Test
  void refusesAMaterialWithoutConductivityOrHeatCapacity() {
    assertThatThrownBy(() -> material(-1, 0, -2))
        .hasMessageContaining("density is 0 kg/m³; accepted is more than zero")
        .hasMessageContaining("conductivity is -1 W/(m·K); accepted is more than zero")
        .hasMessageContaining("heat capacity is -2 J/(kg·K); accepted is more than zero");
    assertThat(ConductionFinding.CORE_SOAK.code()).isEqualTo("core-soak");
  }
}
