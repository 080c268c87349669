/**
 * What all readers of files share. A {@link dev.kilnledger.core.reading.ByteSource} gives the
 * bytes, as often as they are asked for; what is wrong with them is told as a list of {@link
 * dev.kilnledger.core.reading.InputProblem}, each with its place, what stands there and what would
 * be accepted, in one {@link dev.kilnledger.core.reading.UnreadableInputException}.
 */
@NullMarked
package dev.kilnledger.core.reading;

import org.jspecify.annotations.NullMarked;
