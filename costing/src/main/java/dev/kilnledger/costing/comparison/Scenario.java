package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/**
 * A result under the name by which it is compared.
 *
 * @param <T> the result: a statement or the answer of a job
 */
@Value.Immutable
@ValueStyle
public interface Scenario<T extends Serializable> extends Serializable {
  /** {@return the name, such as "four per firing", not blank} */
  @Value.Parameter
  String name();

  /** {@return the result} */
  @Value.Parameter
  T result();

  /**
   * A named result.
   *
   * @param <T> the result's type
   * @param name the name, not blank
   * @param result the result
   * @return the scenario
   * @throws IllegalArgumentException if the name is blank
   */
  static <T extends Serializable> Scenario<T> of(String name, T result) {
    return ImmutableScenario.of(name, result);
  }

  /**
   * Refuses a blank name.
   *
   * @throws IllegalArgumentException if the name is blank
   */
  @Value.Check
  default void check() {
    new Problems("scenario").text("name", name()).refuseIfAny();
  }
}
