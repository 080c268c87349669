package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.explanation.StatementFigure;
import java.io.Serializable;
import java.util.Map;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * A line of an account in the baseline and in another scenario: one row, flat enough to be drawn,
 * whose effects add up to the difference exactly.
 */
@Value.Immutable
@ValueStyle
public interface ComparedLine extends Serializable {
  /** {@return the scenario that is held against the baseline} */
  String scenario();

  /** {@return the sum of the statement to which the line belongs} */
  StatementFigure figure();

  /** {@return the item, the surcharge, "rounding", or "total"} */
  String what();

  /** {@return the amount in the baseline; zero where it has no such line} */
  BigMoney before();

  /** {@return the amount in the scenario; zero where it has no such line} */
  BigMoney after();

  /** {@return what makes the difference, without effects of nothing, in the order of effects} */
  Map<Effect, BigMoney> effects();

  /** {@return after less before} */
  default BigMoney difference() {
    return after().minus(before());
  }

  /**
   * One effect.
   *
   * @param effect the effect
   * @return its amount, zero where it has none
   */
  default BigMoney effect(Effect effect) {
    return effects().getOrDefault(effect, BigMoney.zero(before().getCurrencyUnit()));
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes but the effects are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ComparedLine} values. */
  final class Builder extends ImmutableComparedLine.Builder {
    Builder() {}
  }
}
