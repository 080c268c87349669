/**
 * Formulas of cost accounting: depreciation, machine-hour rates, capital recovery, learning curves,
 * and what yield does to the cost of a good part.
 */
@NullMarked
package dev.kilnledger.costing.accounting;

import org.jspecify.annotations.NullMarked;
