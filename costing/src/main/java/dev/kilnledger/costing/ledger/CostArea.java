package dev.kilnledger.costing.ledger;

/** A kind of cost that a statement may leave out, and then says so. */
public enum CostArea {
  /** What suppliers charge for sending. */
  SHIPPING(CaveatCode.SHIPPING_EXCLUDED, "shipping"),
  /** What customs charges. */
  DUTY(CaveatCode.DUTY_EXCLUDED, "duty"),
  /** Energy of the firing; covered by any resource whose offer is an energy. */
  ENERGY(CaveatCode.ENERGY_EXCLUDED, "energy"),
  /** Energy of printing and drying. */
  PRINTING_ENERGY(CaveatCode.PRINTING_ENERGY_EXCLUDED, "energy of printing"),
  /** Paid and unpaid work. */
  LABOUR(CaveatCode.LABOUR_EXCLUDED, "labour"),
  /** Rooms, insurance, administration. */
  OVERHEAD(CaveatCode.OVERHEAD_EXCLUDED, "overhead"),
  /** Interest on what is spent. */
  CAPITAL(CaveatCode.CAPITAL_EXCLUDED, "cost of capital"),
  /** Parts and charges lost, and trial parts. */
  FAILURES(CaveatCode.FAILURES_EXCLUDED, "failures and trial parts"),
  /** Grinding, polishing, plating. */
  FINISHING(CaveatCode.FINISHING_EXCLUDED, "finishing"),
  /** Spent powder, carbon and crucibles. */
  DISPOSAL(CaveatCode.DISPOSAL_EXCLUDED, "disposal"),
  /** Respirators, alarms, extraction. */
  SAFETY_EQUIPMENT(CaveatCode.SAFETY_EQUIPMENT_EXCLUDED, "safety equipment");

  private final CaveatCode caveat;
  private final String words;

  CostArea(CaveatCode caveat, String words) {
    this.caveat = caveat;
    this.words = words;
  }

  /** {@return the caveat that stands where this kind of cost is left out} */
  public CaveatCode caveat() {
    return caveat;
  }

  /** {@return the name for people, lower case} */
  public String words() {
    return words;
  }
}
