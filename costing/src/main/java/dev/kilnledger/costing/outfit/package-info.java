/**
 * Which equipment to buy, keep and give up for the metals and parts wanted and the money there is.
 *
 * <p>An {@link dev.kilnledger.costing.outfit.OutfitCatalogue} lists options in groups, an {@link
 * dev.kilnledger.costing.outfit.Aim} is a part in a metal, and an {@link
 * dev.kilnledger.costing.outfit.OutfitQuestion} puts both beside prices and budgets. The {@link
 * dev.kilnledger.costing.outfit.OutfitPlanner} answers with an {@link
 * dev.kilnledger.costing.outfit.OutfitPlan}: every {@link dev.kilnledger.costing.outfit.Outfit}
 * that none beats in cost and capability at once, what each budget buys, why options are rejected,
 * and the way from one budget to the next.
 */
@NullMarked
package dev.kilnledger.costing.outfit;

import org.jspecify.annotations.NullMarked;
