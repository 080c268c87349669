/** How many parts have to be started so that enough of them come out good. */
@NullMarked
package dev.kilnledger.costing.yield;

import org.jspecify.annotations.NullMarked;
