package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.Rounding;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** A place at which an exact sum became money. */
@Value.Immutable
@ValueStyle
public interface RoundingStep extends Serializable {
  /** {@return what was rounded, with its formula} */
  String what();

  /** {@return the sum before; of 34 digits where it has no end} */
  BigMoney exact();

  /** {@return the rule} */
  Rounding rounding();

  /** {@return the sum after} */
  @Value.Derived
  default Money rounded() {
    return rounding().round(exact());
  }

  /** {@return what the step added, negative where it took away} */
  default BigMoney added() {
    return rounded().toBigMoney().minus(exact());
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link RoundingStep} values. */
  final class Builder extends ImmutableRoundingStep.Builder {
    Builder() {}
  }
}
