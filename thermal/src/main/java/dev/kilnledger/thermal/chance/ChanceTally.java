package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.burnout.BurnOut;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/** Counts what came of the draws. */
final class ChanceTally {
  private final UncertainFiring firing;
  private final FiringForecast forecast;
  private final Inputs inputs;
  private final long seed;
  private final int asked;

  ChanceTally(
      UncertainFiring firing, FiringForecast forecast, Inputs inputs, long seed, int asked) {
    this.firing = firing;
    this.forecast = forecast;
    this.inputs = inputs;
    this.seed = seed;
    this.asked = asked;
  }

  /** Where not even the first draw could be made. */
  FiringChances interrupted() {
    return result(List.of(), List.of()).build();
  }

  FiringChances chances(
      FiringResponse response, List<DrawnBlock> blocks, Optional<ShortcutCheck> check) {
    List<Outcome> outcomes = blocks.stream().flatMap(b -> b.outcomes.stream()).toList();
    if (outcomes.isEmpty()) {
      return interrupted();
    }
    List<Chance> chances = new ArrayList<>();
    double soak = forecast.coreSoak().asked().si();
    chances.add(chance(FiringEvent.CORE_SOAKED, outcomes, o -> o.soak() >= soak));
    boolean hasBinder = !forecast.candidates().isEmpty();
    if (hasBinder) {
      chances.add(
          chance(FiringEvent.BINDER_GONE, outcomes, o -> o.binderLeft() <= BurnOut.COMPLETE_BELOW));
    }
    double target = forecast.targetDensity().si();
    chances.add(
        chance(
            FiringEvent.DENSITY_REACHED,
            outcomes,
            o -> o.leastDensity() >= target,
            o -> o.mostDensity() >= target));
    double limit = meltingLimit(firing.setup().alloy()).si();
    chances.add(chance(FiringEvent.METAL_SOLID, outcomes, o -> o.hottest() < limit));
    boolean hasCurve = firing.setup().sinteringCurve().isPresent();
    Swings swings = new Swings(response, inputs, forecast.candidates().size());
    FiringChances.Builder result =
        result(outcomes, chances)
            .soak(quantiles(outcomes, Outcome::soak, ChanceTally::hours))
            .soakSwings(swings.of(Outcome::soak, ChanceTally::hours))
            .coreBands(bands(blocks))
            .shortcut(check);
    if (hasBinder) {
      result
          .binderLeft(quantiles(outcomes, Outcome::binderLeft, Amounts::massFraction))
          .binderSwings(swings.of(Outcome::binderLeft, Amounts::massFraction));
    }
    if (hasCurve) {
      result
          .density(quantiles(outcomes, Outcome::leastDensity, Amounts::volumeFraction))
          .densitySwings(swings.of(Outcome::leastDensity, Amounts::volumeFraction));
    }
    FiringChances counted = result.build();
    return FiringChances.builder()
        .from(counted)
        .findings(new ChanceFindings(counted, forecast, inputs.assumed()).all())
        .build();
  }

  private FiringChances.Builder result(List<Outcome> outcomes, List<Chance> chances) {
    FiringChances.Builder result =
        FiringChances.builder()
            .firing(firing)
            .seed(seed)
            .drawsAsked(asked)
            .draws(outcomes.size())
            .chances(chances);
    return outcomes.isEmpty()
        ? result.addFindings(ChanceFindings.drawsMade(0, asked, forecast))
        : result;
  }

  /** What no place may get as hot as: the liquidus where sintering with a melt is meant. */
  static Amount<Temperature> meltingLimit(Alloy alloy) {
    Amount<Temperature> solidus = alloy.solidus().value();
    return alloy.sinteringWindow().value().high().isGreaterThan(solidus)
        ? alloy.liquidus().value()
        : solidus;
  }

  private static Chance chance(
      FiringEvent event, List<Outcome> outcomes, Predicate<Outcome> happens) {
    return chance(event, outcomes, happens, happens);
  }

  private static Chance chance(
      FiringEvent event,
      List<Outcome> outcomes,
      Predicate<Outcome> surely,
      Predicate<Outcome> maybe) {
    double n = outcomes.size();
    double low = outcomes.stream().filter(surely).count() / n;
    double high = outcomes.stream().filter(maybe).count() / n;
    return ImmutableChance.of(
        event,
        Span.of(Amounts.ratio(low), Amounts.ratio(high)),
        Amounts.ratio(Math.max(error(low, n), error(high, n))));
  }

  private static double error(double share, double draws) {
    return Math.sqrt(share * (1 - share) / draws);
  }

  private static Amount<Time> hours(double seconds) {
    return Amounts.seconds(seconds).to(TradeUnits.HOUR);
  }

  private static <Q extends Quantity<Q>> Quantiles<Q> quantiles(
      List<Outcome> outcomes, ToDoubleFunction<Outcome> value, DoubleFunction<Amount<Q>> amount) {
    return quantiles(outcomes.stream().mapToDouble(value).toArray(), amount);
  }

  private static <Q extends Quantity<Q>> Quantiles<Q> quantiles(
      double[] values, DoubleFunction<Amount<Q>> amount) {
    Arrays.sort(values);
    return ImmutableQuantiles.of(
        amount.apply(quantile(values, 0.05)),
        amount.apply(quantile(values, 0.5)),
        amount.apply(quantile(values, 0.95)));
  }

  /** The smallest of some sorted values that a share of them does not exceed. */
  private static double quantile(double[] sorted, double share) {
    // the product may be a rounding error more than it is
    int rank = (int) Math.ceil(share * sorted.length * (1 - 1e-14));
    return sorted[Math.max(0, rank - 1)];
  }

  private List<CoreBand> bands(List<DrawnBlock> blocks) {
    List<List<Felt>> curves = blocks.stream().flatMap(b -> b.curves.stream()).toList();
    List<CoreBand> bands = new ArrayList<>();
    for (int s = 0; s < forecast.stages().size(); s++) {
      int stage = s;
      double[] seconds = curves.get(0).get(stage).seconds;
      List<CoreBandPoint> points = new ArrayList<>();
      for (int i = 0; i < seconds.length; i++) {
        int at = i;
        points.add(
            ImmutableCoreBandPoint.of(
                hours(seconds[i]),
                quantiles(
                    curves.stream().mapToDouble(curve -> curve.get(stage).kelvin[at]).toArray(),
                    kelvin -> Amounts.kelvin(kelvin).to(TradeUnits.CELSIUS))));
      }
      bands.add(ImmutableCoreBand.of(forecast.stages().get(stage).stage().name(), points));
    }
    return bands;
  }
}
