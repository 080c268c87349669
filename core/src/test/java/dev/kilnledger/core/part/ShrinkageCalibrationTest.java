package dev.kilnledger.core.part;

import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.units.Amount;
import java.util.Arrays;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShrinkageCalibrationTest {
  private static final StudentShrinkageCalibration STUDENT = StudentShrinkageCalibration.standard();

  private static Envelope cube(double side) {
    return Envelope.of(millimetres(side), millimetres(side), millimetres(side));
  }

  private static List<Coupon> shrunkBy(double... shrinkage) {
    return Arrays.stream(shrinkage)
        .mapToObj(y -> Coupon.of(cube(100), cube(100 * (1 - y))))
        .toList();
  }

  /** ASM Handbook vol. 7: 13.8 mm shrink to 12 mm, 13 % (0.130435), factor 1.15. */
  @Test
  void measuresThePublishedMouldedPart() {
    ShrinkageCalibration calibration =
        STUDENT.calibrate(
            List.of(Coupon.of(cube(13.8), cube(12)), Coupon.of(cube(13.8), cube(12))));
    LinearShrinkage mean = calibration.ofTheMean().orElseThrow();
    assertThat(mean.x().expected().si()).isEqualTo(0.130435, offset(5e-7));
    assertThat(mean.oversize().y().expected().si()).isEqualTo(1.15, offset(1e-12));
    assertThat(calibration.standardDeviation().orElseThrow().z().si()).isZero();
  }

  /**
   * Five coupons: mean 0.162; squares of the deviations 4, 16, 4, 16, 0 millionths, so s2 = 1e-5.
   * Two-sided 95 % t at 4 degrees of freedom: 2.776 (any table), to half a last digit.
   */
  @Test
  void givesTheIntervalOfTheMeanAndOfTheNextPart() {
    ShrinkageCalibration calibration =
        STUDENT.calibrate(shrunkBy(0.160, 0.166, 0.164, 0.158, 0.162));
    double s = Math.sqrt(1e-5);
    LinearShrinkage mean = calibration.ofTheMean().orElseThrow();
    assertThat(calibration.mean().x().si()).isEqualTo(0.162, offset(1e-12));
    assertThat(calibration.standardDeviation().orElseThrow().x().si()).isEqualTo(s, offset(1e-12));
    assertThat((mean.x().span().high().si() - 0.162) * Math.sqrt(5) / s)
        .isEqualTo(2.776, offset(5e-4));
    assertThat((0.162 - mean.z().span().low().si()) * Math.sqrt(5) / s)
        .isEqualTo(2.776, offset(5e-4));
    LinearShrinkage next = calibration.ofTheNextPart().orElseThrow();
    assertThat((next.x().span().high().si() - 0.162) / Math.sqrt(1.2) / s)
        .isEqualTo(2.776, offset(5e-4));
    assertThat(next.oversize().x().span().high().si())
        .isEqualTo(1 / (1 - next.x().span().high().si()), offset(1e-12));
    assertThat(calibration.finding().severity()).isEqualTo(Severity.PASSED);
    assertThat(calibration.finding().subject()).isEqualTo("5 coupons");
    assertThat(calibration.finding().message())
        .isEqualTo("the 95 % intervals of shrinkage are determined");
  }

  /** Two-sided t of any table: 95 % at 9 degrees of freedom 2.262, 99 % 3.250, 90 % 1.833. */
  @ParameterizedTest
  @CsvSource({"0.95, 2.262", "0.99, 3.250", "0.90, 1.833"})
  void usesStudentsTAtTheConfidenceAsked(double confidence, double t) {
    ShrinkageCalibration calibration =
        new StudentShrinkageCalibration(ratio(confidence))
            .calibrate(shrunkBy(0.15, 0.16, 0.17, 0.15, 0.16, 0.17, 0.15, 0.16, 0.17, 0.16));
    double s = calibration.standardDeviation().orElseThrow().x().si();
    double half =
        calibration.ofTheMean().orElseThrow().x().span().high().si() - calibration.mean().x().si();
    assertThat(half * Math.sqrt(10) / s).isEqualTo(t, offset(5e-4));
  }

  @Test
  void keepsTheAxesApartForTheNextPrint() {
    Coupon one =
        Coupon.of(cube(20), Envelope.of(millimetres(17), millimetres(16.8), millimetres(16)));
    Coupon two =
        Coupon.of(cube(20), Envelope.of(millimetres(17), millimetres(16.8), millimetres(16.2)));
    PerAxis<Amount<Dimensionless>> mean = STUDENT.calibrate(List.of(one, two)).mean();
    assertThat(mean.x().si()).isEqualTo(0.15, offset(1e-12));
    assertThat(mean.y().si()).isEqualTo(0.16, offset(1e-12));
    assertThat(mean.z().si()).isEqualTo(0.195, offset(1e-12));
  }

  @Test
  void leavesTheIntervalOfOneCouponUndetermined() {
    ShrinkageCalibration calibration = STUDENT.calibrate(shrunkBy(0.16));
    assertThat(calibration.mean().x().si()).isEqualTo(0.16, offset(1e-12));
    assertThat(calibration.ofTheMean()).isEmpty();
    assertThat(calibration.ofTheNextPart()).isEmpty();
    assertThat(calibration.finding().severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(calibration.finding().subject()).isEqualTo("1 coupon");
    assertThat(calibration.finding().message())
        .isEqualTo(
            "the 95 % intervals of shrinkage are undetermined: one coupon tells nothing of the"
                + " scatter");
  }

  @Test
  void leavesTheIntervalOfWildScatterUndetermined() {
    ShrinkageCalibration calibration = STUDENT.calibrate(shrunkBy(0.1, 0.3));
    assertThat(calibration.ofTheMean()).isEmpty();
    assertThat(calibration.finding().message()).endsWith("the coupons scatter too much");
  }

  @Test
  void refusesNoCouponsAndImpossibleConfidence() {
    assertThatThrownBy(() -> STUDENT.calibrate(List.of()))
        .hasMessage(
            "shrinkage calibration: coupons are 0; accepted is 1 or more, 2 or more for an"
                + " interval");
    assertThatThrownBy(() -> new StudentShrinkageCalibration(ratio(0)))
        .hasMessageContaining("confidence is 0; accepted is above 0 and below 1");
    assertThatThrownBy(() -> new StudentShrinkageCalibration(ratio(1)))
        .hasMessage("shrinkage calibration: confidence is 1; accepted is above 0 and below 1");
  }
}
