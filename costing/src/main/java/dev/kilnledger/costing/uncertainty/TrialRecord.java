package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** How a simulation went. */
@Value.Immutable
@ValueStyle
public interface TrialRecord extends Serializable {
  /** {@return what was asked, with the seed} */
  @Value.Parameter
  Trials asked();

  /** {@return how many trials were made, and stand in the result} */
  @Value.Parameter
  int made();

  /**
   * {@return how it ended; interrupted, the result stands on the trials made until then and cannot
   * be repeated from the seed}
   */
  @Value.Parameter
  Ending ending();

  /**
   * A record.
   *
   * @param asked what was asked
   * @param made how many trials were made
   * @param ending how it ended
   * @return the record
   */
  static TrialRecord of(Trials asked, int made, Ending ending) {
    return ImmutableTrialRecord.of(asked, made, ending);
  }

  /** {@return the record for people: {@code "100000 trials from seed 7, all made"}} */
  default String text() {
    return made() + " trials from seed " + asked().seed() + ", " + ending().words();
  }
}
