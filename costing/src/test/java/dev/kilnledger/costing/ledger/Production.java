package dev.kilnledger.costing.ledger;

import static dev.kilnledger.units.Amounts.percent;

import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.AfterFailure;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Parts that are made one by one until so many are good, with failures as planned starts: a stage
 * runs once more as long as what has run times its yield does not reach what is wanted of it.
 */
final class Production {
  private final Failures failures;
  private final int partsPerFiring;
  private final Line sinter;
  private final Line debind;
  private final Line print;
  private final Map<Driver, Long> before = new EnumMap<>(Driver.class);
  private final Map<Driver, Long> now = new EnumMap<>(Driver.class);
  private long good;

  Production(SplittableRandom random, boolean failing, int partsPerFiring) {
    this.partsPerFiring = partsPerFiring;
    this.sinter = new Line(random, failing, Stage.SINTER);
    this.debind = new Line(random, failing, Stage.DEBIND);
    this.print = new Line(random, failing, Stage.PRINT);
    int trials = failing ? random.nextInt(4) : 0;
    this.failures =
        Failures.builder()
            .addStages(sinter.stated(), debind.stated(), print.stated())
            .trialParts(trials)
            .trialFirings(trials == 0 ? 0 : random.nextInt(1, trials + 1))
            .build();
  }

  Failures failures() {
    return failures;
  }

  long newEvents(Driver driver) {
    return now.getOrDefault(driver, 0L) - before.getOrDefault(driver, 0L);
  }

  void nextGoodPart() {
    before.putAll(now);
    good++;
    long brown = sinter.make(good);
    long green = debind.make(brown);
    print.make(green);
    int trials = failures.trialParts();
    int firings = failures.trialFirings();
    now.put(Driver.GOOD_PART, good);
    now.put(Driver.PART, print.passed() + trials);
    now.put(Driver.DEBOUND_PART, debind.passed() + trials);
    now.put(Driver.SINTERED_PART, sinter.passed() + trials);
    now.put(Driver.DEBINDING, debind.fired() + firings);
    now.put(Driver.FIRING, sinter.fired() + firings);
  }

  /** One stage with its counters; percentages are whole numbers. */
  private final class Line {
    private final Stage stage;
    private final int parts;
    private final int charges;
    private final boolean repeated;
    private long runs;
    private long goodCharges;
    private long lostCharges;

    Line(SplittableRandom random, boolean failing, Stage stage) {
      this.stage = stage;
      this.parts = failing && random.nextInt(3) > 0 ? random.nextInt(20, 101) : 100;
      this.charges =
          failing && stage.inCharges() && random.nextBoolean() ? random.nextInt(20, 101) : 100;
      this.repeated = failing && random.nextInt(4) == 0;
    }

    StageYield stated() {
      return StageYield.builder()
          .stage(stage)
          .parts(percent(parts))
          .charges(percent(charges))
          .afterFailure(repeated ? AfterFailure.REPEATED : AfterFailure.SCRAPPED)
          .source(FixturePlan.INVENTED)
          .build();
    }

    /** Runs until so many have passed and returns how many it took in. */
    long make(long wanted) {
      while (runs * parts < 100 * wanted) {
        if (runs % partsPerFiring == 0) {
          goodCharges++;
        }
        runs++;
      }
      while (lostCharges * charges < goodCharges * (100 - charges)) {
        lostCharges++;
      }
      return repeated ? wanted : passed();
    }

    long passed() {
      return runs + (stage.inCharges() ? lostCharges * partsPerFiring : 0);
    }

    long fired() {
      return goodCharges + lostCharges;
    }
  }
}
