/** The programme of a firing: segments, profiles, and the stages of a route with their packing. */
@NullMarked
package dev.kilnledger.thermal.profile;

import org.jspecify.annotations.NullMarked;
