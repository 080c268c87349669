/**
 * Costs opened down to lines, packs, prices, inputs and sources, as trees of their own lines:
 * {@link dev.kilnledger.costing.explanation.StatementExplainer}, {@link
 * dev.kilnledger.costing.explanation.CrossingExplainer}, {@link
 * dev.kilnledger.costing.explanation.QuoteExplainer} and {@link
 * dev.kilnledger.costing.explanation.PurchaseExplainer}. What a whole job stands on, its physics
 * included, is opened by {@code costing.job}.
 */
@NullMarked
package dev.kilnledger.costing.explanation;

import org.jspecify.annotations.NullMarked;
