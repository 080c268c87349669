package dev.kilnledger.thermal.design;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** One stage of the design beside the user's. */
@Value.Immutable
@ValueStyle
public interface StageComparison extends Serializable {
  /** {@return the stage as designed} */
  @Value.Parameter
  FiringStage designed();

  /** {@return the user's stage} */
  @Value.Parameter
  FiringStage theirs();

  /**
   * {@return the time until the designed stage is cold enough to open, cooling beyond the programme
   * included; empty where nothing is known of the kiln's wall}
   */
  @Value.Parameter
  Optional<Amount<Time>> designedUntilOpening();

  /** {@return the same of the user's stage} */
  @Value.Parameter
  Optional<Amount<Time>> theirsUntilOpening();

  /** {@return the user's segments in order} */
  @Value.Parameter
  List<SegmentComparison> segments();
}
