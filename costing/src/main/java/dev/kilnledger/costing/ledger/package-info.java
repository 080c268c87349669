/** What the first, the second and the n-th part cost, line by line, and with which caveats. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.costing.ledger;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
