package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** What n good parts cost when failures fall at random: draws of the cash for parts 1 to n. */
@Value.Immutable
@ValueStyle
public interface RandomStatement extends Serializable {
  /** {@return what was counted; the rule of its failures was replaced by {@link #rule}} */
  LedgerPlan plan();

  /** {@return n, the number of good parts} */
  long parts();

  /** {@return the seed, from which the same draws follow again} */
  long seed();

  /** {@return the cash of each draw, in the order of the draws} */
  List<BigMoney> cash();

  /** {@return {@link FailureRule#AT_RANDOM}} */
  default FailureRule rule() {
    return FailureRule.AT_RANDOM;
  }

  /** {@return the cash of the draws, the lowest first} */
  @Value.Lazy
  default List<BigMoney> sorted() {
    return cash().stream().sorted().toList();
  }

  /** {@return the mean of the draws, of 34 digits} */
  default BigMoney mean() {
    BigMoney sum = BigMoney.total(cash());
    return BigMoney.of(
        sum.getCurrencyUnit(),
        sum.getAmount().divide(BigDecimal.valueOf(cash().size()), MathContext.DECIMAL128));
  }

  /** {@return the mean of the draws per good part, of 34 digits} */
  default BigMoney meanPerPart() {
    BigMoney mean = mean();
    return BigMoney.of(
        mean.getCurrencyUnit(),
        mean.getAmount().divide(BigDecimal.valueOf(parts()), MathContext.DECIMAL128));
  }

  /**
   * The cash that a share of the draws does not exceed.
   *
   * @param share the share, more than 0 and up to 1
   * @return the smallest draw of which that holds
   * @throws IllegalArgumentException if the share is out of range
   */
  default BigMoney quantile(Amount<Dimensionless> share) {
    new Problems("quantile")
        .positive("share", share)
        .within("share", share, Amounts.ratio(0), Amounts.ratio(1))
        .refuseIfAny();
    int draws = sorted().size();
    int rank = (int) Math.ceil(share.si() * draws);
    return sorted().get(Math.max(1, Math.min(rank, draws)) - 1);
  }

  /**
   * How often a budget suffices.
   *
   * @param budget the budget, in the currency of the plan
   * @return the share of the draws whose cash is at most that
   */
  default Amount<Dimensionless> within(BigMoney budget) {
    long enough = cash().stream().filter(cash -> !cash.isGreaterThan(budget)).count();
    return Amounts.ratio((double) enough / cash().size());
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link RandomStatement} values. */
  final class Builder extends ImmutableRandomStatement.Builder {
    Builder() {}
  }

  /**
   * Refuses a statement without draws.
   *
   * @throws IllegalArgumentException if there are none
   */
  @Value.Check
  default void check() {
    new Problems("random statement")
        .require(!cash().isEmpty(), "there is no draw; accepted is one or more")
        .refuseIfAny();
  }
}
