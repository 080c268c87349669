package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** How long a hold must be for a relative density to be reached at the end of the profile. */
@Value.Immutable
@ValueStyle
public interface HoldToDensity extends Serializable {
  /** {@return the hold after which the density is expected; zero if it is without any hold} */
  @Value.Parameter
  Amount<Time> expected();

  /**
   * {@return the hold after which even the low end of the band has the density; empty if a thousand
   * hours do not do it}
   */
  @Value.Parameter
  Optional<Amount<Time>> safe();

  /** {@return whether temperatures and density lie where the curve was observed} */
  @Value.Parameter
  Finding finding();
}
