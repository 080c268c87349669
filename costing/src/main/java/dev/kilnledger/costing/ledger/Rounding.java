package dev.kilnledger.costing.ledger;

import java.math.RoundingMode;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** How an exact sum becomes an amount in whole minor units of its currency. */
public enum Rounding {
  /** To the nearest, halves to the even neighbour. */
  HALF_EVEN(RoundingMode.HALF_EVEN, "to the nearest, halves to the even neighbour"),
  /** To the nearest, halves away from zero. */
  HALF_UP(RoundingMode.HALF_UP, "to the nearest, halves away from zero");

  private final RoundingMode mode;
  private final String words;

  Rounding(RoundingMode mode, String words) {
    this.mode = mode;
    this.words = words;
  }

  /** {@return the rule for people, lower case} */
  public String words() {
    return words;
  }

  /**
   * Rounds.
   *
   * @param exact an unrounded sum
   * @return the sum in whole minor units
   */
  public Money round(BigMoney exact) {
    return exact.toMoney(mode);
  }
}
