package dev.kilnledger.thermal.chance;

import static dev.kilnledger.thermal.chance.FiringInput.DRIFT;
import static dev.kilnledger.thermal.chance.FiringInput.KILN_OFFSET;
import static dev.kilnledger.thermal.chance.FiringInput.METAL_SHARE;
import static dev.kilnledger.thermal.chance.FiringInput.PACKING_CONDUCTIVITY;
import static dev.kilnledger.thermal.chance.FiringInput.THERMOCOUPLE;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.profile.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/**
 * Works out what the core feels at the medians and at some places on each of four axes: how much
 * hotter than programmed the kiln gets at the peak of a stage; how the thermocouple's error differs
 * elsewhere from that at the peak; the conductivity of the packing; the metal's share. Along an
 * axis it is interpolated, and what the axes change is added up.
 *
 * <p>A charge of constant properties in a kiln that is hotter throughout is as much hotter,
 * whatever it conducts, so that adding up misses nothing there; radiation, and a kiln that cannot
 * follow, are known along the first axis.
 */
final class Preparation {
  private final DrawnFiring drawn;
  private final Inputs inputs;
  private final Draw middle;
  private final FiringForecast expected;
  private final List<AxisPlan> plans = new ArrayList<>();

  Preparation(DrawnFiring drawn, Inputs inputs) {
    this.drawn = drawn;
    this.inputs = inputs;
    middle = inputs.medians();
    expected = FiringForecast.of(drawn.setup(middle));
    planOffset();
    planThermocouple();
    planCharge(PACKING_CONDUCTIVITY, Math::log, Math::exp);
    planCharge(METAL_SHARE, share -> share, share -> share);
  }

  /** The response of the stages, of which those not asked for are empty; empty if interrupted. */
  Optional<StageResponse> stage(int number, Progress progress) {
    StageForecast stage = expected.stages().get(number);
    int count = 1 + plans.stream().mapToInt(plan -> plan.places.length).sum();
    List<Profile> courses = new ArrayList<>();
    courses.add(stage.felt());
    for (AxisPlan plan : plans) {
      for (int k = 0; k < plan.places.length; k++) {
        progress.at((double) courses.size() / count);
        if (Thread.currentThread().isInterrupted()) {
          return Optional.empty();
        }
        courses.add(plan.felt(k, number, stage));
      }
    }
    CommonTimes times = new CommonTimes(courses);
    List<Axis> axes = new ArrayList<>();
    int course = 1;
    for (AxisPlan plan : plans) {
      double[][] changes = new double[plan.places.length][];
      double[] peakChanges = new double[plan.places.length];
      for (int k = 0; k < changes.length; k++) {
        changes[k] = difference(times.kelvin(course++), times.kelvin(0));
        peakChanges[k] = plan.peakChange(k, number, stage);
      }
      axes.add(
          new Axis(
              draw -> plan.place.of(number, draw), plan.curved, plan.places, changes, peakChanges));
    }
    progress.at(1);
    return Optional.of(
        new StageResponse(times.seconds, times.kelvin(0), stage.course().peak().si(), axes));
  }

  private static double[] difference(double[] these, double[] others) {
    double[] difference = new double[these.length];
    for (int i = 0; i < difference.length; i++) {
      difference[i] = these[i] - others[i];
    }
    return difference;
  }

  private void planOffset() {
    double low = 0;
    double high = 0;
    for (int stage = 0; stage < expected.stages().size(); stage++) {
      double at = drawn.atPeak(stage, middle);
      low = Math.min(low, drawn.atPeak(stage, coldest()) - at);
      high = Math.max(high, drawn.atPeak(stage, hottest()) - at);
    }
    if (low < 0 || high > 0) {
      plans.add(
          AxisPlan.ofKiln(
              (stage, draw) -> drawn.atPeak(stage, draw) - drawn.atPeak(stage, middle),
              around(low, high),
              offset ->
                  FiringForecast.of(
                      drawn.setup(middle.with(KILN_OFFSET, middle.get(KILN_OFFSET) + offset)))));
    }
  }

  private void planThermocouple() {
    double share = middle.get(THERMOCOUPLE);
    if (drawn.nominal().thermocouple().isPresent() && inputs.varies(THERMOCOUPLE)) {
      plans.add(
          AxisPlan.ofKiln(
              (stage, draw) -> draw.get(THERMOCOUPLE) - share,
              new double[] {inputs.least(THERMOCOUPLE) - share, inputs.most(THERMOCOUPLE) - share},
              more -> FiringForecast.of(drawn.setup(middle, share + more))));
    }
  }

  private void planCharge(FiringInput input, DoubleUnaryOperator scale, DoubleUnaryOperator back) {
    if (inputs.varies(input)) {
      double here = scale.applyAsDouble(middle.get(input));
      plans.add(
          AxisPlan.ofCharge(
              (stage, draw) -> scale.applyAsDouble(draw.get(input)) - here,
              around(
                  scale.applyAsDouble(inputs.least(input)) - here,
                  scale.applyAsDouble(inputs.most(input)) - here),
              more ->
                  FiringForecast.of(
                      drawn.setup(middle.with(input, back.applyAsDouble(here + more))))));
    }
  }

  /** The ends, and half way to each. */
  private static double[] around(double low, double high) {
    return DoubleStream.of(low, low / 2, high / 2, high).filter(place -> place != 0).toArray();
  }

  private Draw coldest() {
    return middle
        .with(KILN_OFFSET, inputs.least(KILN_OFFSET))
        .with(DRIFT, inputs.most(DRIFT))
        .with(THERMOCOUPLE, inputs.most(THERMOCOUPLE));
  }

  private Draw hottest() {
    return middle
        .with(KILN_OFFSET, inputs.most(KILN_OFFSET))
        .with(DRIFT, inputs.least(DRIFT))
        .with(THERMOCOUPLE, inputs.least(THERMOCOUPLE));
  }
}
