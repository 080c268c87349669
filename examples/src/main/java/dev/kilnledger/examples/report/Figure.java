package dev.kilnledger.examples.report;

import java.util.List;
import java.util.function.Function;

/**
 * A picture with its words.
 *
 * @param id its name in links, lower case with hyphens
 * @param title what it shows, in a few words
 * @param caption what is seen, in numbers
 * @param description how it is to be read, for who cannot see it
 * @param drawing its panels, from top to bottom, for a format
 */
record Figure(
    String id,
    String title,
    String caption,
    String description,
    Function<Format, List<Panel>> drawing) {}
