package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.BigMoney;

/** What a supplier asks for sending an order, as terms and as an offer of one order. */
final class Freight {
  final ShippingTerms terms;
  final Offer order;

  private Freight(ShippingTerms terms, Offer order) {
    this.terms = terms;
    this.order = order;
  }

  /** The freights of a plan that cost something: those it states, then those of its prices. */
  static List<Freight> of(LedgerPlan plan) {
    List<Freight> freights = new ArrayList<>();
    for (Offer order : plan.shipping()) {
      freights.add(
          new Freight(
              ShippingTerms.builder()
                  .supplier(order.supplier())
                  .charge(order.price())
                  .tax(order.tax())
                  .taxRate(order.taxRate())
                  .source(order.source())
                  .build(),
              order));
    }
    for (ShippingTerms terms : plan.prices().shipping()) {
      freights.add(
          new Freight(
              terms,
              Offer.builder()
                  .item("shipping by " + terms.supplier())
                  .supplier(terms.supplier())
                  .content(Amounts.ratio(1))
                  .price(terms.charge())
                  .tax(terms.tax())
                  .taxRate(terms.taxRate())
                  .source(terms.source())
                  .build()));
    }
    return freights.stream().filter(freight -> freight.terms.charge().isPositive()).toList();
  }

  String supplier() {
    return terms.supplier();
  }

  boolean isPaidOn(BigMoney goods) {
    return terms.chargeOn(goods).isPositive();
  }

  /** What an order has to cost to be charged for, in the words of a formula. */
  String condition() {
    return terms.freeFrom().map(value -> " whose goods are worth less than " + value).orElse("");
  }
}
