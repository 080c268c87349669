/**
 * From how many parts on one way of having them costs no more than another: make, buy, invest.
 * {@link dev.kilnledger.costing.breakeven.BreakEven} compares two plans, one of which may be an
 * {@link dev.kilnledger.costing.breakeven.OutsideOffer}, and answers with a {@link
 * dev.kilnledger.costing.breakeven.Crossing}: the first number of parts and the one from which it
 * holds for good, or never. {@link dev.kilnledger.costing.breakeven.Substitution} asks it of two
 * items that can replace each other.
 */
@NullMarked
package dev.kilnledger.costing.breakeven;

import org.jspecify.annotations.NullMarked;
