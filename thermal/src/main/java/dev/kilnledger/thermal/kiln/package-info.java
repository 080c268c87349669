/**
 * The kiln as a heat balance over time: {@link dev.kilnledger.thermal.kiln.TransientKiln} runs a
 * programme on it and answers with a {@link dev.kilnledger.thermal.kiln.KilnRun}, which tells what
 * the wall takes, where the power cannot follow and how the kiln cools until it may be opened.
 * {@link dev.kilnledger.thermal.kiln.SoakControl} and {@link
 * dev.kilnledger.thermal.kiln.Thermocouple} say how the controller counts and how far its sensor
 * may be off.
 */
@NullMarked
package dev.kilnledger.thermal.kiln;

import org.jspecify.annotations.NullMarked;
