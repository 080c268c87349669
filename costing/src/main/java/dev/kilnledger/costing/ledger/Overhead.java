package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** What is added to other costs for rooms, insurance, administration: a share of a named base. */
@Value.Immutable
@ValueStyle
public interface Overhead extends Serializable {
  /** {@return the lines of which it is a share} */
  @Value.Parameter
  OverheadBase base();

  /** {@return the share, zero or more} */
  @Value.Parameter
  Amount<Dimensionless> rate();

  /** {@return where the rate comes from} */
  @Value.Parameter
  Source source();

  /**
   * An overhead.
   *
   * @param base the lines of which it is a share
   * @param rate the share, zero or more
   * @param source where the rate comes from
   * @return the overhead
   * @throws IllegalArgumentException if the rate is negative
   */
  static Overhead of(OverheadBase base, Amount<Dimensionless> rate, Source source) {
    return ImmutableOverhead.of(base, rate, source);
  }

  /**
   * Refuses a negative rate.
   *
   * @throws IllegalArgumentException if the rate is negative
   */
  @Value.Check
  default void check() {
    new Problems("overhead on " + base().words()).notNegative("rate", rate()).refuseIfAny();
  }
}
