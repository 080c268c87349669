/**
 * A batch that prices a catalogue: {@link dev.kilnledger.examples.catalogue.CatalogueBatch} streams
 * parts from comma-separated values, prices them side by side and writes a line for each, good or
 * bad; {@link dev.kilnledger.examples.catalogue.PricedCatalogue} runs it for the window workshop.
 */
@NullMarked
package dev.kilnledger.examples.catalogue;

import org.jspecify.annotations.NullMarked;
