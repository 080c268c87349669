/** Where a figure comes from: its source, the source's standing, and the span it may lie in. */
@NullMarked
package dev.kilnledger.core.source;

import org.jspecify.annotations.NullMarked;
