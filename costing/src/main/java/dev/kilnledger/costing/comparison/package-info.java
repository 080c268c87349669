/**
 * Scenarios side by side: what differs, line by line and effect by effect, and which inputs and
 * rules make it differ.
 */
@NullMarked
package dev.kilnledger.costing.comparison;

import org.jspecify.annotations.NullMarked;
