package dev.kilnledger.thermal.kiln;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.seconds;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.watts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvinSquared;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.JOULE;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;
import static dev.kilnledger.units.TradeUnits.WATT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.energy.ChargeItem;
import dev.kilnledger.thermal.energy.EnergyBalance;
import dev.kilnledger.thermal.energy.EnergyFinding;
import dev.kilnledger.thermal.energy.EnergyLine;
import dev.kilnledger.thermal.energy.QuasiSteadyEnergy;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.energy.SteadyWall;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Time;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The exact figures of the ramped wall (Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed.,
 * section 3.3) and of the lumped kiln (closed form) were computed in other software at 25 digits.
 */
class TransientKilnTest {
  private static final double AREA_SIDE = Math.sqrt(1.0 / 6); // a cube with 1 m2 inside

  /** 3 kW, a loss of 1.9 W/K through a wall of next to no mass, inner surface 1 m2. */
  private static Kiln lumped() {
    return kiln(3000, 1e9, layer(0.001, 0.0019, 1e-6, 1000));
  }

  private static Kiln kiln(double watts, double film, WallLayer... wall) {
    return Kiln.builder()
        .name("test kiln")
        .peakTemperature(celsius(1700))
        .chamber(Envelope.of(metres(AREA_SIDE), metres(AREA_SIDE), metres(AREA_SIDE)))
        .power(watts(watts))
        .voltage(volts(230))
        .phases(1)
        .outsideFilm(wattsPerSquareMetreKelvin(film))
        .addWall(wall)
        .build();
  }

  private static WallLayer layer(double metres, double k, double density, double heat) {
    return WallLayer.builder()
        .material("brick")
        .thickness(metres(metres))
        .conductivity(wattsPerMetreKelvin(k))
        .density(kilogramsPerCubicMetre(density))
        .heatCapacity(joulesPerKilogramKelvin(heat))
        .build();
  }

  private static List<ChargeItem> charge(double joulesPerKelvin) {
    return List.of(
        ChargeItem.of(
            "charge",
            kilograms(joulesPerKelvin / 1000),
            Sourced.of(joulesPerKilogramKelvin(1000), Source.user("test"))));
  }

  private static TransientKiln model(SoakControl soak, double stepSeconds) {
    return new TransientKiln(
        celsius(20), soak, kelvinDifference(5), celsius(60), seconds(stepSeconds));
  }

  private static Finding finding(KilnRun run, FindingCode code) {
    return run.findings().stream().filter(f -> f.code() == code).findFirst().orElseThrow();
  }

  /** When a run first reaches a temperature, between its points. */
  private static double hoursTo(KilnRun run, double celsius) {
    List<KilnPoint> points = run.points();
    for (int i = 1; i < points.size(); i++) {
      double before = points.get(i - 1).actual().in(CELSIUS);
      double after = points.get(i).actual().in(CELSIUS);
      if (after >= celsius) {
        double share = (celsius - before) / (after - before);
        double start = points.get(i - 1).time().in(HOUR);
        return start + share * (points.get(i).time().in(HOUR) - start);
      }
    }
    throw new AssertionError("never reaches " + celsius);
  }

  /**
   * Fluxes within 0.1 % where 60 cells resolve the profile; the first, at Fo 0.06, is a mean over
   * the last step, so it lies half a step (1 min of 324) of the growth of sqrt(t) away: 0.2 %.
   */
  @Test
  void rampedWallTakesAndPassesHeatAsTheExactSeriesSays() {
    Kiln kiln = kiln(1e6, 1e9, layer(0.115, 0.25, 600, 1000));
    Profile ramp = Profile.from(celsius(20)).rampTo(celsius(1100), kelvinPerHour(200)).build();

    KilnRun run = model(SoakControl.BY_THE_CLOCK, 6).run(kiln, ramp, List.of());

    double[] share = {0.1, 0.5, 1};
    double[] inwards = {1070.474475, 2413.873904, 3623.762922};
    double[] tolerance = {0.002, 0.001, 0.001};
    for (int i = 0; i < share.length; i++) {
      int index = (int) Math.round(share[i] * (run.points().size() - 1));
      assertThat(run.points().get(index).power().in(WATT))
          .isCloseTo(inwards[i], within(inwards[i] * tolerance[i]));
    }
    EnergyBalance energy = run.energy();
    assertThat(energy.total().in(JOULE)).isCloseTo(44_963_012.14, within(44_963_012.14 * 2e-4));
    assertThat(energy.total(EnergyLine.Use.WALL_LOSS).in(JOULE)).isCloseTo(12.76e6, within(0.01e6));
    assertThat(energy.total(EnergyLine.Use.WALL_STORE).in(JOULE))
        .isCloseTo(32.20e6, within(0.01e6));
  }

  /** The skin's flux with a film so good that the skin stays cold: 5 W of film per mK. */
  @Test
  void heatThatPassesTheRampedWallAgreesWithTheExactSeries() {
    Kiln kiln = kiln(1e6, 1e5, layer(0.115, 0.25, 600, 1000));
    Profile ramp = Profile.from(celsius(20)).rampTo(celsius(1100), kelvinPerHour(200)).build();

    KilnRun run = model(SoakControl.BY_THE_CLOCK, 6).run(kiln, ramp, List.of());

    double[] outwards = {3.366009759, 572.8388899, 1710.778141};
    double[] share = {0.1, 0.5, 1};
    for (int i = 0; i < share.length; i++) {
      int index = (int) Math.round(share[i] * (run.points().size() - 1));
      double flux = 1e5 * (run.points().get(index).skin().in(CELSIUS) - 20);
      // 60 cells: the thin foot of the profile at Fo 0.06 within 2 %, then within 0.1 %
      assertThat(flux).isCloseTo(outwards[i], within(outwards[i] * (i == 0 ? 0.02 : 0.001)));
    }
  }

  @Test
  void isOfSecondOrderInTime() {
    Kiln kiln = kiln(5000, 10, layer(0.115, 0.25, 600, 1000));
    Profile hold =
        Profile.from(celsius(20)).rampOver(celsius(1000), hours(4)).hold(hours(2)).build();
    double exact = energyAt(kiln, hold, 15);
    double coarse = Math.abs(energyAt(kiln, hold, 1200) - exact);
    double fine = Math.abs(energyAt(kiln, hold, 600) - exact);
    // halving the step divides the error by four; the reference itself is 1/1600 of the fine error
    assertThat(Math.log(coarse / fine) / Math.log(2)).isBetween(1.8, 2.4);
  }

  private static double energyAt(Kiln kiln, Profile profile, double step) {
    return model(SoakControl.BY_THE_CLOCK, step)
        .run(kiln, profile, charge(10_000))
        .energySupplied()
        .in(JOULE);
  }

  @ParameterizedTest
  @CsvSource({"100, 292.937", "500, 214.766", "900, 136.594", "1100, 97.5086", "1200, 77.9657"})
  void lumpedKilnFollowsTheRatesOfTheClosedForm(double celsius, double rate) {
    // r = (P - UA (T - Ta)) / C; curve points lie a minute apart on an exponential: 1e-5
    assertThat(
            TransientKiln.standard()
                .fastestHeating(lumped(), charge(35_000), celsius(celsius))
                .orElseThrow()
                .in(KELVIN_PER_HOUR))
        .isCloseTo(rate, within(rate * 1e-5));
  }

  @Test
  void lumpedKilnAtFullPowerTakesTheTimeAndEnergyOfTheClosedForm() {
    Profile asked =
        Profile.from(celsius(20)).rampOver(celsius(1100), hours(1)).hold(hours(8)).build();

    KilnRun run = TransientKiln.standard().run(lumped(), asked, charge(35_000));

    double reached = hoursTo(run, 1099.999999);
    // t = -(C / UA) ln(1 - UA dT / P); the last step ends at the target, so a part of a minute
    assertThat(reached).isCloseTo(5.894804, within(1.0 / 60));
    TransientKiln fine = model(SoakControl.BY_THE_CLOCK, 1);
    assertThat(hoursTo(fine.run(lumped(), asked, charge(35_000)), 1099.999999))
        .isCloseTo(5.894804, within(1.0 / 3600));
    double energy =
        run.points().stream()
                .filter(p -> p.time().in(HOUR) <= reached + 1e-9)
                .mapToDouble(p -> p.power().in(WATT))
                .sum()
            / 60
            / 1000;
    assertThat(energy).isCloseTo(17.684411, within(3.0 / 60)); // a minute at 3 kW
    assertThat(TransientKiln.standard().ceiling(lumped()).in(CELSIUS))
        .isCloseTo(1598.947, within(0.0005));
    assertThat(run.energy().total(EnergyLine.Use.CHARGE).in(KILOWATT_HOUR))
        .isCloseTo(10.5, within(1e-6));
  }

  /**
   * Dormand and Prince 8(5,3) on the same equations, the wall cut into the same nodes: an
   * independent integrator. 2e-3 K is the error of one-minute steps over the first minutes, when
   * full power is switched on at once.
   */
  @Test
  void agreesWithAnIndependentIntegrator() {
    double k = 0.3;
    double rhoC = 700.0 * 1000;
    double width = 0.1 / 60;
    double film = 10;
    double power = 2500;
    Kiln kiln = kiln(power, film, layer(0.1, k, 700, 1000));
    OrdinaryDifferentialEquation wall =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 61;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            double[] dy = new double[61];
            for (int i = 0; i < 60; i++) {
              double flux = k / width * (y[i] - y[i + 1]);
              dy[i] -= flux;
              dy[i + 1] += flux;
            }
            dy[0] += power;
            dy[60] -= film * (y[60] - 20);
            for (int i = 0; i <= 60; i++) {
              double wallPart = rhoC * width * (i == 0 || i == 60 ? 0.5 : 1);
              dy[i] /= wallPart + (i == 0 ? 20_000 : 0);
            }
            return dy;
          }
        };
    double[] cold = new double[61];
    Arrays.fill(cold, 20);
    double expected =
        new DormandPrince853Integrator(1e-6, 60, 1e-9, 1e-9)
            .integrate(wall, new ODEState(0, cold), 3 * 3600.0)
            .getPrimaryState()[0];

    List<FullPowerPoint> curve =
        TransientKiln.standard().fullPower(kiln, charge(20_000), celsius(1500));

    // points lie in the middle of steps: 179.5 and 180.5 min about 180 min
    double actual =
        (curve.get(179).temperature().in(CELSIUS) + curve.get(180).temperature().in(CELSIUS)) / 2;
    assertThat(actual).isCloseTo(expected, within(2e-3));
  }

  @Test
  void longHoldSettlesAtTheSteadyWall() {
    // 115 mm of 0.35 W/mK and 50 mm of 0.12: 1271.83 W/m2, skin 152.18 °C at 25 °C (closed form)
    Kiln kiln = kiln(20_000, 10, layer(0.115, 0.35, 800, 1000), layer(0.05, 0.12, 260, 1000));
    Profile hold =
        Profile.from(celsius(25)).rampOver(celsius(1100), hours(5)).hold(hours(95)).build();
    TransientKiln room25 =
        new TransientKiln(
            celsius(25), SoakControl.BY_THE_CLOCK, kelvinDifference(5), celsius(60), minutes(5));

    KilnPoint end = last(room25.run(kiln, hold, List.of()));

    assertThat(end.power().in(WATT)).isCloseTo(1271.830986, within(0.01)); // 13 time constants
    assertThat(end.skin().in(CELSIUS)).isCloseTo(152.183099, within(0.001));
  }

  /** k = 0.12 + 0.00015 t in °C. */
  private static WallLayer sloped(double metres, double density) {
    return WallLayer.builder()
        .from(layer(metres, 0.12, density, 1000))
        .conductivityStatedAt(celsius(0))
        .conductivitySlope(wattsPerMetreKelvinSquared(0.00015))
        .build();
  }

  /**
   * 1849.304348 W/m2 from 1100 to 80 °C through 115 mm: closed form, computed in other software.
   */
  @Test
  void longHoldSettlesAtTheSteadyWallWhoseConductivityChanges() {
    Kiln kiln = kiln(20_000, 1849.304348 / 55, sloped(0.115, 600));
    Profile hold =
        Profile.from(celsius(25)).rampOver(celsius(1100), hours(5)).hold(hours(95)).build();
    TransientKiln room25 =
        new TransientKiln(
            celsius(25), SoakControl.BY_THE_CLOCK, kelvinDifference(5), celsius(60), minutes(5));

    KilnRun run = room25.run(kiln, hold, List.of());

    // differences of the integral of k between nodes are exact in the steady state
    assertThat(last(run).power().in(WATT)).isCloseTo(1849.304348, within(1e-3));
    assertThat(last(run).skin().in(CELSIUS)).isCloseTo(80, within(1e-4));
    assertThat(room25.ceiling(kiln(1849.304348, 1849.304348 / 55, sloped(0.115, 600))).in(CELSIUS))
        .isCloseTo(1100, within(1e-6));
    assertThat(run.energy().total().in(JOULE))
        .as("energy closes")
        .isCloseTo(run.energySupplied().in(JOULE), within(1e-9 * run.energySupplied().in(JOULE)));
    assertThat(finding(run, EnergyFinding.WALL_CONDUCTIVITY).severity()).isEqualTo(Severity.PASSED);
  }

  /**
   * Dormand and Prince 8(5,3) on a wall of the same nodes, each conducting as at the mean of two
   * neighbours: an independent integrator, and a flux written in another way. Led up a ramp, then
   * at full power; one-minute steps are within 2e-3 K where full power is switched on at once.
   */
  @Test
  void changingConductivityAgreesWithAnIndependentIntegrator() {
    double width = 0.1 / 60;
    double rhoC = 700.0 * 1000;
    OrdinaryDifferentialEquation wall =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 61;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            double[] dy = new double[61];
            for (int i = 0; i < 60; i++) {
              double k = 0.12 + 0.00015 * (y[i] + y[i + 1]) / 2;
              double flux = k / width * (y[i] - y[i + 1]);
              dy[i] -= flux;
              dy[i + 1] += flux;
            }
            dy[0] += 2500;
            dy[60] -= 10 * (y[60] - 20);
            for (int i = 0; i <= 60; i++) {
              double wallPart = rhoC * width * (i == 0 || i == 60 ? 0.5 : 1);
              dy[i] /= wallPart + (i == 0 ? 20_000 : 0);
            }
            return dy;
          }
        };
    double[] cold = new double[61];
    Arrays.fill(cold, 20);
    double expected =
        new DormandPrince853Integrator(1e-6, 60, 1e-9, 1e-9)
            .integrate(wall, new ODEState(0, cold), 3 * 3600.0)
            .getPrimaryState()[0];

    List<FullPowerPoint> curve =
        TransientKiln.standard()
            .fullPower(kiln(2500, 10, sloped(0.1, 700)), charge(20_000), celsius(1500));

    double actual =
        (curve.get(179).temperature().in(CELSIUS) + curve.get(180).temperature().in(CELSIUS)) / 2;
    assertThat(actual).isCloseTo(expected, within(2e-3));
  }

  @Test
  void isOfSecondOrderInTimeWithChangingConductivity() {
    Kiln kiln = kiln(5000, 10, sloped(0.115, 600));
    Profile hold =
        Profile.from(celsius(20)).rampOver(celsius(1000), hours(4)).hold(hours(2)).build();
    double exact = energyAt(kiln, hold, 15);
    double coarse = Math.abs(energyAt(kiln, hold, 1200) - exact);
    double fine = Math.abs(energyAt(kiln, hold, 600) - exact);
    assertThat(Math.log(coarse / fine) / Math.log(2)).isBetween(1.8, 2.4);
  }

  @Test
  void vanishingSlopeLeadsToTheConstantWall() {
    WallLayer nearly =
        WallLayer.builder()
            .from(layer(0.115, 0.25, 600, 1000))
            .conductivityStatedAt(celsius(500))
            .conductivitySlope(wattsPerMetreKelvinSquared(1e-9))
            .build();
    Profile ramp = Profile.from(celsius(20)).rampTo(celsius(1100), kelvinPerHour(200)).build();
    KilnRun run =
        model(SoakControl.BY_THE_CLOCK, 60).run(kiln(1e6, 10, nearly), ramp, charge(5000));
    KilnRun same =
        model(SoakControl.BY_THE_CLOCK, 60)
            .run(kiln(1e6, 10, layer(0.115, 0.25, 600, 1000)), ramp, charge(5000));
    assertThat(run.energySupplied().in(JOULE))
        .isCloseTo(same.energySupplied().in(JOULE), within(3e-6 * same.energySupplied().in(JOULE)));
  }

  private static KilnPoint last(KilnRun run) {
    return run.points().get(run.points().size() - 1);
  }

  @Test
  void energyClosesToRounding() {
    Kiln kiln = Workbench.kiln(1300).build();
    FiringStage stage = Workbench.sintering(1150).build();
    List<ChargeItem> charge =
        ChargeItem.chargeOf(stage, Workbench.mullite(), Workbench.copper(), kilograms(0.4));

    KilnRun run = TransientKiln.standard().run(kiln, stage.profile(), charge);

    assertThat(run.energy().total().in(JOULE))
        .isCloseTo(run.energySupplied().in(JOULE), within(1e-9 * run.energySupplied().in(JOULE)));
    double fromPoints = 0;
    for (int i = 1; i < run.points().size(); i++) {
      fromPoints +=
          run.points().get(i).power().in(WATT)
              * (run.points().get(i).time().si() - run.points().get(i - 1).time().si());
    }
    assertThat(fromPoints)
        .isCloseTo(run.energySupplied().in(JOULE), within(1e-9 * run.energySupplied().in(JOULE)));
  }

  /** At 1 kW it falls behind from 100 K/h on and runs at full power for hours. */
  @Test
  void energyClosesAtFullPowerThroughAnyWall() {
    Kiln constant = Workbench.kiln(1300).power(kilowatts(1)).build();
    Kiln nearly =
        Kiln.builder()
            .from(constant)
            .wall(
                constant.wall().stream()
                    .map(
                        layer ->
                            WallLayer.builder()
                                .from(layer)
                                .conductivityStatedAt(celsius(500))
                                .conductivitySlope(wattsPerMetreKelvinSquared(1e-10))
                                .build())
                    .toList())
            .build();
    Profile ramp =
        Profile.from(celsius(20)).rampTo(celsius(1000), kelvinPerHour(300)).hold(hours(1)).build();
    KilnRun run = TransientKiln.standard().run(constant, ramp, charge(5000));
    KilnRun same = TransientKiln.standard().run(nearly, ramp, charge(5000));
    for (KilnRun one : List.of(run, same)) {
      double supplied = one.energySupplied().in(JOULE);
      assertThat(one.energy().total().in(JOULE)).isCloseTo(supplied, within(1e-9 * supplied));
      double fromPoints = 0;
      for (int i = 1; i < one.points().size(); i++) {
        fromPoints +=
            one.points().get(i).power().in(WATT)
                * (one.points().get(i).time().si() - one.points().get(i - 1).time().si());
      }
      assertThat(fromPoints).isCloseTo(supplied, within(1e-9 * supplied));
      assertThat(last(one).power().in(WATT)).as("at full power").isCloseTo(1000, within(1e-9));
    }
    // 500 K x 1e-10 beside 0.12 W/(m K) are 4e-7 of the conductivity
    assertThat(last(same).actual().in(CELSIUS))
        .isCloseTo(last(run).actual().in(CELSIUS), within(1e-3));
    assertThat(last(same).skin().in(CELSIUS)).isCloseTo(last(run).skin().in(CELSIUS), within(1e-3));
  }

  /** Once the elements are off, cooling moves heat about but takes none: the lines stay. */
  @Test
  void coolingWithThePowerOffChangesNoLine() {
    Kiln kiln = kiln(5000, 10, layer(0.115, 0.25, 600, 1000));
    Profile up = Profile.from(celsius(20)).rampOver(celsius(900), hours(6)).build();
    Profile upAndDown =
        Profile.from(celsius(20))
            .rampOver(celsius(900), hours(6))
            .rampOver(celsius(20), minutes(10))
            .build();

    EnergyBalance alone = TransientKiln.standard().balance(kiln, up, charge(10_000));
    EnergyBalance both = TransientKiln.standard().balance(kiln, upAndDown, charge(10_000));

    assertThat(both.lines()).isEqualTo(alone.lines());
    assertThat(both.poweredTime().in(HOUR)).isCloseTo(6, within(1e-9));
  }

  /** What a line says it was computed from has to give it; nothing heated is nothing, not 0 / 0. */
  @Test
  void linesAreTheProductOfTheirInputs() {
    Kiln kiln = kiln(5000, 10, layer(0.08, 0.35, 800, 900), layer(0.05, 0.12, 260, 1100));
    Profile profile =
        Profile.from(celsius(20)).rampOver(celsius(900), hours(6)).hold(hours(1)).build();
    assertThat(TransientKiln.standard().balance(kiln, profile, charge(10_000)).lines())
        .hasSize(4)
        .allSatisfy(
            line ->
                assertThat(
                        line.inputs().stream()
                            .mapToDouble(input -> input.value().si())
                            .reduce(line.energy().si(), (rest, input) -> rest / input))
                    .isCloseTo(1, within(1e-10)));
    Profile cooling = Profile.from(celsius(900)).rampOver(celsius(20), minutes(10)).build();
    assertThat(TransientKiln.standard().balance(kiln, cooling, charge(10_000)).lines())
        .hasSize(4)
        .allSatisfy(line -> assertThat(line.energy().si()).isZero());
  }

  @Test
  void countsTheEnergyOfAWholeRoute() {
    RouteEnergy energy =
        TransientKiln.standard()
            .forRoute(
                Workbench.kiln(1300).build(),
                Workbench.mullite(),
                Workbench.route(1000),
                Workbench.copper(),
                kilograms(0.4));
    assertThat(energy.balances()).hasSize(2);
    assertThat(energy.total().in(KILOWATT_HOUR))
        .isLessThan(
            QuasiSteadyEnergy.standard()
                .forRoute(
                    Workbench.kiln(1300).build(),
                    Workbench.mullite(),
                    Workbench.route(1000),
                    Workbench.copper(),
                    kilograms(0.4))
                .total()
                .in(KILOWATT_HOUR));
  }

  @Test
  void slowFiringApproachesTheQuasiSteadyModelFromBelow() {
    Kiln kiln = kiln(20_000, 10, layer(0.05, 0.3, 400, 1000));
    Profile slow = Profile.from(celsius(20)).rampOver(celsius(1000), hours(100)).build();

    double steady =
        QuasiSteadyEnergy.standard().balance(kiln, slow, charge(10_000)).total().in(JOULE);
    double exact = TransientKiln.standard().balance(kiln, slow, charge(10_000)).total().in(JOULE);

    // R C of wall and film is 1.5 % of the time; a wall heated evenly lags by a third of it: 0.5 %
    assertThat(exact).isLessThan(steady).isCloseTo(steady, within(steady * 0.007));
  }

  @Test
  void kilnThatIsTooWeakFallsBehindAndStopsShort() {
    Kiln kiln = kiln(2170, 1e9, layer(0.001, 0.0019, 1e-6, 1000)); // ceiling 1162 °C
    Profile asked =
        Profile.from(celsius(20)).rampTo(celsius(1200), kelvinPerHour(150)).hold(hours(4)).build();

    KilnRun run = TransientKiln.standard().run(kiln, asked, charge(10_000));

    Finding peak = finding(run, KilnFinding.REACHES_PEAK);
    assertThat(peak.severity()).isEqualTo(Severity.STOP);
    assertThat(peak.message()).contains("short").contains("1162 °C");
    assertThat(finding(run, KilnFinding.FOLLOWS_PROGRAMME).severity()).isEqualTo(Severity.WARNING);
    assertThat(run.points()).allSatisfy(p -> assertThat(p.power().in(WATT)).isBetween(0.0, 2170.0));
  }

  @Test
  void guaranteedSoakWaitsUntilTheChargeIsThere() {
    Profile asked =
        Profile.from(celsius(20)).rampOver(celsius(1100), hours(1)).hold(hours(2)).build();

    KilnRun clock = TransientKiln.standard().run(lumped(), asked, charge(35_000));
    KilnRun waits =
        TransientKiln.withSoak(SoakControl.GUARANTEED).run(lumped(), asked, charge(35_000));

    assertThat(finding(clock, KilnFinding.REACHES_PEAK).severity()).isEqualTo(Severity.STOP);
    assertThat(finding(waits, KilnFinding.REACHES_PEAK).severity()).isEqualTo(Severity.PASSED);
    // from 20 to 1095 °C: -(35000/1.9) ln(1 - 1.9 x 1075 / 3000) = 5.8442 h, 1 h of it programmed
    assertThat(waits.waited().in(HOUR)).isCloseTo(4.8442, within(1.0 / 60));
    assertThat(waits.duration().in(HOUR)).isCloseTo(3 + waits.waited().in(HOUR), within(1e-9));
    assertThat(waits.actualProfile().timeAbove(celsius(1095)).in(HOUR))
        .isGreaterThanOrEqualTo(2 - 1e-9);
  }

  @Test
  void controllerGivesUpWaitingAfterADay() {
    Kiln weak = kiln(1900, 1e9, layer(0.001, 0.0019, 1e-6, 1000)); // ceiling 1020 °C
    Profile asked =
        Profile.from(celsius(20)).rampOver(celsius(1100), hours(8)).hold(hours(1)).build();

    KilnRun run = TransientKiln.withSoak(SoakControl.GUARANTEED).run(weak, asked, charge(5_000));

    assertThat(finding(run, KilnFinding.REACHES_PEAK).message()).contains("waited a day in vain");
    assertThat(run.waited().in(HOUR)).isCloseTo(24, within(1e-9)); // whole minutes
  }

  /** Each ramp of half an hour asks for 1000 K/h or more, which the lumped kiln cannot do. */
  @Test
  void waitsAtTheEndOfEachRampForItself() {
    Profile asked =
        Profile.from(celsius(20))
            .rampOver(celsius(600), minutes(30))
            .hold(hours(1))
            .rampOver(celsius(1100), minutes(30))
            .hold(hours(1))
            .build();
    KilnRun run =
        TransientKiln.withSoak(SoakControl.GUARANTEED).run(lumped(), asked, charge(35_000));
    List<Segment> asRun = run.programmeAsRun().segments();
    // to 595 °C: -(C/UA) ln(1 - UA 575 / P) = 2.3171 h; on from 600 to 1095 °C -(C/UA) ln(1 - UA
    // 495
    // / (P - UA 580)) = 3.5012 h, of either half an hour programmed
    assertThat(asRun.get(0).duration().in(HOUR))
        .isCloseTo(-35_000 / 1.9 * Math.log1p(-1.9 * 575 / 3000) / 3600, within(1.0 / 60));
    assertThat(asRun.get(2).duration().in(HOUR))
        .isCloseTo(
            -35_000 / 1.9 * Math.log1p(-1.9 * 495 / (3000 - 1.9 * 580)) / 3600, within(1.0 / 60));
    assertThat(run.programmeAsRun().duration().in(HOUR))
        .isCloseTo(run.duration().in(HOUR), within(1e-9));
    assertThat(run.waited().in(HOUR)).isCloseTo(run.duration().in(HOUR) - 3, within(1e-9));
    assertThat(finding(run, KilnFinding.FOLLOWS_PROGRAMME).message())
        .contains(
            String.format(
                Locale.ROOT,
                "; the controller waits %.2f h in all and the firing takes longer",
                run.waited().in(HOUR)));
  }

  /** It approaches 1598.947 °C; t = (C / UA) ln(1578.947 / 1) to within a kelvin of that. */
  @Test
  void stopsAKelvinBelowWhatFullPowerNeverReaches() {
    TransientKiln model = TransientKiln.standard();
    List<FullPowerPoint> curve = model.fullPower(lumped(), charge(35_000), celsius(2000));
    FullPowerPoint last = curve.get(curve.size() - 1);
    assertThat(last.temperature().in(CELSIUS)).isCloseTo(1597.947, within(0.01));
    assertThat(last.time().in(HOUR))
        .isCloseTo(35_000 / 1.9 * Math.log(1578.947) / 3600, within(1.0 / 60));
    assertThat(curve.get(0).time().in(HOUR)).as("the middle of a minute").isEqualTo(0.5 / 60);
    assertThat(model.fastestHeating(lumped(), charge(35_000), celsius(2000))).isEmpty();
    // a charge of 35 t is not there after thirty days of ten minutes
    assertThat(
            model(SoakControl.BY_THE_CLOCK, 600).fullPower(lumped(), charge(35e6), celsius(1500)))
        .hasSize(30 * 24 * 6);
  }

  /**
   * What is said of a kiln that does as it is told, at 5 K/h down to 50 °C where it loses 5.9 K/h,
   * and of one that cools by itself from 70 °C.
   */
  @Test
  void saysHowAKilnFollows() {
    Profile asked =
        Profile.from(celsius(20))
            .rampOver(celsius(500), hours(10))
            .rampOver(celsius(50), hours(90))
            .build();
    KilnRun run = TransientKiln.standard().run(lumped(), asked, charge(35_000));
    assertThat(run.findings().subList(0, 5))
        .extracting(Finding::severity)
        .containsOnly(Severity.PASSED);
    // at the end of the ramp 35000 J/K x 48 K/h + 1.9 W/K x 480 K = 1378.7 W, by hand
    assertThat(run.findings().subList(0, 5))
        .extracting(Finding::message)
        .containsExactly(
            "the programme asks 500 °C and the kiln gets to 500 °C; at full power it approaches"
                + " 1599 °C",
            "the kiln follows the programme on heating",
            "the kiln cools as programmed",
            "the kiln is below 60 °C at the end of the programme",
            "the programme takes up to 1.38 kW of 3.00 kW");
    assertThat(run.coolingToOpening().si()).isZero();
    assertThat(run.untilOpening()).isEqualTo(run.duration());
    assertThat(run.actualProfile().duration().in(HOUR)).isCloseTo(100, within(1e-9));
    Profile warm = Profile.from(celsius(20)).rampOver(celsius(70), hours(10)).build();
    KilnRun opened = TransientKiln.standard().run(lumped(), warm, charge(35_000));
    // (C / UA) ln(50 / 40) = 1.142 h
    assertThat(finding(opened, KilnFinding.OPENING).message())
        .isEqualTo(
            "from the end of the programme the kiln cools for 1.1 h until it is below 60 °C");
    assertThat(opened.untilOpening().in(HOUR)).isCloseTo(11.142, within(1e-3));
    List<KilnPoint> cooling = opened.coolingPoints();
    assertThat(cooling.get(cooling.size() - 1).actual()).isEqualTo(celsius(60));
    for (KilnPoint point : cooling.subList(1, cooling.size())) {
      double hours = point.time().in(HOUR) - 10;
      // the last step is cut along its chord: 1e-4 K of 50
      assertThat(point.actual().in(CELSIUS))
          .isCloseTo(20 + 50 * Math.exp(-1.9 / 35_000 * 3600 * hours), within(1e-3));
      assertThat(point.power().si()).isZero();
    }
  }

  /** Asked for 900 °C in an hour the kiln of 3 kW is far behind, and on the way down too hot. */
  @Test
  void saysHowFarAKilnIsBehind() {
    Profile asked =
        Profile.from(celsius(20))
            .rampOver(celsius(900), hours(1))
            .rampOver(celsius(100), hours(0.5))
            .build();
    KilnRun run = TransientKiln.standard().run(lumped(), asked, charge(35_000));
    double afterAnHour = 20 + 3000 / 1.9 * -Math.expm1(-1.9 / 35_000 * 3600); // 300 °C
    assertThat(finding(run, KilnFinding.REACHES_PEAK).message())
        .contains(" °C: ")
        .endsWith(" K short; at full power it approaches 1599 °C");
    assertThat(finding(run, KilnFinding.FOLLOWS_PROGRAMME).message())
        .isEqualTo(
            "the kiln is up to "
                + Math.round(900 - afterAnHour)
                + " K behind the programme, at "
                + Math.round(afterAnHour)
                + " °C after 1.0 h");
    assertThat(finding(run, EnergyFinding.POWER_WITHIN_RATING).message())
        .isEqualTo("the elements are at their full 3.00 kW: the kiln is slower than the programme");
    assertThat(finding(run, EnergyFinding.POWER_WITHIN_RATING).severity())
        .isEqualTo(Severity.WARNING);
    assertThat(finding(run, EnergyFinding.COOLS_AS_PROGRAMMED).message())
        .startsWith("the kiln cools more slowly than programmed: up to ")
        .endsWith(" K hotter, after 1.5 h");
  }

  @Test
  void coolsWithThePowerOffAlongTheExponential() {
    Profile up = Profile.from(celsius(20)).rampOver(celsius(1000), hours(10)).build();

    Amount<Time> cooling =
        TransientKiln.standard().coolingTime(lumped(), up, charge(35_000), celsius(60));

    // t = (C / UA) ln(980 / 40) = 16.3666 h; the last step is cut straight: under 1e-6 of it
    assertThat(cooling.in(HOUR)).isCloseTo(35_000 / 1.9 * Math.log(24.5) / 3600, within(1e-4));
    KilnRun run = TransientKiln.standard().run(lumped(), up, charge(35_000));
    assertThat(run.coolingToOpening()).isEqualTo(cooling);
    assertThat(finding(run, KilnFinding.OPENING).severity()).isEqualTo(Severity.NOTE);
  }

  /** t = (C / UA) ln(980 / 1e-4) = 51.2 h x 16.1 = 824 h, more than the 720 h looked at. */
  @Test
  void saysWhereThirtyDaysDoNotCoolTheKiln() {
    Profile up = Profile.from(celsius(20)).rampOver(celsius(1000), hours(10)).build();
    TransientKiln patient =
        new TransientKiln(
            celsius(20),
            SoakControl.BY_THE_CLOCK,
            kelvinDifference(5),
            celsius(20.0001),
            minutes(10));
    KilnRun run = patient.run(lumped(), up, charge(350_000)); // C / UA = 51 h
    Finding opening = finding(run, KilnFinding.OPENING);
    assertThat(opening.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(opening.message()).contains("more than 720.0 h");
  }

  @Test
  void coolingFasterThanTheKilnCanIsFound() {
    Profile asked =
        Profile.from(celsius(20))
            .rampOver(celsius(900), hours(6))
            .rampOver(celsius(100), hours(1))
            .build();

    KilnRun run = TransientKiln.standard().run(lumped(), asked, charge(35_000));

    assertThat(finding(run, EnergyFinding.COOLS_AS_PROGRAMMED).severity()).isEqualTo(Severity.NOTE);
    assertThat(last(run).actual().in(CELSIUS)).isGreaterThan(600);
    assertThat(last(run).lag().in(KELVIN_DIFFERENCE)).isNegative();
  }

  @Test
  void neverOscillatesAtLongSteps() {
    Kiln kiln = kiln(20_000, 10, layer(0.115, 0.25, 600, 1000));
    Profile jump =
        Profile.from(celsius(20)).rampOver(celsius(1000), minutes(60)).hold(hours(40)).build();

    KilnRun run = model(SoakControl.BY_THE_CLOCK, 3600).run(kiln, jump, List.of());

    // after the jump the power only falls towards the steady loss
    List<KilnPoint> hold = run.points().subList(2, run.points().size());
    assertThat(hold).isSortedAccordingTo(Comparator.comparing(KilnPoint::power).reversed());
    assertThat(new SteadyWall(kiln).loss(celsius(1000), celsius(20)).in(WATT))
        .isCloseTo(last(run).power().in(WATT), within(1.0));
  }

  @Test
  void isSerializable() throws Exception {
    KilnRun run =
        TransientKiln.standard()
            .run(
                lumped(),
                Profile.from(celsius(20)).rampOver(celsius(60), hours(1)).build(),
                charge(35_000));
    assertThat(Workbench.thawed(run)).isEqualTo(run);
  }

  @Test
  void refusesWhatItCannotRun() {
    Profile profile = Profile.from(celsius(20)).rampOver(celsius(60), hours(1)).build();
    Kiln bare = kiln(3000, 10);
    assertThatThrownBy(() -> TransientKiln.standard().run(bare, profile, List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("kiln test kiln: the wall has no layers");
    assertThatThrownBy(() -> TransientKiln.standard().fullPower(bare, List.of(), celsius(100)))
        .hasMessageContaining("kiln test kiln: the wall has no layers");
    assertThatThrownBy(
            () -> TransientKiln.standard().coolingTime(bare, profile, List.of(), celsius(50)))
        .hasMessageContaining("kiln test kiln: the wall has no layers");
    assertThatThrownBy(
            () ->
                new TransientKiln(
                    celsius(20),
                    SoakControl.GUARANTEED,
                    kelvinDifference(0),
                    celsius(20),
                    seconds(0)))
        .hasMessageContaining("band is 0 K")
        .hasMessageContaining("step is 0 s")
        .hasMessageContaining("opening temperature is 20 °C; accepted is more than the room's");
    assertThatThrownBy(() -> TransientKiln.standard().fullPower(lumped(), List.of(), celsius(10)))
        .hasMessageContaining("temperature is 10 °C");
    assertThatThrownBy(
            () -> TransientKiln.standard().coolingTime(lumped(), profile, List.of(), celsius(20)))
        .hasMessageContaining("accepted is more than the room's 20 °C");
  }
}
