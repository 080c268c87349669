/**
 * What a part programme in G-code extrudes: {@link dev.kilnledger.core.gcode.GCodeReader} reads the
 * words of ISO 6983 and NIST RS274/NGC that tell it, in constant memory, and answers with a {@link
 * dev.kilnledger.core.gcode.PrintProgramme}.
 */
@NullMarked
package dev.kilnledger.core.gcode;

import org.jspecify.annotations.NullMarked;
