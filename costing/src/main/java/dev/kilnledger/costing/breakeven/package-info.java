/** From how many parts on making them costs no more than buying them. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.costing.breakeven;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
