/** What a workshop owns: printer and nozzle, kiln, crucible, supply circuit. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.core.equipment;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
