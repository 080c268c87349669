package dev.kilnledger.thermal.chance;

import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kelvinPerMinute;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.BurnOut;
import dev.kilnledger.thermal.burnout.DecompositionStep;
import dev.kilnledger.thermal.densification.Densification;
import dev.kilnledger.thermal.densification.DensificationLimits;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringEnergies;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is drawn of binder and sintering curve. */
class BinderAndDensityTest {
  private static final Source SAID = Source.user("made for the tests");
  private static final ChanceForecast MANY = ChanceForecast.standard();

  private static final Profile RAMP =
      Profile.from(celsius(20)).rampTo(celsius(340), kelvinPerHour(30)).hold(hours(3)).build();

  private static UncertainFiring.Builder certain(FiringSetup setup) {
    return UncertainFiring.builder()
        .setup(setup)
        .kilnOffset(Spread.exactly(kelvinDifference(0), SAID))
        .packingConductivity(Spread.exactly(ratio(1), SAID));
  }

  private static FiringSetup.Builder following() {
    return setup(copper(), 1000).kiln(kiln(1300).wall(List.of()).build());
  }

  private static List<Felt> felt(Profile profile) {
    double[] seconds = new double[profile.segments().size() + 1];
    double[] kelvin = new double[seconds.length];
    kelvin[0] = profile.start().si();
    for (int i = 1; i < seconds.length; i++) {
      seconds[i] = seconds[i - 1] + profile.segments().get(i - 1).duration().si();
      kelvin[i] = profile.segments().get(i - 1).end().si();
    }
    return List.of(new Felt(seconds, kelvin));
  }

  private static Draw energy(double factor) {
    return Draw.of(input -> input == FiringInput.BINDER_ENERGY ? factor : 0);
  }

  private static BinderKinetics through(double kilojoulesPerMole, double peakCelsius) {
    return BinderKinetics.builder()
        .from(Workbench.kinetics())
        .steps(
            List.of(
                DecompositionStep.ofPeak(
                    kilojoulesPerMole(kilojoulesPerMole),
                    celsius(peakCelsius),
                    kelvinPerMinute(10))))
        .build();
  }

  /**
   * An energy 10 % higher about the same fastest loss at 10 K/min is the step of first order that
   * Kissinger's equation gives for that energy and peak. The two differ by how the conversion at
   * the peak, near 63 %, depends on the energy, which is some 0.1 % of ln J for 10 %.
   */
  @Test
  void turnsTheActivationEnergyAboutTheFastestLoss() {
    BinderModel model = new BinderModel(List.of(through(150, 380)), kelvinPerMinute(10));
    for (double factor : new double[] {0.9, 1, 1.1}) {
      double expected =
          BurnOut.standard()
              .along(through(150 * factor, 380), TemperatureHistory.of(RAMP))
              .end()
              .remaining()
              .si();
      double left = model.left(energy(factor), felt(RAMP));
      assertThat(Math.log(left)).isCloseTo(Math.log(expected), within(0.02 * -Math.log(expected)));
    }
  }

  /** As it is: the closed form of the exponential integral, to the quadrature's 1e-6. */
  @Test
  void integratesAsTheClosedFormDoes() {
    for (double energy : new double[] {80, 210, 500}) {
      ArrheniusIntegral integral = new ArrheniusIntegral(kilojoulesPerMole(energy));
      for (Profile profile : List.of(RAMP, Workbench.sinteringProfile(1000))) {
        TemperatureHistory history = TemperatureHistory.of(profile);
        assertThat(Felt.logReducedTime(integral, felt(profile)))
            .isCloseTo(integral.reducedTimeAlong(history).logAtEnd(), within(2e-6));
        assertThat(Felt.logWork(integral, felt(profile)))
            .isCloseTo(integral.workAlong(history).logAtEnd(), within(2e-6));
      }
    }
  }

  /** Two kinetics, one too slow: half of the firings, give or take four standard errors. */
  @Test
  void choosesAmongKineticsEvenly() {
    FiringSetup setup = following().addKinetics(through(150, 560), through(150, 380)).build();
    FiringChances chances =
        MANY.forecast(certain(setup).binderEnergy(Spread.exactly(ratio(1), SAID)).build());
    assertThat(chances.chance(FiringEvent.BINDER_GONE).orElseThrow().probability().low().si())
        .isCloseTo(0.5, within(0.02));
    assertThat(chances.binderSwings())
        .singleElement()
        .satisfies(swing -> assertThat(swing.input()).isEqualTo(FiringInput.KINETICS))
        .satisfies(swing -> assertThat(swing.atLow().si()).isLessThan(0.01))
        .satisfies(swing -> assertThat(swing.atHigh().si()).isGreaterThan(0.5));
  }

  @Test
  void leavesOpenWhatPublishedKineticsSay() {
    Feedstock feedstock = setup(copper(), 1000).build().feedstock();
    Binder acrylic =
        Binder.builder().from(feedstock.binder()).name("poly(methyl methacrylate)").build();
    FiringSetup setup =
        following().feedstock(Feedstock.builder().from(feedstock).binder(acrylic).build()).build();
    FiringChances chances = new ChanceForecast(200, 1, 1).forecast(certain(setup).build());
    Finding gone = finding(chances, ChanceFinding.BINDER_GONE_CHANCE);
    assertThat(gone.severity()).isEqualTo(UNDETERMINED);
    assertThat(gone.message()).contains("by published kinetics");
    FiringChances without =
        new ChanceForecast(200, 1, 1).forecast(certain(following().build()).build());
    assertThat(without.chance(FiringEvent.BINDER_GONE)).isEmpty();
    assertThat(without.binderLeft()).isEmpty();
    assertThat(finding(without, ChanceFinding.BINDER_GONE_CHANCE).severity())
        .isEqualTo(UNDETERMINED);
  }

  private static Finding finding(FiringChances chances, ChanceFinding code) {
    return chances.findings().stream().filter(f -> f.code() == code).findFirst().orElseThrow();
  }

  /**
   * With nothing else in doubt the draws of the curve fill its own band, which is linear in the
   * fitted numbers: {@code rho +- t sqrt(s^2 + g' C g)} with t of 12 degrees of freedom at 90 %.
   * Quantiles of 10,000 draws are good to 3 % of the band, and the band's linearity to some 2 %.
   */
  @Test
  void fillsTheBandOfTheFittedCurve() {
    FittedSinteringCurve curve =
        FittedSinteringCurve.builder().from(CurveInDoubt.curve()).confidence(percent(90)).build();
    FiringSetup setup = following().sinteringCurve(curve).build();
    Quantiles<VolumeFraction> drawn = MANY.forecast(certain(setup).build()).density().orElseThrow();
    Estimate<VolumeFraction> band =
        Densification.standard()
            .along(curve, TemperatureHistory.of(FiringForecast.of(setup).sintering().get(0).felt()))
            .density();
    double half = band.span().high().si() - band.expected().si();
    assertThat(half).isBetween(0.005, 0.03);
    assertThat(drawn.median().si()).isCloseTo(band.expected().si(), within(0.03 * half));
    assertThat(drawn.low().si()).isCloseTo(band.span().low().si(), within(0.06 * half));
    assertThat(drawn.high().si()).isCloseTo(band.span().high().si(), within(0.06 * half));
  }

  /**
   * Correlated numbers are drawn together: were Q and c drawn apart, the band would have another
   * width. The covariance of what is drawn, 40,000 times, is the one given times that of Student's
   * t, n / (n - 2).
   */
  @Test
  void drawsTheCurveByItsCovariance() {
    FiringSetup setup = following().sinteringCurve(CurveInDoubt.curve()).build();
    FiringForecast forecast = FiringForecast.of(setup);
    Inputs.Drawing drawing =
        new Inputs(certain(setup).build(), forecast).drawing(Blocks.streams(3).get(0));
    double[][] root = CurveDensity.root(CurveInDoubt.curve().covariance());
    int count = 40_000;
    double[][] sums = new double[4][4];
    for (int n = 0; n < count; n++) {
      Draw draw = drawing.next();
      double[] z = {
        draw.get(FiringInput.SINTERING_ENERGY),
        draw.get(FiringInput.CURVE_LOCATION),
        draw.get(FiringInput.CURVE_WIDTH),
        draw.get(FiringInput.INITIAL_DENSITY)
      };
      double[] off = new double[4];
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j <= i; j++) {
          off[i] += root[i][j] * z[j];
        }
      }
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          sums[i][j] += off[i] * off[j] / count;
        }
      }
    }
    List<Double> given = CurveInDoubt.curve().covariance();
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        double scale = Math.sqrt(given.get(5 * i) * given.get(5 * j)) * 12 / 10;
        assertThat(sums[i][j] / scale)
            .as("covariance of %d and %d", i, j)
            .isCloseTo(given.get(4 * i + j) * 1.2 / scale, within(0.03));
      }
    }
  }

  /**
   * Without a curve there is an interval. A firing that for every published energy gives no less
   * work than a usual one has the usual density surely, as the limits of the literature say; one
   * that does for none of them has it maybe.
   */
  @Test
  void answersWithAnIntervalWithoutACurve() {
    for (double peak : new double[] {1000, 780}) {
      FiringSetup setup =
          setup(copper(), peak)
              .kiln(kiln(1300).wall(List.of()).build())
              .targetDensity(volumeFraction(0.9))
              .build();
      FiringForecast forecast = FiringForecast.of(setup);
      Span<VolumeFraction> literature =
          DensificationLimits.standard()
              .forecast(
                  setup.alloy(),
                  TemperatureHistory.of(forecast.sintering().get(0).felt()),
                  setup.feedstock().solidsLoading())
              .density();
      FiringChances chances = new ChanceForecast(500, 1, 1).forecast(certain(setup).build());
      Chance dense = chances.chance(FiringEvent.DENSITY_REACHED).orElseThrow();
      assertThat(dense.probability().low().si()).isEqualTo(literature.low().si() >= 0.9 ? 1 : 0);
      assertThat(dense.probability().high().si()).isEqualTo(literature.high().si() >= 0.9 ? 1 : 0);
      assertThat(dense.isDetermined()).isEqualTo(peak == 1000);
      assertThat(chances.density()).isEmpty();
      Finding finding = finding(chances, ChanceFinding.DENSITY_CHANCE);
      assertThat(finding.severity()).isEqualTo(UNDETERMINED);
      assertThat(finding.message()).contains("without a sintering curve of your powder");
    }
  }

  /**
   * Where it depends on the energy the share is that of the rectangular law over the range
   * published for which the firing gives no less work than the shortest usual hold: counted in 200
   * even steps, by the exact integrals.
   */
  @Test
  void weighsThePublishedEnergiesEvenly() {
    FiringSetup setup =
        setup(copper(), 850)
            .kiln(kiln(1300).wall(List.of()).build())
            .targetDensity(volumeFraction(0.9))
            .build();
    TemperatureHistory felt =
        TemperatureHistory.of(FiringForecast.of(setup).sintering().get(0).felt());
    Span<MolarEnergy> range = SinteringEnergies.rangeOf(setup.alloy()).orElseThrow();
    double share = 0;
    int pieces = 200;
    for (int i = 0; i < pieces; i++) {
      double energy =
          range.low().si() + (i + 0.5) / pieces * (range.high().si() - range.low().si());
      double equivalent =
          Densification.standard()
              .equivalentHold(
                  kilojoulesPerMole(energy / 1000),
                  felt,
                  setup.alloy().sinteringWindow().value().low())
              .si();
      share += equivalent >= setup.alloy().sinteringHold().value().low().si() ? 1.0 / pieces : 0;
    }
    assertThat(share).isBetween(0.1, 0.9);
    FiringChances chances = MANY.forecast(certain(setup).build());
    assertThat(chances.chance(FiringEvent.DENSITY_REACHED).orElseThrow().probability().low().si())
        .isCloseTo(share, within(0.03));
  }
}
