/** The answer to a job as one page of HTML with pictures, for people to look at. */
@NullMarked
package dev.kilnledger.examples.report;

import org.jspecify.annotations.NullMarked;
