package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Length;
import org.immutables.value.Value;

/** One layer of a charge; layers touch without resistance. */
@Value.Immutable
@ValueStyle
public interface ChargeLayer extends Serializable {
  /** {@return what it is made of} */
  @Value.Parameter
  ChargeMaterial material();

  /** {@return the thickness along the coordinate; of the innermost layer its radius or half} */
  @Value.Parameter
  Amount<Length> thickness();

  /**
   * A layer.
   *
   * @param material what it is made of
   * @param thickness the thickness, for the innermost layer its radius or half thickness
   * @return the layer
   * @throws IllegalArgumentException if the thickness is not above zero
   */
  static ChargeLayer of(ChargeMaterial material, Amount<Length> thickness) {
    return ImmutableChargeLayer.of(material, thickness);
  }

  /**
   * Refuses a thickness that is not above zero.
   *
   * @throws IllegalArgumentException if it is not
   */
  @Value.Check
  default void check() {
    new Problems("layer of " + material().name()).positive("thickness", thickness()).refuseIfAny();
  }
}
