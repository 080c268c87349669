/**
 * What items cost. An {@link dev.kilnledger.costing.offer.Offer} is a pack, or a price by measure,
 * of one item from one supplier; a {@link dev.kilnledger.costing.offer.PriceBook} holds offers in
 * one currency on one date, with {@link dev.kilnledger.costing.offer.ShippingTerms}. Offers in
 * other currencies come in by dated {@link dev.kilnledger.costing.offer.ExchangeRates}. {@link
 * dev.kilnledger.costing.offer.PriceCheck} tells which prices are undated, old or not in force.
 */
@NullMarked
package dev.kilnledger.costing.offer;

import org.jspecify.annotations.NullMarked;
