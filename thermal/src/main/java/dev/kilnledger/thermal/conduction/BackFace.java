package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * The inner face of a slab that is not a mid-plane: a plate that passes heat at its back to
 * something of constant temperature.
 */
@Value.Immutable
@ValueStyle
public interface BackFace extends Serializable {
  /** {@return how it passes heat} */
  @Value.Parameter
  SurfaceContact contact();

  /** {@return the temperature behind it} */
  @Value.Parameter
  Amount<Temperature> temperature();

  /**
   * A back face.
   *
   * @param contact how it passes heat
   * @param temperature the temperature behind it
   * @return the back face
   */
  static BackFace of(SurfaceContact contact, Amount<Temperature> temperature) {
    return ImmutableBackFace.of(contact, temperature);
  }
}
