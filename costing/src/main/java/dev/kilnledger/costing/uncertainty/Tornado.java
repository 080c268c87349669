package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/**
 * How far each input alone moves a figure from where it is with all of them at their medians.
 * Figures of a plan are in units of its currency.
 */
@Value.Immutable
@ValueStyle
public interface Tornado extends Serializable {
  /** {@return what is moved, for people} */
  String figure();

  /** {@return the share whose quantile is the low value of each input} */
  Amount<Dimensionless> low();

  /** {@return the share whose quantile is the high value of each input} */
  Amount<Dimensionless> high();

  /** {@return the figure with every input at its median} */
  double middle();

  /** {@return a bar for each input, the widest first; as wide ones in the order of the inputs} */
  List<TornadoBar> bars();

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Tornado} values. */
  final class Builder extends ImmutableTornado.Builder {
    Builder() {}
  }
}
