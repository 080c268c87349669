/** What items cost: offers of packs or by measure, and the price book that holds them. */
@NullMarked
package dev.kilnledger.costing.offer;

import org.jspecify.annotations.NullMarked;
