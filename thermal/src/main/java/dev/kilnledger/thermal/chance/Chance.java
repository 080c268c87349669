package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** How likely an event is. */
@Value.Immutable
@ValueStyle
public interface Chance extends Serializable {
  /** {@return the event} */
  @Value.Parameter
  FiringEvent event();

  /**
   * {@return the probability: both ends are the same share of the draws, unless the inputs do not
   * tell more than an interval}
   */
  @Value.Parameter
  Span<Dimensionless> probability();

  /**
   * {@return the Monte Carlo standard error of the ends, {@code sqrt(p (1 - p) / n)}, the larger of
   * the two; zero where all n draws agree, and then the probability may still be off by 3 / n (from
   * memory: the rule of three, for 95 % confidence)}
   */
  @Value.Parameter
  Amount<Dimensionless> standardError();

  /** {@return whether it is one number rather than an interval} */
  default boolean isDetermined() {
    return probability().low().equals(probability().high());
  }
}
