/** Runnable examples. Every one of them runs in the tests; their data is invented. */
@NullMarked
package dev.kilnledger.examples;

import org.jspecify.annotations.NullMarked;
