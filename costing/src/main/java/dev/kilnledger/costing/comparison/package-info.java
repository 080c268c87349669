/**
 * Scenarios side by side: what differs, line by line and effect by effect, and which inputs and
 * rules make it differ. {@link dev.kilnledger.costing.comparison.JobComparer} compares answers to
 * jobs, {@link dev.kilnledger.costing.comparison.StatementComparer} statements; the first {@link
 * dev.kilnledger.costing.comparison.Scenario} is what the others are held against.
 */
@NullMarked
package dev.kilnledger.costing.comparison;

import org.jspecify.annotations.NullMarked;
