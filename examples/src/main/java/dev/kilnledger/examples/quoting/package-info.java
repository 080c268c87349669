/**
 * A quoting endpoint on the JDK's own server: {@link dev.kilnledger.examples.quoting.QuoteServer}
 * takes a job as JSON and answers its cost and findings; {@link
 * dev.kilnledger.examples.quoting.ServerLimits} bounds what it takes on.
 */
@NullMarked
package dev.kilnledger.examples.quoting;

import org.jspecify.annotations.NullMarked;
