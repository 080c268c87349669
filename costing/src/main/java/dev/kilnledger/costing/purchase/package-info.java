/**
 * What to buy, and when. {@link dev.kilnledger.costing.purchase.PurchasePlanner} covers needs at
 * least cost over packs, breaks, suppliers and shipping, exactly; {@link
 * dev.kilnledger.costing.purchase.EconomicOrderQuantity} sizes a repeated order, and {@link
 * dev.kilnledger.costing.purchase.WagnerWhitin} decides between buying now and later.
 */
@NullMarked
package dev.kilnledger.costing.purchase;

import org.jspecify.annotations.NullMarked;
