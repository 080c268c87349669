package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** Between which temperatures the core of the charge probably is in a stage, ready for a chart. */
@Value.Immutable
@ValueStyle
public interface CoreBand extends Serializable {
  /** {@return the name of the stage} */
  @Value.Parameter
  String stage();

  /** {@return the points in order of time, between which straight lines are meant} */
  @Value.Parameter
  List<CoreBandPoint> points();
}
