/**
 * What a firing takes in energy and power, line by line. {@link
 * dev.kilnledger.thermal.energy.QuasiSteadyEnergy} is the quick model of the wall, {@link
 * dev.kilnledger.thermal.energy.DutyFactorEnergy} the rule of thumb for a kiln whose wall is not
 * known; {@link dev.kilnledger.thermal.energy.RouteEnergy} sums the stages into the {@code
 * FiringUse} that the ledger needs. {@code thermal.kiln} follows the kiln over time.
 */
@NullMarked
package dev.kilnledger.thermal.energy;

import org.jspecify.annotations.NullMarked;
