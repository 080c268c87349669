/** The kiln as a heat balance: what its wall takes, what its power can follow, how it cools. */
@NullMarked
package dev.kilnledger.thermal.kiln;

import org.jspecify.annotations.NullMarked;
