/**
 * Price books, price lists, jobs and answers as documents.
 *
 * <p>Money stands as a decimal number in text beside the ISO 4217 code of its currency, so that no
 * reader makes a floating-point number of it. The names of the fields of an offer are those of
 * schema.org's UnitPriceSpecification where one fits: {@code price} and {@code priceCurrency} for
 * one {@code referenceQuantity}, {@code eligibleQuantity} for the packs of an order, {@code
 * validFrom}, {@code validThrough}, {@code valueAddedTaxIncluded}.
 *
 * <p>{@link dev.kilnledger.costing.document.JobDesk} answers a job document by an answer document
 * in one call.
 */
@NullMarked
package dev.kilnledger.costing.document;

import org.jspecify.annotations.NullMarked;
