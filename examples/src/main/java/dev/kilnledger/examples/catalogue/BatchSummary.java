package dev.kilnledger.examples.catalogue;

import org.joda.money.BigMoney;

/**
 * What became of a catalogue.
 *
 * @param priced how many rows were priced
 * @param refused how many rows could not be read or priced
 * @param throughLine the line of the catalogue in which the last row written starts
 * @param complete whether the end was reached; if not, the batch was interrupted
 * @param usage what one of each part priced uses up in the long run
 */
public record BatchSummary(
    long priced, long refused, long throughLine, boolean complete, BigMoney usage) {}
