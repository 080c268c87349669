/**
 * Planning a charge: how the parts stand in the crucible, how much packing and getter goes with
 * them at each stage, and which crucible is the smallest that does.
 *
 * <p>A {@link dev.kilnledger.thermal.load.LoadTask} says what is wanted, {@link
 * dev.kilnledger.thermal.load.LoadPlanner} answers with a {@link
 * dev.kilnledger.thermal.load.LoadPlan}, whose route is ready to be checked and fired.
 */
@NullMarked
package dev.kilnledger.thermal.load;

import org.jspecify.annotations.NullMarked;
