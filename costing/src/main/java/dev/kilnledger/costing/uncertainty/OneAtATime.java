package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.quantity.Dimensionless;

/**
 * Moves one input at a time from a low to a high quantile, all others standing at their medians:
 * quick and easy to read, but blind to what inputs do together, which {@link SobolAnalysis} tells.
 */
public final class OneAtATime {
  private static final OneAtATime STANDARD =
      new OneAtATime(Amounts.percent(5), Amounts.percent(95));

  private final Amount<Dimensionless> low;
  private final Amount<Dimensionless> high;

  /**
   * Moves inputs between two quantiles.
   *
   * @param low the share of the low one, more than 0
   * @param high the share of the high one, above the low one and less than 1
   * @throws IllegalArgumentException if they are out of range
   */
  public OneAtATime(Amount<Dimensionless> low, Amount<Dimensionless> high) {
    new Problems("one at a time")
        .require(
            low.si() > 0 && low.si() < high.si() && high.si() < 1,
            "quantiles are "
                + low
                + " and "
                + high
                + "; accepted is more than 0, ascending and less than 1")
        .refuseIfAny();
    this.low = low;
    this.high = high;
  }

  /** {@return the analysis between the quantiles of 5 % and 95 %} */
  public static OneAtATime standard() {
    return STANDARD;
  }

  /**
   * How far each input moves a figure of a plan. Failures are counted by the rule of the plan.
   *
   * @param plan the plan and its inputs, one or more
   * @param figure the figure
   * @param parts the number of parts
   * @return the bars, in units of the plan's currency
   * @throws IllegalArgumentException if there are no inputs, or too few or too many parts
   */
  public Tornado tornado(UncertainPlan plan, CashFigure figure, long parts) {
    return tornado(
        figure.words() + ", " + parts + " parts",
        plan.inputs(),
        PlanModel.of(plan, figure, parts).get());
  }

  /**
   * How far each input moves a formula.
   *
   * @param figure what the formula is, for people
   * @param inputs its inputs, in the order of its values
   * @param model the formula
   * @return the bars
   * @throws ArithmeticException if the formula comes to what is no number
   */
  public Tornado tornado(String figure, List<UncertainInput> inputs, Model model) {
    double[] values = Law.medians(inputs);
    double middle = MonteCarlo.number(model, values);
    List<TornadoBar> bars = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      double median = values[i];
      double down = inputs.get(i).distribution().quantile(low);
      double up = inputs.get(i).distribution().quantile(high);
      values[i] = down;
      double atLow = MonteCarlo.number(model, values);
      values[i] = up;
      double atHigh = MonteCarlo.number(model, values);
      values[i] = median;
      bars.add(
          TornadoBar.builder()
              .input(inputs.get(i))
              .low(down)
              .high(up)
              .atLow(atLow)
              .atHigh(atHigh)
              .build());
    }
    bars.sort(Comparator.comparingDouble(TornadoBar::swing).reversed());
    return Tornado.builder().figure(figure).low(low).high(high).middle(middle).bars(bars).build();
  }
}
