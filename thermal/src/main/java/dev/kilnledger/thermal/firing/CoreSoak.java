package dev.kilnledger.thermal.firing;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** How long the core is hot enough at a stretch, against what is asked. */
@Value.Immutable
@ValueStyle
public interface CoreSoak extends Serializable {
  /** {@return how hot the core has to be} */
  @Value.Parameter
  Amount<Temperature> temperature();

  /** {@return for how long at a stretch} */
  @Value.Parameter
  Amount<Time> asked();

  /** {@return for how long it is, its span over how well or badly the charge may conduct} */
  @Value.Parameter
  Estimate<Time> had();
}
