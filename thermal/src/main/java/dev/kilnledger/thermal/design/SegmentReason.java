package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.SegmentRow;
import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;

/**
 * What keeps one segment from being faster, found by trying it one step of the controller faster.
 */
@Value.Immutable
@ValueStyle
public interface SegmentReason extends Serializable {
  /** {@return the segment as designed} */
  @Value.Parameter
  SegmentRow row();

  /**
   * {@return the worst of what the check says of the firing with this segment one step faster, with
   * the value measured then and the limit; empty where the controller takes no faster step, or
   * where the search was ended before it was tried}
   */
  @Value.Parameter
  Optional<Finding> forbids();

  /**
   * A reason.
   *
   * @param row the segment as designed
   * @param forbids what the check says of it one step faster
   * @return the reason
   */
  static SegmentReason of(SegmentRow row, Optional<Finding> forbids) {
    return ImmutableSegmentReason.of(row, forbids);
  }
}
