package dev.kilnledger.thermal.chance;

import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.profile.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Where on an axis the full model is asked, and for which firing. */
final class AxisPlan {
  /** Where on the axis a draw is, in a stage: zero at the medians. */
  interface Place {
    double of(int stage, Draw draw);
  }

  final boolean curved;
  final Place place;
  final double[] places; // ascending, without the middle
  private final boolean chargeOnly;
  private final List<FiringForecast> forecasts = new ArrayList<>();

  private AxisPlan(
      boolean curved,
      Place place,
      double[] places,
      boolean chargeOnly,
      DoubleFunction<FiringForecast> forecast) {
    this.curved = curved;
    this.place = place;
    this.places = places;
    this.chargeOnly = chargeOnly;
    for (double at : places) {
      forecasts.add(forecast.apply(at));
    }
  }

  /** An axis along which the kiln is another; straight from place to place. */
  static AxisPlan ofKiln(Place place, double[] places, DoubleFunction<FiringForecast> forecast) {
    return new AxisPlan(false, place, places, false, forecast);
  }

  /** An axis along which the charge is another, in a kiln that does the same. */
  static AxisPlan ofCharge(Place place, double[] places, DoubleFunction<FiringForecast> forecast) {
    return new AxisPlan(true, place, places, true, forecast);
  }

  /** What the core feels at one of the places. */
  Profile felt(int number, int stage, StageForecast middle) {
    StageForecast there = forecasts.get(number).stages().get(stage);
    return chargeOnly ? middle.felt(there.charge()) : there.felt();
  }

  /** How much hotter than in the middle the kiln gets there, K. */
  double peakChange(int number, int stage, StageForecast middle) {
    return chargeOnly
        ? 0
        : forecasts.get(number).stages().get(stage).course().peak().si()
            - middle.course().peak().si();
  }
}
