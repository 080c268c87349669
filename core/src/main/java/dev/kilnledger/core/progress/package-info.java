/** How far long work has come, for whoever waits for it. */
@NullMarked
package dev.kilnledger.core.progress;

import org.jspecify.annotations.NullMarked;
