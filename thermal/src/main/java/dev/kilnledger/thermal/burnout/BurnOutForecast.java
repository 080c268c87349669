package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.quantity.MassFraction;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** The binder over a history by several kinetics, none of which is known to be the right one. */
@Value.Immutable
@ValueStyle
public interface BurnOutForecast extends Serializable {
  /** {@return the course by each of the kinetics} */
  @Value.Parameter
  List<BurnOutCurve> curves();

  /** {@return the binder left at the end, from the least to the most of them} */
  @Value.Parameter
  Span<MassFraction> remaining();

  /** {@return how far they disagree, and what each of them found} */
  @Value.Parameter
  List<Finding> findings();
}
