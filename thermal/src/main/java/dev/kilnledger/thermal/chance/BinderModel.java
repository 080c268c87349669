package dev.kilnledger.thermal.chance;

import static dev.kilnledger.thermal.chance.FiringInput.BINDER_ENERGY;
import static dev.kilnledger.thermal.chance.FiringInput.KINETICS;

import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.BurnOut;
import dev.kilnledger.thermal.burnout.DecompositionStep;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import java.util.ArrayList;
import java.util.List;

/**
 * The binder left, for kinetics and activation energies as drawn.
 *
 * <p>An energy that is another than stated turns about the fastest loss of its step in
 * thermogravimetry: what is converted there stays the same, so the logarithm of the reduced time is
 * shifted by as much as it is off there.
 */
final class BinderModel {
  private static final double COLD = 250; // K
  private static final double HOT = 1500; // K

  private final List<List<Step>> candidates = new ArrayList<>();

  BinderModel(List<BinderKinetics> kinetics, Amount<HeatingRate> rate) {
    for (BinderKinetics one : kinetics) {
      candidates.add(one.steps().stream().map(step -> new Step(one, step, rate)).toList());
    }
  }

  double left(Draw draw, List<Felt> stages) {
    double factor = draw.get(BINDER_ENERGY);
    double sum = 0;
    for (Step step : candidates.get((int) draw.get(KINETICS))) {
      sum += step.left(factor, stages);
    }
    return sum;
  }

  private static final class Step {
    private final DecompositionStep step;
    private final ArrheniusIntegral stated;
    private final double pivot; // K

    Step(BinderKinetics kinetics, DecompositionStep step, Amount<HeatingRate> rate) {
      this.step = step;
      stated = new ArrheniusIntegral(step.activationEnergy());
      BinderKinetics alone =
          BinderKinetics.builder()
              .from(kinetics)
              .steps(
                  List.of(
                      DecompositionStep.of(
                          step.activationEnergy(), step.curve(), Amounts.massFraction(1))))
              .build();
      Profile ramp = Profile.from(Amounts.kelvin(COLD)).rampTo(Amounts.kelvin(HOT), rate).build();
      pivot =
          BurnOut.standard().along(alone, TemperatureHistory.of(ramp)).peak().temperature().si();
    }

    double left(double factor, List<Felt> stages) {
      double share = step.massShare().si();
      if (factor == 1) {
        return share * step.curve().unconverted(Felt.logReducedTime(stated, stages));
      }
      ArrheniusIntegral drawn = new ArrheniusIntegral(step.activationEnergy().multiply(factor));
      double shift = stated.logMean(COLD, pivot) - drawn.logMean(COLD, pivot);
      return share * step.curve().unconverted(Felt.logReducedTime(drawn, stages) + shift);
    }
  }
}
