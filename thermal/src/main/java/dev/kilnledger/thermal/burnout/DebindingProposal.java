package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** The fastest profile found for a debinding task. */
@Value.Immutable
@ValueStyle
public interface DebindingProposal extends Serializable {
  /** What makes a segment as slow as it is. */
  enum SetBy {
    /** The kiln heats no faster. */
    KILN("the kiln's fastest heating"),
    /** The binder may leave no faster. */
    LOSS_RATE("the limit on the rate of loss"),
    /** The share that is to leave takes its time. */
    CONVERSION("the binder that is still to leave");

    private final String words;

    SetBy(String words) {
      this.words = words;
    }

    /** {@return the reason in words, lower case} */
    public String words() {
      return words;
    }
  }

  /** {@return the profile: the ramps and, where they do not convert enough, a hold at the end} */
  @Value.Parameter
  Profile profile();

  /** {@return what sets each of its segments, in order} */
  @Value.Parameter
  List<SetBy> setBy();

  /** {@return the profile held against the limit} */
  @Value.Parameter
  LossCheck check();

  /**
   * {@return the time below which no profile at all can do it, however many ramps it has: that of
   * leaving at the highest rate allowed anywhere between start and end, or of heating as fast as
   * the kiln does, whichever is longer}
   */
  @Value.Parameter
  Amount<Time> floor();
}
