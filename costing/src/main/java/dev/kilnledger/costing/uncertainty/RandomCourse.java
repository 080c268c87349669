package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.internal.RandomPassage;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Driver;
import org.apache.commons.rng.UniformRandomProvider;

/** Failures that fall at random, with yields that may be drawn as well. */
final class RandomCourse implements Course {
  private final LongRun stages;
  private final RandomPassage passage;
  private final double chargeDivisor;

  RandomCourse(LedgerPlan plan, Binding binding, UniformRandomProvider random) {
    stages = new LongRun(plan, binding);
    passage = new RandomPassage(plan.failures(), plan.charging(), plan.partsPerFiring(), random);
    chargeDivisor = plan.charging() == ChargeRule.SHARED ? plan.partsPerFiring() : 1;
  }

  @Override
  public boolean varies() {
    return true;
  }

  @Override
  public void start(double[] drawn) {
    stages.start(drawn);
    passage.restart();
    set(stages.print);
    set(stages.debind);
    set(stages.sinter);
  }

  private void set(StageDraw stage) {
    passage.yields(stage.stage, stage.partYield, stage.chargeYield);
  }

  @Override
  public void until(long parts) {
    passage.until(parts);
  }

  @Override
  public double events(Driver driver) {
    boolean charge = driver.event() == Driver.FIRING || driver.event() == Driver.DEBINDING;
    return charge ? passage.events(driver) / chargeDivisor : passage.events(driver);
  }

  @Override
  public long numerator(Driver driver) {
    return passage.events(driver);
  }

  @Override
  public double perPart(Driver driver) {
    return stages.perPart(driver);
  }
}
