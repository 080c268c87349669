/**
 * What to buy, and when: the cheapest cover of a need over packs, breaks, suppliers and shipping,
 * the size of a repeated order, and buying now or later.
 */
@NullMarked
package dev.kilnledger.costing.purchase;

import org.jspecify.annotations.NullMarked;
