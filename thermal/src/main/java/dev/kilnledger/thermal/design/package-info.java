/**
 * Profiles that pass every check and are as fast as the limits allow.
 *
 * <p>A {@link dev.kilnledger.thermal.design.DesignTask} tells the firing and how its controller is
 * told a programme; the {@link dev.kilnledger.thermal.design.ProfileDesigner} looks for the fastest
 * route among the programmes that the controller takes, with a check of the firing as its only
 * judge; the {@link dev.kilnledger.thermal.design.ProfileDesign} tells the route, what keeps each
 * segment from being faster, and what no profile mends. {@link
 * dev.kilnledger.thermal.design.ProfileComparison} sets it beside a route that the user has, {@link
 * dev.kilnledger.thermal.design.RuleOfThumb} gives profiles to begin with.
 */
@NullMarked
package dev.kilnledger.thermal.design;

import org.jspecify.annotations.NullMarked;
