package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * The first n good parts with what is not known about them: what the first and the last cost in
 * cash, all together and on average, and what a part uses up, each with its band. The trial of the
 * same number is the same in every figure.
 */
@Value.Immutable
@ValueStyle
public interface UncertainStatement extends Serializable {
  /** {@return what was counted, and what was drawn} */
  UncertainPlan plan();

  /** {@return n, the number of good parts} */
  long parts();

  /** {@return how many trials were made, from which seed, and why they have ended} */
  TrialRecord trials();

  /** {@return the cash for the first part} */
  CashBand firstPart();

  /** {@return the cash for part n} */
  CashBand lastPart();

  /** {@return the cash for parts 1 to n} */
  CashBand allParts();

  /** {@return what one part uses up in the long run, at full charges} */
  CashBand usage();

  /** {@return the cash for parts 1 to n divided by n} */
  @Value.Lazy
  default CashBand average() {
    return CashBand.of(
        CashFigure.AVERAGE,
        allParts().currency(),
        allParts().rounding(),
        allParts().outcome().dividedBy((double) parts()));
  }

  /**
   * A figure by its name.
   *
   * @param figure the figure
   * @return its band
   */
  default CashBand band(CashFigure figure) {
    return switch (figure) {
      case FIRST_PART -> firstPart();
      case LAST_PART -> lastPart();
      case ALL_PARTS -> allParts();
      case AVERAGE -> average();
      case USAGE -> usage();
    };
  }

  /**
   * The probability that making n parts costs no more than buying them. Whether it did so before,
   * with fewer parts, is told by {@link MonteCarlo#breakEven}.
   *
   * @param outsidePrice what one part costs outside, in the plan's currency
   * @return the share of the trials in which the cash for parts 1 to n is at most n times that
   * @throws IllegalArgumentException if the price is in another currency
   */
  default Amount<Dimensionless> probabilityOfBreakEven(BigMoney outsidePrice) {
    return allParts().probabilityWithin(outsidePrice.multipliedBy(parts()));
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link UncertainStatement} values. */
  final class Builder extends ImmutableUncertainStatement.Builder {
    Builder() {}
  }
}
