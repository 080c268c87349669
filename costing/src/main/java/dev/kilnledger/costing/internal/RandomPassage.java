package dev.kilnledger.costing.internal;

import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.AfterFailure;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import org.apache.commons.rng.sampling.distribution.PoissonSampler;

/**
 * How often each event happens until so many parts are good, with failures drawn at random: one
 * course of events, followed from few parts to many.
 *
 * <p>Counted from the last stage back as {@link dev.kilnledger.costing.resource.Workload} counts,
 * with the failures before the x-th success drawn from the negative binomial distribution: a
 * Poisson count whose mean is drawn from a gamma distribution of shape x and scale (1 - y) / y
 * (Devroye, Non-Uniform Random Variate Generation, 1986, chapter X.4; from memory). The failures
 * between the x-th and the z-th success are those before the (z - x)-th of a new series, so that a
 * course can be followed. Failed parts are replaced in the next free place of a charge; a lost
 * charge is lost with every part in it.
 */
public final class RandomPassage {
  private final Failures failures;
  private final ChargeRule charging;
  private final long partsPerFiring;
  private final UniformRandomProvider random;
  private final Map<Stage, Line> lines = new EnumMap<>(Stage.class);
  private long good;

  /** What has happened at one stage. */
  private static final class Line {
    final boolean scrapped;
    double partYield;
    double chargeYield;
    long wanted;
    long failed;
    long charges;
    long lost;

    Line(boolean scrapped) {
      this.scrapped = scrapped;
    }
  }

  /**
   * Starts a course with the yields that are stated.
   *
   * @param failures the stages with their yields, and the trial parts
   * @param charging what a charge costs that is not full
   * @param partsPerFiring how many parts share one firing
   * @param random where the draws come from
   */
  public RandomPassage(
      Failures failures, ChargeRule charging, int partsPerFiring, UniformRandomProvider random) {
    this.failures = failures;
    this.charging = charging;
    this.partsPerFiring = partsPerFiring;
    this.random = random;
    for (Stage stage : Stage.values()) {
      lines.put(stage, new Line(failures.at(stage).afterFailure() == AfterFailure.SCRAPPED));
      yields(stage, failures.at(stage).parts().si(), failures.at(stage).charges().si());
    }
  }

  /** Starts another course, before the first part. */
  public void restart() {
    for (Line line : lines.values()) {
      line.wanted = 0;
      line.failed = 0;
      line.charges = 0;
      line.lost = 0;
    }
    good = 0;
  }

  /**
   * Sets the yields of a stage for the course that follows.
   *
   * @param stage the stage
   * @param partYield the share of the parts that pass
   * @param chargeYield the share of the charges that are not lost
   */
  public void yields(Stage stage, double partYield, double chargeYield) {
    line(stage).partYield = partYield;
    line(stage).chargeYield = chargeYield;
  }

  /**
   * Goes on until so many parts are good.
   *
   * @param parts the number of good parts, not less than before
   */
  public void until(long parts) {
    good = parts;
    long brown = pass(line(Stage.SINTER), parts);
    long green = pass(line(Stage.DEBIND), brown);
    pass(line(Stage.PRINT), green);
  }

  private Line line(Stage stage) {
    return Objects.requireNonNull(lines.get(stage));
  }

  private long pass(Line line, long wanted) {
    line.failed += failuresBefore(wanted - line.wanted, line.partYield);
    line.wanted = wanted;
    long charges = (wanted + line.failed + partsPerFiring - 1) / partsPerFiring;
    line.lost += failuresBefore(charges - line.charges, line.chargeYield);
    line.charges = charges;
    return line.scrapped ? passed(line) : wanted;
  }

  /**
   * How often a driver's event has happened.
   *
   * @param driver the driver
   * @return the events; shared charges are counted by the part, over the parts per firing
   */
  public long events(Driver driver) {
    return switch (driver.event()) {
      case GOOD_PART -> good;
      case SINTERED_PART -> parts(Stage.SINTER);
      case FIRING -> firings(Stage.SINTER);
      case DEBOUND_PART -> parts(Stage.DEBIND);
      case DEBINDING -> firings(Stage.DEBIND);
      default -> parts(Stage.PRINT);
    };
  }

  private long passed(Line line) {
    return line.wanted + line.failed + line.lost * partsPerFiring;
  }

  private long parts(Stage stage) {
    return passed(line(stage)) + failures.trialParts();
  }

  private long firings(Stage stage) {
    Line line = line(stage);
    return charging == ChargeRule.WHOLE
        ? line.charges + line.lost + failures.trialFirings()
        : passed(line) + failures.trialFirings() * partsPerFiring;
  }

  /** Draws the number of failures before a number of successes. */
  private long failuresBefore(long successes, double yield) {
    if (yield == 1 || successes == 0) {
      return 0;
    }
    double mean =
        AhrensDieterMarsagliaTsangGammaSampler.of(random, (double) successes, (1 - yield) / yield)
            .sample();
    return mean > 0 ? PoissonSampler.of(random, mean).sample() : 0;
  }
}
