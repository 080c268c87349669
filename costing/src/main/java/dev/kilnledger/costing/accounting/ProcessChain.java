package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * Steps in sequence. A part lost in a late step carries the cost of all steps before: a good part
 * costs the sum of c_i / (y_i y_(i+1) ... y_last) over the steps.
 */
@Value.Immutable
@ValueStyle
public interface ProcessChain extends Serializable {
  /** {@return the steps in their order, at least one, all of one currency} */
  @Value.Parameter
  List<ProcessStep> steps();

  /** {@return the rolled yield: the product of the steps' yields, exact} */
  default BigDecimal rolledYield() {
    return costs().get(0).surviving();
  }

  /** {@return what each step costs for each good part, in the order of the steps} */
  default List<StepCost> costs() {
    Deque<StepCost> costs = new ArrayDeque<>();
    BigDecimal surviving = BigDecimal.ONE;
    for (int i = steps().size() - 1; i >= 0; i--) {
      surviving = surviving.multiply(steps().get(i).goodShare().decimalIn(TradeUnits.ONE));
      costs.addFirst(StepCost.of(steps().get(i), surviving));
    }
    return List.copyOf(costs);
  }

  /** {@return the sum of {@link #costs} for one good part, unrounded} */
  default BigMoney costPerGoodPart() {
    return BigMoney.total(costs().stream().map(StepCost::perGoodPart).toList());
  }

  /**
   * Steps in sequence.
   *
   * @param steps the steps in their order, at least one
   * @return the chain
   * @throws IllegalArgumentException with all problems
   */
  static ProcessChain of(List<ProcessStep> steps) {
    return ImmutableProcessChain.of(steps);
  }

  /**
   * Refuses no steps, and steps of several currencies.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    List<CurrencyUnit> currencies =
        steps().stream().map(step -> step.cost().getCurrencyUnit()).distinct().toList();
    new Problems("process chain")
        .require(!steps().isEmpty(), "there is no step; accepted is one or more")
        .require(
            currencies.size() <= 1,
            "the steps cost in " + currencies + "; accepted is one currency for all")
        .refuseIfAny();
  }
}
