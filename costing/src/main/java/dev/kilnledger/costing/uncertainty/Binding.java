package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Which input acts on which figure of a plan. */
final class Binding {
  /** A share of the draws so small that it may lie beyond what a figure can be. */
  private static final double RARE = 1e-6;

  private static final int MOST_DECIMALS = 12;

  private final PlanFigures all;
  private final List<UncertainInput> inputs;
  private final Map<String, Integer> values = new HashMap<>();
  private final Map<String, List<DrawnFigure.Factor>> factors = new HashMap<>();
  private final Map<String, DrawnFigure> drawn = new HashMap<>();
  private final boolean smooth;

  private Binding(LedgerPlan plan, List<UncertainInput> inputs, boolean smooth) {
    this.all = PlanFigures.of(plan);
    this.inputs = inputs;
    this.smooth = smooth;
  }

  /**
   * Binds inputs to a plan, and adds the problems there are.
   *
   * @param smooth whether values stay as they are drawn, for derivatives
   */
  static Binding of(
      LedgerPlan plan, List<UncertainInput> inputs, boolean smooth, Problems problems) {
    Binding binding = new Binding(plan, inputs, smooth);
    for (int i = 0; i < inputs.size(); i++) {
      binding.bind(i, problems);
    }
    binding.all.figures.values().forEach(figure -> binding.draw(figure, problems));
    return binding;
  }

  /** The figure of a name, which is one of the plan's. */
  DrawnFigure figure(String name) {
    return Objects.requireNonNull(drawn.get(name), name);
  }

  /** The figure of a name, or what the plan has where the name stands for several figures. */
  DrawnFigure figure(String name, Amount<?> stated) {
    return knows(name) ? figure(name) : DrawnFigure.stated(name, stated);
  }

  /** Whether a name stands for one figure of the plan. */
  boolean knows(String name) {
    return drawn.containsKey(name);
  }

  /** The name that the quantity of a resource has, alone or beside others of its item. */
  String quantity(Consumed consumed) {
    String alone = FigureName.quantity(consumed.item());
    return knows(alone) ? alone : FigureName.quantity(consumed.item(), consumed.driver());
  }

  private void bind(int index, Problems problems) {
    UncertainInput input = inputs.get(index);
    if (!input.multiplies().isEmpty()) {
      refuseUnit(input, problems);
      for (String name : input.multiplies()) {
        multiply(index, name, 1, problems);
      }
    } else if (all.common.containsKey(input.name())) {
      refuseUnit(input, problems);
      all.common
          .get(input.name())
          .forEach((name, divisor) -> multiply(index, name, divisor, problems));
    } else if (all.figures.containsKey(input.name())) {
      values.putIfAbsent(input.name(), index);
      checkUnit(input, all.figures.get(input.name()), problems);
    } else {
      problems.require(false, missing(input.name(), all.names()));
    }
  }

  private void multiply(int index, String name, double divisor, Problems problems) {
    if (all.figures.containsKey(name)) {
      factors
          .computeIfAbsent(name, any -> new ArrayList<>())
          .add(new DrawnFigure.Factor(index, divisor));
    } else {
      problems.require(false, missing(name, List.copyOf(all.figures.keySet())));
    }
    Law law = Law.of(inputs.get(index).distribution());
    problems.require(
        law.quantile(RARE) > 0,
        inputs.get(index).name()
            + " goes down to "
            + Numbers.text(law.quantile(RARE))
            + "; accepted is more than 0, as it multiplies "
            + name);
  }

  private static String missing(String name, List<String> accepted) {
    return "the plan has no figure \"" + name + "\"; accepted is one of " + accepted;
  }

  private static void refuseUnit(UncertainInput input, Problems problems) {
    input
        .unit()
        .ifPresent(
            one ->
                problems.require(
                    false,
                    input.name()
                        + " is stated in units of "
                        + one
                        + "; accepted are plain numbers"));
  }

  private static void checkUnit(UncertainInput input, PlanFigure figure, Problems problems) {
    Kind<?> kind = figure.value().kind();
    Optional<Kind<?>> stated = input.unit().map(Amount::kind);
    problems.require(
        stated.map(kind::equals).orElse(figure.measure().isEmpty()),
        input.name()
            + " is stated in "
            + input.unit().map(one -> "units of " + one).orElse("plain numbers")
            + "; accepted is "
            + figure.measure().map(k -> "a unit of " + k).orElse("plain numbers, or percent"));
  }

  private void draw(PlanFigure figure, Problems problems) {
    Integer value = values.get(figure.name());
    List<DrawnFigure.Factor> acting = factors.getOrDefault(figure.name(), List.of());
    Amount<?> one = PlanFigure.one(figure.value());
    double low = figure.value().si();
    double high = low;
    double typical = low;
    double spread = Double.MAX_VALUE;
    if (value != null) {
      UncertainInput input = inputs.get(value);
      one = input.unit().orElse(Amounts.ratio(1));
      if (!one.kind().equals(figure.value().kind())) {
        return; // told already
      }
      Law law = Law.of(input.distribution());
      low = law.quantile(RARE) * one.si();
      high = law.quantile(1 - RARE) * one.si();
      typical = law.quantile(0.5) * one.si();
      spread = Math.sqrt(law.variance());
    }
    for (DrawnFigure.Factor factor : acting) {
      Law law = Law.of(inputs.get(factor.input()).distribution());
      if (law.quantile(RARE) > 0) { // else it is told already
        low *= law.quantile(RARE) / factor.divisor();
        high *= law.quantile(1 - RARE) / factor.divisor();
      }
    }
    if (value != null || !acting.isEmpty()) {
      problems.require(
          figure.holds(low, high),
          figure.name()
              + " goes from "
              + figure.shown(low)
              + " to "
              + figure.shown(high)
              + "; accepted is "
              + figure.accepted()
              + " but for one draw in a million");
    }
    drawn.put(
        figure.name(),
        new DrawnFigure(
            figure,
            value == null ? -1 : value,
            one,
            acting,
            low,
            decimals(figure, typical / one.si(), spread)));
  }

  /**
   * To how many decimals a value is taken: to seven digits of what is typical, and to a thousandth
   * of its spread if that is finer. A ledger counts decimals, and no figure is known better. Prices
   * are not counted but multiplied, and stay as they are drawn.
   */
  private double decimals(PlanFigure figure, double typical, double spread) {
    if (smooth || figure.isPrice()) {
      return 0;
    }
    int digits = 6 - exponent(typical);
    int finer = 3 - exponent(spread);
    return Math.pow(10, Math.max(0, Math.min(MOST_DECIMALS, Math.max(digits, finer))));
  }

  private static int exponent(double value) {
    return value > 0 ? (int) Math.floor(Math.log10(value)) : 0;
  }
}
