/**
 * How the powder becomes dense. {@link dev.kilnledger.thermal.densification.SinteringCurveFit} fits
 * a master sintering curve to your own runs, {@link
 * dev.kilnledger.thermal.densification.Densification} forecasts a density with its band from it,
 * and {@link dev.kilnledger.thermal.densification.HoldToDensity} finds the hold that reaches one.
 * Without a curve {@link dev.kilnledger.thermal.densification.DensificationLimits} gives an
 * interval that says so, and the limits that melting sets.
 */
@NullMarked
package dev.kilnledger.thermal.densification;

import org.jspecify.annotations.NullMarked;
