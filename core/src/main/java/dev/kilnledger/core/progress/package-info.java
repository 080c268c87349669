/**
 * How far long work has come, for whoever waits for it. Pass a {@link
 * dev.kilnledger.core.progress.Progress} to whatever takes one; {@link
 * dev.kilnledger.core.progress.RemainingTime} makes an estimate of it. Interrupting the thread that
 * works stops it promptly, and what was computed by then is kept.
 */
@NullMarked
package dev.kilnledger.core.progress;

import org.jspecify.annotations.NullMarked;
