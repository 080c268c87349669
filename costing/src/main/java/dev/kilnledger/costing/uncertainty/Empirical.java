package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.util.Arrays;
import java.util.List;
import org.immutables.value.Value;

/** Values that were observed, each as likely as the others: they are drawn again. */
@Value.Immutable
@ValueStyle
public non-sealed interface Empirical extends Distribution {
  /** {@return the values, one or more, in any order} */
  @Value.Parameter
  List<Double> values();

  /**
   * Observed values.
   *
   * @param values the values, one or more
   * @return the distribution
   * @throws IllegalArgumentException with all problems
   */
  static Empirical of(List<Double> values) {
    return ImmutableEmpirical.of(values);
  }

  /**
   * Observed values.
   *
   * @param values the values, one or more
   * @return the distribution
   * @throws IllegalArgumentException with all problems
   */
  static Empirical of(double... values) {
    return of(Arrays.stream(values).boxed().toList());
  }

  @Override
  default String text() {
    double low = values().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    double high = values().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    return "one of "
        + values().size()
        + " values from "
        + Numbers.text(low)
        + " to "
        + Numbers.text(high);
  }

  /**
   * Refuses an empty list and what is no number.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("empirical distribution")
            .require(!values().isEmpty(), "there is no value; accepted is one or more");
    values().forEach(value -> Numbers.finite("a value", value, problems));
    problems.refuseIfAny();
  }
}
