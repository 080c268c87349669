/**
 * How many parts have to be started so that enough of them come out good. {@link
 * dev.kilnledger.costing.yield.Failures} says what fails at which {@link
 * dev.kilnledger.costing.yield.Stage} and what is done then; {@link
 * dev.kilnledger.costing.yield.BinomialYield} finds the starts for a confidence.
 */
@NullMarked
package dev.kilnledger.costing.yield;

import org.jspecify.annotations.NullMarked;
