/**
 * What a workshop owns: printer and nozzle, kiln, crucible, supply circuit; and what goes into a
 * crucible: {@link dev.kilnledger.core.equipment.PatternArranger} lays {@link
 * dev.kilnledger.core.equipment.ChargePart parts} into a {@link
 * dev.kilnledger.core.equipment.Cavity}, and {@link dev.kilnledger.core.equipment.EquipmentCheck}
 * tells what does not fit.
 */
@NullMarked
package dev.kilnledger.core.equipment;

import org.jspecify.annotations.NullMarked;
