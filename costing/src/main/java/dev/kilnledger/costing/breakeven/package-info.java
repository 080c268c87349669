/** From how many parts on one way of having them costs no more than another: make, buy, invest. */
@NullMarked
package dev.kilnledger.costing.breakeven;

import org.jspecify.annotations.NullMarked;
