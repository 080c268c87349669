/**
 * What items cost: offers of packs or by measure, the terms of suppliers, exchange rates, and the
 * price book that holds them.
 */
@NullMarked
package dev.kilnledger.costing.offer;

import org.jspecify.annotations.NullMarked;
