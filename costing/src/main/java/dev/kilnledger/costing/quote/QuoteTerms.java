package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.Money;

/** The rules by which costs become a quote. */
@Value.Immutable
@ValueStyle
public interface QuoteTerms extends Serializable {
  /** {@return what a price adds to a cost} */
  Uplift uplift();

  /** {@return other uplifts for larger quantities, from few parts to many; none unless stated} */
  List<QuantityBreak> breaks();

  /**
   * {@return the least sum of the lines, above zero: of their net, or of their gross where the tax
   * is taken out of it; none unless stated}
   */
  Optional<Money> minimumCharge();

  /** {@return the tax rate, zero or more} */
  Amount<Dimensionless> taxRate();

  /** {@return how the tax is put on the lines} */
  QuoteTax taxPolicy();

  /** {@return how sums become money; {@link Rounding#HALF_EVEN} unless stated} */
  @Value.Default
  default Rounding rounding() {
    return Rounding.HALF_EVEN;
  }

  /**
   * The uplift for a quantity.
   *
   * @param parts how many equal parts, 1 or more
   * @return the uplift of the last break they reach, else the general one
   */
  default Uplift upliftFor(long parts) {
    Uplift uplift = uplift();
    for (QuantityBreak step : breaks()) {
      if (step.fromParts() <= parts) {
        uplift = step.uplift();
      }
    }
    return uplift;
  }

  /**
   * Starts one.
   *
   * @return a builder; uplift, tax rate and tax policy are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link QuoteTerms} values. */
  final class Builder extends ImmutableQuoteTerms.Builder {
    Builder() {}
  }

  /**
   * Refuses breaks out of order, a minimum of nothing and a negative tax rate.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("quote terms").notNegative("tax rate", taxRate());
    minimumCharge()
        .ifPresent(
            least ->
                problems.require(
                    least.isPositive(),
                    "minimum charge is " + least + "; accepted is more than zero"));
    long from = 1;
    for (QuantityBreak step : breaks()) {
      problems.require(
          step.fromParts() > from,
          "a break from "
              + step.fromParts()
              + " parts follows one from "
              + from
              + "; accepted is from few parts to many");
      from = step.fromParts();
    }
    problems.refuseIfAny();
  }
}
