/** What a firing takes in energy and power, line by line, and what of it the ledger needs. */
@NullMarked
package dev.kilnledger.thermal.energy;

import org.jspecify.annotations.NullMarked;
