package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.SegmentRow;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The worked examples of the documentation, one for each model. */
class WorkedExamplesTest {
  /** r R2/(4 a), r R rho c/(2 h), and the first for 25 K: 115.7407, 13.8889 and 21.6 (by hand). */
  @Test
  void eigenmodeConductionIsAsDocumented() {
    EigenmodeConduction model = EigenmodeConduction.standard();
    Charge clamped = cylinder().build();
    Charge film = cylinder().contact(Bodies.film(100)).build();
    double lag = model.steadyLag(clamped, kelvinPerHour(100)).in(KELVIN_DIFFERENCE);
    assertThat(lag).isCloseTo(115.7407, within(5e-5));
    assertThat(model.steadyLag(film, kelvinPerHour(100)).in(KELVIN_DIFFERENCE) - lag)
        .isCloseTo(13.8889, within(5e-5));
    assertThat(model.rateForLag(clamped, kelvinDifference(25)).in(KELVIN_PER_HOUR))
        .isCloseTo(21.6, within(1e-9));
  }

  /** 50 mm, 0.3 W/(m K), 2000 kg/m3, 1000 J/(kg K). */
  private static Charge.Builder cylinder() {
    return Bodies.body(BodyShape.CYLINDER, 0.05, Bodies.material(0.3, 2000, 1000));
  }

  /** The exact series at 25 digits, computed in other software. */
  @Test
  void eigenmodeSolutionIsAsDocumented() {
    Profile firing = Bodies.firing();
    EigenmodeSolution solution =
        EigenmodeConduction.standard()
            .solve(Bodies.body(BodyShape.SLAB, 0.02, 3e-7).build(), firing);
    double[] core = {101.5059182715, 119.975594455, 390.7407407407, 399.9999843775, 236.9881634369};
    List<SegmentRow> rows = firing.rows();
    for (int i = 0; i < core.length; i++) {
      assertThat(solution.coreAt(rows.get(i).elapsed().si()) - 273.15)
          .isCloseTo(core[i], within(2e-5)); // modes below 1e-5 K are left out
    }
  }

  /** Verification case heat_conduction_kc of a public-domain fire code: 182.400 and 20.024 °C. */
  @Test
  void enthalpyConductionIsAsDocumented() {
    PropertyCurve<ThermalConductivity> k =
        PropertyCurve.<ThermalConductivity>builder()
            .at(celsius(0), wattsPerMetreKelvin(0.10))
            .at(celsius(200), wattsPerMetreKelvin(0.20))
            .build();
    PropertyCurve<SpecificHeatCapacity> c =
        PropertyCurve.<SpecificHeatCapacity>builder()
            .at(celsius(0), joulesPerKilogramKelvin(1000))
            .at(celsius(100), joulesPerKilogramKelvin(1200))
            .at(celsius(200), joulesPerKilogramKelvin(1000))
            .build();
    Charge charge =
        Bodies.body(BodyShape.CYLINDER, 0.01, Bodies.material(k, 10_000, c))
            .contact(SurfaceContact.of(wattsPerSquareMetreKelvin(10)))
            .startTemperature(celsius(0))
            .build();
    List<CorePoint> points =
        EnthalpyConduction.standard().forecast(charge, Bodies.steady(700, 999)).points();
    CorePoint end = points.get(points.size() - 1);
    assertThat(end.surface().in(CELSIUS)).isCloseTo(182.400, within(0.05)); // 60 cells, not 200
    assertThat(end.core().in(CELSIUS)).isCloseTo(20.024, within(0.05));
  }

  /**
   * The lag after the ramp dies away as {@code sum of 8 lag / (b^3 J1(b)) exp(-b2 a t / R2)}: 10 K
   * after 2.042429 h (solved in other software), and an hour on top.
   */
  @Test
  void soakHoldIsAsDocumented() {
    Profile profile =
        Profile.from(celsius(20)).rampTo(celsius(1000), kelvinPerHour(100)).hold(hours(1)).build();
    Soak soak =
        new SoakHold(EigenmodeConduction.standard())
            .of(cylinder().build(), profile, celsius(990), hours(1));
    // to a second; a point every 0.002 K, at 12 K/h there
    assertThat(soak.neededHold().orElseThrow().in(HOUR)).isCloseTo(3.042429, within(6e-4));
  }

  /** The printed formula at phi 0.0077, no radiation, kG = 1: 9.416701, computed elsewhere. */
  @Test
  void zehnerBauerSchluenderIsAsDocumented() {
    PowderBed bed =
        PowderBed.builder()
            .name("large spheres")
            .grainForm(GrainForm.SPHERES)
            .grainSize(metres(10))
            .porosity(volumeFraction(0.4))
            .solidConductivity(PropertyCurve.constant(wattsPerMetreKelvin(5)))
            .gasConductivity(PropertyCurve.constant(wattsPerMetreKelvin(0.05)))
            .emissivity(ratio(0))
            .build();
    assertThat(
            ZehnerBauerSchluender.standard()
                    .conductivity(bed, kelvin(300))
                    .conductivity()
                    .expected()
                    .si()
                / 0.05)
        // thin gas: l/d = 5e-8 for grains of 10 m, and it counts kp times as much
        .isCloseTo(9.416701, within(2e-5));
  }
}
