/**
 * A figure opened down to its inputs, formulas and sources, as a tree that results make of their
 * own lines, with its text and a walk through it.
 */
@NullMarked
package dev.kilnledger.core.explanation;

import org.jspecify.annotations.NullMarked;
