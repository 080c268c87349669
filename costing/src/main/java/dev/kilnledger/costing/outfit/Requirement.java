package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** What an option cannot do without: one at least of some other options. */
@Value.Immutable
@ValueStyle
public interface Requirement extends Serializable {
  /** {@return the names of the options of which one at least has to be there} */
  @Value.Parameter
  List<String> anyOf();

  /**
   * A requirement.
   *
   * @param options the names of the options of which one at least has to be there
   * @return the requirement
   * @throws IllegalArgumentException if there is none
   */
  static Requirement anyOf(String... options) {
    return ImmutableRequirement.of(List.of(options));
  }

  /** {@return the requirement for people: {@code "circuit 32 A or three-phase circuit"}} */
  default String text() {
    return String.join(" or ", anyOf());
  }

  /**
   * Refuses a requirement of nothing.
   *
   * @throws IllegalArgumentException if no option is named
   */
  @Value.Check
  default void check() {
    new Problems("requirement")
        .require(!anyOf().isEmpty(), "it names no option; accepted is one or more")
        .refuseIfAny();
  }
}
