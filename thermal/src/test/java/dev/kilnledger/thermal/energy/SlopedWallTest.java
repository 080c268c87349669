package dev.kilnledger.thermal.energy;

import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.layer;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.watts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvinSquared;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.JOULE;
import static dev.kilnledger.units.TradeUnits.WATT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Walls whose conductivities change with temperature, along straight lines. */
class SlopedWallTest {
  /** k = 0.12 + 0.00015 t, t in °C. */
  private static WallLayer brick() {
    return sloped("brick", 115, 0.12, 0, 0.00015, 600);
  }

  private static WallLayer sloped(
      String material, double mm, double k, double at, double slope, double density) {
    return WallLayer.builder()
        .from(layer(material, mm, k, density))
        .conductivityStatedAt(celsius(at))
        .conductivitySlope(wattsPerMetreKelvinSquared(slope))
        .build();
  }

  /** A cube with 1 m2 inside. */
  private static Kiln.Builder cube(double film, WallLayer... wall) {
    double side = Math.sqrt(1 / 6.0);
    return kiln(1300)
        .name("test cube")
        .chamber(Envelope.of(metres(side), metres(side), metres(side)))
        .power(watts(20_000))
        .outsideFilm(wattsPerSquareMetreKelvin(film))
        .wall(List.of(wall));
  }

  /**
   * q = [a dT + b (Th2 - Tc2) / 2] / L (any textbook), computed in other software: 1849.304348 W/m2
   * from 1100 to 80 °C. The film is chosen to bring the skin to 80 °C in a room of 25 °C.
   */
  @Test
  void passesWhatItsDocumentationSays() {
    SteadyWall wall = new SteadyWall(cube(1849.304348 / 55, brick()).build());
    assertThat(wall.loss(celsius(1100), celsius(25)).in(WATT))
        .isCloseTo(1849.304348, within(1e-6)); // the digits of the reference
    assertThat(wall.faces(celsius(1100), celsius(25)).get(1).in(CELSIUS))
        .isCloseTo(80, within(1e-6));
    assertThat(wall.transmittance(celsius(1100), celsius(25)).si())
        .isCloseTo(1849.304348 / 1075, within(1e-9));
    WallLayer atMean = sloped("brick", 115, 0.2085, 590, 0.00015, 600);
    assertThat(
            new SteadyWall(cube(1849.304348 / 55, atMean).build())
                .loss(celsius(1100), celsius(25))
                .in(WATT))
        .as("the same line, stated at the mean temperature")
        .isCloseTo(1849.304348, within(1e-6));
    assertThat(atMean.conductivityAt(celsius(0)).si()).isCloseTo(0.12, within(1e-12));
    assertThat(atMean.conductivityAt(celsius(1100)).si()).isCloseTo(0.285, within(1e-12));
  }

  /**
   * A conductivity that rises steeply, k = 0.05 + 0.0007 t: the straight step from the middle of
   * what the flux can be, k being 0.5, leads to less than none. By hand, the mean of 20 and 100 °C
   * being 60: 0.092 x 80 / 0.05 W/m2. And a kiln of more than a square metre.
   */
  @Test
  void findsTheFluxWhereStraightStepsLeadAstray() {
    WallLayer steep = sloped("fibre", 50, 0.05, 0, 0.0007, 130);
    SteadyWall cube = new SteadyWall(cube(1e12, steep).build());
    assertThat(cube.loss(celsius(100), celsius(20)).in(WATT)).isCloseTo(147.2, within(1e-6));
    Kiln large =
        cube(1e12, steep).chamber(Envelope.of(metres(1), metres(1), metres(0.5))).build(); // 4 m2
    SteadyWall wall = new SteadyWall(large);
    assertThat(wall.loss(celsius(100), celsius(20)).in(WATT)).isCloseTo(588.8, within(4e-6));
    assertThat(wall.insideAt(watts(588.8), celsius(20)).in(CELSIUS)).isCloseTo(100, within(1e-6));
  }

  /**
   * Three layers, one of them constant and one falling, against dT/dx = -q / k(T) integrated
   * through them by Dormand and Prince: faces, and the integral of T that makes the store. 1e-6 is
   * what the integrator keeps to.
   */
  @Test
  void facesAndStoreFollowFouriersLaw() {
    WallLayer[] layers = {
      sloped("dense brick", 60, 1.4, 800, -0.0004, 2000),
      layer("brick", 80, 0.3, 800),
      sloped("fibre", 50, 0.12, 500, 0.0002, 130)
    };
    Kiln kiln = cube(10, layers).build();
    SteadyWall wall = new SteadyWall(kiln);
    double flux = wall.loss(celsius(1250), celsius(25)).in(WATT); // 1 m2

    double temperature = 1250;
    List<Amount<Temperature>> faces = wall.faces(celsius(1250), celsius(25));
    for (int i = 0; i < layers.length; i++) {
      double[] end = through(layers[i], temperature, flux);
      temperature = end[0];
      assertThat(faces.get(i + 1).in(CELSIUS)).isCloseTo(temperature, within(1e-6));
      double rhoC = layers[i].density().si() * layers[i].heatCapacity().si();
      double expected = rhoC * (end[1] - 25 * layers[i].thickness().si());
      assertThat(wall.stored(celsius(1250), celsius(25)).get(i).in(JOULE))
          .isCloseTo(expected, within(1e-6 * expected));
    }
    assertThat(10 * (temperature - 25)).as("what the film passes").isCloseTo(flux, within(1e-5));
    assertThat(wall.insideAt(watts(flux), celsius(25)).in(CELSIUS)).isCloseTo(1250, within(1e-8));
  }

  /** The temperature behind a layer, and the integral of T over its thickness, in °C. */
  private static double[] through(WallLayer layer, double inner, double flux) {
    OrdinaryDifferentialEquation fourier =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 2;
          }

          @Override
          public double[] computeDerivatives(double x, double[] y) {
            return new double[] {-flux / layer.conductivityAt(celsius(y[0])).si(), y[0]};
          }
        };
    return new DormandPrince853Integrator(1e-9, 0.01, 1e-11, 1e-11)
        .integrate(fourier, new ODEState(0, new double[] {inner, 0}), layer.thickness().si())
        .getPrimaryState();
  }

  /**
   * Ramp and hold by hand: with the outer face kept at 20 °C, q(t) = [a (t - 20) + b (t2 - 400) /
   * 2] / L integrates to a cubic in t over a ramp; the store's mean is the integral of t k dt over
   * that of k dt.
   */
  @Test
  void quasiSteadyEnergyIsTheIntegralOfLossAndStore() {
    Kiln kiln = cube(1e12, brick()).build();
    Profile profile =
        Profile.from(celsius(20)).rampTo(celsius(1100), kelvinPerHour(108)).hold(hours(2)).build();

    EnergyBalance balance = QuasiSteadyEnergy.standard().balance(kiln, profile, List.of());

    double a = 0.12;
    double b = 0.00015;
    double ramp =
        (a * 1080 * 1080 / 2 + b / 2 * ((Math.pow(1100, 3) - 8000) / 3 - 400 * 1080))
            / 0.115
            / 0.03; // K/s
    double hold = (a * 1080 + b / 2 * (1100 * 1100 - 400)) / 0.115 * 7200;
    // pieces of 10 K: (b / L) 10^2 / 12 beside a mean loss of some 800 W/m2 is 1.4e-5
    assertThat(balance.total(EnergyLine.Use.WALL_LOSS).in(JOULE))
        .isCloseTo(ramp + hold, within(2e-5 * (ramp + hold)));
    double moment = a * (1100 * 1100 - 400) / 2.0 + b * (Math.pow(1100, 3) - 8000) / 3;
    double mean = moment / (a * 1080 + b * (1100 * 1100 - 400) / 2);
    assertThat(balance.total(EnergyLine.Use.WALL_STORE).in(JOULE))
        .isCloseTo(600 * 1000 * 0.115 * (mean - 20), within(1.0)); // the film is not quite infinite
    assertThat(balance.lines().get(0).inputs().get(0).name()).isEqualTo("U");
    assertThat(balance.findings())
        .filteredOn(finding -> finding.code() == EnergyFinding.WALL_CONDUCTIVITY)
        .extracting(Finding::severity)
        .containsExactly(Severity.PASSED);
  }

  /** A vanishing slope leads to the constant wall, a zero one is it. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-9, -1e-9})
  void slopesThatVanishLeadToTheConstantWall(double slope) {
    Profile profile =
        Profile.from(celsius(20))
            .rampTo(celsius(1100), kelvinPerHour(108))
            .hold(hours(2))
            .coolTo(celsius(100), kelvinPerHour(20))
            .build();
    Kiln constant = cube(10, layer("brick", 115, 0.25, 600)).build();
    Kiln nearly = cube(10, sloped("brick", 115, 0.25, 500, slope, 600)).build();
    Kiln zero = cube(10, sloped("brick", 115, 0.25, 500, 0, 600)).build();
    List<ChargeItem> charge = List.of(alumina());
    EnergyBalance expected = QuasiSteadyEnergy.standard().balance(constant, profile, charge);
    EnergyBalance actual = QuasiSteadyEnergy.standard().balance(nearly, profile, charge);
    for (int i = 0; i < expected.lines().size(); i++) {
      double energy = expected.lines().get(i).energy().in(JOULE);
      // 500 K x 1e-9 / 0.25 = 2e-6
      assertThat(actual.lines().get(i).energy().in(JOULE)).isCloseTo(energy, within(energy * 3e-6));
    }
    assertThat(actual.poweredTime().si()).isCloseTo(expected.poweredTime().si(), within(1.0));
    assertThat(actual.peakPower().orElseThrow().ratio(expected.peakPower().orElseThrow()))
        .isCloseTo(1, within(3e-6));
    assertThat(actual.findings().subList(0, 3))
        .extracting(Finding::message)
        .isEqualTo(expected.findings().stream().map(Finding::message).toList());
    assertThat(actual.findings().get(3).message())
        .isEqualTo(
            "conductivities of the wall are straight lines from 0 °C to 1300 °C, which the firing"
                + " keeps to");
    assertThat(QuasiSteadyEnergy.standard().balance(zero, profile, charge)).isEqualTo(expected);
  }

  private static ChargeItem alumina() {
    return ChargeItem.of(
        "alumina",
        kilograms(2),
        Sourced.of(joulesPerKilogramKelvin(1100), Source.fromMemory("rounded for the tests")));
  }

  /** What a line says it was computed from has to give it. */
  @Test
  void linesAreTheProductOfTheirInputs() {
    Kiln kiln = cube(10, brick(), layer("board", 50, 0.12, 260)).build();
    Profile profile =
        Profile.from(celsius(20)).rampTo(celsius(1100), kelvinPerHour(108)).hold(hours(2)).build();
    assertThat(QuasiSteadyEnergy.standard().balance(kiln, profile, List.of(alumina())).lines())
        .hasSize(4)
        .allSatisfy(
            line ->
                assertThat(
                        line.inputs().stream()
                            .mapToDouble(input -> input.value().si())
                            .reduce(line.energy().si(), (rest, input) -> rest / input))
                    .isCloseTo(1, within(1e-10)));
  }

  @Test
  void firingsBeyondTheLinesAreFound() {
    Kiln kiln = cube(10, brick()).build();
    Profile hot = Profile.from(celsius(20)).rampTo(celsius(1350), kelvinPerHour(100)).build();
    EnergyBalance balance = QuasiSteadyEnergy.standard().balance(kiln, hot, List.of());
    Finding finding = balance.findings().get(balance.findings().size() - 1);
    assertThat(finding.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(finding.message())
        .isEqualTo(
            "conductivities of the wall are straight lines from 0 °C to 1300 °C; the firing goes to"
                + " 1350 °C, where they are held: loss and store are a guess there");
  }

  @Test
  void neverHeatedWallsHaveALimit() {
    SteadyWall wall = new SteadyWall(cube(10, brick()).build());
    // 1 / (0.115 / (0.12 + 0.00015 x 25) + 1 / 10), by hand
    assertThat(wall.transmittance(celsius(25), celsius(25)).si())
        .isCloseTo(0.9715407, within(1e-7));
    Profile cold = Profile.from(celsius(20)).hold(hours(1)).build();
    assertThat(
            QuasiSteadyEnergy.standard()
                .balance(cube(10, brick()).build(), cold, List.of())
                .total()
                .si())
        .isZero();
  }

  @Test
  void refusesLinesThatDoNotConduct() {
    assertThatThrownBy(() -> cube(10, sloped("fibre", 50, 0.18, 600, 0.0004, 130)).build())
        .hasMessage(
            "kiln test cube: conductivity of fibre comes to -0.0600 W/(m·K) at 0 °C; accepted is a"
                + " line above zero from 0 °C to the peak temperature");
    assertThatThrownBy(
            () ->
                WallLayer.builder()
                    .from(layer("brick", 115, 0.25, 600))
                    .conductivitySlope(wattsPerMetreKelvinSquared(0.0001))
                    .build())
        .hasMessage(
            "wall layer brick: conductivity changes by 0.0001 W/(m·K²), but it is not said at which"
                + " temperature it is 0.25 W/(m·K); accepted is a slope with that temperature");
  }
}
