package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** How long a kiln has to hold its peak for the core to have its soak. */
@Value.Immutable
@ValueStyle
public interface Soak extends Serializable {
  /** {@return the hold at the peak as programmed, zero if it is only touched} */
  Amount<Time> programmedHold();

  /** {@return the time of the core at or above the temperature, at a stretch, as programmed} */
  Amount<Time> coreSoak();

  /** {@return the hold needed, empty if no hold is long enough; zero if none is needed} */
  Optional<Amount<Time>> neededHold();

  /** {@return the profile with the hold needed, empty if no hold is long enough} */
  Optional<Profile> neededProfile();

  /** {@return whether the programmed hold is enough} */
  Finding finding();

  /**
   * Starts one.
   *
   * @return a builder; all but what is needed is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Soak} values. */
  final class Builder extends ImmutableSoak.Builder {
    Builder() {}
  }
}
