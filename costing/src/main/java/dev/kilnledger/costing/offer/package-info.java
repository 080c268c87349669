/** What items cost: offers of packs or by measure, and the price book that holds them. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.costing.offer;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
