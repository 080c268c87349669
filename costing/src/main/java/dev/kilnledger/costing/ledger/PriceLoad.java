package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import java.math.MathContext;

/** What overhead and tax make of a price, for simulations that count in doubles. */
public final class PriceLoad {
  private PriceLoad() {}

  /**
   * By what the price of an offer is multiplied when all surcharges on it are told together.
   *
   * @param offer an offer of the plan
   * @param plan the plan with its overheads and tax
   * @return the factor, more than zero
   */
  public static double factor(Offer offer, LedgerPlan plan) {
    return Surcharges.factor(offer, plan)
        .divide(Surcharges.divisor(offer, plan), MathContext.DECIMAL128)
        .doubleValue();
  }
}
