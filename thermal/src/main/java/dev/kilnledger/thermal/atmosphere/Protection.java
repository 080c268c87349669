package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/** What carbon does for an alloy at a temperature, element by element. */
@Value.Immutable
@ValueStyle
public interface Protection extends Serializable {
  /** {@return the name of the alloy} */
  String alloy();

  /** {@return the temperature} */
  Amount<Temperature> temperature();

  /** {@return the partial pressure of carbon monoxide} */
  Amount<Pressure> carbonMonoxide();

  /** {@return the answers for the elements of the nominal composition without carbon} */
  List<ElementProtection> elements();

  /** {@return one finding for each element, in the same order} */
  List<Finding> findings();

  /**
   * The answer for one element.
   *
   * @param element the element
   * @return its answer, empty if the nominal composition does not hold it
   */
  default Optional<ElementProtection> of(Element element) {
    return elements().stream().filter(answer -> answer.element() == element).findFirst();
  }

  /**
   * Starts one.
   *
   * @return a builder; alloy, temperature and pressure are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Protection} values. */
  final class Builder extends ImmutableProtection.Builder {
    Builder() {}
  }
}
