package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.explanation.StatementExplainer;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.ledger.Surcharge;
import dev.kilnledger.costing.offer.ExchangeRates;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * Holds statements against a baseline, line by line. The difference of a line is split into effects
 * by going from the one plan to the other one step at a time, in the order of {@link Effect}, and
 * counting each plan on the way by the ledger: so every effect is an exact difference of two
 * ledgers, and the effects add up to the difference.
 *
 * <p>Example: the project's ledger case uses EUR 39.48 per part at one part per firing and EUR
 * 27.42 at two, and all of the EUR -12.06 is the effect of the charge size.
 */
public final class StatementComparer {
  private static final StatementComparer STANDARD = new StatementComparer(Ledger.standard());

  private final Ledger ledger;

  /**
   * Uses a ledger.
   *
   * @param ledger the ledger that counts the plans on the way
   */
  public StatementComparer(Ledger ledger) {
    this.ledger = ledger;
  }

  /** {@return the comparison by the standard ledger} */
  public static StatementComparer standard() {
    return STANDARD;
  }

  /**
   * Compares statements in one currency.
   *
   * @param scenarios two or more statements, the baseline first
   * @return the comparison
   * @throws IllegalArgumentException with all problems, if there are fewer than two, a name comes
   *     twice, or currencies differ
   */
  public StatementComparison compare(List<Scenario<Statement>> scenarios) {
    return compare(scenarios, ExchangeRates.of(List.of()));
  }

  /**
   * Compares statements in the currency of the baseline. What is in another currency is counted
   * again with its prices converted.
   *
   * @param scenarios two or more statements, the baseline first
   * @param rates dated rates into the baseline's currency
   * @return the comparison
   * @throws IllegalArgumentException with all problems, if there are fewer than two, a name comes
   *     twice, or a rate is missing
   */
  public StatementComparison compare(List<Scenario<Statement>> scenarios, ExchangeRates rates) {
    return compare(
        scenarios, rates, scenarios.stream().map(s -> StatementExplainer.standard()).toList());
  }

  /** Compares statements whose inputs each explainer follows to where they stem from. */
  StatementComparison compare(
      List<Scenario<Statement>> scenarios,
      ExchangeRates rates,
      List<StatementExplainer> explainers) {
    List<Scenario<Statement>> alike = inOneCurrency(scenarios, rates);
    StatementComparison.Builder comparison = StatementComparison.builder();
    comparison.scenarios(alike);
    Statement baseline = alike.get(0).result();
    for (int i = 1; i < alike.size(); i++) {
      String name = alike.get(i).name();
      Statement other = alike.get(i).result();
      List<PlanPath.State> states = PlanPath.between(ledger, baseline, other);
      for (StatementFigure figure : StatementFigure.values()) {
        addFigure(comparison, name, figure, states);
      }
      comparison.addChanges(
          ScenarioChanges.builder()
              .scenario(name)
              .rules(RuleChanges.between(scenarios.get(0).result(), scenarios.get(i).result()))
              .inputs(InputChanges.between(baseline, explainers.get(0), other, explainers.get(i)))
              .caveatsNew(without(other.caveats(), baseline.caveats()))
              .caveatsGone(without(baseline.caveats(), other.caveats()))
              .build());
    }
    return comparison.build();
  }

  private static <T> List<T> without(List<T> all, List<T> those) {
    return all.stream().filter(one -> !those.contains(one)).toList();
  }

  private static void addFigure(
      StatementComparison.Builder comparison,
      String scenario,
      StatementFigure figure,
      List<PlanPath.State> states) {
    Statement from = states.get(0).statement();
    Statement to = states.get(states.size() - 1).statement();
    CurrencyUnit currency = from.plan().currency();
    List<Map<String, BigMoney>> rows =
        states.stream().map(state -> rows(figure, state.statement())).toList();
    Set<String> names = new LinkedHashSet<>();
    names.addAll(rows.get(0).keySet());
    names.addAll(rows.get(rows.size() - 1).keySet());
    for (Map<String, BigMoney> between : rows) {
      names.addAll(between.keySet()); // a line may come and go on the way
    }
    for (String name : names) {
      List<BigMoney> amounts =
          rows.stream().map(row -> row.getOrDefault(name, BigMoney.zero(currency))).toList();
      comparison.addLines(line(scenario, figure, name, states, amounts).build());
    }
    List<BigMoney> exact = states.stream().map(state -> figure.of(state.statement())).toList();
    ComparedLine total = line(scenario, figure, "total", states, exact).build();
    BigMoney roundedBefore = from.money(total.before()).toBigMoney();
    BigMoney roundedAfter = to.money(total.after()).toBigMoney();
    BigMoney addedBefore = roundedBefore.minus(total.before());
    BigMoney addedAfter = roundedAfter.minus(total.after());
    BigMoney rounding = addedAfter.minus(addedBefore);
    ComparedLine.Builder rounded = ComparedLine.builder().from(total);
    rounded.before(roundedBefore).after(roundedAfter);
    if (!rounding.isZero()) {
      rounded.putEffects(Effect.ROUNDING, rounding);
    }
    if (!names.isEmpty() && !(addedBefore.isZero() && addedAfter.isZero())) {
      comparison.addLines(
          ComparedLine.builder()
              .scenario(scenario)
              .figure(figure)
              .what("rounding")
              .before(addedBefore)
              .after(addedAfter)
              .effects(rounding.isZero() ? Map.of() : Map.of(Effect.ROUNDING, rounding))
              .build());
    }
    comparison.addTotals(rounded.build());
  }

  private static ComparedLine.Builder line(
      String scenario,
      StatementFigure figure,
      String what,
      List<PlanPath.State> states,
      List<BigMoney> amounts) {
    Map<Effect, BigMoney> effects = new EnumMap<>(Effect.class);
    for (int i = 1; i < amounts.size(); i++) {
      effects.merge(
          states.get(i).effect(), amounts.get(i).minus(amounts.get(i - 1)), BigMoney::plus);
    }
    effects.values().removeIf(BigMoney::isZero);
    return ComparedLine.builder()
        .scenario(scenario)
        .figure(figure)
        .what(what)
        .before(amounts.get(0))
        .after(amounts.get(amounts.size() - 1))
        .effects(effects);
  }

  /** What each line of a figure comes to, by item or title; nothing for the averages. */
  private static Map<String, BigMoney> rows(StatementFigure figure, Statement statement) {
    Optional<Account> account =
        switch (figure) {
          case FIRST_PART -> Optional.of(statement.firstPart());
          case SECOND_PART -> Optional.of(statement.secondPart());
          case LAST_PART -> Optional.of(statement.lastPart());
          case ALL_PARTS -> Optional.of(statement.allParts());
          case USAGE -> Optional.of(statement.usage());
          case LEFTOVERS -> Optional.of(statement.leftovers());
          case AVERAGE, AVERAGE_LESS_LEFTOVERS -> Optional.empty();
        };
    Map<String, BigMoney> rows = new LinkedHashMap<>();
    if (account.isPresent()) {
      for (Line line : account.get().lines()) {
        rows.merge(line.item(), line.amount(), BigMoney::plus);
      }
      for (Surcharge surcharge : account.get().surcharges()) {
        rows.merge(surcharge.title(), surcharge.amount(), BigMoney::plus);
      }
    }
    return rows;
  }

  private List<Scenario<Statement>> inOneCurrency(
      List<Scenario<Statement>> scenarios, ExchangeRates rates) {
    Problems problems =
        new Problems("comparison")
            .require(
                scenarios.size() >= 2,
                "there are " + scenarios.size() + " scenarios; accepted is two or more");
    problems.refuseIfAny();
    CurrencyUnit currency = scenarios.get(0).result().plan().currency();
    Set<String> names = new HashSet<>();
    for (Scenario<Statement> scenario : scenarios) {
      CurrencyUnit other = scenario.result().plan().currency();
      problems
          .require(
              names.add(scenario.name()),
              "\"" + scenario.name() + "\" comes twice; accepted is a name for each scenario")
          .require(
              other.equals(currency)
                  || rates.rates().stream()
                      .anyMatch(r -> r.base().equals(other) && r.counter().equals(currency)),
              "\""
                  + scenario.name()
                  + "\" is in "
                  + other
                  + " and the baseline in "
                  + currency
                  + "; accepted is a dated rate from "
                  + other
                  + " to "
                  + currency);
    }
    problems.refuseIfAny();
    List<Scenario<Statement>> alike = new ArrayList<>();
    for (Scenario<Statement> scenario : scenarios) {
      Statement statement = scenario.result();
      alike.add(
          statement.plan().currency().equals(currency)
              ? scenario
              : Scenario.of(
                  scenario.name(),
                  ledger.statement(
                      LedgerPlan.builder()
                          .from(statement.plan())
                          .prices(rates.convert(statement.plan().prices(), currency))
                          .shipping(rates.convert(statement.plan().shipping(), currency))
                          .build(),
                      statement.parts())));
    }
    return alike;
  }
}
