/**
 * Alloys, binders and the feedstock made of them, packing powders, getters and crucible materials.
 */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.core.material;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
