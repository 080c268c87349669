package dev.kilnledger.examples.catalogue;

import java.util.List;

/**
 * One record of comma-separated values.
 *
 * @param line the line it starts in, from 1
 * @param end how many bytes of the file it and all before it take
 * @param cells its cells, unquoted
 * @param problem what is wrong with its form; empty where nothing is
 */
record CsvRecord(long line, long end, List<String> cells, String problem) {}
