package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.NozzleMaterial;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Length;
import org.immutables.value.Value;

/** The nozzle through which the feedstock is extruded. */
@Value.Immutable
@ValueStyle
public interface Nozzle extends Serializable {
  /** {@return what it is made of} */
  @Value.Parameter
  NozzleMaterial material();

  /** {@return the diameter of its bore} */
  @Value.Parameter
  Amount<Length> bore();

  /**
   * A nozzle.
   *
   * @param material what it is made of
   * @param bore the diameter of its bore
   * @return the nozzle
   * @throws IllegalArgumentException if the bore is not above zero
   */
  static Nozzle of(NozzleMaterial material, Amount<Length> bore) {
    return ImmutableNozzle.of(material, bore);
  }

  /**
   * Refuses a bore that is not above zero.
   *
   * @throws IllegalArgumentException if the bore is not above zero
   */
  @Value.Check
  default void check() {
    new Problems("nozzle").positive("bore", bore()).refuseIfAny();
  }
}
