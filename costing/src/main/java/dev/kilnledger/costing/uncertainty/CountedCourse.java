package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Stage;
import java.math.BigDecimal;

/**
 * Failures as planned starts or expected values, counted as {@link
 * dev.kilnledger.costing.resource.Workload} counts them, with yields that may be drawn.
 */
final class CountedCourse implements Course {
  private final LongRun stages;
  private final boolean planned;
  private final boolean whole;
  private final int partsPerFiring;
  private final int trialParts;
  private final int trialFirings;
  private double[] drawn = new double[0];
  private long good;

  CountedCourse(LedgerPlan plan, Binding binding) {
    stages = new LongRun(plan, binding);
    planned = plan.failures().rule() == FailureRule.PLANNED_STARTS;
    whole = plan.charging() == ChargeRule.WHOLE;
    partsPerFiring = plan.partsPerFiring();
    trialParts = plan.failures().trialParts();
    trialFirings = plan.failures().trialFirings();
  }

  @Override
  public boolean varies() {
    return stages.varies();
  }

  @Override
  public void start(double[] trial) {
    drawn = trial;
    stages.start(trial);
  }

  @Override
  public void until(long parts) {
    good = parts;
    double brown = pass(stages.sinter, (double) parts);
    double green = pass(stages.debind, brown);
    pass(stages.print, green);
  }

  private double pass(StageDraw stage, double wanted) {
    double passed = started(wanted, stage.partYield, stage.parts);
    double fired = charges(stage, passed);
    if (stage.chargeYield != 1) {
      if (whole && planned) {
        double lost = lost(stage, fired);
        passed += lost * partsPerFiring;
        fired += lost;
      } else {
        passed = started(passed, stage.chargeYield, stage.charges);
        fired = charges(stage, passed);
      }
    }
    stage.passed = passed;
    stage.fired = fired;
    return stage.scrapped ? passed : wanted;
  }

  private double started(double wanted, double yield, DrawnFigure figure) {
    if (yield == 1) {
      return wanted;
    }
    double starts = wanted / yield;
    if (!planned) {
      return starts;
    }
    if (!WholeNumbers.isNear(starts, starts)) {
      return Math.ceil(starts);
    }
    BigDecimal share = figure.decimal(drawn);
    double near = Math.rint(starts);
    return share.multiply(new BigDecimal(near)).compareTo(new BigDecimal(wanted)) >= 0
        ? near
        : near + 1;
  }

  /** Charges that are lost for so many good ones: c (1 - z) / z, rounded up. */
  private double lost(StageDraw stage, double fired) {
    double lost = fired * (1 - stage.chargeYield) / stage.chargeYield;
    if (!WholeNumbers.isNear(lost, fired / stage.chargeYield)) {
      return Math.ceil(lost);
    }
    BigDecimal share = stage.charges.decimal(drawn);
    double near = Math.rint(lost);
    BigDecimal failing = new BigDecimal(fired).multiply(BigDecimal.ONE.subtract(share));
    return share.multiply(new BigDecimal(near)).compareTo(failing) >= 0 ? near : near + 1;
  }

  private double charges(StageDraw stage, double parts) {
    double full = parts / partsPerFiring;
    // Whole numbers of parts divide exactly or are far from a whole quotient.
    if (!whole) {
      return full;
    }
    if (planned || !WholeNumbers.isNear(full, full)) {
      return Math.ceil(full);
    }
    BigDecimal near = new BigDecimal(Math.rint(full));
    boolean enough =
        near.multiply(BigDecimal.valueOf(partsPerFiring))
                .multiply(expected(stage))
                .compareTo(BigDecimal.valueOf(good))
            >= 0;
    return enough ? near.doubleValue() : near.doubleValue() + 1;
  }

  /** The good parts over those that pass a stage, in decimals: the yields from here on. */
  private BigDecimal expected(StageDraw stage) {
    BigDecimal share = decimal(stage);
    if (stage.stage != Stage.SINTER && stages.sinter.scrapped) {
      share = share.multiply(decimal(stages.sinter));
    }
    if (stage.stage == Stage.PRINT && stages.debind.scrapped) {
      share = share.multiply(decimal(stages.debind));
    }
    return share;
  }

  private BigDecimal decimal(StageDraw stage) {
    return stage.parts.decimal(drawn).multiply(stage.charges.decimal(drawn));
  }

  @Override
  public double events(Driver driver) {
    return switch (driver.event()) {
      case GOOD_PART -> good;
      case SINTERED_PART -> stages.sinter.passed + trialParts;
      case FIRING -> stages.sinter.fired + trialFirings;
      case DEBOUND_PART -> stages.debind.passed + trialParts;
      case DEBINDING -> stages.debind.fired + trialFirings;
      default -> stages.print.passed + trialParts;
    };
  }

  @Override
  public long numerator(Driver driver) {
    if (!whole && driver.event() == Driver.FIRING) {
      return (long) stages.sinter.passed + (long) trialFirings * partsPerFiring;
    }
    if (!whole && driver.event() == Driver.DEBINDING) {
      return (long) stages.debind.passed + (long) trialFirings * partsPerFiring;
    }
    return (long) events(driver);
  }

  @Override
  public double perPart(Driver driver) {
    return stages.perPart(driver);
  }
}
