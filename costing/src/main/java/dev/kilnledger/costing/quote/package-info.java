/**
 * What a customer is asked for parts. {@link dev.kilnledger.costing.quote.CostPlusQuoter} makes a
 * {@link dev.kilnledger.costing.quote.Quote} of costs by {@link
 * dev.kilnledger.costing.quote.QuoteTerms}: uplift, quantity breaks, minimum charge, tax and
 * rounding, each rounding on record. {@link dev.kilnledger.costing.quote.LargestRemainder} splits
 * sums so that they add up.
 */
@NullMarked
package dev.kilnledger.costing.quote;

import org.jspecify.annotations.NullMarked;
