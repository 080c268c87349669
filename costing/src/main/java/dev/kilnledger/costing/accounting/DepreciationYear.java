package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.Money;

/** One year of a depreciation schedule. */
@Value.Immutable
@ValueStyle
public interface DepreciationYear extends Serializable {
  /** {@return the year, 1 or more} */
  @Value.Parameter
  int year();

  /** {@return what the year is charged} */
  @Value.Parameter
  Money charge();

  /** {@return the book value at the end of the year} */
  @Value.Parameter
  Money bookValue();

  /**
   * A year.
   *
   * @param year the year, 1 or more
   * @param charge what it is charged
   * @param bookValue the book value at its end
   * @return the year
   */
  static DepreciationYear of(int year, Money charge, Money bookValue) {
    return ImmutableDepreciationYear.of(year, charge, bookValue);
  }
}
