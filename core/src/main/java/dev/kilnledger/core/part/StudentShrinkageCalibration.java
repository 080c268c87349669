package dev.kilnledger.core.part;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Works out mean shrinkage per axis from measured coupons, with intervals by Student's t.
 *
 * <p>With n coupons of mean m and standard deviation s, and t the two-sided quantile at n - 1
 * degrees of freedom, the mean lies in {@code m +- t s / sqrt(n)} and one further part in {@code m
 * +- t s sqrt(1 + 1/n)}, both assuming normal scatter (any textbook of statistics; the latter is
 * the prediction interval of ISO 16269-8, from memory). With one coupon there is a mean but no
 * interval.
 */
public final class StudentShrinkageCalibration {
  private static final Source BASIS =
      Source.commonPractice("Student's t at n - 1 degrees of freedom, normal scatter assumed");
  private static final StudentShrinkageCalibration STANDARD =
      new StudentShrinkageCalibration(Amounts.ratio(0.95));

  private final Amount<Dimensionless> confidence;

  /**
   * A calibration at a confidence of the caller's choice.
   *
   * @param confidence above 0 and below 1, two-sided
   * @throws IllegalArgumentException if the confidence lies outside
   */
  public StudentShrinkageCalibration(Amount<Dimensionless> confidence) {
    new Problems("shrinkage calibration")
        .require(
            confidence.si() > 0 && confidence.si() < 1,
            "confidence is " + confidence + "; accepted is above 0 and below 1")
        .refuseIfAny();
    this.confidence = confidence;
  }

  /** {@return the calibration at a confidence of 0.95} */
  public static StudentShrinkageCalibration standard() {
    return STANDARD;
  }

  /**
   * Mean shrinkage and intervals from coupons of one feedstock, printer and firing.
   *
   * @param coupons the coupons, at least one
   * @return the calibration; its intervals are empty, with a finding, for a single coupon and where
   *     the coupons scatter so much that an interval reaches the whole length
   * @throws IllegalArgumentException if there is no coupon
   */
  public ShrinkageCalibration calibrate(List<Coupon> coupons) {
    int n = coupons.size();
    new Problems("shrinkage calibration")
        .require(n > 0, "coupons are 0; accepted is 1 or more, 2 or more for an interval")
        .refuseIfAny();
    AxisSample x = AxisSample.of(coupons, Envelope::x);
    AxisSample y = AxisSample.of(coupons, Envelope::y);
    AxisSample z = AxisSample.of(coupons, Envelope::z);
    Optional<LinearShrinkage> ofTheMean = Optional.empty();
    Optional<LinearShrinkage> ofTheNextPart = Optional.empty();
    ShrinkageCalibration.Builder calibration = ShrinkageCalibration.builder();
    if (n > 1) {
      double t = TDistribution.of(n - 1).inverseSurvivalProbability((1 - confidence.si()) / 2);
      ofTheMean = within(x, y, z, t / Math.sqrt(n));
      ofTheNextPart = within(x, y, z, t * Math.sqrt(1 + 1.0 / n));
      calibration.standardDeviation(
          PerAxis.of(
              Amounts.ratio(x.deviation), Amounts.ratio(y.deviation), Amounts.ratio(z.deviation)));
    }
    return calibration
        .coupons(n)
        .confidence(confidence)
        .mean(PerAxis.of(Amounts.ratio(x.mean), Amounts.ratio(y.mean), Amounts.ratio(z.mean)))
        .ofTheMean(ofTheMean)
        .ofTheNextPart(ofTheNextPart)
        .finding(finding(n, ofTheMean.isPresent() && ofTheNextPart.isPresent()))
        .build();
  }

  private static Optional<LinearShrinkage> within(
      AxisSample x, AxisSample y, AxisSample z, double deviations) {
    boolean possible =
        x.reachesTo(deviations) < 1 && y.reachesTo(deviations) < 1 && z.reachesTo(deviations) < 1;
    return possible
        ? Optional.of(
            LinearShrinkage.of(x.within(deviations), y.within(deviations), z.within(deviations)))
        : Optional.empty();
  }

  private Finding finding(int n, boolean determined) {
    String bands = "the " + confidence.format(TradeUnits.PERCENT, 0) + " intervals of shrinkage";
    return Finding.builder()
        .code(PartFinding.SHRINKAGE_CALIBRATION)
        .severity(determined ? Severity.PASSED : Severity.UNDETERMINED)
        .subject(n == 1 ? "1 coupon" : n + " coupons")
        .message(
            determined
                ? bands + " are determined"
                : n == 1
                    ? bands + " are undetermined: one coupon tells nothing of the scatter"
                    : bands + " are undetermined: the coupons scatter too much")
        .measured(Amounts.ratio(n))
        .limit(Amounts.ratio(2))
        .basis(BASIS)
        .build();
  }

  /** The shrinkage of all coupons along one axis. */
  private static final class AxisSample {
    private final double mean;
    private final double deviation;

    private AxisSample(double mean, double deviation) {
      this.mean = mean;
      this.deviation = deviation;
    }

    static AxisSample of(List<Coupon> coupons, Function<Envelope, Amount<Length>> axis) {
      double[] shrinkage =
          coupons.stream()
              .mapToDouble(
                  coupon -> 1 - axis.apply(coupon.sintered()).ratio(axis.apply(coupon.green())))
              .toArray();
      double sum = 0;
      for (double one : shrinkage) {
        sum += one;
      }
      double mean = sum / shrinkage.length;
      double squares = 0;
      for (double one : shrinkage) {
        squares += (one - mean) * (one - mean);
      }
      return new AxisSample(mean, Math.sqrt(squares / Math.max(1, shrinkage.length - 1)));
    }

    double reachesTo(double deviations) {
      return mean + deviations * deviation;
    }

    Estimate<Dimensionless> within(double deviations) {
      return Estimate.of(
          Amounts.ratio(mean - deviations * deviation),
          Amounts.ratio(mean),
          Amounts.ratio(reachesTo(deviations)));
    }
  }
}
