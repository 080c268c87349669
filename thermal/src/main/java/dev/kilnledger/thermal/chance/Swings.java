package dev.kilnledger.thermal.chance;

import dev.kilnledger.units.Amount;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;

/** What each input alone does, from its 5 to its 95 % quantile, all others at their medians. */
final class Swings {
  private final Map<FiringInput, List<Outcome>> ends = new EnumMap<>(FiringInput.class);

  Swings(FiringResponse response, Inputs inputs, int kinetics) {
    for (FiringInput input : FiringInput.values()) {
      if (inputs.varies(input)) {
        List<Outcome> outcomes = new ArrayList<>();
        if (input == FiringInput.KINETICS) {
          for (int one = 0; one < kinetics; one++) {
            outcomes.add(outcome(response, inputs, input, one));
          }
        } else {
          outcomes.add(outcome(response, inputs, input, inputs.at(input, 0.05)));
          outcomes.add(outcome(response, inputs, input, inputs.at(input, 0.95)));
        }
        ends.put(input, outcomes);
      }
    }
  }

  private static Outcome outcome(
      FiringResponse response, Inputs inputs, FiringInput input, double value) {
    return response.outcome(inputs.medians().with(input, value));
  }

  <Q extends Quantity<Q>> List<Swing<Q>> of(
      ToDoubleFunction<Outcome> value, DoubleFunction<Amount<Q>> amount) {
    List<Swing<Q>> swings = new ArrayList<>();
    ends.forEach(
        (input, outcomes) -> {
          double[] results = outcomes.stream().mapToDouble(value).toArray();
          if (input == FiringInput.KINETICS) {
            Arrays.sort(results);
          }
          double low = results[0];
          double high = results[results.length - 1];
          if (low != high) {
            swings.add(ImmutableSwing.of(input, amount.apply(low), amount.apply(high)));
          }
        });
    swings.sort(Comparator.comparingDouble((Swing<Q> swing) -> swing.width()).reversed());
    return swings;
  }
}
