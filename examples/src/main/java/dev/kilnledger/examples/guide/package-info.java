/**
 * What the guides show: {@link dev.kilnledger.examples.guide.DataPage} writes the page of the
 * built-in data, and the other classes are the programs of the guides.
 */
@NullMarked
package dev.kilnledger.examples.guide;

import org.jspecify.annotations.NullMarked;
