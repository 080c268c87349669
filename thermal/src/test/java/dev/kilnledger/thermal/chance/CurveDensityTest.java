package dev.kilnledger.thermal.chance;

import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringCurve;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The density of a hold by the numbers drawn, against Su and Johnson's sigmoid by hand. */
class CurveDensityTest {
  private static final double R = ArrheniusIntegral.GAS_CONSTANT;
  private static final FittedSinteringCurve CURVE = CurveInDoubt.curve();
  private static final double HOT = 1273.15;
  private static final double REFERENCE = CURVE.reference().si();

  private static List<Felt> hold(double hours) {
    return List.of(new Felt(new double[] {0, hours * 3600}, new double[] {HOT, HOT}));
  }

  /** Standard normal deviates of Q, c, ln b and rho0, and of the scatter. */
  private static Draw draw(double q, double c, double b, double rho, double scatter) {
    return Draw.of(input -> 0)
        .with(FiringInput.SINTERING_ENERGY, q)
        .with(FiringInput.CURVE_LOCATION, c)
        .with(FiringInput.CURVE_WIDTH, b)
        .with(FiringInput.INITIAL_DENSITY, rho)
        .with(FiringInput.DENSITY_SCATTER, scatter);
  }

  /** Of 210 kJ/mol, a = -19.5, b = 0.8 and 0.55, each moved by so much; Q in 100 kJ/mol. */
  private static double byHand(double q, double c, double b, double rho, double hours) {
    double energy = 2.1 + q;
    double location = -19.5 + 2.1e5 / (R * REFERENCE) + c - energy * 1e5 / (R * REFERENCE);
    double logWork = Math.log(hours * 3600 / HOT) - energy * 1e5 / (R * HOT);
    double steps = (logWork - location) / (0.8 * Math.exp(b));
    double initial = 0.55 + rho;
    return initial + (1 - initial) / (1 + Math.exp(-steps));
  }

  /**
   * Cholesky's triangle of variances q2, c2, b2, r2 with correlations of 0.6 and -0.3, by hand:
   * rows q; 0.6 c, 0.8 c; 0, -0.3 / 0.8 b, sqrt(1 - 0.375 2) b; r.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 0, 0",
    "2, 0, 0, 0",
    "0, 2, 0, 0",
    "0, 0, 2, 0",
    "0, 0, 0, 2",
    "-1, 0.5, 1.5, -2"
  })
  void movesTheCurveByWhatIsDrawn(double q, double c, double b, double rho) {
    for (double hours : new double[] {0.2, 1, 3}) {
      double expected =
          byHand(
              0.02 * q,
              0.02 * (0.6 * q + 0.8 * c),
              0.01 * (-0.375 * c + Math.sqrt(1 - 0.375 * 0.375) * b),
              0.002 * rho,
              hours);
      DensityModel model = new CurveDensity(CURVE);
      assertThat(model.least(draw(q, c, b, rho, 0), hold(hours)))
          .isCloseTo(expected, within(1e-12));
      assertThat(model.most(draw(q, c, b, rho, 0), hold(hours))).isCloseTo(expected, within(1e-12));
      assertThat(model.least(draw(q, c, b, rho, 1.5), hold(hours)))
          .as("scatter of 0.004, up to full density")
          .isCloseTo(Math.min(1, expected + 1.5 * 0.004), within(1e-12));
    }
  }

  /** The same curve told for decimal logarithms: a and b over ln 10. */
  @Test
  void readsEitherLogarithm() {
    FittedSinteringCurve decimal =
        FittedSinteringCurve.builder()
            .from(CURVE)
            .curve(
                SinteringCurve.builder()
                    .from(CURVE.curve())
                    .base(SinteringCurve.Base.DECIMAL)
                    .location(ratio(-19.5 / Math.log(10)))
                    .width(ratio(0.8 / Math.log(10)))
                    .build())
            .build();
    assertThat(new CurveDensity(decimal).least(draw(1, 1, 1, 1, 0), hold(1)))
        .isCloseTo(new CurveDensity(CURVE).least(draw(1, 1, 1, 1, 0), hold(1)), within(1e-12));
  }

  /** What is drawn lower than a tenth of Q is a tenth of it; no density is below none. */
  @Test
  void keepsWhatIsDrawnWithinWhatCanBe() {
    DensityModel model = new CurveDensity(CURVE);
    // 0.02 x -1000 is -20 x 100 kJ/mol; c moves along by 0.6 x 0.02 x -1000
    double energy = 21_000;
    double location = -19.5 + 2.1e5 / (R * REFERENCE) - 12 - energy / (R * REFERENCE);
    double steps = (Math.log(3600 / HOT) - energy / (R * HOT) - location) / 0.8;
    assertThat(model.least(draw(-1000, 0, 0, 0, 0), hold(1)))
        .isCloseTo(0.55 + 0.45 / (1 + Math.exp(-steps)), within(1e-12));
    assertThat(model.least(draw(0, 0, 0, 0, -1000), hold(1))).isZero();
    assertThat(CURVE.curve().activationEnergy()).isEqualTo(kilojoulesPerMole(210));
  }

  /** A number that is known for certain, or wholly by the ones before, has nothing left to draw. */
  @Test
  void takesTheRootOfASingularCovariance() {
    List<Double> flat = new ArrayList<>();
    double[] row = {0.3, 0.6, 0, 0.1};
    for (double one : row) {
      for (double other : row) {
        flat.add(one * other);
      }
    }
    double[][] root = CurveDensity.root(flat);
    for (int i = 0; i < 4; i++) {
      assertThat(root[i]).containsExactly(new double[] {row[i], 0, 0, 0}, within(1e-15));
    }
  }
}
