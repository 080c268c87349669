package dev.kilnledger.costing.document;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.ledger.Surcharge;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** Overhead or tax on the lines of an account, as it stands in an answer document. */
@Value.Immutable
@ValueStyle
public interface SurchargeFigures extends Serializable {
  /** {@return what it is} */
  String title();

  /** {@return the sum of the lines of which it is a share} */
  BigMoney base();

  /** {@return the items of these lines} */
  List<String> items();

  /** {@return the share of the base} */
  BigMoney amount();

  /** {@return how it is computed, in the names of the inputs} */
  String formula();

  /** {@return the figures of the formula, each with its source} */
  List<Input> inputs();

  /**
   * The figures of a surcharge.
   *
   * @param surcharge the surcharge
   * @return its figures
   */
  static SurchargeFigures of(Surcharge surcharge) {
    return builder()
        .title(surcharge.title())
        .base(surcharge.base())
        .items(surcharge.items())
        .amount(surcharge.amount())
        .formula(surcharge.formula())
        .inputs(surcharge.inputs())
        .build();
  }

  /**
   * Starts some.
   *
   * @return a builder; all but items and inputs are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link SurchargeFigures} values. */
  final class Builder extends ImmutableSurchargeFigures.Builder {
    Builder() {}
  }
}
