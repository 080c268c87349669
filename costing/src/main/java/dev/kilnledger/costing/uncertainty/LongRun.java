package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.AfterFailure;
import dev.kilnledger.costing.yield.Stage;

/** The yields of a trial, and how often each event happens for each good part in the long run. */
final class LongRun {
  final double[] partYield = new double[Stage.values().length];
  final double[] chargeYield = new double[Stage.values().length];
  private final DrawnFigure[] parts = new DrawnFigure[Stage.values().length];
  private final DrawnFigure[] charges = new DrawnFigure[Stage.values().length];
  private final boolean[] scrapped = new boolean[Stage.values().length];
  private final double[] perPart = new double[Driver.values().length];
  private final int partsPerFiring;
  private boolean varies;

  LongRun(LedgerPlan plan, Binding binding) {
    partsPerFiring = plan.partsPerFiring();
    for (Stage stage : Stage.values()) {
      int i = stage.ordinal();
      parts[i] = binding.figure(FigureName.partYield(stage));
      // Printing has no charges; their yield is 1.
      charges[i] =
          binding.figure(FigureName.chargeYield(stage), plan.failures().at(stage).charges());
      scrapped[i] = plan.failures().at(stage).afterFailure() == AfterFailure.SCRAPPED;
      varies |= parts[i].varies() || charges[i].varies();
    }
    if (!varies) {
      take(new double[0]);
    }
  }

  /** How many parts are started for each good one in the long run, with every input at its median. */
  static double startsPerPart(UncertainPlan plan) {
    LongRun yields = new LongRun(plan.plan(), new DrawnPlan(plan).binding());
    yields.start(Law.medians(plan.inputs()));
    return yields.perPart(Driver.PART);
  }

  boolean varies() {
    return varies;
  }

  DrawnFigure parts(Stage stage) {
    return parts[stage.ordinal()];
  }

  DrawnFigure charges(Stage stage) {
    return charges[stage.ordinal()];
  }

  boolean isScrapped(Stage stage) {
    return scrapped[stage.ordinal()];
  }

  void start(double[] drawn) {
    if (varies) {
      take(drawn);
    }
  }

  private void take(double[] drawn) {
    for (int i = 0; i < parts.length; i++) {
      partYield[i] = parts[i].si(drawn);
      chargeYield[i] = charges[i].si(drawn);
    }
    double wanted = 1;
    perPart[Driver.GOOD_PART.ordinal()] = 1;
    wanted = pass(Stage.SINTER, wanted, Driver.SINTERED_PART, Driver.FIRING);
    wanted = pass(Stage.DEBIND, wanted, Driver.DEBOUND_PART, Driver.DEBINDING);
    perPart[Driver.PART.ordinal()] = wanted / partYield[Stage.PRINT.ordinal()];
  }

  private double pass(Stage stage, double wanted, Driver part, Driver charge) {
    int i = stage.ordinal();
    double passed = wanted / (partYield[i] * chargeYield[i]);
    perPart[part.ordinal()] = passed;
    perPart[charge.ordinal()] = passed / partsPerFiring;
    return scrapped[i] ? passed : wanted;
  }

  double perPart(Driver driver) {
    return perPart[driver.event().ordinal()];
  }
}
