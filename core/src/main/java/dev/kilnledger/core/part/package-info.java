/**
 * The part and its passage from green over brown to sintered. State a {@link
 * dev.kilnledger.core.part.Part}, and {@link dev.kilnledger.core.part.MassBalancePassage} answers
 * with a {@link dev.kilnledger.core.part.Passage}: masses, volumes, pores, shrinkage, and how much
 * larger to print it. Measurements sharpen it: {@link
 * dev.kilnledger.core.part.StudentShrinkageCalibration} from coupons, {@link
 * dev.kilnledger.core.part.ArchimedesWeighing} for the density, {@link
 * dev.kilnledger.core.part.DebindingMassLossCheck} for the binder left. {@link
 * dev.kilnledger.core.part.SelfWeightCheck} tells what may sag or crack under its own weight.
 */
@NullMarked
package dev.kilnledger.core.part;

import org.jspecify.annotations.NullMarked;
