/** Whether a firing can come out: rules that each answer with findings, and their report. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.thermal.check;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
