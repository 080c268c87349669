package dev.kilnledger.costing.offer;

import dev.kilnledger.core.finding.FindingCode;

/** What is checked about prices; a published name keeps its meaning. */
public enum PriceFinding implements FindingCode {
  /** A price carries no date, or is older than the book's limit. */
  PRICE_AGE("price-age"),
  /** An offer does not hold on the book's day. */
  OFFER_VALIDITY("offer-validity"),
  /** A price does not say whether it holds the tax. */
  TAX_BASIS("tax-basis"),
  /** What a supplier asks for sending is not known. */
  SHIPPING_TERMS("shipping-terms"),
  /** A price was converted at a rate that is older than the book's limit. */
  EXCHANGE_RATE_AGE("exchange-rate-age");

  private final String code;

  PriceFinding(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
