package dev.kilnledger.costing.outfit;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.purchase.Need;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.immutables.value.Value;
import org.joda.money.Money;

/** Which outfits there are for some aims, and which of them some budgets buy. */
@Value.Immutable
@ValueStyle
public interface OutfitQuestion extends Serializable {
  /** {@return what there is to choose from} */
  OutfitCatalogue catalogue();

  /** {@return the offers for everything that is bought} */
  PriceBook prices();

  /**
   * {@return what the outfit is for, the most important first; none where outfits are compared by
   * the caller's scores alone}
   */
  List<Aim> aims();

  /**
   * {@return what counts in comparing outfits beside cost and aims reached, the most important
   * first; envelope and parts per firing unless stated}
   */
  @Value.Default
  default List<Measure> measures() {
    return List.of(Measure.ENVELOPE, Measure.PARTS_PER_FIRING);
  }

  /**
   * {@return the worst finding with which an aim still counts as reached, up to {@link
   * Severity#WARNING}; {@link Severity#UNDETERMINED} unless stated, and what could not be checked
   * is told with the outfit}
   */
  @Value.Default
  default Severity worstAccepted() {
    return Severity.UNDETERMINED;
  }

  /** {@return the budgets, from small to large; none where the whole front is wanted only} */
  List<Money> budgets();

  /**
   * {@return what every outfit is bought together with, such as the filament and packing powder for
   * a first part; nothing unless stated}
   */
  List<Need> starter();

  /**
   * Starts one.
   *
   * @return a builder; catalogue and prices are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link OutfitQuestion} values. */
  final class Builder extends ImmutableOutfitQuestion.Builder {
    Builder() {}
  }

  /**
   * Refuses questions that have no answer.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("outfit question");
    aims().stream()
        .collect(groupingBy(Aim::name, TreeMap::new, counting()))
        .forEach(
            (name, count) ->
                problems.require(
                    count == 1, "aim " + name + " stands " + count + " times; accepted is once"));
    if (!aims().isEmpty()) {
      present(problems, "a printer", option -> option.printer().isPresent());
      present(problems, "a kiln", option -> option.kiln().isPresent());
      present(problems, "a crucible", option -> option.crucible().isPresent());
    }
    problems
        .require(
            measures().stream().distinct().count() == measures().size(),
            "measures are " + measures() + "; accepted is each of them once")
        .require(
            worstAccepted().compareTo(Severity.WARNING) <= 0,
            "worst accepted is " + worstAccepted() + "; accepted is up to " + Severity.WARNING);
    Optional<Money> before = Optional.empty();
    for (Money budget : budgets()) {
      boolean same = budget.getCurrencyUnit().equals(prices().currency());
      problems
          .require(
              same && !budget.isNegative(),
              "budget is "
                  + budget
                  + "; accepted is zero or more in the price book's currency "
                  + prices().currency())
          .require(
              !same || before.filter(lower -> !lower.isLessThan(budget)).isEmpty(),
              "budget "
                  + budget
                  + " follows "
                  + before.map(Money::toString).orElse("")
                  + "; accepted is from small to large");
      before = same ? Optional.of(budget) : before;
    }
    problems.refuseIfAny();
  }

  private void present(Problems problems, String what, Predicate<Option> brings) {
    problems.require(
        catalogue().options().stream().anyMatch(brings),
        "no option brings " + what + "; accepted is one at least where there are aims");
  }
}
