package dev.kilnledger.thermal.load;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;

/** The crucibles that were considered for a charge. */
@Value.Immutable
@ValueStyle
public interface CrucibleChoice extends Serializable {
  /** {@return all of them, the smallest inside first} */
  @Value.Parameter
  List<CrucibleOption> options();

  /** {@return the smallest that can be taken; empty where none can} */
  default Optional<CrucibleOption> chosen() {
    return options().stream().filter(CrucibleOption::suits).findFirst();
  }

  /** {@return those that cannot be taken, each with its reasons} */
  default List<CrucibleOption> rejected() {
    return options().stream().filter(option -> !option.suits()).toList();
  }

  /**
   * A choice.
   *
   * @param options all crucibles considered, the smallest inside first
   * @return the choice
   */
  static CrucibleChoice of(List<CrucibleOption> options) {
    return ImmutableCrucibleChoice.of(options);
  }
}
