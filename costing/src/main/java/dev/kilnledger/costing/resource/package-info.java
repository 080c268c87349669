/** What a part uses up, and how: bought once, worn, topped up, run down or consumed. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.costing.resource;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
