package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.ratio;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import java.util.List;
import org.joda.money.CurrencyUnit;

/** Puts a small plan together, item by item; supplier A sells what names no other. */
final class Bench {
  final PriceBook.Builder prices = PriceBook.builder().currency(CurrencyUnit.EUR).asOf(TODAY);
  final LedgerPlan.Builder plan = LedgerPlan.builder().partsPerFiring(1);

  static Offer.Builder pack(String item, double content, String price) {
    return offer(item, grams(content), price);
  }

  Bench offers(Offer.Builder... offers) {
    for (Offer.Builder one : offers) {
      prices.addOffers(one.build());
    }
    return this;
  }

  Bench uses(Resource resource) {
    plan.addResources(resource);
    return this;
  }

  /** Packs of one offer, of which each part takes so many grams. */
  Bench packs(String item, double content, String price, double perPart) {
    return offers(pack(item, content, price)).takes(item, perPart);
  }

  Bench takes(String item, double perPart) {
    return uses(consumed(item, Driver.PART, grams(perPart)).build());
  }

  /** What is bought once, from supplier A. */
  Bench machine(String item, String price) {
    return offers(offer(item, ratio(1), price)).uses(Durable.toBuy(item));
  }

  static ShippingTerms.Builder terms(String supplier, String charge) {
    return ShippingTerms.builder()
        .supplier(supplier)
        .charge(eur(charge))
        .tax(Tax.INCLUDED)
        .source(INVENTED);
  }

  /** What each order to supplier A costs. */
  Bench sent(String charge) {
    return sent(terms("supplier A", charge));
  }

  Bench sent(ShippingTerms.Builder terms) {
    prices.addShipping(terms.build());
    return this;
  }

  LedgerPlan plan() {
    return plan.prices(prices.build()).build();
  }

  LedgerPlan planWith(Overhead overhead) {
    plan.addOverheads(overhead);
    return plan();
  }

  LedgerPlan planned() {
    return plan.prices(prices.build()).buying(BuyingRule.PLANNED_FOR_N).build();
  }

  /** The orders as needed of the first supplier who charges. */
  SupplierOrders orders() {
    return orders(plan()).get(0);
  }

  static List<SupplierOrders> orders(LedgerPlan plan) {
    return ((AsNeeded) plan.purchases().buying).orders();
  }
}
