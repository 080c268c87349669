/**
 * The gas around the part. {@link dev.kilnledger.thermal.atmosphere.CarbonAtmosphere} tells which
 * oxides hot carbon can undo and from which temperature on, {@link
 * dev.kilnledger.thermal.atmosphere.GetterBalance} how much of it the air in the crucible takes,
 * and {@link dev.kilnledger.thermal.atmosphere.WellMixedRoom} what of its carbon monoxide reaches
 * the room. Equilibria rest on {@link dev.kilnledger.thermal.atmosphere.Thermochemistry}. It is
 * planning: no figure here replaces an alarm or a measurement.
 */
@NullMarked
package dev.kilnledger.thermal.atmosphere;

import org.jspecify.annotations.NullMarked;
