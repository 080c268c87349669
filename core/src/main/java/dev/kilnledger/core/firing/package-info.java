/** What a ledger needs to know of one firing. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.core.firing;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
