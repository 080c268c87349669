package dev.kilnledger.costing.comparison;

/**
 * Why a line differs between two scenarios. The effects are told in this order, each being what
 * changes when one thing more is taken from the other scenario and all else stays: quantities are
 * valued at the old prices, and prices change at the new quantities, as in standard costing.
 */
public enum Effect {
  /** Another number of parts. */
  PARTS("number of parts"),
  /** Another number of parts per firing. */
  CHARGE_SIZE("charge size"),
  /** Another rule for charges that are not full. */
  CHARGING("rule for charges"),
  /** Other yields, trial parts, or another way of counting them. */
  FAILURES("failures"),
  /** Packs are bought as needed or at the start. */
  BUYING("rule of buying"),
  /** Other consumption, lives, losses or stock of an item that both have. */
  CONSUMPTION("quantity"),
  /** An item that both name but measure in ways that cannot be mixed. */
  REPLACED("item replaced"),
  /** An item that only the other scenario has. */
  NEW_ITEM("new item"),
  /** An item that only the baseline has. */
  DROPPED_ITEM("dropped item"),
  /** Packs of another size, at the old price per content. */
  PACK_SIZE("size of packs"),
  /** The same price in its own currency, at another exchange rate. */
  EXCHANGE("exchange rate"),
  /** Other suppliers, or what they ask for sending. */
  SHIPPING("shipping"),
  /** Another price, other price breaks, or another choice of offers. */
  PRICE("price"),
  /** Other overheads. */
  OVERHEAD("overhead"),
  /** Another rule or rate of tax, or prices on another tax basis. */
  TAX("tax"),
  /** Another rule for what is left over. */
  LEFTOVERS("rule for leftovers"),
  /** What rounding to whole minor units adds. */
  ROUNDING("rounding"),
  /** What is left, of rules that have no effect of their own here. */
  OTHER("other rules");

  private final String words;

  Effect(String words) {
    this.words = words;
  }

  /** {@return the effect for people, lower case} */
  public String words() {
    return words;
  }
}
