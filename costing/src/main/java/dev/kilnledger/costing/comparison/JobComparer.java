package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.explanation.ExplanationNode;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.JobExplainer;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.offer.ExchangeRates;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Holds the answers of jobs against a baseline: the costs as {@link StatementComparer} does, with
 * inputs followed into passage and firing, and besides them passage, firing and findings.
 */
public final class JobComparer {
  /** Stages and their lines; below them are inputs. */
  private static final int DEEPEST_FIGURE = 2;

  private static final JobComparer STANDARD =
      new JobComparer(StatementComparer.standard(), JobExplainer.standard());

  private final StatementComparer statements;
  private final JobExplainer explainer;

  /**
   * Uses a comparison of statements.
   *
   * @param statements compares the costs
   * @param explainer opens the figures
   */
  public JobComparer(StatementComparer statements, JobExplainer explainer) {
    this.statements = statements;
    this.explainer = explainer;
  }

  /** {@return the comparison by the standard ledger} */
  public static JobComparer standard() {
    return STANDARD;
  }

  /**
   * Compares answers in one currency.
   *
   * @param scenarios two or more answers, the baseline first
   * @return the comparison
   * @throws IllegalArgumentException as {@link StatementComparer#compare(List)}
   */
  public JobComparison compare(List<Scenario<JobAnswer>> scenarios) {
    return compare(scenarios, ExchangeRates.of(List.of()));
  }

  /**
   * Compares answers in the currency of the baseline.
   *
   * @param scenarios two or more answers, the baseline first
   * @param rates dated rates into the baseline's currency
   * @return the comparison
   * @throws IllegalArgumentException as {@link StatementComparer#compare(List, ExchangeRates)}
   */
  public JobComparison compare(List<Scenario<JobAnswer>> scenarios, ExchangeRates rates) {
    List<Scenario<Statement>> costs =
        scenarios.stream().map(s -> Scenario.of(s.name(), s.result().statement())).toList();
    StatementComparison compared =
        statements.compare(
            costs, rates, scenarios.stream().map(s -> explainer.statements(s.result())).toList());
    JobAnswer baseline = scenarios.get(0).result();
    return JobComparison.of(
        compared, scenarios.stream().skip(1).map(other -> changes(baseline, other)).toList());
  }

  private JobChanges changes(JobAnswer baseline, Scenario<JobAnswer> other) {
    Map<String, Explanation> passage = named(passage(baseline));
    Map<String, Explanation> otherPassage = named(passage(other.result()));
    Map<String, Explanation> firing = figures(explainer.firing(baseline));
    Map<String, Explanation> otherFiring = figures(explainer.firing(other.result()));
    Set<Change> facts = new LinkedHashSet<>();
    facts.addAll(InputChanges.between("part and material", passage, otherPassage));
    facts.addAll(InputChanges.between("firing", firing, otherFiring));
    return JobChanges.builder()
        .scenario(other.name())
        .facts(facts)
        .passage(differing("passage", passage, otherPassage))
        .firing(differing("firing", firing, otherFiring))
        .findings(FindingChange.between(baseline.findings(), other.result().findings()))
        .build();
  }

  private List<Explanation> passage(JobAnswer answer) {
    List<Explanation> figures = new ArrayList<>(answer.passage().lines());
    figures.add(explainer.filament(answer));
    return figures;
  }

  private static Map<String, Explanation> named(List<Explanation> figures) {
    Map<String, Explanation> named = new LinkedHashMap<>();
    figures.forEach(figure -> named.put(figure.what(), figure));
    return named;
  }

  /** Sums, stages and their lines, each by its own name and those above it. */
  private static Map<String, Explanation> figures(List<Explanation> sums) {
    Map<String, Explanation> figures = new LinkedHashMap<>();
    for (Explanation sum : sums) {
      for (ExplanationNode node : sum.walk()) {
        if (node.depth() <= DEEPEST_FIGURE && node.explanation().formula().isPresent()) {
          String name = name(sum, node.place());
          figures.put(name, node.explanation().as(name));
        }
      }
    }
    return figures;
  }

  private static String name(Explanation sum, List<Integer> place) {
    StringBuilder name = new StringBuilder(sum.what());
    Explanation node = sum;
    for (int child : place) {
      node = node.children().get(child - 1);
      name.append(", ").append(node.what());
    }
    return name.toString();
  }

  private static List<Change> differing(
      String where, Map<String, Explanation> before, Map<String, Explanation> after) {
    Set<String> names = new LinkedHashSet<>(before.keySet());
    names.addAll(after.keySet());
    return names.stream()
        .filter(name -> !Objects.equals(shown(before.get(name)), shown(after.get(name))))
        .map(
            name ->
                Change.of(
                    where,
                    Optional.ofNullable(before.get(name)),
                    Optional.ofNullable(after.get(name))))
        .toList();
  }

  private static String shown(@Nullable Explanation figure) {
    return figure == null ? "" : figure.shown();
  }
}
