/**
 * What the first, the second and the n-th part cost, line by line, and with which caveats.
 *
 * <p>A {@link dev.kilnledger.costing.ledger.LedgerPlan} says what is needed, what it costs and by
 * which rules that is counted; the {@link dev.kilnledger.costing.ledger.Ledger} answers with a
 * {@link dev.kilnledger.costing.ledger.Statement} and its {@link
 * dev.kilnledger.costing.ledger.ShoppingList}, the {@linkplain
 * dev.kilnledger.costing.ledger.CostStep staircase} part by part, and two {@linkplain
 * dev.kilnledger.costing.ledger.Loadings loadings} of the kiln side by side. {@link
 * dev.kilnledger.costing.ledger.ExactCash} is the same cash as whole numbers, for searches and
 * simulations.
 */
@NullMarked
package dev.kilnledger.costing.ledger;

import org.jspecify.annotations.NullMarked;
