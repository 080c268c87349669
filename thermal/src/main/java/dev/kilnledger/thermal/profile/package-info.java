/** The programme of a firing: segments, profiles, and the stages of a route with their packing. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.thermal.profile;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
