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
  private static final int SINTER = Stage.SINTER.ordinal();
  private static final int DEBIND = Stage.DEBIND.ordinal();
  private static final int PRINT = Stage.PRINT.ordinal();

  private final LongRun yields;
  private final boolean planned;
  private final boolean whole;
  private final int partsPerFiring;
  private final int trialParts;
  private final int trialFirings;
  private final double[] passed = new double[Stage.values().length];
  private final double[] charges = new double[Stage.values().length];
  private double[] drawn = new double[0];
  private long good;

  CountedCourse(LedgerPlan plan, Binding binding) {
    yields = new LongRun(plan, binding);
    planned = plan.failures().rule() == FailureRule.PLANNED_STARTS;
    whole = plan.charging() == ChargeRule.WHOLE;
    partsPerFiring = plan.partsPerFiring();
    trialParts = plan.failures().trialParts();
    trialFirings = plan.failures().trialFirings();
  }

  @Override
  public boolean varies() {
    return yields.varies();
  }

  @Override
  public void start(double[] trial) {
    drawn = trial;
    yields.start(trial);
  }

  @Override
  public void until(long parts) {
    good = parts;
    double wanted = pass(Stage.SINTER, parts);
    wanted = pass(Stage.DEBIND, wanted);
    pass(Stage.PRINT, wanted);
  }

  private double pass(Stage stage, double wanted) {
    int i = stage.ordinal();
    double left = started(stage, wanted, yields.partYield[i], yields.parts(stage));
    double fired = charges(stage, left);
    double chargeYield = yields.chargeYield[i];
    if (chargeYield != 1) {
      if (whole && planned) {
        double lost = lost(stage, fired, chargeYield);
        left += lost * partsPerFiring;
        fired += lost;
      } else {
        left = started(stage, left, chargeYield, yields.charges(stage));
        fired = charges(stage, left);
      }
    }
    passed[i] = left;
    charges[i] = fired;
    return yields.isScrapped(stage) ? left : wanted;
  }

  private double started(Stage stage, double wanted, double yield, DrawnFigure figure) {
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
  private double lost(Stage stage, double fired, double yield) {
    double lost = fired * (1 - yield) / yield;
    if (!WholeNumbers.isNear(lost, fired / yield)) {
      return Math.ceil(lost);
    }
    BigDecimal share = yields.charges(stage).decimal(drawn);
    double near = Math.rint(lost);
    BigDecimal good = new BigDecimal(fired).multiply(BigDecimal.ONE.subtract(share));
    return share.multiply(new BigDecimal(near)).compareTo(good) >= 0 ? near : near + 1;
  }

  private double charges(Stage stage, double parts) {
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
  private BigDecimal expected(Stage stage) {
    BigDecimal share =
        yields.parts(stage).decimal(drawn).multiply(yields.charges(stage).decimal(drawn));
    for (Stage later : Stage.values()) {
      if (later.compareTo(stage) > 0 && yields.isScrapped(later)) {
        share =
            share
                .multiply(yields.parts(later).decimal(drawn))
                .multiply(yields.charges(later).decimal(drawn));
      }
    }
    return share;
  }

  @Override
  public double events(Driver driver) {
    return switch (driver.event()) {
      case GOOD_PART -> good;
      case SINTERED_PART -> passed[SINTER] + trialParts;
      case FIRING -> charges[SINTER] + trialFirings;
      case DEBOUND_PART -> passed[DEBIND] + trialParts;
      case DEBINDING -> charges[DEBIND] + trialFirings;
      default -> passed[PRINT] + trialParts;
    };
  }

  @Override
  public long numerator(Driver driver) {
    if (!whole && driver.event() == Driver.FIRING) {
      return (long) passed[SINTER] + (long) trialFirings * partsPerFiring;
    }
    if (!whole && driver.event() == Driver.DEBINDING) {
      return (long) passed[DEBIND] + (long) trialFirings * partsPerFiring;
    }
    return (long) events(driver);
  }

  @Override
  public double perPart(Driver driver) {
    return yields.perPart(driver);
  }
}
