/**
 * Results as sheets of columns, to look at and to carry into a chart. A {@link
 * dev.kilnledger.examples.sheet.Sheet} is rows with columns and units; {@link
 * dev.kilnledger.examples.sheet.Sheets} makes sheets of the library's results, and {@link
 * dev.kilnledger.examples.sheet.Session} is what a JShell session prints and writes them with.
 */
@NullMarked
package dev.kilnledger.examples.sheet;

import org.jspecify.annotations.NullMarked;
