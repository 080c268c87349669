package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Shelf;
import dev.kilnledger.costing.resource.Stock;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Counts what good parts cost, by the rules of a plan.
 *
 * <p>How much is needed through part n is known in closed form ({@link
 * dev.kilnledger.costing.resource.Staircase}), with failures as planned starts or expected values,
 * and which purchases meet a need follows a pattern that repeats, so that a million parts are
 * answered as quickly as ten. Only orders to a supplier who charges for sending are counted one by
 * one until the purchases of all its items repeat together, some hundred thousand in a tenth of a
 * second; an interrupt of the thread ends that with a {@link
 * java.util.concurrent.CancellationException}. When packs are bought as needed, the ledger of n + m
 * parts is the ledger of n continued. Failures at random are counted by {@link RandomYields}, with
 * the same count of packs.
 */
public final class Ledger {
  private static final Ledger STANDARD = new Ledger();

  private Ledger() {}

  /** {@return the ledger} */
  public static Ledger standard() {
    return STANDARD;
  }

  /**
   * The statement of the first n good parts. Planned for n, a part beyond them is bought as needed.
   *
   * @param plan what is needed and what it costs
   * @param parts n, 1 or more
   * @return the statement
   * @throws IllegalArgumentException if n is less than 1
   */
  public Statement statement(LedgerPlan plan, long parts) {
    refuseNone(parts);
    Buying buying = plan.purchases().buying;
    Bought bought = buying.through(parts);
    Accounts accounts = plan.purchases().accounts();
    return Statement.builder()
        .plan(plan)
        .parts(parts)
        .firstPart(part(plan, 1, parts))
        .secondPart(part(plan, 2, parts))
        .lastPart(part(plan, parts, parts))
        .allParts(accounts.bought("parts 1 to " + parts, bought, ""))
        .usage(accounts.usage())
        .leftovers(accounts.leftovers(bought, parts))
        .stocks(stocks(plan, bought, parts))
        .build();
  }

  /**
   * The cash for one part, bought as needed.
   *
   * @param plan what is needed and what it costs
   * @param part the number of the part, 1 or more
   * @return the lines and their sum
   * @throws IllegalArgumentException if the number is less than 1, or the plan is bought for n
   *     parts at the start, where {@link #part(LedgerPlan, long, long)} has to know n
   */
  public Account part(LedgerPlan plan, long part) {
    if (plan.buying() == BuyingRule.PLANNED_FOR_N) {
      throw new IllegalArgumentException(
          "packs are bought for n parts at the start, so the cash for part "
              + part
              + " depends on n; accepted is to state n");
    }
    return part(plan, part, part);
  }

  /**
   * The cash for one part of n.
   *
   * @param plan what is needed and what it costs
   * @param part the number of the part, 1 or more
   * @param planned n, for how many parts packs are bought at the start if the plan says so
   * @return the lines and their sum
   * @throws IllegalArgumentException if a number is less than 1
   */
  public Account part(LedgerPlan plan, long part, long planned) {
    refuseNone(part);
    refuseNone(planned);
    Buying buying = plan.purchases().buying;
    String title = "part " + part;
    if (plan.buying() == BuyingRule.AS_NEEDED) {
      return plan.purchases()
          .accounts()
          .bought(title, rise(buying, part), "packs(n) - packs(n - 1), ");
    }
    if (part > planned) {
      Buying after = buying.after(planned);
      return new Accounts(plan, after)
          .bought(title, rise(after, part), "packs(n) - packs(n - 1) beyond those planned, ");
    }
    return plan.purchases()
        .accounts()
        .bought(
            title,
            measured(buying, buying.through(part == 1 ? planned : 0), part, part - 1),
            "packs of all parts planned with the first, packs by measure as used, ");
  }

  /**
   * The staircase of costs: part by part, what each costs and what all up to it have cost.
   *
   * @param plan what is needed and what it costs
   * @param first the first part told, 1 or more
   * @param last the last one, not before the first; n where packs are planned for n
   * @return a step for each part
   * @throws IllegalArgumentException if the numbers are out of order
   */
  public List<CostStep> staircase(LedgerPlan plan, long first, long last) {
    refuseNone(first);
    if (last < first) {
      throw new IllegalArgumentException(
          "the last part is " + last + "; accepted is a number from the first, " + first + ", up");
    }
    Buying buying = plan.purchases().buying;
    boolean atStart = plan.buying() == BuyingRule.PLANNED_FOR_N;
    List<CostStep> steps = new ArrayList<>();
    for (long part = first; part <= last; part++) {
      Bought through =
          atStart ? measured(buying, buying.through(last), part, 0) : buying.through(part);
      steps.add(
          CostStep.of(
              part,
              part(plan, part, last),
              plan.purchases().accounts().bought("parts 1 to " + part, through, "").total()));
    }
    return List.copyOf(steps);
  }

  /**
   * The statement of the first n good parts twice: with the kiln loaded as the plan says, and
   * filled. What a firing takes stays the same, so state it for a charge of either size, or compare
   * two plans.
   *
   * @param plan what is needed and what it costs
   * @param capacity how many parts fill the kiln, at least those of the plan
   * @param parts n, 1 or more
   * @return both statements
   * @throws IllegalArgumentException if a number is out of range
   */
  public Loadings loadings(LedgerPlan plan, int capacity, long parts) {
    if (capacity < plan.partsPerFiring()) {
      throw new IllegalArgumentException(
          "capacity is "
              + capacity
              + "; accepted is "
              + plan.partsPerFiring()
              + " or more, the parts per firing of the plan");
    }
    LedgerPlan filled = LedgerPlan.builder().from(plan).partsPerFiring(capacity).build();
    return Loadings.of(statement(plan, parts), statement(filled, parts));
  }

  private static Bought rise(Buying buying, long part) {
    return buying.through(part).less(buying.through(part - 1));
  }

  /** Packs and orders as bought, and what is measured from one part to another. */
  private static Bought measured(Buying buying, Bought bought, long until, long after) {
    BigInteger[][] counts = bought.counts.clone();
    for (int i = 0; i < counts.length; i++) {
      Item item = buying.items().get(i);
      if (!item.inPacks()) {
        counts[i] =
            new BigInteger[] {item.staircase.count(until).subtract(item.staircase.count(after))};
      }
    }
    return new Bought(counts, bought.orders);
  }

  /**
   * The cash for parts 1 to n.
   *
   * @param plan what is needed and what it costs
   * @param parts n, 1 or more
   * @return the lines and their sum
   * @throws IllegalArgumentException if n is less than 1, or the packs that can be had do not
   *     suffice for n
   */
  public Account through(LedgerPlan plan, long parts) {
    refuseNone(parts);
    Bought bought = plan.purchases().buying.through(parts);
    return plan.purchases().accounts().bought("parts 1 to " + parts, bought, "");
  }

  /**
   * What one good part uses up in the long run, at full charges and whatever is owned. What comes
   * in packs is told at the prices and in the packs in which it is bought in the long run.
   *
   * @param plan what is needed and what it costs
   * @return the lines and their sum
   */
  public Account usage(LedgerPlan plan) {
    return plan.purchases().accounts().usage();
  }

  private static List<Stock> stocks(LedgerPlan plan, Bought bought, long parts) {
    List<Stock> stocks = new ArrayList<>();
    List<Item> items = plan.purchases().buying.items();
    for (int i = 0; i < items.size(); i++) {
      Item item = items.get(i);
      if (item.inPacks()) {
        stocks.add(item.stock(plan.workload(), bought.counts[i], parts));
        continue;
      }
      // What is paid as it is used leaves nothing behind but what was there at the start.
      Shelf shelf = item.meteredShelf(parts);
      if (item.resource instanceof Depreciated || shelf.left().signum() > 0) {
        stocks.add(item.resource.stock(plan.workload(), shelf));
      }
    }
    return stocks;
  }

  private static void refuseNone(long part) {
    if (part < 1) {
      throw new IllegalArgumentException(
          "there is no part " + part + "; accepted is a number of parts from 1 up");
    }
  }
}
