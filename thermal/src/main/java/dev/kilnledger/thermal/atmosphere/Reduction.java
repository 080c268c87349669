package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * From which temperature on carbon undoes an oxide, as an interval over the published accounts of
 * its Gibbs energy and, in an alloy, over the activity assumed.
 */
@Value.Immutable
@ValueStyle
public interface Reduction extends Serializable {
  /** {@return the lowest temperature at which it may be so; empty if at none within the data} */
  Optional<Amount<Temperature>> earliest();

  /**
   * {@return the temperature by the most trusted account; the low end of the data where it is so at
   * all temperatures known, empty if at none of them}
   */
  Optional<Amount<Temperature>> expected();

  /** {@return above which it is sure; empty if at no temperature within the data} */
  Optional<Amount<Temperature>> latest();

  /** {@return the interval in words, such as "above 1243 °C (1226 °C to 1276 °C)"} */
  default String words() {
    if (earliest().isEmpty()) {
      return "at no temperature within the data";
    }
    String least = earliest().get().format(CELSIUS, 0);
    String most =
        latest().map(t -> "to " + t.format(CELSIUS, 0)).orElse("up, not surely within the data");
    return expected()
        .map(t -> "above " + t.format(CELSIUS, 0) + " (" + least + " " + most + ")")
        .orElse("from " + least + " on at best");
  }

  /**
   * Whether a temperature lies in the interval.
   *
   * @param temperature the temperature
   * @param widened by how much the interval is widened at either end
   * @return true if it does
   */
  default boolean spans(Amount<Temperature> temperature, Amount<TemperatureDifference> widened) {
    double kelvin = temperature.si();
    return earliest().filter(low -> kelvin >= low.si() - widened.si()).isPresent()
        && latest().filter(high -> kelvin > high.si() + widened.si()).isEmpty();
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Reduction} values. */
  final class Builder extends ImmutableReduction.Builder {
    Builder() {}
  }
}
