/**
 * Formulas of cost accounting: depreciation ({@link
 * dev.kilnledger.costing.accounting.StraightLineDepreciation} and others), {@link
 * dev.kilnledger.costing.accounting.MachineHourRate}, {@link
 * dev.kilnledger.costing.accounting.CapitalRecovery}, learning curves ({@link
 * dev.kilnledger.costing.accounting.WrightLearningCurve}, {@link
 * dev.kilnledger.costing.accounting.CrawfordLearningCurve}), and {@link
 * dev.kilnledger.costing.accounting.ProcessChain} for what yield does to the cost of a good part.
 */
@NullMarked
package dev.kilnledger.costing.accounting;

import org.jspecify.annotations.NullMarked;
