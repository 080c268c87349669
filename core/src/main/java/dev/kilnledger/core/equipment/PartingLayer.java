package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/** A ceramic layer between support and part that does not sinter, so that they come apart. */
@Value.Immutable
@ValueStyle
public interface PartingLayer extends Serializable {
  /** {@return what it is made of, such as {@code "alumina paste"}} */
  @Value.Parameter
  String material();

  /** {@return the highest temperature at which it still parts} */
  @Value.Parameter
  Sourced<Amount<Temperature>> temperatureLimit();

  /**
   * A parting layer.
   *
   * @param material what it is made of
   * @param temperatureLimit the highest temperature at which it still parts
   * @return the layer
   * @throws IllegalArgumentException if the material is blank
   */
  static PartingLayer of(String material, Sourced<Amount<Temperature>> temperatureLimit) {
    return ImmutablePartingLayer.of(material, temperatureLimit);
  }

  /**
   * Refuses a blank material.
   *
   * @throws IllegalArgumentException if the material is blank
   */
  @Value.Check
  default void check() {
    new Problems("parting layer").text("material", material()).refuseIfAny();
  }
}
