/** From how many parts on making them costs no more than buying them. */
@NullMarked
package dev.kilnledger.costing.breakeven;

import org.jspecify.annotations.NullMarked;
