package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/** A sintering curve fitted to a user's own runs, with what is needed for a band. */
@Value.Immutable
@ValueStyle
public interface FittedSinteringCurve extends Serializable {
  /** {@return the curve, for natural logarithms} */
  SinteringCurve curve();

  /** {@return the activation energy Q, its span being the confidence interval} */
  Estimate<MolarEnergy> activationEnergy();

  /** {@return a, its span being the confidence interval; moves with Q} */
  Estimate<Dimensionless> location();

  /** {@return b, its span being the confidence interval} */
  Estimate<Dimensionless> width();

  /** {@return the relative density before sintering, its span being the confidence interval} */
  Estimate<VolumeFraction> initialDensity();

  /** {@return the confidence of the intervals and of the bands of forecasts} */
  Amount<Dimensionless> confidence();

  /** {@return the standard deviation of the readings about the curve} */
  Amount<VolumeFraction> scatter();

  /** {@return the number of readings less that of the fitted numbers} */
  int degreesOfFreedom();

  /** {@return the densities that the runs covered} */
  Span<VolumeFraction> densities();

  /** {@return the temperature Tr about which the fitted numbers are stated} */
  Amount<Temperature> reference();

  /**
   * {@return the covariance of the fitted numbers, four rows of four: Q in 100 kJ/mol, a + Q / (R
   * Tr), ln b, and rho0}
   */
  List<Double> covariance();

  /** {@return whether the runs tell the activation energy} */
  List<Finding> findings();

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link FittedSinteringCurve} values. */
  final class Builder extends ImmutableFittedSinteringCurve.Builder {
    Builder() {}
  }

  /**
   * Refuses what no fit gives.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    int size = SigmoidModel.SIZE;
    Problems problems =
        new Problems("fitted sintering curve of " + curve().name())
            .require(
                confidence().si() > 0 && confidence().si() < 1,
                "confidence is " + confidence() + "; accepted is above 0 and below 1")
            .notNegative("scatter", scatter())
            .require(
                degreesOfFreedom() >= 1,
                "degrees of freedom are " + degreesOfFreedom() + "; accepted are 1 or more")
            .require(
                covariance().size() == size * size,
                "covariance has "
                    + covariance().size()
                    + " numbers; accepted are "
                    + size
                    + " rows of "
                    + size);
    for (int i = 0; i < covariance().size(); i++) {
      double number = covariance().get(i);
      problems.require(
          Double.isFinite(number) && (number >= 0 || i % (size + 1) != 0),
          "number "
              + (i + 1)
              + " of the covariance is "
              + number
              + "; accepted are finite numbers, none below zero on the diagonal");
    }
    problems.refuseIfAny();
  }
}
