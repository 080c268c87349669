package dev.kilnledger.thermal.chance;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * One value for each input, in SI units; of the kinetics their place in the list; of what belongs
 * to a fitted sintering curve the standard deviations by which it is off.
 */
final class Draw {
  private final Map<FiringInput, Double> values;

  private Draw(Map<FiringInput, Double> values) {
    this.values = values;
  }

  /** The values asked for in the order of the inputs. */
  static Draw of(ToDoubleFunction<FiringInput> value) {
    Map<FiringInput, Double> values = new EnumMap<>(FiringInput.class);
    for (FiringInput input : FiringInput.values()) {
      values.put(input, value.applyAsDouble(input));
    }
    return new Draw(values);
  }

  double get(FiringInput input) {
    return Objects.requireNonNull(values.get(input));
  }

  Draw with(FiringInput input, double value) {
    Map<FiringInput, Double> changed = new EnumMap<>(values);
    changed.put(input, value);
    return new Draw(changed);
  }
}
