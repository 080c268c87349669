package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.yield.AfterFailure;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;

/** One stage as a trial has it: its yields, and what has passed it. */
final class StageDraw {
  final Stage stage;
  final DrawnFigure parts;
  final DrawnFigure charges;
  final boolean scrapped;

  /** The share of the parts that pass, in this trial. */
  double partYield;

  /** The share of the charges that are not lost, in this trial. */
  double chargeYield;

  /** Parts that have passed, good or not. */
  double passed;

  /** Charges that were fired, lost or not. */
  double fired;

  /** Parts that pass for each good one, in the long run. */
  double perPart;

  StageDraw(Stage stage, LedgerPlan plan, Binding binding) {
    StageYield stated = plan.failures().at(stage);
    this.stage = stage;
    this.parts = binding.figure(FigureName.partYield(stage));
    // Printing has no charges; their yield is 1.
    this.charges = binding.figure(FigureName.chargeYield(stage), stated.charges());
    this.scrapped = stated.afterFailure() == AfterFailure.SCRAPPED;
  }

  boolean varies() {
    return parts.varies() || charges.varies();
  }

  void start(double[] drawn) {
    partYield = parts.si(drawn);
    chargeYield = charges.si(drawn);
  }

  /** What the stage before has to pass for each good part, in the long run. */
  double wantedBefore(double wanted) {
    perPart = wanted / (partYield * chargeYield);
    return scrapped ? perPart : wanted;
  }
}
