/**
 * A figure opened down to its inputs, formulas and sources: an {@link
 * dev.kilnledger.core.explanation.Explanation} is a tree that results make of their own lines, so
 * that what is explained is what was computed. Its {@code text} prints it to a depth, and {@code
 * grounds} lists what it rests on, the weakest source first.
 */
@NullMarked
package dev.kilnledger.core.explanation;

import org.jspecify.annotations.NullMarked;
