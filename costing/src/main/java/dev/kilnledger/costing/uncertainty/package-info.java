/**
 * How sure a cost is. {@link dev.kilnledger.costing.uncertainty.UncertainPlan} says what may vary
 * and by which {@link dev.kilnledger.costing.uncertainty.Distribution}; {@link
 * dev.kilnledger.costing.uncertainty.MonteCarlo} draws it through the whole ledger, {@link
 * dev.kilnledger.costing.uncertainty.FirstOrder} propagates what is smooth, and {@link
 * dev.kilnledger.costing.uncertainty.OneAtATime} and {@link
 * dev.kilnledger.costing.uncertainty.SobolAnalysis} tell which inputs matter. The seed is in the
 * result.
 */
@NullMarked
package dev.kilnledger.costing.uncertainty;

import org.jspecify.annotations.NullMarked;
