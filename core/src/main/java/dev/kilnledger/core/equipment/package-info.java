/** What a workshop owns: printer and nozzle, kiln, crucible, supply circuit. */
@NullMarked
package dev.kilnledger.core.equipment;

import org.jspecify.annotations.NullMarked;
