package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.thermal.Workbench.alumina;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.mullite;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.BoxCavity;
import dev.kilnledger.core.equipment.Cavity;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.quantity.ThermalConductivity;
import org.junit.jupiter.api.Test;

class CrucibleWallTest {
  private static final Cavity ROUND = RoundCavity.of(millimetres(100), millimetres(120));
  private static final EnthalpyConduction MODEL = EnthalpyConduction.standard();

  private static Crucible.Builder crucible(Cavity cavity) {
    return Crucible.builder()
        .name("test crucible")
        .material(mullite().material())
        .cavity(cavity)
        .mass(kilograms(1))
        .heatCapacity(joulesPerKilogramKelvin(1100));
  }

  private static PackedCharge.Builder packed(Crucible crucible) {
    return PackedCharge.builder()
        .crucible(crucible)
        .powder(alumina())
        .alloy(copper())
        .metal(grams(500));
  }

  private static Sourced<Estimate<ThermalConductivity>> conductivity(
      double low, double expected, double high) {
    return Sourced.of(
        Estimate.of(
            wattsPerMetreKelvin(low), wattsPerMetreKelvin(expected), wattsPerMetreKelvin(high)),
        Source.user("test"));
  }

  private static ChargeLayer wall(Charge charge) {
    return charge.layers().get(2);
  }

  /**
   * The example of the documentation, by hand: 500 g / 5.34 g/cm3 is 93.63 cm3 of the cavity's
   * 942.48 cm3; pi (50 + t)2 (120 + 2 t) - pi 50^2 120 mm3 = 1 kg / 2500 kg/m3 has the root 6.6284
   * mm (solved elsewhere).
   */
  @Test
  void hasTheLayersOfItsDocumentation() {
    Charge charge = packed(crucible(ROUND).build()).build().charge();
    assertThat(charge.layers()).hasSize(3);
    assertThat(charge.layers().get(0).thickness().in(MILLIMETRE)).isCloseTo(15.76, within(5e-3));
    assertThat(charge.layers().get(1).thickness().in(MILLIMETRE)).isCloseTo(34.24, within(5e-3));
    assertThat(wall(charge).thickness().in(MILLIMETRE)).isCloseTo(6.6284, within(5e-5));
  }

  /** 1 kg along 120 mm, whatever the thickness: density x pi ((R + t)2 - R2) x 0.12 m = 1 kg. */
  @Test
  void holdsTheWholeMassOfTheCrucible() {
    for (double density : new double[] {2500, 7900}) {
      Charge charge =
          packed(crucible(ROUND).build())
              .crucibleDensity(kilogramsPerCubicMetre(density))
              .build()
              .charge();
      double outer = 0.05 + wall(charge).thickness().si();
      double ring = Math.PI * (outer * outer - 0.05 * 0.05) * 0.12;
      assertThat(wall(charge).material().density().si() * ring).isCloseTo(1, within(1e-12));
    }
    // a slab of 80 mm takes heat through two faces of 200 x 120 mm
    Charge box =
        packed(crucible(BoxCavity.of(millimetres(200), millimetres(80), millimetres(120))).build())
            .build()
            .charge();
    double faces = 2 * 0.2 * 0.12 * wall(box).thickness().si();
    assertThat(wall(box).material().density().si() * faces).isCloseTo(1, within(1e-12));
    // (200 + 2t)(80 + 2t)(120 + 2t) - 200 x 80 x 120 = 400000 mm3, solved elsewhere
    assertThat(wall(box).thickness().in(MILLIMETRE)).isCloseTo(3.7955, within(5e-5));
  }

  @Test
  void takesTheThicknessFromTheOutsideWhereThatIsKnown() {
    Envelope outside = Envelope.of(millimetres(118), millimetres(120), millimetres(150));
    Charge cylinder = packed(crucible(ROUND).outside(outside).build()).build().charge();
    assertThat(wall(cylinder).thickness().in(MILLIMETRE)).isCloseTo(9, within(1e-9));
    Cavity flat = RoundCavity.of(millimetres(100), millimetres(60));
    Charge slab = packed(crucible(flat).outside(outside).build()).build().charge();
    assertThat(slab.shape()).isEqualTo(BodyShape.SLAB);
    assertThat(wall(slab).thickness().in(MILLIMETRE)).isCloseTo(45, within(1e-9));
    assertThatThrownBy(
            () ->
                packed(
                        crucible(ROUND)
                            .outside(
                                Envelope.of(millimetres(90), millimetres(90), millimetres(150)))
                            .build())
                    .build())
        .hasMessageContaining("leaves a wall of -5.0 mm beside its cavity");
    assertThatThrownBy(
            () ->
                packed(crucible(ROUND).build()).crucibleConductivity(conductivity(0, 1, 2)).build())
        .hasMessageContaining("lowest conductivity of the crucible is 0 W/(m·K)");
  }

  /**
   * Quasi-steady lag by hand, series resistances of rings whose flows grow outwards: across the
   * wall {@code r/k [(S - C R2/2) ln(Ro/R) + C (Ro2 - R2)/4]} with S what a radian holds inside and
   * C the wall's rho c. 0.2 % for grid and start, as without the wall.
   */
  @Test
  void wallsOfKnownConductivityAddTheirResistance() {
    PackedCharge.Builder packed = packed(crucible(ROUND).build());
    Charge known = packed.crucibleConductivity(conductivity(1, 1.5, 3)).build().charge();
    Charge unknown = packed(crucible(ROUND).build()).build().charge();
    Profile ramp = Profile.from(celsius(20)).rampTo(celsius(1000), kelvinPerHour(50)).build();
    double r = 50 / 3600.0;
    double r1 = known.layers().get(0).thickness().si();
    double outer = 0.05 + wall(known).thickness().si();
    double metal = 5340 * 430;
    double powder = 1250 * 1100;
    double store = wall(known).material().density().si() * 1100;
    double inside = metal * r1 * r1 / 2 + powder * (0.05 * 0.05 - r1 * r1) / 2;
    double ring =
        powder * (0.05 * 0.05 - r1 * r1) / 4 + (metal - powder) * r1 * r1 / 2 * Math.log(0.05 / r1);
    double without = r * (ring / 0.3 + metal * r1 * r1 / 4 / 5);
    double across =
        r
            / 1.5
            * ((inside - store * 0.05 * 0.05 / 2) * Math.log(outer / 0.05)
                + store * (outer * outer - 0.05 * 0.05) / 4);

    double lagKnown = MODEL.forecast(known, ramp).greatestLag().lag().si();
    double lagUnknown = MODEL.forecast(unknown, ramp).greatestLag().lag().si();

    assertThat(across).as("a wall to be seen").isGreaterThan(0.02 * without);
    assertThat(lagKnown).isCloseTo(without + across, within(0.002 * without));
    assertThat(lagUnknown).as("no resistance").isCloseTo(without, within(0.002 * without));
    // 1 to 3 W/(m K) about 1.5: a factor of 2 by the higher end
    assertThat(wall(known).material().conductivityFactor().si()).isCloseTo(2, within(1e-12));
    assertThat(MODEL.forecast(known, ramp).findings())
        .filteredOn(finding -> finding.code() == ConductionFinding.CONDUCTIVITY_KNOWN)
        .extracting(Finding::message)
        .anyMatch(message -> message.contains("mullite of the crucible is known within a factor"));
  }

  /**
   * A store in one piece: with packing and parts that conduct as well as copper the surface
   * decides, and under a ramp everything follows {@code T - Tg = -r C/(h A) (1 - exp(-h A t / C))},
   * with C of metal, powder and crucible together. What is left of the inside's resistance: Biot
   * number 0.004.
   */
  @Test
  void wallsOfUnknownConductivityStillStoreHeat() {
    Charge charge =
        packed(crucible(ROUND).build())
            .packingConductivity(PropertyCurve.constant(wattsPerMetreKelvin(400)))
            .partConductivity(PropertyCurve.constant(wattsPerMetreKelvin(400)))
            .contact(SurfaceContact.of(wattsPerSquareMetreKelvin(25)))
            .build()
            .charge();
    Profile ramp = Profile.from(celsius(20)).rampTo(celsius(820), kelvinPerHour(200)).build();
    CoreHistory history = MODEL.forecast(charge, ramp);

    double cavity = Math.PI * 0.05 * 0.05 * 0.12;
    double powder = (cavity - 0.5 / 5340) * 1250 * 1100;
    double heldWithWall = 0.5 * 430 + powder + 1 * 1100; // J/K along 120 mm
    double outer = 0.05 + wall(charge).thickness().si();
    double film = 25 * 2 * Math.PI * outer * 0.12; // W/K
    double lag = 200 / 3600.0 * heldWithWall / film;
    for (double t : new double[] {0.5, 1, 2, 4}) {
      double expected = 20 + 200 * t - lag * -Math.expm1(-t * 3600 * film / heldWithWall);
      assertThat(history.coreAt(hours(t)).in(CELSIUS)).isCloseTo(expected, within(0.005 * lag));
    }
    double withoutWall = 200 / 3600.0 * (heldWithWall - 1100) / film;
    assertThat(history.greatestLag().lag().si()).isGreaterThan(1.3 * withoutWall);
    assertThat(history.findings())
        .filteredOn(finding -> finding.code() == ConductionFinding.CONDUCTIVITY_KNOWN)
        .filteredOn(finding -> finding.subject().equals("mullite of the crucible"))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.NOTE);
              assertThat(finding.message())
                  .isEqualTo(
                      "the conductivity of mullite of the crucible is not known: its heat is"
                          + " counted, its resistance is not, and the core lags somewhat more");
            });
    // 1e-9 of the heat supplied, with a layer 25 times as conductive as the rest
    assertThat(history.heat().orElseThrow().imbalance().si()).isLessThan(1e-9);
  }

  /** With a surface as hot as the kiln a store alone changes nothing for the core. */
  @Test
  void storesBeyondAPerfectContactDoNotSlowTheCore() {
    Profile ramp = Profile.from(celsius(20)).rampTo(celsius(1000), kelvinPerHour(100)).build();
    double light = coreLag(crucible(ROUND).mass(kilograms(0.1)).build(), ramp);
    double heavy = coreLag(crucible(ROUND).mass(kilograms(10)).build(), ramp);
    // what is left is the resistance of a wall at 10 kW/(m K), under 20 mK for 10 kg
    assertThat(heavy).isCloseTo(light, within(0.05));
  }

  private static double coreLag(Crucible crucible, Profile profile) {
    return MODEL.forecast(packed(crucible).build().charge(), profile).greatestLag().lag().si();
  }

  /** Half of what the outside is wider than the cavity, in the way that the heat takes. */
  @Test
  void isAsThickAsInTheWayOfTheHeat() {
    BoxCavity narrow = BoxCavity.of(millimetres(200), millimetres(80), millimetres(120));
    BoxCavity flat = BoxCavity.of(millimetres(200), millimetres(180), millimetres(60));
    RoundCavity low = RoundCavity.of(millimetres(150), millimetres(60));
    assertThat(thickness(narrow, BodyShape.SLAB, 230, 100, 150)).isCloseTo(0.010, within(1e-12));
    assertThat(thickness(flat, BodyShape.SLAB, 230, 210, 70)).isCloseTo(0.005, within(1e-12));
    assertThat(thickness(low, BodyShape.SLAB, 166, 166, 84)).isCloseTo(0.012, within(1e-12));
    assertThat(thickness(ROUND, BodyShape.CYLINDER, 120, 116, 150)).isCloseTo(0.008, within(1e-12));
  }

  private static double thickness(Cavity cavity, BodyShape shape, double x, double y, double z) {
    Crucible crucible =
        crucible(cavity)
            .outside(Envelope.of(millimetres(x), millimetres(y), millimetres(z)))
            .build();
    return new CrucibleWall(crucible, 2500).thickness(shape);
  }
}
