package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Input;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Staircase;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.units.Amounts;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Counts what parts cost when packs are bought as needed, without failures.
 *
 * <p>The packs through part n are known in closed form ({@link Staircase}), so every answer takes a
 * time proportional to the number of resources, whatever n is. The ledger of n + m parts is the
 * ledger of n continued.
 */
public final class Ledger {
  private static final Ledger STANDARD = new Ledger();

  private Ledger() {}

  /** {@return the ledger} */
  public static Ledger standard() {
    return STANDARD;
  }

  /**
   * The statement of the first n parts.
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
        .firstPart(part(plan, 1))
        .secondPart(part(plan, 2))
        .lastPart(part(plan, parts))
        .allParts(allParts)
        .usage(usage(plan))
        .stocks(stocks)
        .caveats(Caveats.of(plan, parts, stocks))
        .build();
  }

  /**
   * The cash for one part.
   *
   * @param plan what is needed and what it costs
   * @param part the number of the part, 1 or more
   * @return the lines and their sum
   * @throws IllegalArgumentException if the number is less than 1
   */
  public Account part(LedgerPlan plan, long part) {
    refuseNone(part);
    return account(
        "part " + part,
        plan,
        staircase -> staircase.count(part).subtract(staircase.count(part - 1)),
        "packs(n) - packs(n - 1), ");
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
    return account("parts 1 to " + parts, plan, staircase -> staircase.count(parts), "");
  }

  /**
   * What one part uses up in the long run, at full charges and whatever is owned.
   *
   * @param plan what is needed and what it costs
   * @return the lines and their sum
   */
  public Account usage(LedgerPlan plan) {
    List<Line> lines = new ArrayList<>();
    for (Resource resource : plan.resources()) {
      Offer offer = plan.offerOf(resource);
      Staircase staircase = resource.staircase(offer, plan.partsPerFiring());
      if (staircase.usage().signum() > 0) {
        lines.add(
            Line.builder()
                .entry(Entry.USED)
                .offer(offer)
                .count(staircase.usage())
                .divisor(staircase.lineDivisor())
                .formula("rise per part in the long run of " + resource.formula(offer))
                .inputs(inputs(plan, resource, offer))
                .build());
      }
    }
    return Account.of("usage per part", plan.currency(), lines);
  }

  private static Account account(String title, LedgerPlan plan, Count count, String formula) {
    List<Line> lines = new ArrayList<>();
    for (Resource resource : plan.resources()) {
      Offer offer = plan.offerOf(resource);
      Staircase staircase = resource.staircase(offer, plan.partsPerFiring());
      BigInteger packs = count.of(staircase);
      if (packs.signum() > 0) {
        lines.add(
            Line.builder()
                .entry(offer.metered() ? Entry.METERED : Entry.BOUGHT)
                .offer(offer)
                .count(packs)
                .divisor(staircase.divisor())
                .formula(
                    formula
                        + (offer.metered() ? "packs(n) = max(0, x)" : "packs(n) = max(0, ceil(x))")
                        + ", x = "
                        + resource.formula(offer))
                .inputs(inputs(plan, resource, offer))
                .build());
      }
    }
    return Account.of(title, plan.currency(), lines);
  }

  private static List<Input> inputs(LedgerPlan plan, Resource resource, Offer offer) {
    List<Input> inputs = new ArrayList<>(resource.inputs());
    inputs.add(Input.of("content", offer.content(), offer.source()));
    inputs.add(
        Input.of(
            "parts per firing", Amounts.ratio(plan.partsPerFiring()), Source.user("the plan")));
    return inputs;
  }

  private static List<Stock> stocks(LedgerPlan plan, long parts) {
    List<Stock> stocks = new ArrayList<>();
    for (Resource resource : plan.resources()) {
      Offer offer = plan.offerOf(resource);
      Stock stock = resource.stock(offer, plan.partsPerFiring(), parts);
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

  /** The packs of one account. */
  private interface Count {
    BigInteger of(Staircase staircase);
  }
}
