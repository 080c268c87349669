/**
 * The temperature a part has felt, {@link dev.kilnledger.thermal.kinetics.TemperatureHistory}, and
 * the integrals of an activation energy along it, {@link
 * dev.kilnledger.thermal.kinetics.ArrheniusIntegral}, in closed form on each straight line.
 * Burn-out and densification stand on them.
 */
@NullMarked
package dev.kilnledger.thermal.kinetics;

import org.jspecify.annotations.NullMarked;
