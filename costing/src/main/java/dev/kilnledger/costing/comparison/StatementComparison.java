package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.ledger.Statement;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/**
 * Statements side by side: for each scenario but the first, which is the baseline, every line and
 * every total with its difference, the effects it is the sum of, and what was changed.
 */
@Value.Immutable
@ValueStyle
public interface StatementComparison extends Serializable {
  /** {@return the scenarios in one currency, the baseline first} */
  List<Scenario<Statement>> scenarios();

  /**
   * {@return the lines that either has, scenario by scenario and figure by figure; the averages
   * have totals only. Their sum, with the line "rounding" where there is one, is the total}
   */
  List<ComparedLine> lines();

  /** {@return the sums in whole minor units, scenario by scenario, one for each figure} */
  List<ComparedLine> totals();

  /** {@return what was changed, scenario by scenario} */
  List<ScenarioChanges> changes();

  /**
   * The lines of a figure.
   *
   * @param scenario the name of a scenario but the baseline
   * @param figure the figure
   * @return its lines, in the order of the baseline, then those that are new
   */
  default List<ComparedLine> lines(String scenario, StatementFigure figure) {
    return lines().stream()
        .filter(line -> line.scenario().equals(scenario) && line.figure() == figure)
        .toList();
  }

  /**
   * A line of a figure.
   *
   * @param scenario the name of a scenario but the baseline
   * @param figure the figure
   * @param what the item or surcharge, or "rounding"
   * @return the line
   * @throws IllegalArgumentException if there is none; the message lists what there is
   */
  default ComparedLine line(String scenario, StatementFigure figure, String what) {
    List<ComparedLine> lines = lines(scenario, figure);
    return lines.stream()
        .filter(line -> line.what().equals(what))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no line \""
                        + what
                        + "\" in \""
                        + scenario
                        + "\"; accepted is one of "
                        + lines.stream().map(ComparedLine::what).toList()));
  }

  /**
   * The total of a figure.
   *
   * @param scenario the name of a scenario but the baseline
   * @param figure the figure
   * @return the total
   * @throws IllegalArgumentException if there is no such scenario; the message lists what there is
   */
  default ComparedLine total(String scenario, StatementFigure figure) {
    return totals().stream()
        .filter(line -> line.scenario().equals(scenario) && line.figure() == figure)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no scenario \""
                        + scenario
                        + "\"; accepted is one of "
                        + totals().stream().map(ComparedLine::scenario).distinct().toList()));
  }

  /** {@return the comparison as text of at most 100 columns: totals side by side, then why} */
  default String text() {
    return ComparisonText.of(this);
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link StatementComparison} values. */
  final class Builder extends ImmutableStatementComparison.Builder {
    Builder() {}
  }
}
