package dev.kilnledger.examples.sheet;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One cell: as people read it, and as a program does.
 *
 * @param shown the text for people
 * @param number the number in full in the unit of its column; empty for text and where there is
 *     nothing
 */
record Cell(String shown, Optional<BigDecimal> number) {
  static Cell text(String text) {
    return new Cell(text, Optional.empty());
  }

  static Cell number(String shown, BigDecimal number) {
    return new Cell(shown, Optional.of(number));
  }
}
