package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** The binder over a whole history, ready to draw. */
@Value.Immutable
@ValueStyle
public interface BurnOutCurve extends Serializable {
  /** {@return the kinetics it stands on} */
  BinderKinetics kinetics();

  /**
   * {@return the series: every point of the history, and between them steps of at most 1 K and 5
   * min, no more than a thousand to a line}
   */
  List<BurnOutPoint> points();

  /** {@return where the binder leaves fastest} */
  BurnOutPoint peak();

  /** {@return what is found: the binder that remains, and whether the kinetics reach so far} */
  List<Finding> findings();

  /** {@return the last point} */
  default BurnOutPoint end() {
    return points().get(points().size() - 1);
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link BurnOutCurve} values. */
  final class Builder extends ImmutableBurnOutCurve.Builder {
    Builder() {}
  }
}
