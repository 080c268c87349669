package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;
import org.joda.money.Money;

/** What a budget buys. */
@Value.Immutable
@ValueStyle
public interface BudgetAnswer extends Serializable {
  /** {@return the budget} */
  Money budget();

  /** {@return the outfits of the front that it buys, by cost} */
  List<Outfit> affordable();

  /**
   * {@return the one of them that does most: by the caller's score, then by the aims reached in
   * their order, then by the measures in theirs, each aim by aim; then the cheapest}
   */
  Optional<Outfit> best();

  /**
   * {@return what is missing for the cheapest outfit; empty if one is affordable or none exists}
   */
  Optional<Money> shortfall();

  /** {@return the options that are in no affordable outfit of the front, in catalogue order} */
  List<Rejection> rejected();

  /**
   * {@return the answer for people, one sentence for each line; where the budget buys nothing at
   * all, no option is told to be over it}
   */
  default List<String> explanation() {
    List<String> lines = new ArrayList<>();
    if (best().isPresent()) {
      Outfit outfit = best().get();
      lines.add(
          "A budget of "
              + budget()
              + " buys "
              + outfit.text()
              + " and leaves "
              + budget().minus(outfit.cost()));
      lines.addAll(outfit.explanation().subList(1, outfit.explanation().size()));
    } else {
      lines.add(
          "A budget of "
              + budget()
              + " buys no outfit: "
              + shortfall()
                  .map(missing -> missing + " are missing for the cheapest")
                  .orElse("there is none, whatever it may cost"));
    }
    rejected().stream()
        .filter(each -> best().isPresent() || each.reason() != RejectionReason.OVER_BUDGET)
        .forEach(each -> lines.add("rejected: " + each.text()));
    return List.copyOf(lines);
  }

  /**
   * Starts one.
   *
   * @return a builder; the budget is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link BudgetAnswer} values. */
  final class Builder extends ImmutableBudgetAnswer.Builder {
    Builder() {}
  }
}
