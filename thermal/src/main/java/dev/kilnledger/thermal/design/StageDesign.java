package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** One stage of a designed route, with what sets it. */
@Value.Immutable
@ValueStyle
public interface StageDesign extends Serializable {
  /** {@return the stage with its designed profile} */
  @Value.Parameter
  FiringStage stage();

  /** {@return what keeps each segment from being faster, in the order of the segments} */
  @Value.Parameter
  List<SegmentReason> segments();

  /**
   * {@return what the check says of a peak one degree lower, reached at the same rate; empty where
   * the search was ended before that was tried, or where it would not be shorter}
   */
  @Value.Parameter
  Optional<Finding> forbidsLowerPeak();

  /** {@return how long the programme takes, programmed cooling included} */
  default Amount<Time> duration() {
    return stage().profile().duration();
  }

  /**
   * A stage.
   *
   * @param stage the stage with its designed profile
   * @param segments what keeps each segment from being faster
   * @param forbidsLowerPeak what the check says of a lower peak
   * @return the design
   */
  static StageDesign of(
      FiringStage stage, List<SegmentReason> segments, Optional<Finding> forbidsLowerPeak) {
    return ImmutableStageDesign.of(stage, segments, forbidsLowerPeak);
  }
}
