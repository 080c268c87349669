/**
 * The temperature a part has felt, and the integral of an activation energy along it, on which
 * burn-out and densification stand.
 */
@NullMarked
package dev.kilnledger.thermal.kinetics;

import org.jspecify.annotations.NullMarked;
