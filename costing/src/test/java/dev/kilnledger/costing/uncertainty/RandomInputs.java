package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.units.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Inputs for any plan, at random: round values that hit whole packs, and values that do not. */
final class RandomInputs {
  private static final Source INVENTED = Source.user("invented");

  private RandomInputs() {}

  static List<UncertainInput> of(LedgerPlan plan, SplittableRandom random) {
    List<UncertainInput> inputs = new ArrayList<>();
    PlanFigures all = PlanFigures.of(plan);
    for (PlanFigure figure : all.figures.values()) {
      if (random.nextInt(3) > 0) {
        boolean si = figure.value().kind().equals(Kind.RATIO);
        double one = si ? 1 : PlanFigure.one(figure.value()).si();
        UncertainInput input =
            UncertainInput.of(figure.name(), distribution(figure, one, random), INVENTED);
        inputs.add(
            si
                ? input
                : UncertainInput.builder()
                    .from(input)
                    .unit(PlanFigure.one(figure.value()))
                    .build());
      }
    }
    for (String name : all.common.keySet()) {
      if (random.nextInt(3) == 0) {
        inputs.add(UncertainInput.of(name, Empirical.of(0.9, 1, 1.25), INVENTED));
      }
    }
    return inputs;
  }

  private static Distribution distribution(PlanFigure figure, double one, SplittableRandom random) {
    double value = figure.value().si() / one;
    boolean round = random.nextBoolean();
    if (figure.most() <= 1) {
      double low = Math.max(0.2, figure.least().value());
      return round ? Empirical.of(0.2, 0.5, 0.8, 0.9, 0.95, 1 - 1e-6) : Rectangular.of(low, 0.999);
    }
    double most = figure.most() == Double.MAX_VALUE ? Double.MAX_VALUE : figure.most() / one;
    double high = Math.min(2 * value, most);
    return !round
        ? Rectangular.of(value / 2, high)
        : value < 4
            ? Empirical.of(value / 2, value / 4, value, high)
            : Empirical.of(Math.rint(value / 2), Math.floor(value), Math.floor(high), value);
  }

  static double[] draw(List<UncertainInput> inputs, SplittableRandom random) {
    return inputs.stream()
        .mapToDouble(
            input -> Law.of(input.distribution()).quantile(random.nextDouble(0.001, 0.999)))
        .toArray();
  }
}
