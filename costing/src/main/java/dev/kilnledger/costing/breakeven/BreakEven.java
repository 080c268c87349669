package dev.kilnledger.costing.breakeven;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.ledger.ExactCash;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Resource;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.joda.money.BigMoney;

/**
 * Finds from how many parts on one plan costs no more than another: making against buying outside,
 * or a dear system against a cheap one. Buying is a plan as well, so that both sides are counted
 * and explained by the same ledger, and the answer is exact, without stepping through every n (see
 * {@link CashSearch}).
 */
public final class BreakEven {
  /** Jumps after which a search is given up. */
  public static final int MOST_JUMPS = 1_000_000;

  private final Ledger ledger;

  /**
   * Uses a ledger.
   *
   * @param ledger the ledger that explains the cash at a crossing
   */
  public BreakEven(Ledger ledger) {
    this.ledger = ledger;
  }

  /** {@return the break-even of the standard ledger} */
  public static BreakEven standard() {
    return new BreakEven(Ledger.standard());
  }

  /**
   * From how many parts on making them costs no more than buying each at a price.
   *
   * @param plan what making the parts needs
   * @param outsidePrice what one part costs outside, in the plan's currency and more than zero
   * @return the crossings
   * @throws IllegalArgumentException if the price is not positive or in another currency
   * @throws ArithmeticException if the price is so near the usage per part that the search would
   *     take too long
   */
  public Crossing find(LedgerPlan plan, BigMoney outsidePrice) {
    new Problems("break-even")
        .require(
            outsidePrice.getCurrencyUnit().equals(plan.currency()),
            "outside price is " + outsidePrice + "; accepted is the currency " + plan.currency())
        .require(
            outsidePrice.isPositive(),
            "outside price is " + outsidePrice + "; accepted is more than zero")
        .refuseIfAny();
    return find(plan, OutsideOffer.at(outsidePrice));
  }

  /**
   * From how many parts on making them costs no more than buying them.
   *
   * @param plan what making the parts needs
   * @param outside the offer of finished parts, in the plan's currency
   * @return the crossings
   * @throws IllegalArgumentException if the offer is in another currency
   * @throws ArithmeticException if the price is so near the usage per part that the search would
   *     take too long
   */
  public Crossing find(LedgerPlan plan, OutsideOffer outside) {
    return between(plan, outside.plan(plan));
  }

  /**
   * From how many parts on one plan costs no more than another, such as a dear system that uses
   * little and a cheap one.
   *
   * @param plan the plan asked about
   * @param other the plan it is held against, in the same currency
   * @return the crossings
   * @throws IllegalArgumentException if the currencies differ
   * @throws ArithmeticException if both use so nearly the same per part that the search would take
   *     too long
   */
  public Crossing between(LedgerPlan plan, LedgerPlan other) {
    new Problems("break-even")
        .require(
            plan.currency().equals(other.currency()),
            "the other plan is in "
                + other.currency()
                + "; accepted is the currency "
                + plan.currency())
        .refuseIfAny();
    Predicate<Resource> shared = shared(plan, other);
    CashSearch search =
        new CashSearch(
            ExactCash.of(plan, without(plan.resources(), shared)),
            ExactCash.of(other, without(other.resources(), shared)));
    Optional<Long> first = search.first();
    Optional<Long> permanent = search.permanent();
    return Crossing.builder()
        .plan(plan)
        .other(other)
        .usage(ledger.usage(plan))
        .otherUsage(ledger.usage(other))
        .first(first)
        .permanent(permanent)
        .smooth(search.smooth())
        .cashAtFirst(first.map(parts -> ledger.through(plan, parts)))
        .otherAtFirst(first.map(parts -> ledger.through(other, parts)))
        .cashAtPermanent(permanent.map(parts -> ledger.through(plan, parts)))
        .otherAtPermanent(permanent.map(parts -> ledger.through(other, parts)))
        .build();
  }

  /** What costs the same by both plans does not decide, and the search is quicker without it. */
  private static Predicate<Resource> shared(LedgerPlan plan, LedgerPlan other) {
    boolean alike =
        plan.shipping().isEmpty()
            && other.shipping().isEmpty()
            && plan.prices().shipping().isEmpty()
            && other.prices().shipping().isEmpty()
            && plan.buying() == other.buying()
            && plan.partsPerFiring() == other.partsPerFiring()
            && plan.charging() == other.charging()
            && plan.failures().equals(other.failures())
            && plan.amounts().equals(other.amounts())
            && plan.overheads().equals(other.overheads())
            && plan.tax().equals(other.tax());
    return resource -> {
      if (!alike || !plan.resources().contains(resource)) {
        return false;
      }
      return other.resources().contains(resource)
          && other.offersOf(resource).equals(plan.offersOf(resource));
    };
  }

  private static List<Resource> without(List<Resource> resources, Predicate<Resource> shared) {
    return resources.stream().filter(shared.negate()).toList();
  }
}
