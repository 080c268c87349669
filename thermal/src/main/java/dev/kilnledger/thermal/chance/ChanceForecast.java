package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.internal.PeakHold;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.ArrayList;
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
 * and density are integrated anew for every draw. The draws come in 64 blocks, each with a random
 * stream of its own: a seed gives the same result on any number of threads.
 *
 * <p>Long work is told of its progress, and stops soon after its thread was interrupted, with the
 * draws made until then.
 *
 * <pre>{@code
 * FiringChances chances = ChanceForecast.standard().forecast(firing);
 * chances.chance(FiringEvent.CORE_SOAKED).orElseThrow().probability();
 * chances.soakSwings().get(0).input();                                  // what matters most
 * ChanceForecast.standard().holdFor(firing, percent(95));               // what helps:
 * ChanceForecast.standard().correctionFor(firing, percent(95));         // longer, or hotter
 * }</pre>
 *
 * <p>Example: a kiln that follows, whose place of the charge is normally off by 4 K either way,
 * exceeds its programmed peak by 6.58 K in 5 % of all firings: (6.58 / 4) is the 95 % quantile of
 * the standard normal law.
 */
public final class ChanceForecast {
  private static final ChanceForecast STANDARD = new ChanceForecast(10_000, 1, 1);
  private static final int MOST_CORRECTION = 64; // K

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
            ? Optional.of(FullModel.check(response.get(), drawn, inputs, seed))
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
          preparation.stage(stage, progress.between((double) stage / count, (stage + 1.0) / count));
      if (response.isEmpty()) {
        return Optional.empty();
      }
      stages.add(response.get());
    }
    FiringSetup setup = firing.setup();
    Optional<BinderModel> binder =
        forecast.candidates().isEmpty()
            ? Optional.empty()
            : Optional.of(new BinderModel(forecast.candidates(), firing.thermogravimetryRate()));
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
  public Optional<Amount<Time>> holdFor(UncertainFiring firing, Amount<Dimensionless> probability) {
    SoakOfMost soak = soakOfMost("hold for a probability", firing, probability);
    return new HoldSearch(
            soak::withHold,
            PeakHold.of(firing.setup().route().hottest().profile()).seconds(),
            soak.asked())
        .least()
        .map(seconds -> Amounts.seconds(seconds).to(TradeUnits.HOUR));
  }

  /**
   * How much hotter all programmes have to be for the core to get its soak with a probability, the
   * holds staying as they are. The metal is nearer to melting then: ask again with the kiln's
   * offset as much higher.
   *
   * <p>Every correction tried is a forecast of its own, about eight of them, on the same random
   * numbers.
   *
   * @param firing the firing and its spreads
   * @param probability more than 0 and less than 1
   * @return the least correction in whole kelvin, zero where none is needed; empty if 64 K do not
   *     do it, as where the kiln cannot follow, or if the thread was interrupted
   * @throws IllegalArgumentException if the probability is out of range
   */
  public Optional<Amount<TemperatureDifference>> correctionFor(
      UncertainFiring firing, Amount<Dimensionless> probability) {
    SoakOfMost soak = soakOfMost("correction for a probability", firing, probability);
    int low = -1; // does not do, or was not tried
    int high = MOST_CORRECTION;
    if (!(soak.withCorrection(high) >= soak.asked())) {
      return Optional.empty();
    }
    while (high - low > 1) {
      int middle = (low + high) >> 1;
      double had = soak.withCorrection(middle);
      if (Double.isNaN(had)) {
        return Optional.empty();
      }
      if (had >= soak.asked()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return Optional.of(Amounts.kelvinDifference(high));
  }

  private SoakOfMost soakOfMost(
      String question, UncertainFiring firing, Amount<Dimensionless> probability) {
    new Problems(question)
        .require(
            probability.si() > 0 && probability.si() < 1,
            "probability is " + probability + "; accepted is more than 0 and less than 1")
        .refuseIfAny();
    return new SoakOfMost(firing, probability.si(), draws, seed, threads);
  }
}
