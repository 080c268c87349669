/**
 * How the powder becomes dense: master sintering curves, their fit to a user's own runs, forecasts
 * with a band, the hold that reaches a density, and the limits that melting sets.
 */
@NullMarked
package dev.kilnledger.thermal.densification;

import org.jspecify.annotations.NullMarked;
