package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Time;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/** One point of the curve of a substance in a room. */
@Value.Immutable
@ValueStyle
public interface RoomPoint extends Serializable {
  /** {@return since the start} */
  @Value.Parameter
  Amount<Time> time();

  /** {@return the mass in a volume of air} */
  @Value.Parameter
  Amount<Density> concentration();

  /**
   * A point.
   *
   * @param time since the start
   * @param concentration the mass in a volume of air
   * @return the point
   */
  static RoomPoint of(Amount<Time> time, Amount<Density> concentration) {
    return ImmutableRoomPoint.of(time, concentration);
  }
}
