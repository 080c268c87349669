package dev.kilnledger.costing.ledger;

/**
 * When packs are bought, and which. Under both rules packs, price breaks, minimum orders,
 * increments and limits of all offers of an item are weighed, by the prices as they stand in the
 * book; among equally cheap orders the one of least surplus is taken, then of fewest packs, then
 * the first in the order of the book. What is sold by measure comes from whom it is cheapest.
 */
public enum BuyingRule {
  /**
   * Each part causes the purchases that its own shortage makes necessary: a use that finds less
   * than it takes has what it lacks covered by the cheapest order, and what is bought beyond stays
   * in stock. Orders are weighed item by item; what falls due with one part is one order to each
   * supplier, and by its value the supplier charges for sending it or does not. A use that is
   * shared with other work, or counted by its expected value, is bought for as a whole once it has
   * begun, if it can be bought for in more than one way.
   */
  AS_NEEDED(
      "as needed",
      "what a use lacks is covered by the cheapest order of its item, and what falls due with one"
          + " part is one order to each supplier."),
  /**
   * All packs for the n parts of a statement are bought at the start, with the first of them, in
   * the cheapest orders that cover the need of all items together, what suppliers charge for
   * sending included. A part beyond the n is bought as needed.
   */
  PLANNED_FOR_N(
      "planned for n",
      "the cheapest orders that cover what all n parts need are placed before the first.");

  private final String words;
  private final String sentence;

  BuyingRule(String words, String sentence) {
    this.words = words;
    this.sentence = sentence;
  }

  /** {@return what the rule does, as the rest of a sentence} */
  public String sentence() {
    return sentence;
  }

  /** {@return the rule for people, lower case} */
  public String words() {
    return words;
  }
}
