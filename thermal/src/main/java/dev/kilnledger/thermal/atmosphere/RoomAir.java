package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;
import si.uom.quantity.VolumetricFlowRate;

/** A room and the clean air it gets. */
@Value.Immutable
@ValueStyle
public interface RoomAir extends Serializable {
  /** {@return the volume of the room, above zero} */
  @Value.Parameter
  Amount<Volume> volume();

  /** {@return the air that comes in and goes out, zero or more} */
  @Value.Parameter
  Amount<VolumetricFlowRate> supply();

  /**
   * A room with a flow of air.
   *
   * @param volume the volume of the room
   * @param supply the air that comes in and goes out
   * @return the room
   * @throws IllegalArgumentException if the volume is not above zero or the supply below
   */
  static RoomAir of(Amount<Volume> volume, Amount<VolumetricFlowRate> supply) {
    return ImmutableRoomAir.of(volume, supply);
  }

  /**
   * A room whose air changes so many times an hour.
   *
   * @param volume the volume of the room
   * @param changesPerHour the air changes per hour
   * @return the room
   * @throws IllegalArgumentException if the volume is not above zero or the changes below
   */
  static RoomAir ofChanges(Amount<Volume> volume, double changesPerHour) {
    return of(volume, Amounts.cubicMetresPerHour(volume.si() * changesPerHour));
  }

  /**
   * Refuses impossible rooms.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("room")
        .positive("volume", volume())
        .notNegative("supply air", supply())
        .refuseIfAny();
  }
}
