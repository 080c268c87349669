/**
 * What a ledger needs to know of one firing: {@link dev.kilnledger.core.firing.FiringUse} carries
 * how long it takes, its energy, the getter it burns and how many parts it holds, forecast by
 * {@code thermal} or measured by the user.
 */
@NullMarked
package dev.kilnledger.core.firing;

import org.jspecify.annotations.NullMarked;
