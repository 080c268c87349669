package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;

/** The answer to an outfit question. */
@Value.Immutable
@ValueStyle
public interface OutfitPlan extends Serializable {
  /** {@return the question} */
  OutfitQuestion question();

  /**
   * {@return every outfit that no other one beats in cost, score and capability at once, by cost;
   * of equals the one with the fewest pieces of equipment, then the first in the catalogue. Empty
   * if no outfit reaches what is asked}
   */
  List<Outfit> front();

  /** {@return the aims that nothing in the catalogue reaches} */
  List<Unreachable> unreachable();

  /** {@return the options that are in no outfit of the front, in catalogue order} */
  List<Rejection> rejected();

  /** {@return what each budget buys, in their order} */
  List<BudgetAnswer> answers();

  /** {@return the outfit that costs least} */
  default Optional<Outfit> cheapest() {
    return front().stream().findFirst();
  }

  /** {@return the steps from the best outfit of one budget to that of the next that has another} */
  default List<Upgrade> upgrades() {
    List<Upgrade> upgrades = new ArrayList<>();
    Optional<Outfit> before = Optional.empty();
    for (BudgetAnswer answer : answers()) {
      if (answer.best().isPresent()) {
        Outfit outfit = answer.best().get();
        before
            .filter(other -> !other.equals(outfit))
            .ifPresent(other -> upgrades.add(Upgrade.of(other, outfit)));
        before = answer.best();
      }
    }
    return List.copyOf(upgrades);
  }

  /** {@return the plan for people, one sentence for each line} */
  default List<String> explanation() {
    List<String> lines = new ArrayList<>();
    lines.add(front().size() + " outfits are beaten by none");
    front().forEach(outfit -> lines.add(outfit.text()));
    unreachable().forEach(aim -> lines.add(aim.text()));
    answers().forEach(answer -> lines.addAll(answer.explanation()));
    upgrades().forEach(upgrade -> lines.addAll(upgrade.explanation()));
    if (answers().isEmpty()) {
      rejected().forEach(rejection -> lines.add("rejected: " + rejection.text()));
    }
    return List.copyOf(lines);
  }

  /**
   * Starts one.
   *
   * @return a builder; the question is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link OutfitPlan} values. */
  final class Builder extends ImmutableOutfitPlan.Builder {
    Builder() {}
  }
}
