/** The kinds of quantity the trade measures and that JSR 385 and its SI companion do not name. */
@NullMarked
package dev.kilnledger.units.quantity;

import org.jspecify.annotations.NullMarked;
