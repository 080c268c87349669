/** How heat gets through packing and part: what the core really feels of the programme. */
@NullMarked
package dev.kilnledger.thermal.conduction;

import org.jspecify.annotations.NullMarked;
