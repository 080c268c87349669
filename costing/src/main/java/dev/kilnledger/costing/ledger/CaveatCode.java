package dev.kilnledger.costing.ledger;

import java.util.Locale;

/** What a statement leaves out or takes for granted; a published name keeps its meaning. */
public enum CaveatCode {
  /** Shipping is not included. */
  SHIPPING_EXCLUDED,
  /** Duty is not included. */
  DUTY_EXCLUDED,
  /** Energy is not included. */
  ENERGY_EXCLUDED,
  /** The energy of printing is not included. */
  PRINTING_ENERGY_EXCLUDED,
  /** Labour is not included. */
  LABOUR_EXCLUDED,
  /** Overhead is not included. */
  OVERHEAD_EXCLUDED,
  /** The cost of capital is not included. */
  CAPITAL_EXCLUDED,
  /** Failures and trial parts are not included. */
  FAILURES_EXCLUDED,
  /** Finishing is not included. */
  FINISHING_EXCLUDED,
  /** Disposal is not included. */
  DISPOSAL_EXCLUDED,
  /** Safety equipment is not included. */
  SAFETY_EQUIPMENT_EXCLUDED,
  /** Prices come without tax, and none is known to hold it. */
  TAX_EXCLUDED,
  /** Some prices do not say whether they hold the tax. */
  TAX_UNKNOWN,
  /** Prices with and without tax are summed. */
  TAX_MIXED,
  /** Some prices carry no date. */
  PRICE_UNDATED,
  /** Some prices are older than the price book's limit. */
  PRICE_OLD,
  /** Prices were converted at an exchange rate. */
  EXCHANGE_RATE_ASSUMED,
  /** The exchange rate of some prices is older than the price book's limit. */
  EXCHANGE_RATE_OLD,
  /** Some offers of an item do not serve the need and are left out. */
  OFFERS_LEFT_OUT,
  /** Equipment that the work is done with is neither priced nor marked as owned. */
  EQUIPMENT_NOT_COVERED,
  /** Equipment is taken to last and is not in the usage. */
  EQUIPMENT_NOT_IN_USAGE,
  /** How long something lasts is an assumption. */
  LIFE_ASSUMED,
  /** A life is longer than anything has been seen to last. */
  LIFE_EXTRAPOLATED,
  /** What is bought keeps less long than it lasts at the stated pace. */
  SHELF_LIFE_AT_RISK,
  /** What is bought keeps for a limited time, and at which pace it is used is not stated. */
  SHELF_LIFE_UNDETERMINED,
  /** How much of a fill is lost is an assumption. */
  LOSS_ASSUMED,
  /** How many parts come out good is an assumption. */
  YIELD_ASSUMED,
  /** Something is taken to be owned and costs nothing. */
  OWNERSHIP_ASSUMED,
  /** The last charge is not full. */
  CHARGE_NOT_FULL,
  /** Charges that are not full are taken to be shared with other work. */
  CHARGE_SHARED,
  /** Equipment is charged by depreciation and not by what is paid for it. */
  DEPRECIATION_NOT_CASH,
  /** What is left over is not deducted. */
  LEFTOVERS_NOT_VALUED;

  /** {@return the stable name, lower case with hyphens, such as {@code charge-not-full}} */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
