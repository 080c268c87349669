package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;
import org.joda.money.Money;

/** An option that is in no recommended outfit, and why. */
@Value.Immutable
@ValueStyle
public interface Rejection extends Serializable {
  /** {@return the option} */
  Option option();

  /** {@return why} */
  RejectionReason reason();

  /** {@return why, in one sentence} */
  String message();

  /** {@return what the checks found that stands in the way, where they do} */
  List<Finding> findings();

  /** {@return the cost of the cheapest outfit with it, empty where there is none} */
  Optional<Money> cheapestWith();

  /** {@return the rejection for people} */
  default String text() {
    return option().name() + ": " + message();
  }

  /**
   * Starts one.
   *
   * @return a builder; option, reason and message are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Rejection} values. */
  final class Builder extends ImmutableRejection.Builder {
    Builder() {}
  }
}
