package dev.kilnledger.costing.uncertainty;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.yield.FailureRule;
import java.io.Serializable;
import java.util.List;
import java.util.TreeMap;
import org.immutables.value.Value;

/**
 * A ledger plan of which some figures are not known for sure.
 *
 * <p>What an input does not act on stays as the plan has it. An input is the value of one figure,
 * or a factor on several; a figure can have one value and any number of factors. Inputs are
 * independent of each other: what goes up and down together has to be one shared input. What is
 * drawn for anything but a price is taken to seven digits, or to a thousandth of its spread if that
 * is finer: a ledger counts decimals, and no figure is known better.
 *
 * <p>Failures are counted by the rule of the plan, with the yields that are drawn; or they fall at
 * random as well, a new course of events in each trial, as long as every item is bought in single
 * packs of one offer at one price and nothing is paid for shipping.
 */
@Value.Immutable
@ValueStyle
public interface UncertainPlan extends Serializable {
  /** {@return the plan} */
  LedgerPlan plan();

  /** {@return what is not known for sure, each name once} */
  List<UncertainInput> inputs();

  /**
   * {@return how failures are counted: by the rule of the plan unless stated, or {@link
   * FailureRule#AT_RANDOM}}
   */
  @Value.Default
  default FailureRule failureRule() {
    return plan().failures().rule();
  }

  /** {@return whether failures fall at random} */
  default boolean failsAtRandom() {
    return failureRule() == FailureRule.AT_RANDOM;
  }

  /** {@return whether nothing varies from trial to trial} */
  default boolean isCertain() {
    return inputs().isEmpty() && !failsAtRandom();
  }

  /**
   * The names that an input can have.
   *
   * @param plan a plan
   * @return the names of its figures and of what they have in common
   */
  static List<String> figures(LedgerPlan plan) {
    return PlanFigures.of(plan).names();
  }

  /**
   * The plan as one trial has it, to be opened in the ledger.
   *
   * @param values a value for each input, in their order; a value beyond what its figure can have
   *     is taken for the nearest one that it can
   * @return the plan with these values
   * @throws IllegalArgumentException if there are more or fewer values than inputs
   */
  default LedgerPlan with(List<Double> values) {
    new Problems("values of an uncertain plan")
        .require(
            values.size() == inputs().size(),
            "there are "
                + values.size()
                + " values; accepted is one for each of the "
                + inputs().size()
                + " inputs")
        .refuseIfAny();
    double[] drawn = values.stream().mapToDouble(Double::doubleValue).toArray();
    return new DrawnPlan(this).plan(drawn, false);
  }

  /**
   * A plan and what is not known for sure of it.
   *
   * @param plan the plan
   * @param inputs the inputs
   * @return the plan with them
   * @throws IllegalArgumentException with all problems
   */
  static UncertainPlan of(LedgerPlan plan, List<UncertainInput> inputs) {
    return builder().plan(plan).inputs(inputs).build();
  }

  /**
   * Starts one.
   *
   * @return a builder; the plan is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link UncertainPlan} values. */
  final class Builder extends ImmutableUncertainPlan.Builder {
    Builder() {}
  }

  /**
   * Refuses inputs that the plan does not know, units that do not measure them, values that they
   * cannot have, names stated twice, and a failure rule that is neither the plan's nor fit for it.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("uncertain plan");
    inputs().stream()
        .collect(groupingBy(UncertainInput::name, TreeMap::new, counting()))
        .forEach(
            (name, count) ->
                problems.require(
                    count == 1, name + " is stated " + count + " times; accepted is once"));
    problems.require(
        failsAtRandom() || failureRule() == plan().failures().rule(),
        "failure rule is "
            + failureRule().words()
            + "; accepted is that of the plan, "
            + plan().failures().rule().words()
            + ", or at random");
    Binding.of(plan(), inputs(), false, problems);
    problems
        .require(
            !failsAtRandom() || new DrawnPlan(this).isPlain(),
            "failure rule is at random and the plan has shipping, several offers of an item, price"
                + " breaks or a declining balance; accepted is the rule of the plan, "
                + plan().failures().rule().words())
        .refuseIfAny();
  }
}
