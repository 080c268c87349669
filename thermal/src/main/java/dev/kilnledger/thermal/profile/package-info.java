/**
 * The programme of a firing. {@link dev.kilnledger.thermal.profile.Profile#from} builds a profile
 * of ramps, holds and coolings; a {@link dev.kilnledger.thermal.profile.FiringStage} adds packing
 * and getter to it, and a {@link dev.kilnledger.thermal.profile.FiringRoute} is debinding and
 * sintering one after the other. Profiles print as the table that is typed into a controller.
 */
@NullMarked
package dev.kilnledger.thermal.profile;

import org.jspecify.annotations.NullMarked;
