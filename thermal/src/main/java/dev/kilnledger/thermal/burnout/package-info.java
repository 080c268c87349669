/**
 * How the binder leaves: kinetics of its decomposition, burn-out along a temperature history, the
 * rates a wall stands, the fastest profile within them, and kinetics from thermogravimetry.
 */
@NullMarked
package dev.kilnledger.thermal.burnout;

import org.jspecify.annotations.NullMarked;
