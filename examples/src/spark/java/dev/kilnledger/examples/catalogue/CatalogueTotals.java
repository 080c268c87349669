package dev.kilnledger.examples.catalogue;

import java.io.Serializable;
import org.joda.money.BigMoney;

/**
 * What rows of a catalogue come to.
 *
 * @param priced how many were priced
 * @param refused how many could not be read or priced
 * @param usage what one of each part priced uses up in the long run
 */
record CatalogueTotals(long priced, long refused, BigMoney usage) implements Serializable {
  private static final long serialVersionUID = 1;

  CatalogueTotals plus(CatalogueTotals other) {
    return new CatalogueTotals(
        priced + other.priced, refused + other.refused, usage.plus(other.usage));
  }
}
