/** The forms of profiles, routes and everything else a firing is computed from. */
@NullMarked
package dev.kilnledger.thermal.document.internal;

import org.jspecify.annotations.NullMarked;
