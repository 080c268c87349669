/** What a ledger needs to know of one firing. */
@NullMarked
package dev.kilnledger.core.firing;

import org.jspecify.annotations.NullMarked;
