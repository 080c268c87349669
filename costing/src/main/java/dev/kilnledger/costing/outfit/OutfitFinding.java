package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.finding.FindingCode;

/** What is checked about outfits beyond their pieces; a published name keeps its meaning. */
public enum OutfitFinding implements FindingCode {
  /** Whether there is a route for the metal in a kiln. */
  ROUTE("outfit-route"),
  /** Whether the route's getter is part of the outfit. */
  GETTER("outfit-getter"),
  /** Whether a charge holds as many parts as are wanted. */
  PARTS_PER_FIRING("outfit-parts-per-firing"),
  /** Whether a nozzle can be fitted to a printer. */
  NOZZLE_FIT("outfit-nozzle-fit"),
  /** A supplier charges for sending, which is not in the cost of an outfit. */
  SHIPPING("outfit-shipping");

  private final String code;

  OutfitFinding(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
