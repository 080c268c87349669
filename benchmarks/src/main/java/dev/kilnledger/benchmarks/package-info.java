/** Measurements of the library against hand-written code and peers on the same work. */
@NullMarked
package dev.kilnledger.benchmarks;

import org.jspecify.annotations.NullMarked;
