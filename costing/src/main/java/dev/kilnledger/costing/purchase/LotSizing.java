package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * A demand over periods, and what it costs to order now or to order early and keep: the question of
 * buying now or later.
 */
@Value.Immutable
@ValueStyle
public interface LotSizing extends Serializable {
  /** {@return what each period uses, in one measure, zero or more; at least one period} */
  List<Amount<?>> demand();

  /** {@return what one order costs, whatever its size, zero or more} */
  BigMoney orderCost();

  /** {@return the measure on which {@link #holdingCost} is stated, such as one kilogram} */
  Amount<?> measure();

  /** {@return what it costs to keep one measure from one period to the next, zero or more} */
  BigMoney holdingCost();

  /**
   * {@return the most periods that one order may cover, 1 or more, where the goods perish; no limit
   * unless stated}
   */
  Optional<Integer> longestCover();

  /**
   * Starts one.
   *
   * @return a builder; demand, order cost, measure and holding cost are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link LotSizing} values. */
  final class Builder extends ImmutableLotSizing.Builder {
    Builder() {}
  }

  /**
   * Refuses what cannot be planned.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("lot sizing")
            .require(!demand().isEmpty(), "there is no period; accepted is one or more")
            .positive("measure", measure())
            .require(
                !orderCost().isNegative(),
                "order cost is " + orderCost() + "; accepted is zero or more")
            .require(
                !holdingCost().isNegative()
                    && holdingCost().getCurrencyUnit().equals(orderCost().getCurrencyUnit()),
                "holding cost is "
                    + holdingCost()
                    + "; accepted is zero or more in "
                    + orderCost().getCurrencyUnit());
    for (int i = 0; i < demand().size(); i++) {
      Amount<?> amount = demand().get(i);
      problems
          .notNegative("demand of period " + (i + 1), amount)
          .require(
              amount.kind().equals(measure().kind()),
              "demand of period "
                  + (i + 1)
                  + " is "
                  + amount
                  + "; accepted is a measure of "
                  + measure().kind());
    }
    longestCover()
        .ifPresent(
            periods ->
                problems.require(
                    periods >= 1,
                    "longest cover is " + periods + " periods; accepted is 1 or more"));
    problems.refuseIfAny();
  }
}
