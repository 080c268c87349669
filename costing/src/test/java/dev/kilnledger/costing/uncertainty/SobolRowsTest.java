package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.progress.Progress;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The estimators taken again from the values that the formula was asked for, row by row: first
 * order by Saltelli and others, Computer Physics Communications 181 (2010) 259, total by Jansen (in
 * the same paper; from memory), errors by leaving out one of 64 blocks (Quenouille's jackknife).
 */
class SobolRowsTest {
  private static final List<UncertainInput> INPUTS =
      List.of(
          UncertainInput.of("x1", Normal.of(2, 1), INVENTED),
          UncertainInput.of("x2", Normal.of(5, 2), INVENTED));

  /** 130 rows are two of each of 64 blocks, and one more of the first two. */
  private static final int ROWS = 130;

  private static double formula(double[] x) {
    return x[0] * x[0] + x[0] * x[1];
  }

  /** Variance, first order and total index of the first input over some rows. */
  private static double[] estimates(List<double[]> rows) {
    double mean = rows.stream().mapToDouble(row -> row[0] + row[1]).sum() / (2 * rows.size());
    double variance =
        rows.stream()
                .mapToDouble(row -> Math.pow(row[0] - mean, 2) + Math.pow(row[1] - mean, 2))
                .sum()
            / (2 * rows.size() - 1);
    double first =
        rows.stream().mapToDouble(row -> (row[1] - mean) * (row[2] - row[0])).sum() / rows.size();
    double total =
        rows.stream().mapToDouble(row -> Math.pow(row[2] - row[0], 2)).sum() / (2 * rows.size());
    return new double[] {variance, first / variance, total / variance};
  }

  private static double jackknife(List<double[]> rows, int which) {
    List<Double> left = new ArrayList<>();
    int from = 0;
    for (int block = 0; block < 64; block++) {
      int size = block < 2 ? 3 : 2;
      List<double[]> rest = new ArrayList<>(rows);
      rest.subList(from, from + size).clear();
      left.add(estimates(rest)[which]);
      from += size;
    }
    double mean = left.stream().mapToDouble(Double::doubleValue).sum() / 64;
    return Math.sqrt(left.stream().mapToDouble(e -> Math.pow(e - mean, 2)).sum() * 63 / 64);
  }

  @Test
  void estimatesAsPublished() {
    List<Double> values = new ArrayList<>();
    List<Double> told = new ArrayList<>();
    SobolIndices indices =
        new SobolAnalysis(1, told::add)
            .indices(
                "formula",
                INPUTS,
                x -> {
                  values.add(formula(x));
                  return formula(x);
                },
                Trials.fixed(ROWS, 3));
    // The value at the medians, and then A, B, and A with each input of B.
    assertThat(values).hasSize(1 + 4 * ROWS);
    List<double[]> rows = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      rows.add(
          new double[] {values.get(1 + 4 * row), values.get(2 + 4 * row), values.get(3 + 4 * row)});
    }
    double[] expected = estimates(rows);
    SobolIndex index = indices.indices().get(0);
    // Sums of some hundred doubles, in another order.
    assertThat(indices.variance()).isCloseTo(expected[0], within(1e-10 * expected[0]));
    assertThat(index.firstOrder()).isCloseTo(expected[1], within(1e-10));
    assertThat(index.total()).isCloseTo(expected[2], within(1e-10));
    assertThat(index.firstOrderError()).isCloseTo(jackknife(rows, 1), within(1e-10));
    assertThat(index.totalError()).isCloseTo(jackknife(rows, 2), within(1e-10));
    assertThat(indices.trials().made()).isEqualTo(ROWS);
    assertThat(indices.trials().ending()).isEqualTo(Ending.ALL_MADE);
    assertThat(told).hasSize(64).isSorted().endsWith(1.0);
    assertThat(told.get(0)).isCloseTo(3.0 / ROWS, within(1e-15));
  }

  @Test
  void hasNoSharesOfWhatDoesNotVary() {
    SobolIndices indices =
        new SobolAnalysis(1, Progress.unheard())
            .indices("constant", INPUTS, x -> 5, Trials.fixed(128, 3));
    assertThat(indices.variance()).isZero();
    assertThat(indices.indices())
        .allSatisfy(
            index -> {
              assertThat(index.firstOrder()).isZero();
              assertThat(index.total()).isZero();
            });
  }

  @Test
  void refusesTooFewRowsAndNoThreads() {
    assertThatThrownBy(() -> new SobolAnalysis(0, Progress.unheard()))
        .hasMessage("Sobol analysis: threads is 0; accepted is 1 or more");
    SobolAnalysis one = new SobolAnalysis(1, Progress.unheard());
    assertThatThrownBy(() -> one.indices("formula", INPUTS, x -> 1, Trials.fixed(127, 1)))
        .hasMessage("Sobol analysis: rows are 127; accepted is a fixed number of 128 or more");
    Trials adaptive = Trials.builder().adaptive(true).number(200_000).seed(1).build();
    assertThatThrownBy(() -> one.indices("formula", INPUTS, x -> 1, adaptive))
        .hasMessage(
            "Sobol analysis: rows are drawn until the result is stable; accepted is a fixed number"
                + " of 128 or more");
    assertThatThrownBy(() -> Trials.builder().number(10).seed(1).digits(3).build())
        .hasMessage("trials: digits is 3; accepted is 1 or 2");
  }
}
