package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.RandomYields;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import org.apache.commons.rng.UniformRandomProvider;
import org.joda.money.BigMoney;

/**
 * Propagates distributions by drawing from them (Monte Carlo, JCGM 101:2008): through a formula, or
 * through the ledger with its whole packs, where {@linkplain FirstOrder first-order propagation}
 * does not hold.
 *
 * <p>Each trial counts packs as the {@link dev.kilnledger.costing.ledger.Ledger} does: {@link
 * UncertainPlan#with} writes the values of a trial into the plan, and the ledger comes to the same
 * cash. Where every item is bought in single packs of one offer at one price and nothing is paid
 * for shipping, a trial takes less than a microsecond; any other plan is written down and counted
 * by the ledger in each trial, which takes some milliseconds. Draws are made in blocks, each on a
 * sub-stream of its own, and read in their order, so that a result depends on its seed alone and
 * not on the number of threads.
 *
 * <p>When the calling thread is interrupted, the simulation ends at once, keeps all trials that
 * were made and says how many; the thread stays interrupted. Only if none was made there is no
 * result, but a {@link CancellationException}. Example, with a plan of one filament of 500 g at EUR
 * 60 of which a part takes 128 g:
 *
 * <pre>{@code
 * UncertainPlan uncertain = UncertainPlan.of(plan, List.of(
 *     UncertainInput.price("filament", LogNormal.of(60, 0.15), guess),
 *     UncertainInput.quantity("filament", Pert.of(120, 128, 150), guess).in(GRAM),
 *     UncertainInput.partYield(Stage.SINTER, Beta.ofTried(17, 20), ownRecords)));
 * UncertainStatement parts = MonteCarlo.standard()
 *     .statement(uncertain, 100, Trials.fixed(100_000, 7));
 * parts.allParts().median();
 * parts.allParts().interval();
 * parts.allParts().probabilityWithin(budget);
 * }</pre>
 */
public final class MonteCarlo {
  /** Blocks of a fixed number of trials. */
  public static final int BLOCKS = 64;

  /** The largest number of parts. */
  public static final long MOST_PARTS = 1_000_000_000;

  /** So many are counted exactly in doubles, in every trial. */
  private static final long MOST_STARTS = 1_000_000_000_000L;

  private static final MonteCarlo STANDARD =
      new MonteCarlo(Runtime.getRuntime().availableProcessors());

  private final int threads;
  private final Progress progress;

  /**
   * A simulation by a number of threads, which are started for each call and end with it; a single
   * one is the calling thread itself.
   *
   * @param threads how many, 1 or more; the result is the same for any number
   * @throws IllegalArgumentException if there are none
   */
  public MonteCarlo(int threads) {
    this(threads, Progress.unheard());
  }

  /**
   * A simulation that tells how far it is.
   *
   * @param threads how many, 1 or more; the result is the same for any number
   * @param progress hears of it
   * @throws IllegalArgumentException if there are no threads
   */
  public MonteCarlo(int threads, Progress progress) {
    new Problems("Monte Carlo")
        .require(threads >= 1, "threads is " + threads + "; accepted is 1 or more")
        .refuseIfAny();
    this.threads = threads;
    this.progress = progress;
  }

  /** {@return the simulation by as many threads as there are processors} */
  public static MonteCarlo standard() {
    return STANDARD;
  }

  /**
   * Draws a formula.
   *
   * @param inputs its inputs, in the order of its values
   * @param model the formula
   * @param trials how often
   * @return the values drawn
   * @throws ArithmeticException if the formula comes to what is no number
   */
  public Simulation simulate(List<UncertainInput> inputs, Model model, Trials trials) {
    Draw draw =
        draw(
            trials,
            1,
            random -> {
              Trial.Draws draws = new Trial.Draws(inputs, random);
              return outputs -> outputs[0] = number(model, draws.next());
            });
    return Simulation.of(inputs, draw.outcome(0), draw.record());
  }

  /** The value of a formula, which has to be one. */
  static double number(Model model, double[] values) {
    double value = model.at(values);
    if (!Double.isFinite(value)) {
      throw new ArithmeticException(
          "the formula is "
              + value
              + " for "
              + Arrays.toString(values)
              + "; accepted is a finite number for all values that are drawn");
    }
    return value;
  }

  /**
   * Draws the cash for n good parts.
   *
   * @param plan what is needed, what it costs, and what is not known of that
   * @param parts n, 1 to {@value #MOST_PARTS}
   * @param trials how often
   * @return first part, last part, all parts, average and usage, each with its band
   * @throws IllegalArgumentException if there are too few or too many parts
   */
  public UncertainStatement statement(UncertainPlan plan, long parts, Trials trials) {
    refuse(plan, parts);
    DrawnPlan drawn = new DrawnPlan(plan);
    Draw draw =
        draw(trials, CashCount.OUTPUTS, random -> new CashTrial(plan, drawn, parts, random));
    return UncertainStatement.builder()
        .plan(plan)
        .parts(parts)
        .trials(draw.record())
        .firstPart(band(CashFigure.FIRST_PART, plan, draw.outcome(CashCount.FIRST)))
        .lastPart(band(CashFigure.LAST_PART, plan, draw.outcome(CashCount.LAST)))
        .allParts(band(CashFigure.ALL_PARTS, plan, draw.outcome(CashCount.ALL)))
        .usage(band(CashFigure.USAGE, plan, draw.outcome(CashCount.USAGE)))
        .build();
  }

  private static CashBand band(CashFigure figure, UncertainPlan plan, Outcome outcome) {
    LedgerPlan counted = plan.plan();
    return CashBand.of(figure, counted.currency(), counted.rounding(), outcome);
  }

  /**
   * Draws from how many parts on making them has cost no more than buying them for the first time.
   *
   * @param plan what making them needs, and what is not known of that
   * @param outsidePrice what one part costs outside, in the plan's currency and more than zero
   * @param parts up to how many parts to look, 1 to {@value #MOST_PARTS}
   * @param trials how often, a fixed number
   * @return how often it was which number
   * @throws IllegalArgumentException with all problems
   */
  public BreakEvenBand breakEven(
      UncertainPlan plan, BigMoney outsidePrice, long parts, Trials trials) {
    refuse(plan, parts);
    new Problems("break-even")
        .require(
            outsidePrice.getCurrencyUnit().equals(plan.plan().currency())
                && outsidePrice.isPositive(),
            "outside price is "
                + outsidePrice
                + "; accepted is more than zero in the currency "
                + plan.plan().currency())
        .require(
            !trials.adaptive(),
            "trials are made until the result is stable; accepted is a fixed number, as never has"
                + " no mean")
        .refuseIfAny();
    double price = outsidePrice.getAmount().doubleValue();
    DrawnPlan drawn = new DrawnPlan(plan);
    Draw draw =
        draw(
            trials,
            1,
            random ->
                drawn.isPlain()
                    ? new BreakEvenTrial(plan, drawn, price, parts, random)
                    : new LedgerBreakEvenTrial(plan, drawn, outsidePrice, parts, random));
    Map<Long, Integer> first = new TreeMap<>();
    draw.outcome(0)
        .draws()
        .filter(Double::isFinite)
        .forEach(number -> first.merge((long) number, 1, Integer::sum));
    return BreakEvenBand.builder()
        .plan(plan)
        .outsidePrice(outsidePrice)
        .parts(parts)
        .trials(draw.record())
        .first(first)
        .build();
  }

  private static void refuse(UncertainPlan plan, long parts) {
    Problems problems =
        new Problems("Monte Carlo")
            .require(
                parts >= 1 && parts <= MOST_PARTS,
                "parts is " + parts + "; accepted is from 1 to " + MOST_PARTS);
    long most = plan.failsAtRandom() ? RandomYields.MOST_STARTS : MOST_STARTS;
    problems
        .require(
            parts * LongRun.startsPerPart(plan) <= most,
            "for "
                + parts
                + " parts more than "
                + most
                + " starts are expected; accepted are fewer parts or higher yields")
        .refuseIfAny();
  }

  /** All draws of some outputs, block by block. */
  private record Draw(List<double[][]> blocks, TrialRecord record) {
    Outcome outcome(int output) {
      double[] all = new double[record.made()];
      int at = 0;
      for (double[][] block : blocks) {
        System.arraycopy(block[output], 0, all, at, block[output].length);
        at += block[output].length;
      }
      return new Outcome(all);
    }
  }

  private Draw draw(Trials trials, int outputs, Function<UniformRandomProvider, Trial> factory) {
    int batch = trials.batch();
    int number = trials.number();
    int blocks = trials.adaptive() ? number / batch : BLOCKS;
    Stability stability = new Stability(trials, outputs);
    List<double[][]> drawn = new ArrayList<>();
    int[] made = {0};
    boolean[] stable = {false};
    boolean interrupted =
        new Blocks(threads)
            .run(
                trials.seed(),
                blocks,
                (block, random) ->
                    block(
                        factory.apply(random),
                        outputs,
                        trials.adaptive()
                            ? batch
                            : number / BLOCKS + (block < number % BLOCKS ? 1 : 0)),
                block -> {
                  drawn.add(block);
                  made[0] += block[0].length;
                  progress.at((double) made[0] / number);
                  if (trials.adaptive() && block[0].length == batch) {
                    stability.add(block);
                    stable[0] = stability.isReached();
                  }
                  return !stable[0];
                });
    if (made[0] == 0) {
      throw new CancellationException("interrupted before the first trial was made");
    }
    Ending ending =
        interrupted && made[0] < number
            ? Ending.INTERRUPTED
            : stable[0] ? Ending.STABLE : trials.adaptive() ? Ending.NOT_STABLE : Ending.ALL_MADE;
    return new Draw(drawn, TrialRecord.of(trials, made[0], ending));
  }

  private static double[][] block(Trial trial, int outputs, int size) {
    double[][] drawn = new double[outputs][size];
    double[] values = new double[outputs];
    for (int i = 0; i < size; i++) {
      if (i % 64 == 0 && Thread.currentThread().isInterrupted()) {
        int made = i;
        return Arrays.stream(drawn)
            .map(output -> Arrays.copyOf(output, made))
            .toArray(double[][]::new);
      }
      trial.run(values);
      for (int output = 0; output < outputs; output++) {
        drawn[output][i] = values[output];
      }
    }
    return drawn;
  }
}
