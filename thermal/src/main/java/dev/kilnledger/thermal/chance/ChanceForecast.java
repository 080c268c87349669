package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Time;

/**
 * Draws many firings of what is not known exactly, and counts how many come out (propagation of
 * distributions by Monte Carlo, JCGM 101:2008).
 *
 * <p>Kiln and charge are computed in full at the medians and at some places about them, and in
 * between interpolated; a few draws are computed in full as well and told with the result. Binder
 * and density are integrated anew for every draw. The draws come in 64 blocks, each with
 * a random stream of its own: a seed gives the same result on any number of threads.
 *
 * <p>Long work is told of its progress, and stops soon after its thread was interrupted, with the
 * draws made until then.
 *
 * <pre>{@code
 * FiringChances chances = ChanceForecast.standard().forecast(firing);
 * chances.chance(FiringEvent.CORE_SOAKED).orElseThrow().probability();
 * chances.soakSwings().get(0).input();                                  // what matters most
 * ChanceForecast.standard().holdFor(firing, percent(95));               // what helps
 * }</pre>
 *
 * <p>Example: a kiln that follows, whose place of the charge is normally off by 4 K either way,
 * exceeds its programmed peak by 6.58 K in 5 % of all firings: (6.58 / 4) is the 95 % quantile of
 * the standard normal law.
 */
public final class ChanceForecast {
  private static final ChanceForecast STANDARD = new ChanceForecast(10_000, 1, 1);
  private static final int CHECKED = 3;

  private final int draws;
  private final long seed;
  private final int threads;

  /**
   * A forecast of its own.
   *
   * @param draws how many draws, one or more
   * @param seed the seed of the random numbers
   * @param threads on how many threads, one or more; it does not change the result
   * @throws IllegalArgumentException with all problems
   */
  public ChanceForecast(int draws, long seed, int threads) {
    new Problems("forecast of chances")
        .require(draws > 0, draws + " draws; accepted is one or more")
        .require(threads > 0, threads + " threads; accepted is one or more")
        .refuseIfAny();
    this.draws = draws;
    this.seed = seed;
    this.threads = threads;
  }

  /** {@return 10,000 draws, seed 1, on the calling thread} */
  public static ChanceForecast standard() {
    return STANDARD;
  }

  /**
   * How sure a firing is.
   *
   * @param firing the firing and its spreads
   * @return probabilities, quantiles, what matters most, and findings
   */
  public FiringChances forecast(UncertainFiring firing) {
    return forecast(firing, Progress.unheard());
  }

  /**
   * How sure a firing is.
   *
   * @param firing the firing and its spreads
   * @param progress hears how far it is
   * @return probabilities, quantiles, what matters most, and findings
   */
  public FiringChances forecast(UncertainFiring firing, Progress progress) {
    FiringForecast forecast = FiringForecast.of(firing.setup());
    Inputs inputs = new Inputs(firing, forecast);
    DrawnFiring drawn = new DrawnFiring(forecast);
    ChanceTally tally = new ChanceTally(firing, forecast, inputs, seed, draws);
    Optional<FiringResponse> response =
        response(firing, forecast, drawn, inputs, progress.between(0, 0.5));
    if (response.isEmpty()) {
      return tally.interrupted();
    }
    List<DrawnBlock> blocks = draw(response.get(), inputs, progress.between(0.5, 0.9));
    Optional<ShortcutCheck> check =
        inputs.anythingVaries() && !Thread.currentThread().isInterrupted()
            ? Optional.of(check(response.get(), drawn, inputs))
            : Optional.empty();
    FiringChances chances = tally.chances(response.get(), blocks, check);
    progress.at(1);
    return chances;
  }

  private List<DrawnBlock> draw(FiringResponse response, Inputs inputs, Progress progress) {
    return Blocks.run(
        seed,
        threads,
        (block, random) ->
            DrawnBlock.of(response, inputs.drawing(random), DrawnBlock.size(block, draws)),
        progress);
  }

  static Optional<FiringResponse> response(
      UncertainFiring firing,
      FiringForecast forecast,
      DrawnFiring drawn,
      Inputs inputs,
      Progress progress) {
    Preparation preparation = new Preparation(drawn, inputs);
    int count = forecast.stages().size();
    List<StageResponse> stages = new ArrayList<>();
    for (int stage = 0; stage < count; stage++) {
      Optional<StageResponse> response =
          preparation.stage(
              stage, progress.between((double) stage / count, (stage + 1.0) / count));
      if (response.isEmpty()) {
        return Optional.empty();
      }
      stages.add(response.get());
    }
    FiringSetup setup = firing.setup();
    Optional<BinderModel> binder =
        forecast.candidates().isEmpty()
            ? Optional.empty()
            : Optional.of(
                new BinderModel(forecast.candidates(), firing.thermogravimetryRate()));
    DensityModel density =
        setup
            .sinteringCurve()
            .<DensityModel>map(CurveDensity::new)
            .orElseGet(
                () ->
                    new LiteratureDensity(
                        setup.alloy(),
                        setup.feedstock().solidsLoading(),
                        inputs.knowsSinteringEnergy()));
    return Optional.of(
        new FiringResponse(
            stages,
            forecast.debinding().size(),
            setup.route().stages().indexOf(setup.route().hottest()),
            forecast.coreSoak().temperature().si(),
            binder,
            density));
  }

  private ShortcutCheck check(FiringResponse response, DrawnFiring drawn, Inputs inputs) {
    Inputs.Drawing drawing = inputs.drawing(Blocks.streams(seed).get(Blocks.COUNT));
    double core = 0;
    double peak = 0;
    double soak = 0;
    for (int i = 0; i < CHECKED; i++) {
      double[] values = drawing.next();
      FiringForecast full = FiringForecast.of(drawn.setup(values));
      List<Felt> quick = response.felt(values);
      for (int stage = 0; stage < quick.size(); stage++) {
        Felt felt = quick.get(stage);
        double[] exact = CommonTimes.at(felt.seconds, full.stages().get(stage).felt());
        for (int k = 0; k < exact.length; k++) {
          core = Math.max(core, Math.abs(exact[k] - felt.kelvin[k]));
        }
        peak =
            Math.max(
                peak,
                Math.abs(felt.hottest() - full.stages().get(stage).felt().peak().si()));
      }
      double exact =
          full.hottest().felt().longestTimeAbove(drawn.nominal().soakTemperature().orElseThrow()).si();
      soak = Math.max(soak, Math.abs(response.outcome(values, quick).soak() - exact));
    }
    return ImmutableShortcutCheck.of(
        CHECKED,
        Amounts.kelvinDifference(core),
        Amounts.kelvinDifference(peak),
        Amounts.seconds(soak).to(TradeUnits.MINUTE));
  }

  /**
   * The hold at the peak of the hottest stage with which the core gets its soak with a probability.
   *
   * <p>Every hold tried is a forecast of its own, about six of them, on the same random numbers.
   *
   * @param firing the firing and its spreads
   * @param probability more than 0 and less than 1
   * @return the least hold, to within a minute; empty if two days more do not do it, as where too
   *     many of the firings never get hot enough, or if the thread was interrupted
   * @throws IllegalArgumentException if the probability is out of range
   */
  public Optional<Amount<Time>> holdFor(
      UncertainFiring firing, Amount<Dimensionless> probability) {
    new Problems("hold for a probability")
        .require(
            probability.si() > 0 && probability.si() < 1,
            "probability is " + probability + "; accepted is more than 0 and less than 1")
        .refuseIfAny();
    FiringForecast forecast = FiringForecast.of(firing.setup());
    Inputs inputs = new Inputs(firing, forecast);
    DrawnFiring drawn = new DrawnFiring(forecast);
    int hottest = firing.setup().route().stages().indexOf(firing.setup().route().hottest());
    HoldSearch search =
        new HoldSearch(
            seconds ->
                soak(drawn.withHold(seconds), inputs, hottest, forecast, probability.si()),
            PeakHold.of(firing.setup().route().hottest().profile()).seconds(),
            forecast.coreSoak().asked().si());
    return search.least().map(seconds -> Amounts.seconds(seconds).to(TradeUnits.HOUR));
  }

  /** The soak that so many of the draws have at least; not a number if interrupted. */
  private double soak(
      DrawnFiring drawn,
      Inputs inputs,
      int hottest,
      FiringForecast forecast,
      double probability) {
    Optional<StageResponse> stage =
        new Preparation(drawn, inputs).stage(hottest, Progress.unheard());
    if (stage.isEmpty()) {
      return Double.NaN;
    }
    double limit = forecast.coreSoak().temperature().si();
    double[] soaks =
        Blocks.run(
                seed,
                threads,
                (block, random) -> {
                  Inputs.Drawing drawing = inputs.drawing(random);
                  double[] some = new double[DrawnBlock.size(block, draws)];
                  for (int i = 0; i < some.length; i++) {
                    some[i] = stage.get().felt(drawing.next()).longestAbove(limit);
                  }
                  return some;
                },
                Progress.unheard())
            .stream()
            .flatMapToDouble(Arrays::stream)
            .sorted()
            .toArray();
    return soaks.length < draws
        ? Double.NaN
        : soaks[draws - Math.max(1, (int) Math.ceil(probability * draws * (1 - 1e-14)))];
  }
}
