/** The whole job in one call: from part, feedstock, outfit, route and prices to an answer. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.costing.job;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
