package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.Stage;

/** The stages of a trial, and how often each event happens for each good part in the long run. */
final class LongRun {
  final StageDraw print;
  final StageDraw debind;
  final StageDraw sinter;
  private final boolean varies;
  private final double partsPerFiring;

  LongRun(LedgerPlan plan, Binding binding) {
    print = new StageDraw(Stage.PRINT, plan, binding);
    debind = new StageDraw(Stage.DEBIND, plan, binding);
    sinter = new StageDraw(Stage.SINTER, plan, binding);
    varies = print.varies() || debind.varies() || sinter.varies();
    partsPerFiring = plan.partsPerFiring();
    if (!varies) {
      take(new double[0]);
    }
  }

  /**
   * How many parts are started for each good one in the long run, with every input at its median.
   */
  static double startsPerPart(UncertainPlan plan) {
    LongRun stages = new LongRun(plan.plan(), new DrawnPlan(plan).binding());
    stages.start(Law.medians(plan.inputs()));
    return stages.perPart(Driver.PART);
  }

  boolean varies() {
    return varies;
  }

  void start(double[] drawn) {
    if (varies) {
      take(drawn);
    }
  }

  private void take(double[] drawn) {
    print.start(drawn);
    debind.start(drawn);
    sinter.start(drawn);
    double brown = sinter.wantedBefore(1);
    double green = debind.wantedBefore(brown);
    print.wantedBefore(green);
  }

  double perPart(Driver driver) {
    return switch (driver.event()) {
      case GOOD_PART -> 1;
      case SINTERED_PART -> sinter.perPart;
      case FIRING -> sinter.perPart / partsPerFiring;
      case DEBOUND_PART -> debind.perPart;
      case DEBINDING -> debind.perPart / partsPerFiring;
      default -> print.perPart;
    };
  }
}
