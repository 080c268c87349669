package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Staircase;
import dev.kilnledger.costing.resource.Stock;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Counts what good parts cost, by the rules of a plan.
 *
 * <p>The packs through part n are known in closed form ({@link Staircase}), with failures as
 * planned starts or expected values, so every answer takes a time that grows with the number of
 * resources and the digits of n alone. When packs are bought as needed, the ledger of n + m parts
 * is the ledger of n continued. Failures at random are counted by {@link RandomYields}, with the
 * same count of packs.
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
    Account allParts = through(plan, parts);
    List<Stock> stocks = stocks(plan, parts);
    return Statement.builder()
        .plan(plan)
        .parts(parts)
        .firstPart(part(plan, 1, parts))
        .secondPart(part(plan, 2, parts))
        .lastPart(part(plan, parts, parts))
        .allParts(allParts)
        .usage(usage(plan))
        .leftovers(leftovers(plan, parts))
        .stocks(stocks)
        .caveats(Caveats.of(plan, parts, stocks))
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
    boolean atStart = plan.buying() == BuyingRule.PLANNED_FOR_N;
    return account(
        "part " + part,
        plan,
        staircase ->
            staircase.isMetered() || !atStart
                ? staircase.count(part).subtract(staircase.count(part - 1))
                : throughPlanned(staircase::count, part, planned)
                    .subtract(throughPlanned(staircase::count, part - 1, planned)),
        freight ->
            atStart
                ? throughPlanned(freight::through, part, planned)
                    .subtract(throughPlanned(freight::through, part - 1, planned))
                : freight.through(part).subtract(freight.through(part - 1)),
        atStart
            ? "packs of all parts planned with the first, packs by measure as used, "
            : "packs(n) - packs(n - 1), ");
  }

  /** Parts beyond those planned are bought as needed. */
  private static BigInteger throughPlanned(Through count, long part, long planned) {
    return part == 0 ? BigInteger.ZERO : count.through(Math.max(part, planned));
  }

  /**
   * The cash for parts 1 to n.
   *
   * @param plan what is needed and what it costs
   * @param parts n, 1 or more
   * @return the lines and their sum
   * @throws IllegalArgumentException if n is less than 1
   */
  public Account through(LedgerPlan plan, long parts) {
    refuseNone(parts);
    return account(
        "parts 1 to " + parts,
        plan,
        staircase -> staircase.count(parts),
        freight -> freight.through(parts),
        "");
  }

  /**
   * What one good part uses up in the long run, at full charges and whatever is owned.
   *
   * @param plan what is needed and what it costs
   * @return the lines and their sum
   */
  public Account usage(LedgerPlan plan) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < plan.resources().size(); i++) {
      Resource resource = plan.resources().get(i);
      Offer offer = plan.offerOf(resource);
      Staircase staircase = plan.staircases().get(i);
      if (staircase.usage().signum() > 0) {
        lines.add(
            Line.builder()
                .entry(Entry.USED)
                .offer(offer)
                .count(staircase.usage())
                .divisor(staircase.lineDivisor())
                .formula(
                    "rise per part in the long run of " + resource.formula(offer, plan.workload()))
                .inputs(inputs(plan, resource, offer))
                .build());
      }
    }
    for (Freight freight : Freight.of(plan, plan.resources())) {
      BigInteger count = BigInteger.ZERO;
      BigInteger divisor = BigInteger.ONE;
      for (Staircase orders : freight.grows() ? freight.orders : List.<Staircase>of()) {
        count = count.multiply(orders.lineDivisor()).add(orders.usage().multiply(divisor));
        divisor = divisor.multiply(orders.lineDivisor());
      }
      if (count.signum() > 0) {
        BigInteger common = count.gcd(divisor);
        lines.add(
            Line.builder()
                .entry(Entry.USED)
                .offer(freight.order)
                .count(count.divide(common))
                .divisor(divisor.divide(common))
                .formula(
                    "purchases per part in the long run, each alone, of "
                        + String.join(", ", freight.items))
                .inputs(List.of())
                .build());
      }
    }
    return Account.of("usage per part", plan.currency(), lines, Surcharges.on(lines, plan));
  }

  private static Account account(
      String title,
      LedgerPlan plan,
      Count<Staircase> packs,
      Count<Freight> orders,
      String formula) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < plan.resources().size(); i++) {
      Resource resource = plan.resources().get(i);
      Offer offer = plan.offerOf(resource);
      Staircase staircase = plan.staircases().get(i);
      BigInteger count = packs.of(staircase);
      if (count.signum() > 0) {
        Entry entry =
            resource instanceof Depreciated
                ? Entry.DEPRECIATED
                : offer.metered() ? Entry.METERED : Entry.BOUGHT;
        lines.add(
            Line.builder()
                .entry(entry)
                .offer(offer)
                .count(count)
                .divisor(staircase.divisor())
                .formula(
                    formula
                        + (entry == Entry.BOUGHT
                            ? "packs(n) = max(0, ceil(x)), x = "
                            : "packs(n) = max(0, x), x = ")
                        + resource.formula(offer, plan.workload()))
                .inputs(inputs(plan, resource, offer))
                .build());
      }
    }
    for (Freight freight : Freight.of(plan, plan.resources())) {
      BigInteger count = orders.of(freight);
      if (count.signum() > 0) {
        lines.add(
            Line.builder()
                .entry(Entry.SHIPPED)
                .offer(freight.order)
                .count(count)
                .divisor(BigInteger.ONE)
                .formula(
                    plan.buying() == BuyingRule.PLANNED_FOR_N
                        ? "one order to the supplier"
                        : "1 for all that the first part needs + the purchases after it, each"
                            + " alone, of "
                            + String.join(", ", freight.items))
                .inputs(List.of())
                .build());
      }
    }
    return Account.of(title, plan.currency(), lines, Surcharges.on(lines, plan));
  }

  private static List<Input> inputs(LedgerPlan plan, Resource resource, Offer offer) {
    List<Input> inputs = new ArrayList<>(resource.inputs());
    inputs.add(Input.of("content", offer.content(), offer.source()));
    inputs.addAll(plan.workload().inputs(resource.driver()));
    return inputs;
  }

  private static Account leftovers(LedgerPlan plan, long parts) {
    List<Line> lines = new ArrayList<>();
    if (plan.leftovers().rule() != LeftoverRule.NOT_VALUED) {
      for (int i = 0; i < plan.resources().size(); i++) {
        Resource resource = plan.resources().get(i);
        Offer offer = plan.offerOf(resource);
        if (offer.metered() || resource instanceof Durable || resource instanceof Depreciated) {
          continue;
        }
        Staircase staircase = plan.staircases().get(i);
        BigInteger left =
            staircase.leftPacks(parts, plan.leftovers().furtherParts(resource.item()));
        if (left.signum() > 0) {
          lines.add(
              Line.builder()
                  .entry(Entry.LEFT)
                  .offer(offer)
                  .count(left)
                  .divisor(staircase.leftDivisor())
                  .formula(
                      plan.leftovers().rule() == LeftoverRule.COST_SHARE
                          ? "min(left, bought) / content"
                          : "min(left, bought, used within the shelf life) / content")
                  .inputs(inputs(plan, resource, offer))
                  .build());
        }
      }
    }
    return Account.of(
        "left after part " + parts, plan.currency(), lines, Surcharges.on(lines, plan));
  }

  private static List<Stock> stocks(LedgerPlan plan, long parts) {
    List<Stock> stocks = new ArrayList<>();
    for (Resource resource : plan.resources()) {
      Offer offer = plan.offerOf(resource);
      Stock stock = resource.stock(offer, plan.workload(), parts);
      // What is paid as it is used leaves nothing behind.
      if (!offer.metered() || stock.left().si() > 0) {
        stocks.add(stock);
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

  /** The packs or orders of one account. */
  private interface Count<T> {
    BigInteger of(T counted);
  }

  /** Packs or orders through a part. */
  private interface Through {
    BigInteger through(long parts);
  }
}
