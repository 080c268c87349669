package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/** What a release does to the air of a room. */
@Value.Immutable
@ValueStyle
public interface RoomAnswer extends Serializable {
  /** {@return what is released} */
  GasRelease release();

  /** {@return the room} */
  RoomAir room();

  /** {@return the concentration over time, to 8 h after the release} */
  List<RoomPoint> points();

  /** {@return the highest concentration} */
  Amount<Density> peak();

  /** {@return the highest share of the volume; empty without a molar mass} */
  Optional<Amount<VolumeFraction>> peakShare();

  /** {@return the answer for each limit of the substance} */
  List<LimitAnswer> limits();

  /** {@return one finding for each limit, or one that says there is none} */
  List<Finding> findings();

  /** {@return the hazards that go with it} */
  Set<Caution> cautions();

  /**
   * Starts an answer.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link RoomAnswer} values. */
  final class Builder extends ImmutableRoomAnswer.Builder {
    Builder() {}
  }
}
