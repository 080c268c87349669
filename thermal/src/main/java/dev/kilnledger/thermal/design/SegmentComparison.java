package dev.kilnledger.thermal.design;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.SegmentRow;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** One segment of the user's profile beside what the design does between the same temperatures. */
@Value.Immutable
@ValueStyle
public interface SegmentComparison extends Serializable {
  /** How the user's segment stands beside the design. */
  enum Pace {
    /** It takes less time than the design does there. */
    FASTER,
    /** Both take the same, within a minute. */
    SAME,
    /** It takes more time than the design does there. */
    SLOWER,
    /** The design does not go there. */
    NOT_IN_DESIGN
  }

  /** {@return the user's segment} */
  @Value.Parameter
  SegmentRow row();

  /**
   * {@return the time of the user's segment, of a ramp only the part between temperatures to which
   * the design goes too}
   */
  @Value.Parameter
  Amount<Time> theirs();

  /**
   * {@return the time of the design between the same temperatures on the same way, up or down; of a
   * hold at the peak the design's hold at its own peak; empty where the design does not go there}
   */
  @Value.Parameter
  Optional<Amount<Time>> designed();

  /** {@return how the user's segment stands beside the design} */
  default Pace pace() {
    if (designed().isEmpty()) {
      return Pace.NOT_IN_DESIGN;
    }
    double more = theirs().si() - designed().get().si();
    return Math.abs(more) < 60 ? Pace.SAME : more > 0 ? Pace.SLOWER : Pace.FASTER;
  }
}
