package dev.kilnledger.costing.resource;

import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.offer.Offer;
import java.io.Serializable;
import java.util.List;

/**
 * Something that making parts needs, with the way in which it is used up. Its item is bought by an
 * {@link Offer}; what is owned at the start costs nothing, and each behaviour says what it counts
 * as owned. How often it is used, and what a charge counts that is not full, is told by the {@link
 * Workload}.
 */
public sealed interface Resource extends Serializable
    permits Aged, Consumed, Depreciated, Durable, RunDown, ToppedUp, Wearing {
  /** {@return the name of the item, as its offer has it} */
  String item();

  /** {@return what uses it up; without meaning for what is bought once} */
  Driver driver();

  /**
   * The formula of the packs, not yet rounded, that are wanted through part n.
   *
   * @param offer an offer that fits
   * @param workload what n parts ask of the workshop
   * @return the formula in n, content, and the names of {@link #inputs} and of the workload's
   */
  String formula(Offer offer, Workload workload);

  /** {@return the figures of {@link #formula}, each with its source} */
  List<Input> inputs();

  /**
   * What speaks against buying this resource by an offer.
   *
   * @param offer an offer
   * @return one message for each obstacle, each saying what would be accepted; empty if it fits
   */
  List<String> mismatches(Offer offer);

  /**
   * How the purchases fall over the parts.
   *
   * @param offer an offer that fits
   * @param workload what n parts ask of the workshop
   * @return the purchase counts
   */
  Staircase staircase(Offer offer, Workload workload);

  /**
   * What is left after a number of parts, bought by one offer.
   *
   * @param offer an offer that fits
   * @param workload what n parts ask of the workshop
   * @param parts how many parts have been made, 1 or more
   * @return what is left, and when it has to be bought again
   */
  default Stock stock(Offer offer, Workload workload, long parts) {
    return stock(workload, staircase(offer, workload).shelf(parts, Decimals.si(offer.content())));
  }

  /**
   * What is left, however it was bought.
   *
   * @param workload what n parts ask of the workshop
   * @param shelf what is there by the count of its uses
   * @return what is left, and when it has to be bought again
   */
  Stock stock(Workload workload, Shelf shelf);
}
