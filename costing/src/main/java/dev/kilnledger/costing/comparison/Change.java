package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;

/** Something that is not the same in two scenarios, with both values and their sources. */
@Value.Immutable
@ValueStyle
public interface Change extends Serializable {
  /** {@return where it is, such as the item or "rule"; never blank} */
  @Value.Parameter
  String where();

  /** {@return the figure in the baseline; empty where it has none} */
  @Value.Parameter
  Optional<Explanation> before();

  /** {@return the figure in the other scenario; empty where it has none} */
  @Value.Parameter
  Optional<Explanation> after();

  /**
   * A change.
   *
   * @param where where it is
   * @param before the figure in the baseline
   * @param after the figure in the other scenario
   * @return the change
   */
  static Change of(String where, Optional<Explanation> before, Optional<Explanation> after) {
    return ImmutableChange.of(where, before, after);
  }

  /** {@return what it is, such as "quantity" or "price"} */
  default String what() {
    return before().or(this::after).orElseThrow().what();
  }

  /**
   * {@return the change for people: {@code "filament, price: from EUR 60.00 to EUR 66.00, both
   * invented (stated by the user)"}}
   */
  default String text() {
    Optional<String> beforeSource = before().flatMap(Explanation::source).map(Source::cite);
    Optional<String> afterSource = after().flatMap(Explanation::source).map(Source::cite);
    boolean same = beforeSource.equals(afterSource);
    String name = where() + ", " + what() + ": ";
    if (before().isEmpty() || after().isEmpty()) {
      return name
          + (before().isEmpty() ? "new, " : "no longer, ")
          + before().or(this::after).map(Explanation::shown).orElseThrow()
          + beforeSource.or(() -> afterSource).map(source -> ", " + source).orElse("");
    }
    String from = before().get().shown();
    String to = after().get().shown();
    if (same) {
      return name + "from " + from + " to " + to + afterSource.map(s -> ", both " + s).orElse("");
    }
    return name
        + "from "
        + from
        + beforeSource.map(source -> ", " + source).orElse("")
        + ", to "
        + to
        + afterSource.map(source -> ", " + source).orElse("");
  }
}
