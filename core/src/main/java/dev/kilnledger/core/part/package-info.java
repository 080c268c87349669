/** The part and its passage from green over brown to sintered. */
@NullMarked
package dev.kilnledger.core.part;

import org.jspecify.annotations.NullMarked;
