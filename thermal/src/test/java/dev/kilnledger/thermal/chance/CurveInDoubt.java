package dev.kilnledger.thermal.chance;

import static dev.kilnledger.units.Amounts.volumeFraction;

import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.firing.FiringSetup;
import java.util.List;

/** Firings with a fitted curve whose numbers are correlated. Invented. */
final class CurveInDoubt {
  private CurveInDoubt() {}

  /**
   * Standard uncertainties of 2 kJ/mol, 0.02, 0.01 and 0.002, Q and c correlated by 0.6, c and ln b
   * by -0.3: small enough for a linear band to hold.
   */
  static FittedSinteringCurve curve() {
    double q = 0.02;
    double c = 0.02;
    double b = 0.01;
    double r = 0.002;
    return FittedSinteringCurve.builder()
        .from(Workbench.sinteringCurve())
        .covariance(
            List.of(
                q * q,
                0.6 * q * c,
                0.0,
                0.0, //
                0.6 * q * c,
                c * c,
                -0.3 * c * b,
                0.0, //
                0.0,
                -0.3 * c * b,
                b * b,
                0.0, //
                0.0,
                0.0,
                0.0,
                r * r))
        .scatter(volumeFraction(0.004))
        .degreesOfFreedom(12)
        .build();
  }

  static FiringSetup setup(FiringSetup.Builder setup) {
    return setup.sinteringCurve(curve()).addKinetics(Workbench.kinetics()).build();
  }
}
