package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.progress.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Splits the variance of a figure among its inputs (Sobol', 1993), by two independent matrices of
 * draws A and B and, for each input i, A with the column i of B. First-order indices are estimated
 * by the mean of f(B) (f(AB_i) - f(A)) over the variance (Saltelli and others, 2010), total ones by
 * half the mean of (f(A) - f(AB_i))^2 over it (Jansen, 1999; all from memory). f is counted from
 * its mean, which does not change the first estimator's expectation and makes it steadier. Standard
 * errors are by jackknife over the blocks of draws.
 *
 * <p>Inputs have to be independent, as those of {@link UncertainInput} are. Blocks and their
 * streams are as in {@link MonteCarlo}: the result depends on the seed alone.
 */
public final class SobolAnalysis {
  private static final SobolAnalysis STANDARD =
      new SobolAnalysis(Runtime.getRuntime().availableProcessors());

  private final int threads;
  private final Progress progress;

  /**
   * An analysis by a number of threads.
   *
   * @param threads how many, 1 or more; the result is the same for any number
   * @throws IllegalArgumentException if there are none
   */
  public SobolAnalysis(int threads) {
    this(threads, Progress.unheard());
  }

  /**
   * An analysis that tells how far it is.
   *
   * @param threads how many, 1 or more; the result is the same for any number
   * @param progress hears of it
   * @throws IllegalArgumentException if there are no threads
   */
  public SobolAnalysis(int threads, Progress progress) {
    new Problems("Sobol analysis")
        .require(threads >= 1, "threads is " + threads + "; accepted is 1 or more")
        .refuseIfAny();
    this.threads = threads;
    this.progress = progress;
  }

  /** {@return the analysis by as many threads as there are processors} */
  public static SobolAnalysis standard() {
    return STANDARD;
  }

  /**
   * The indices of a figure of a plan. Failures are counted by the rule of the plan.
   *
   * @param plan the plan and its inputs, one or more
   * @param figure the figure
   * @param parts the number of parts
   * @param rows how many rows to draw, a fixed number of 128 or more
   * @return the indices
   * @throws IllegalArgumentException with all problems
   */
  public SobolIndices indices(UncertainPlan plan, CashFigure figure, long parts, Trials rows) {
    return indices(
        figure.words() + ", " + parts + " parts",
        plan.inputs(),
        PlanModel.of(plan, figure, parts),
        rows);
  }

  /**
   * The indices of a formula.
   *
   * @param figure what the formula is, for people
   * @param inputs its inputs, in the order of its values
   * @param model the formula
   * @param rows how many rows to draw, a fixed number of 128 or more
   * @return the indices
   * @throws IllegalArgumentException with all problems
   * @throws ArithmeticException if the formula comes to what is no number
   */
  public SobolIndices indices(
      String figure, List<UncertainInput> inputs, Model model, Trials rows) {
    return indices(figure, inputs, () -> model, rows);
  }

  private SobolIndices indices(
      String figure, List<UncertainInput> inputs, Supplier<Model> model, Trials rows) {
    int number = rows.number();
    new Problems("Sobol analysis")
        .require(!inputs.isEmpty(), "there is no input; accepted is one or more")
        .require(
            !rows.adaptive() && number >= 2 * MonteCarlo.BLOCKS,
            "rows are "
                + (rows.adaptive() ? "drawn until the result is stable" : String.valueOf(number))
                + "; accepted is a fixed number of "
                + 2 * MonteCarlo.BLOCKS
                + " or more")
        .refuseIfAny();
    double middle = MonteCarlo.number(model.get(), Law.medians(inputs));
    List<Sums> blocks = new ArrayList<>();
    int[] made = {0};
    boolean interrupted =
        new Blocks(threads)
            .run(
                rows.seed(),
                MonteCarlo.BLOCKS,
                (block, random) -> block(inputs, model.get(), middle, size(block, number), random),
                sums -> {
                  if (sums.rows > 0) {
                    blocks.add(sums);
                    made[0] += sums.rows;
                  }
                  progress.at((double) made[0] / number);
                  return true;
                });
    if (made[0] < 2) {
      throw new CancellationException("interrupted before the second row was drawn");
    }
    return result(
        figure,
        inputs,
        blocks,
        TrialRecord.of(
            rows, made[0], interrupted && made[0] < number ? Ending.INTERRUPTED : Ending.ALL_MADE));
  }

  private static int size(int block, int number) {
    return number / MonteCarlo.BLOCKS + (block < number % MonteCarlo.BLOCKS ? 1 : 0);
  }

  /** What one block adds to every mean; the figure is counted from a middle value. */
  private static final class Sums {
    int rows;
    double a;
    double b;
    double squares;
    final double[] changes;
    final double[] products;
    final double[] squaredChanges;

    Sums(int inputs) {
      changes = new double[inputs];
      products = new double[inputs];
      squaredChanges = new double[inputs];
    }

    void add(Sums other, int sign) {
      rows += sign * other.rows;
      a += sign * other.a;
      b += sign * other.b;
      squares += sign * other.squares;
      for (int i = 0; i < changes.length; i++) {
        changes[i] += sign * other.changes[i];
        products[i] += sign * other.products[i];
        squaredChanges[i] += sign * other.squaredChanges[i];
      }
    }

    double mean() {
      return (a + b) / (2 * rows);
    }

    double variance() {
      double mean = mean();
      return Math.max(0, (squares - 2 * rows * mean * mean) / (2 * rows - 1));
    }

    double firstOrder(int i) {
      double variance = variance();
      return variance == 0 ? 0 : (products[i] - mean() * changes[i]) / rows / variance;
    }

    double total(int i) {
      double variance = variance();
      return variance == 0 ? 0 : squaredChanges[i] / (2 * rows) / variance;
    }
  }

  private static Sums block(
      List<UncertainInput> inputs,
      Model model,
      double middle,
      int size,
      UniformRandomProvider random) {
    Trial.Draws draws = new Trial.Draws(inputs, random);
    Sums sums = new Sums(inputs.size());
    double[] a = new double[inputs.size()];
    while (sums.rows < size && !Thread.currentThread().isInterrupted()) {
      System.arraycopy(draws.next(), 0, a, 0, a.length);
      double atA = MonteCarlo.number(model, a) - middle;
      double[] b = draws.next();
      double atB = MonteCarlo.number(model, b) - middle;
      sums.rows++;
      sums.a += atA;
      sums.b += atB;
      sums.squares += atA * atA + atB * atB;
      for (int i = 0; i < a.length; i++) {
        double kept = a[i];
        a[i] = b[i];
        double change = MonteCarlo.number(model, a) - middle - atA;
        a[i] = kept;
        sums.changes[i] += change;
        sums.products[i] += atB * change;
        sums.squaredChanges[i] += change * change;
      }
    }
    return sums;
  }

  private static SobolIndices result(
      String figure, List<UncertainInput> inputs, List<Sums> blocks, TrialRecord record) {
    Sums all = new Sums(inputs.size());
    blocks.forEach(block -> all.add(block, 1));
    List<Sums> without = new ArrayList<>();
    for (Sums block : blocks) {
      Sums rest = new Sums(inputs.size());
      rest.add(all, 1);
      rest.add(block, -1);
      without.add(rest);
    }
    List<SobolIndex> indices = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      int input = i;
      indices.add(
          SobolIndex.builder()
              .input(inputs.get(i))
              .firstOrder(all.firstOrder(i))
              .firstOrderError(
                  jackknife(without.stream().mapToDouble(r -> r.firstOrder(input)).toArray()))
              .total(all.total(i))
              .totalError(jackknife(without.stream().mapToDouble(r -> r.total(input)).toArray()))
              .build());
    }
    return SobolIndices.builder()
        .figure(figure)
        .trials(record)
        .variance(all.variance())
        .indices(indices)
        .build();
  }

  /** The standard error from estimates that each leave out one of the blocks. */
  private static double jackknife(double[] estimates) {
    double mean = 0;
    for (double estimate : estimates) {
      mean += estimate / estimates.length;
    }
    double squares = 0;
    for (double estimate : estimates) {
      squares += (estimate - mean) * (estimate - mean);
    }
    return Math.sqrt(squares * (estimates.length - 1) / estimates.length);
  }
}
