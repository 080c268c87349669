/** Where a figure comes from: its source, the source's standing, and the span it may lie in. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.core.source;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
