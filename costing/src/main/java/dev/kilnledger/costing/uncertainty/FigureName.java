package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.Stage;
import org.joda.money.CurrencyUnit;

/** The names by which inputs and figures of a plan find each other. */
final class FigureName {
  private FigureName() {}

  static String price(String item) {
    return "price of " + item;
  }

  /** The price of an offer of a plan; where an item has several, supplier and pack are told. */
  static String price(LedgerPlan plan, Offer offer) {
    if (plan.prices().offersOf(offer.item()).size() > 1) {
      return price(offer.item() + " by " + offer.supplier() + " in " + offer.content());
    }
    boolean several =
        plan.shipping().stream().filter(order -> order.item().equals(offer.item())).count() > 1;
    return price(several ? offer.item() + " by " + offer.supplier() : offer.item());
  }

  static String supplier(String supplier) {
    return "prices of supplier " + supplier;
  }

  static String exchangeRate(CurrencyUnit base) {
    return "exchange rate from " + base;
  }

  static String partYield(Stage stage) {
    return stage.words() + " yield";
  }

  static String chargeYield(Stage stage) {
    return "charge yield of " + stage.words();
  }

  static String life(String item) {
    return "life of " + item;
  }

  static String quantity(String item) {
    return "quantity of " + item;
  }

  static String quantity(String item, Driver driver) {
    return "quantity of " + item + " for each " + driver.word();
  }

  static String fill(String item) {
    return "fill of " + item;
  }

  static String loss(String item) {
    return "loss of " + item;
  }

  static String amount(Driver driver) {
    return driver.word();
  }
}
