package dev.kilnledger.thermal.profile;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.HeatingRate;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** One row of a profile's segment table. */
@Value.Immutable
@ValueStyle
public interface SegmentRow extends Serializable {
  /** {@return the number of the segment, from 1 up} */
  @Value.Parameter
  int number();

  /** {@return the segment} */
  @Value.Parameter
  Segment segment();

  /** {@return the time from the profile's start to the segment's end} */
  @Value.Parameter
  Amount<Time> elapsed();

  /** {@return the temperature at the segment's start} */
  default Amount<Temperature> start() {
    return segment().start();
  }

  /** {@return the temperature at the segment's end} */
  default Amount<Temperature> end() {
    return segment().end();
  }

  /** {@return the rate of change, zero for a hold} */
  default Amount<HeatingRate> rate() {
    return segment().rate();
  }

  /** {@return how long the segment takes} */
  default Amount<Time> duration() {
    return segment().duration();
  }

  /**
   * A row.
   *
   * @param number the number of the segment
   * @param segment the segment
   * @param elapsed the time from the profile's start to the segment's end
   * @return the row
   */
  static SegmentRow of(int number, Segment segment, Amount<Time> elapsed) {
    return ImmutableSegmentRow.of(number, segment, elapsed);
  }
}
