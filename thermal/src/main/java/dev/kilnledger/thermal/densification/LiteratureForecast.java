package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** What can be said of a firing without a sintering curve of one's own powder. */
@Value.Immutable
@ValueStyle
public interface LiteratureForecast extends Serializable {
  /**
   * {@return the hold at the middle of the alloy's sintering window that gives the same work of
   * sintering, over the range of published activation energies; empty where none is published}
   */
  @Value.Parameter
  Optional<Span<Time>> equivalentHold();

  /** {@return the interval in which the relative density lies} */
  @Value.Parameter
  Span<VolumeFraction> density();

  /** {@return that the density is undetermined, and why} */
  @Value.Parameter
  List<Finding> findings();
}
