package dev.kilnledger.costing.explanation;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.breakeven.Crossing;
import dev.kilnledger.costing.ledger.Account;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Opens a break-even: the cash of both plans where they cross, line by line, and their usage. */
public final class CrossingExplainer {
  private static final Source SEARCH = Source.recomputed("exact search over the counts of packs");
  private static final CrossingExplainer STANDARD =
      new CrossingExplainer(StatementExplainer.standard());

  private final StatementExplainer accounts;

  /**
   * Uses an explainer of accounts.
   *
   * @param accounts opens the accounts
   */
  public CrossingExplainer(StatementExplainer accounts) {
    this.accounts = accounts;
  }

  /** {@return the explainer that takes all inputs of the ledger as given} */
  public static CrossingExplainer standard() {
    return STANDARD;
  }

  /**
   * Opens a break-even.
   *
   * @param crossing from how many parts on one plan costs no more than another
   * @return the first crossing, the permanent one and the textbook formula's; each is a number of
   *     parts, or "never"
   */
  public List<Explanation> figures(Crossing crossing) {
    return List.of(
        crossing(
            "first crossing",
            "smallest n with plan <= other plan",
            crossing.first(),
            crossing.cashAtFirst(),
            crossing.otherAtFirst(),
            crossing),
        crossing(
            "permanent crossing",
            "smallest n from which on plan <= other plan for good",
            crossing.permanent(),
            crossing.cashAtPermanent(),
            crossing.otherAtPermanent(),
            crossing),
        number(
            "crossing without packs",
            crossing.smooth(),
            "smallest n of at least (fixed - other fixed) / (other usage - usage)",
            usages(crossing)));
  }

  private Explanation crossing(
      String what,
      String formula,
      Optional<Long> parts,
      Optional<Account> cash,
      Optional<Account> other,
      Crossing crossing) {
    List<Explanation> compared = new ArrayList<>();
    parts.ifPresent(
        n -> {
          cash.ifPresent(account -> compared.add(accounts.account(account, n).as("plan")));
          other.ifPresent(account -> compared.add(accounts.account(account, n).as("other plan")));
        });
    return number(what, parts, formula, compared.isEmpty() ? usages(crossing) : compared);
  }

  private List<Explanation> usages(Crossing crossing) {
    return List.of(
        accounts.usage(crossing.usage()).as("usage"),
        accounts.usage(crossing.otherUsage()).as("other usage"));
  }

  private static Explanation number(
      String what, Optional<Long> parts, String formula, List<Explanation> children) {
    Serializable value = parts.isPresent() ? parts.get() : "never";
    return Explanation.builder()
        .what(what)
        .value(value)
        .formula(formula)
        .source(SEARCH)
        .children(children)
        .build();
  }
}
