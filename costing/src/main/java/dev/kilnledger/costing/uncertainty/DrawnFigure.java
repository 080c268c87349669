package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.util.List;
import javax.measure.Quantity;

/**
 * A figure of a plan as a trial has it: its own value or one that is drawn, times the common
 * factors that are drawn, to a number of decimals. Where no input acts on it, it is what the plan
 * says.
 */
final class DrawnFigure {
  /** A factor: an input's value over a divisor. */
  record Factor(int input, double divisor) {}

  private final PlanFigure figure;
  private final int input;
  private final Amount<?> one;
  private final double si;
  private final boolean varies;
  private final Factor[] factors;
  private final double low;
  private final double high;
  private final double decimals;

  /**
   * One figure.
   *
   * @param input the input that is its value, or -1
   * @param one one unit of that value
   * @param low what it is at least, in SI, where the figure's own bound is excluded
   * @param decimals a power of ten of which the value becomes a fraction; 0 where it is not rounded
   */
  DrawnFigure(
      PlanFigure figure,
      int input,
      Amount<?> one,
      List<Factor> factors,
      double low,
      double decimals) {
    this.figure = figure;
    this.input = input;
    this.one = one;
    this.si = one.si();
    this.factors = factors.toArray(Factor[]::new);
    this.varies = input >= 0 || !factors.isEmpty();
    PlanFigure.Bound least = figure.least();
    this.low = Math.max(least.excluded() ? low : least.value(), figure.floor()) / si;
    this.high = figure.most() / si;
    this.decimals = figure.whole() ? 1 : decimals;
  }

  /** A figure that is what the plan states. */
  static DrawnFigure stated(String name, Amount<?> value) {
    return new DrawnFigure(
        PlanFigure.positive(name, value), -1, PlanFigure.one(value), List.of(), 0, 0);
  }

  boolean varies() {
    return varies;
  }

  /** The value in SI units, or units of the currency. */
  double si(double[] drawn) {
    return varies ? number(drawn) * si : figure.value().si();
  }

  private double number(double[] drawn) {
    double number = input >= 0 ? drawn[input] : figure.value().getValue().doubleValue();
    if (!varies) {
      return number;
    }
    for (Factor factor : factors) {
      number *= drawn[factor.input] / factor.divisor;
    }
    double held = Math.max(low, Math.min(number, high));
    return decimals == 0 ? held : Math.rint(held * decimals) / decimals;
  }

  Amount<?> amount(double[] drawn) {
    return PlanFigure.like(one, number(drawn));
  }

  /** The value as the exact decimal that a ledger counts with. */
  BigDecimal decimal(double[] drawn) {
    return decimal(amount(drawn));
  }

  private static <Q extends Quantity<Q>> BigDecimal decimal(Amount<Q> amount) {
    return amount.decimalIn(amount.kind().siUnit());
  }
}
