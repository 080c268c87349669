/** What a firing takes in energy and power, line by line, and what of it the ledger needs. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.thermal.energy;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
