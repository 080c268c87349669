package dev.kilnledger.costing.breakeven;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Resource;
import java.util.List;

/**
 * Holds a substitute against what a plan uses now, such as a dear crucible that lasts for many
 * firings against a cheap one that lasts for few: from which part on has it cost no more, all else
 * being the same?
 */
public final class Substitution {
  private final BreakEven breakEven;

  /**
   * Uses a search.
   *
   * @param breakEven the search for crossings
   */
  public Substitution(BreakEven breakEven) {
    this.breakEven = breakEven;
  }

  /** {@return the comparison by the standard ledger} */
  public static Substitution standard() {
    return new Substitution(BreakEven.standard());
  }

  /**
   * Compares the plan with the substitute to the plan as it is.
   *
   * @param plan the plan as it is
   * @param item the item that is replaced
   * @param substitute what takes its place, offered by the price book of the plan
   * @return from which part on the substitute costs no more; never, if it never does
   * @throws IllegalArgumentException if the plan has no such item, or cannot have the substitute
   * @throws ArithmeticException if both use so nearly the same per part that the search would take
   *     too long
   */
  public Crossing compare(LedgerPlan plan, String item, Resource substitute) {
    List<String> items = plan.resources().stream().map(Resource::item).toList();
    if (!items.contains(item)) {
      throw new IllegalArgumentException(
          "no resource \"" + item + "\" to replace; accepted is one of " + items);
    }
    LedgerPlan replaced =
        LedgerPlan.builder()
            .from(plan)
            .resources(
                plan.resources().stream()
                    .map(resource -> resource.item().equals(item) ? substitute : resource)
                    .toList())
            .build();
    return breakEven.between(replaced, plan);
  }
}
