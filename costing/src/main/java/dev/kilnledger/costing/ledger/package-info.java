/** What the first, the second and the n-th part cost, line by line, and with which caveats. */
@NullMarked
package dev.kilnledger.costing.ledger;

import org.jspecify.annotations.NullMarked;
