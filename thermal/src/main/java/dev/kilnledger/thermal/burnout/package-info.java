/**
 * How the binder leaves. {@link dev.kilnledger.thermal.burnout.BinderKinetics} say how fast it
 * decomposes, {@link dev.kilnledger.thermal.burnout.BurnOut} follows it along a temperature
 * history, limits such as {@link dev.kilnledger.thermal.burnout.WallRateLimit} and {@link
 * dev.kilnledger.thermal.burnout.PorePressureLimit} say what a wall stands, and {@link
 * dev.kilnledger.thermal.burnout.FastestProfile} goes as fast as they allow. {@link
 * dev.kilnledger.thermal.burnout.KineticFit} makes kinetics of your own thermogravimetry; {@link
 * dev.kilnledger.thermal.burnout.PublishedKinetics} only bracket.
 */
@NullMarked
package dev.kilnledger.thermal.burnout;

import org.jspecify.annotations.NullMarked;
