/**
 * The whole job in one call. A {@link dev.kilnledger.costing.job.Job} holds part, feedstock,
 * outfit, route and prices; {@link dev.kilnledger.costing.job.WholeJob} answers it with a {@link
 * dev.kilnledger.costing.job.JobAnswer}: passage, charge, forecast, findings, cautions and
 * statement. {@link dev.kilnledger.costing.job.JobExplainer} opens any figure of it down to its
 * sources.
 */
@NullMarked
package dev.kilnledger.costing.job;

import org.jspecify.annotations.NullMarked;
