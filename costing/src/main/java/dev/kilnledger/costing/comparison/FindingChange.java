package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.immutables.value.Value;

/** A finding that is new, gone, or of another severity, measured value, limit or message. */
@Value.Immutable
@ValueStyle
public interface FindingChange extends Serializable {
  /** {@return the finding in the baseline; empty where it is new} */
  @Value.Parameter
  Optional<Finding> before();

  /** {@return the finding in the other scenario; empty where it is gone} */
  @Value.Parameter
  Optional<Finding> after();

  /** {@return whether both have it, and not of the same severity} */
  default boolean severityChanged() {
    return before().isPresent()
        && after().isPresent()
        && before().get().severity() != after().get().severity();
  }

  /** {@return the change for people, such as "gone: warning: the kiln falls behind"} */
  default String text() {
    if (before().isEmpty()) {
      return "new: " + told(after().orElseThrow());
    }
    if (after().isEmpty()) {
      return "gone: " + told(before().get());
    }
    return (severityChanged() ? "was " + word(before().get()) + ", now " : "now ")
        + told(after().get());
  }

  private static String told(Finding finding) {
    return word(finding)
        + ": "
        + (finding.message().contains(finding.subject()) ? "" : finding.subject() + ": ")
        + finding.message();
  }

  private static String word(Finding finding) {
    return finding.severity().name().toLowerCase(Locale.ROOT);
  }

  /**
   * What differs between findings, paired by code and subject, then by code, each in its order.
   *
   * @param before the findings of the baseline
   * @param after the findings of the other scenario
   * @return the findings that are new, gone or changed
   */
  static List<FindingChange> between(List<Finding> before, List<Finding> after) {
    List<Finding> left = new ArrayList<>(after);
    List<FindingChange> changes = new ArrayList<>();
    for (Finding finding : before) {
      Optional<Finding> same =
          taken(
                  left,
                  other ->
                      other.code().equals(finding.code())
                          && other.subject().equals(finding.subject()))
              .or(() -> taken(left, other -> other.code().equals(finding.code())));
      if (!same.equals(Optional.of(finding))) {
        changes.add(ImmutableFindingChange.of(Optional.of(finding), same));
      }
    }
    left.forEach(f -> changes.add(ImmutableFindingChange.of(Optional.empty(), Optional.of(f))));
    return List.copyOf(changes);
  }

  private static Optional<Finding> taken(List<Finding> left, Predicate<Finding> which) {
    Optional<Finding> first = left.stream().filter(which).findFirst();
    first.ifPresent(left::remove);
    return first;
  }
}
