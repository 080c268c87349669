package dev.kilnledger.costing.comparison;

import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The way from one statement to another, one thing changed at a time: each state is counted by the
 * ledger, so that an effect is the difference of two states, and all effects add up to the whole.
 */
final class PlanPath {
  /** A statement on the way, and what was changed to get there. */
  record State(Effect effect, Statement statement) {}

  private final Ledger ledger;
  private final PlanDraft draft;
  private final List<State> states = new ArrayList<>();
  private Optional<LedgerPlan> last = Optional.empty();
  private long parts;

  private PlanPath(Ledger ledger, Statement from, Statement to) {
    this.ledger = ledger;
    this.draft = new PlanDraft(from.plan(), to.plan());
    this.parts = from.parts();
    states.add(new State(Effect.OTHER, from));
  }

  /** The states from the one statement to the other, both included. */
  static List<State> between(Ledger ledger, Statement from, Statement to) {
    PlanPath path = new PlanPath(ledger, from, to);
    path.last = path.draft.plan();
    path.parts = to.parts();
    if (from.parts() != to.parts()) {
      path.count(Effect.PARTS, from.plan());
    }
    for (Effect effect : Effect.values()) {
      path.draft.take(effect);
      path.draft
          .plan()
          .filter(plan -> !path.last.equals(Optional.of(plan)))
          .ifPresent(plan -> path.count(effect, plan));
    }
    path.states.add(new State(Effect.OTHER, to));
    return path.states;
  }

  private void count(Effect effect, LedgerPlan plan) {
    states.add(new State(effect, ledger.statement(plan, parts)));
    last = Optional.of(plan);
  }
}
