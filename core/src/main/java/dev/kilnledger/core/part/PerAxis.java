package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/**
 * One value for each of the printer's axes: x and y in the layer, z across the layers.
 *
 * @param <T> what there is one of per axis
 */
@Value.Immutable
@ValueStyle
public interface PerAxis<T extends Serializable> extends Serializable {
  /** {@return the value along x} */
  @Value.Parameter
  T x();

  /** {@return the value along y} */
  @Value.Parameter
  T y();

  /** {@return the value along z} */
  @Value.Parameter
  T z();

  /**
   * One value for each axis.
   *
   * @param <T> what there is one of per axis
   * @param x the value along x
   * @param y the value along y
   * @param z the value along z
   * @return the three values
   */
  static <T extends Serializable> PerAxis<T> of(T x, T y, T z) {
    return ImmutablePerAxis.of(x, y, z);
  }
}
