/**
 * What a customer is asked for parts: price from cost, tax, rounding, and the splitting of sums.
 */
@NullMarked
package dev.kilnledger.costing.quote;

import org.jspecify.annotations.NullMarked;
