/**
 * The gas around the part: which oxides carbon can undo, how much of it the air in the crucible
 * takes, and what reaches the room.
 */
@NullMarked
package dev.kilnledger.thermal.atmosphere;

import org.jspecify.annotations.NullMarked;
