package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** Options that serve the same end: printers, kilns, finishing tools, alarms. */
@Value.Immutable
@ValueStyle
public interface OptionGroup extends Serializable {
  /** {@return the name, such as {@code "kiln"}} */
  @Value.Parameter
  String name();

  /** {@return how many of the options an outfit holds} */
  @Value.Parameter
  Choice choice();

  /** {@return the options; of equals the first is taken} */
  @Value.Parameter
  List<Option> options();

  /**
   * A group.
   *
   * @param name the name
   * @param choice how many of the options an outfit holds
   * @param options the options, one at least
   * @return the group
   * @throws IllegalArgumentException with all problems
   */
  static OptionGroup of(String name, Choice choice, List<Option> options) {
    return ImmutableOptionGroup.of(name, choice, options);
  }

  /**
   * A group.
   *
   * @param name the name
   * @param choice how many of the options an outfit holds
   * @param options the options, one at least
   * @return the group
   * @throws IllegalArgumentException with all problems
   */
  static OptionGroup of(String name, Choice choice, Option... options) {
    return of(name, choice, List.of(options));
  }

  /**
   * Refuses groups without name or options.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("group " + name())
        .text("name", name())
        .require(!options().isEmpty(), "it has no option; accepted is one or more")
        .refuseIfAny();
  }
}
