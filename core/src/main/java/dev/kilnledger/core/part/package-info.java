/** The part and its passage from green over brown to sintered. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.core.part;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
