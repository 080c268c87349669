package dev.kilnledger.core.part;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/**
 * What coupons tell about shrinkage, as {@link StudentShrinkageCalibration} works it out.
 *
 * <p>Two bands are told apart: how well the mean is known, and what a single next part may show. A
 * tolerance is about the latter.
 */
@Value.Immutable
@ValueStyle
public interface ShrinkageCalibration extends Serializable {
  /** {@return the number of coupons, at least 1} */
  int coupons();

  /** {@return how sure the bands are meant to be, such as 0.95, two-sided} */
  Amount<Dimensionless> confidence();

  /** {@return the mean shrinkage along each axis} */
  PerAxis<Amount<Dimensionless>> mean();

  /** {@return the standard deviation along each axis, if there are at least two coupons} */
  Optional<PerAxis<Amount<Dimensionless>>> standardDeviation();

  /**
   * {@return the mean shrinkage with its confidence interval, unless that is undetermined; its
   * {@linkplain LinearShrinkage#oversize() oversize} is the factor per axis for the next print}
   */
  Optional<LinearShrinkage> ofTheMean();

  /**
   * {@return the mean shrinkage with the interval for one further part, unless that is
   * undetermined; to be used as {@link PrintConditions#measuredShrinkage()}}
   */
  Optional<LinearShrinkage> ofTheNextPart();

  /** {@return whether the bands could be determined} */
  Finding finding();

  /**
   * Starts one.
   *
   * @return a builder; all but the optional attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ShrinkageCalibration} values. */
  final class Builder extends ImmutableShrinkageCalibration.Builder {
    Builder() {}
  }
}
