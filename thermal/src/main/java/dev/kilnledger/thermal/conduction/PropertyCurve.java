package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * A property over temperature: straight lines between points, and beyond the first and the last
 * point their values. A single point is a constant.
 *
 * <pre>{@code
 * PropertyCurve.<ThermalConductivity>builder()
 *     .at(celsius(0), wattsPerMetreKelvin(0.10))
 *     .at(celsius(200), wattsPerMetreKelvin(0.20))
 *     .build();
 * }</pre>
 *
 * @param <Q> the property
 */
@Value.Immutable
@ValueStyle
public interface PropertyCurve<Q extends Quantity<Q>> extends Serializable {
  /** {@return the temperatures of the points, ascending} */
  List<Amount<Temperature>> temperatures();

  /** {@return the property at each of the temperatures} */
  List<Amount<Q>> values();

  /**
   * A property that does not depend on temperature.
   *
   * @param <Q> the property
   * @param value the value
   * @return a curve of one point
   */
  static <Q extends Quantity<Q>> PropertyCurve<Q> constant(Amount<Q> value) {
    return PropertyCurve.<Q>builder().at(Amounts.celsius(20), value).build();
  }

  /** {@return whether it is the same at every temperature} */
  default boolean isConstant() {
    return values().stream().allMatch(values().get(0)::equals);
  }

  /** {@return the temperatures it was stated for, empty for a constant, which has no limit} */
  default Optional<Span<Temperature>> stated() {
    int last = temperatures().size() - 1;
    return last == 0
        ? Optional.empty()
        : Optional.of(Span.of(temperatures().get(0), temperatures().get(last)));
  }

  /**
   * Starts one.
   *
   * @param <Q> the property
   * @return a builder; at least one point is required
   */
  static <Q extends Quantity<Q>> Builder<Q> builder() {
    return new Builder<>();
  }

  /**
   * Builds {@link PropertyCurve} values.
   *
   * @param <Q> the property
   */
  final class Builder<Q extends Quantity<Q>> extends ImmutablePropertyCurve.Builder<Q> {
    Builder() {}

    /**
     * Adds a point.
     *
     * @param temperature a temperature above that of the point before
     * @param value the property there
     * @return this
     */
    public Builder<Q> at(Amount<Temperature> temperature, Amount<Q> value) {
      addTemperatures(temperature);
      addValues(value);
      return this;
    }
  }

  /**
   * Refuses points that are none or not in order.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("property curve")
            .require(!temperatures().isEmpty(), "there is no point; accepted is at least one")
            .require(
                temperatures().size() == values().size(),
                temperatures().size()
                    + " temperatures and "
                    + values().size()
                    + " values; accepted are as many of either");
    for (int i = 1; i < temperatures().size(); i++) {
      problems.require(
          temperatures().get(i).isGreaterThan(temperatures().get(i - 1)),
          "point "
              + (i + 1)
              + " is at "
              + temperatures().get(i)
              + " after "
              + temperatures().get(i - 1)
              + "; accepted are rising temperatures");
    }
    problems.refuseIfAny();
  }
}
