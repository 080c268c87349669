package dev.kilnledger.costing.explanation;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.Entry;
import dev.kilnledger.costing.ledger.LeftoverRule;
import dev.kilnledger.costing.ledger.Line;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.ledger.Surcharge;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Opens the figures of a statement: the rounded sum, the exact one, its lines and surcharges, the
 * packs with their formula and inputs, and the price with its offer. The nodes are the statement's
 * own lines; nothing is computed again.
 *
 * <p>Example: the second part of the project's ledger case needs nothing but energy,
 *
 * <pre>
 * second part: EUR 8.40, part 2, from exact amount rounded half even; the plan (stated by the user)
 *   exact amount: EUR 8.40, from sum of the lines
 *     energy: EUR 8.40, metered, from packs x price
 *       packs: 28, from packs(n) - packs(n - 1), packs(n) = max(0, x), x = (quantity x ceil(n / parts
 *           per firing) - stock) / content
 *       price: EUR 0.30, supplier A, 1 kWh, seen on 2026-11-02, tax included; invented (stated by the
 *           user)
 * </pre>
 */
public final class StatementExplainer {
  private static final Source QUESTION = Source.user("the question");
  private static final Source PLAN = Source.user("the plan");
  private static final StatementExplainer STANDARD =
      new StatementExplainer((item, input) -> Optional.empty());

  private final InputOrigin origin;

  /**
   * Opens inputs further where another result computed them.
   *
   * @param origin tells where inputs stem from
   */
  public StatementExplainer(InputOrigin origin) {
    this.origin = origin;
  }

  /** {@return the explainer that takes all inputs of the ledger as given} */
  public static StatementExplainer standard() {
    return STANDARD;
  }

  /**
   * Opens every figure of a statement.
   *
   * @param statement the statement
   * @return one tree for each figure, in the order of {@link StatementFigure}
   */
  public List<Explanation> figures(Statement statement) {
    List<Explanation> figures = new ArrayList<>();
    for (StatementFigure figure : StatementFigure.values()) {
      figures.add(figure(statement, figure));
    }
    return List.copyOf(figures);
  }

  /**
   * Opens a figure of a statement.
   *
   * @param statement the statement
   * @param figure which figure
   * @return the sum in whole minor units, standing on the exact one
   */
  public Explanation figure(Statement statement, StatementFigure figure) {
    Explanation exact = exact(statement, figure);
    boolean titled = !exact.what().equals(figure.words());
    return MoneyNode.of(figure.words(), statement.money(figure.of(statement)))
        .condition(titled ? exact.what() : "")
        .formula(
            "exact amount rounded "
                + statement.plan().rounding().name().toLowerCase(Locale.ROOT).replace('_', ' '))
        .source(PLAN)
        .addChildren(exact.as("exact amount"))
        .build();
  }

  private Explanation exact(Statement statement, StatementFigure figure) {
    return switch (figure) {
      case FIRST_PART ->
          account(
              statement.firstPart(),
              OptionalLong.of(1),
              statement.plan().buying() == BuyingRule.PLANNED_FOR_N
                  ? OptionalLong.of(statement.parts())
                  : OptionalLong.of(1));
      case SECOND_PART -> account(statement.secondPart(), 2);
      case LAST_PART -> account(statement.lastPart(), statement.parts());
      case ALL_PARTS -> account(statement.allParts(), statement.parts());
      case USAGE -> usage(statement.usage());
      case LEFTOVERS -> leftovers(statement);
      case AVERAGE ->
          MoneyNode.computed(
              "average",
              statement.average(),
              "all parts / n",
              account(statement.allParts(), statement.parts()).as("all parts"),
              n(statement.parts()));
      case AVERAGE_LESS_LEFTOVERS ->
          MoneyNode.computed(
              "average less leftovers",
              statement.averageLessLeftovers(),
              "(all parts - leftovers) / n",
              account(statement.allParts(), statement.parts()).as("all parts"),
              leftovers(statement).as("leftovers"),
              n(statement.parts()));
    };
  }

  private Explanation leftovers(Statement statement) {
    if (statement.plan().leftovers().rule() == LeftoverRule.NOT_VALUED) {
      return MoneyNode.given(
          statement.leftovers().title(),
          statement.leftovers().total(),
          Source.user("the plan: leftovers are not valued"));
    }
    return account(statement.leftovers(), statement.parts());
  }

  /**
   * Opens an account.
   *
   * @param account the account, such as the cash for part 4
   * @param part the n of its formulas, such as 4
   * @return the sum, standing on its lines
   */
  public Explanation account(Account account, long part) {
    return account(account, OptionalLong.of(part), OptionalLong.of(part));
  }

  /**
   * Opens an account of what one part uses up in the long run, whose formulas have no n.
   *
   * @param account the account
   * @return the sum, standing on its lines
   */
  public Explanation usage(Account account) {
    return account(account, OptionalLong.empty(), OptionalLong.empty());
  }

  private Explanation account(Account account, OptionalLong part, OptionalLong bought) {
    List<Explanation> lines = new ArrayList<>();
    for (Line line : account.lines()) {
      lines.add(line(line, line.entry() == Entry.BOUGHT ? bought : part));
    }
    int count = lines.size();
    for (Surcharge surcharge : account.surcharges()) {
      lines.add(surcharge(surcharge, account, lines.subList(0, count)));
    }
    return MoneyNode.of(account.title(), account.total())
        .formula("sum of the lines" + (lines.isEmpty() ? ", of which there are none" : ""))
        .source(
            lines.isEmpty()
                ? Optional.of(Source.recomputed("the ledger: nothing has to be paid"))
                : Optional.empty())
        .children(lines)
        .build();
  }

  private Explanation line(Line line, OptionalLong part) {
    Explanation price = MoneyNode.price(line.offer(), line.price());
    List<Explanation> from = new ArrayList<>();
    for (Input input : line.inputs()) {
      from.add(origin.of(line.item(), input).orElseGet(() -> named(input)));
    }
    if (line.formula().contains("price")) { // depreciation is a share of it
      from.add(price);
    }
    part.ifPresent(n -> from.add(n(n)));
    List<Explanation> paid = new ArrayList<>();
    paid.add(
        Explanation.builder()
            .what("packs")
            .value(line.packs())
            .formula(line.formula())
            .source(from.isEmpty() ? Optional.of(PLAN) : Optional.empty())
            .children(from)
            .build());
    paid.add(price);
    return MoneyNode.of(line.item(), line.amount())
        .condition(line.entry().words())
        .formula("packs x price")
        .children(paid)
        .build();
  }

  /** An input whose name tells a unit of its own, such as a currency, goes by what is before it. */
  private static Explanation named(Input input) {
    int unit = input.name().indexOf(", in ");
    return unit < 0
        ? Explanation.given(input)
        : Explanation.builder()
            .from(Explanation.given(input))
            .what(input.name().substring(0, unit))
            .condition(input.name().substring(unit + 2))
            .build();
  }

  private static Explanation surcharge(
      Surcharge surcharge, Account account, List<Explanation> lines) {
    List<Explanation> base = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (surcharge.items().contains(account.lines().get(i).item())) {
        base.add(lines.get(i));
      }
    }
    List<Explanation> from = new ArrayList<>();
    surcharge.inputs().forEach(input -> from.add(Explanation.given(input)));
    from.add(
        MoneyNode.of("base", surcharge.base())
            .formula("sum of the lines it is on")
            .children(base)
            .build());
    return MoneyNode.of(surcharge.title(), surcharge.amount())
        .formula(surcharge.formula())
        .children(from)
        .build();
  }

  private static Explanation n(long part) {
    return Explanation.given("n", Amounts.ratio((double) part), QUESTION);
  }
}
