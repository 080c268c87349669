/**
 * Costs opened down to lines, packs, prices, inputs and sources: statements, break-evens, quotes
 * and purchase plans as trees of their own lines. What a whole job stands on is opened by {@code
 * costing.job}.
 */
@NullMarked
package dev.kilnledger.costing.explanation;

import org.jspecify.annotations.NullMarked;
