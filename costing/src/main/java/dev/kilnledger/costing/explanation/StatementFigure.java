package dev.kilnledger.costing.explanation;

import dev.kilnledger.costing.ledger.Statement;
import org.joda.money.BigMoney;

/** The sums of a statement. */
public enum StatementFigure {
  /** The cash for the first part. */
  FIRST_PART("first part"),
  /** The cash for the second part. */
  SECOND_PART("second part"),
  /** The cash for part n. */
  LAST_PART("last part"),
  /** The cash for parts 1 to n. */
  ALL_PARTS("all parts"),
  /** The cash for parts 1 to n, divided by n. */
  AVERAGE("average"),
  /** What one part uses up in the long run. */
  USAGE("usage per part"),
  /** What was bought and is left, by the plan's rule. */
  LEFTOVERS("leftovers"),
  /** The cash for parts 1 to n less the leftovers, divided by n. */
  AVERAGE_LESS_LEFTOVERS("average less leftovers");

  private final String words;

  StatementFigure(String words) {
    this.words = words;
  }

  /** {@return the figure for people, lower case} */
  public String words() {
    return words;
  }

  /**
   * The figure of a statement.
   *
   * @param statement the statement
   * @return the exact sum, not rounded
   */
  public BigMoney of(Statement statement) {
    return switch (this) {
      case FIRST_PART -> statement.firstPart().total();
      case SECOND_PART -> statement.secondPart().total();
      case LAST_PART -> statement.lastPart().total();
      case ALL_PARTS -> statement.allParts().total();
      case AVERAGE -> statement.average();
      case USAGE -> statement.usage().total();
      case LEFTOVERS -> statement.leftovers().total();
      case AVERAGE_LESS_LEFTOVERS -> statement.averageLessLeftovers();
    };
  }
}
