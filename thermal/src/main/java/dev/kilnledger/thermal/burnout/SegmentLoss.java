package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.SegmentRow;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MassFraction;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** What one segment of a profile does to the binder. */
@Value.Immutable
@ValueStyle
public interface SegmentLoss extends Serializable {
  /** {@return the segment, with its number} */
  SegmentRow row();

  /** {@return the share of the binder that leaves during it} */
  Amount<MassFraction> converted();

  /** {@return where the rate of loss comes nearest to the limit, or exceeds it most} */
  BurnOutPoint nearest();

  /** {@return the rate there, as a share of the allowed one; above 1 it exceeds the limit} */
  Amount<Dimensionless> use();

  /**
   * Starts one.
   *
   * @return an empty builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link SegmentLoss} values. */
  final class Builder extends ImmutableSegmentLoss.Builder {
    Builder() {}
  }
}
