package dev.kilnledger.examples.sheet;

import java.util.function.Function;

/**
 * A column and how its cells follow from the rows.
 *
 * @param <T> the rows
 * @param name what stands in it
 * @param unit its unit as people write it; empty where it has none
 * @param code its unit as UCUM or ISO 4217 write it; empty where it has none
 * @param numeric whether it holds numbers
 * @param cell what stands in a row
 */
record Column<T>(String name, String unit, String code, boolean numeric, Function<T, Cell> cell) {}
