package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;

/** A profile held against a limit on the rate of loss, segment by segment. */
@Value.Immutable
@ValueStyle
public interface LossCheck extends Serializable {
  /** What a segment must convert to count as part of the burn-out. */
  double TAKES_PART_FROM = 0.01;

  /** How far above the limit a rate counts as equal to it, for rounding. */
  double ROUNDING = 1e-6;

  /** {@return the limit} */
  @Value.Parameter
  LossRateLimit limit();

  /** {@return what each segment does, in order} */
  @Value.Parameter
  List<SegmentLoss> segments();

  /** {@return whether the limit is kept, and what it does not tell} */
  @Value.Parameter
  List<Finding> findings();

  /** {@return the segments in which the binder leaves too fast, the first first} */
  default List<SegmentLoss> exceeding() {
    return segments().stream().filter(segment -> segment.use().si() > 1 + ROUNDING).toList();
  }

  /**
   * {@return the segment to blame for the length of the burn-out: the longest of those that convert
   * 1 % or more; empty if none does}
   */
  default Optional<SegmentLoss> slowest() {
    return segments().stream()
        .filter(segment -> segment.converted().si() >= TAKES_PART_FROM)
        .max(Comparator.comparing(segment -> segment.row().duration()));
  }
}
