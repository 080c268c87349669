package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.yield.AfterFailure;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.quantity.Dimensionless;

/**
 * What n good parts ask of the workshop: how many parts are printed, debound and sintered, and how
 * many charges are fired.
 *
 * <p>Counted from the last stage back: what leaves a stage good is what the next one takes in. With
 * the share y of the parts passing, x good ones need ceil(x / y) ({@linkplain
 * FailureRule#PLANNED_STARTS planned starts}) or x / y ({@linkplain FailureRule#EXPECTED_VALUES
 * expected values}) passages; scrapped parts are asked of the stage before, repeated ones are not.
 * With the share z of the charges coming out, c good charges are joined by ceil(c (1 - z) / z) lost
 * ones, each with every part in it. Trial parts come on top, in charges of their own. All counts
 * are exact and in closed form.
 */
public final class Workload {
  private final int partsPerFiring;
  private final ChargeRule charging;
  private final Failures failures;
  private final Map<Driver, Amount<?>> amounts;
  private final Map<Driver, Tally> tallies = new EnumMap<>(Driver.class);

  private Workload(
      int partsPerFiring, ChargeRule charging, Failures failures, Map<Driver, Amount<?>> amounts) {
    this.partsPerFiring = partsPerFiring;
    this.charging = charging;
    this.failures = failures;
    this.amounts = Map.copyOf(amounts);
    compose();
  }

  /**
   * A workload without failures, in whole firings.
   *
   * @param partsPerFiring how many parts share one firing, 1 or more
   * @return the workload
   * @throws IllegalArgumentException if the number is less than 1
   */
  public static Workload of(int partsPerFiring) {
    return of(partsPerFiring, ChargeRule.WHOLE, Failures.none(), Map.of());
  }

  /**
   * Any workload.
   *
   * @param partsPerFiring how many parts share one firing, 1 or more
   * @param charging what a charge costs that is not full
   * @param failures what fails, and how that is counted
   * @param amounts what one event takes of each driver that is measured, more than zero
   * @return the workload
   * @throws IllegalArgumentException with all problems
   */
  public static Workload of(
      int partsPerFiring, ChargeRule charging, Failures failures, Map<Driver, Amount<?>> amounts) {
    Problems problems =
        new Problems("workload")
            .require(
                partsPerFiring >= 1,
                "parts per firing is " + partsPerFiring + "; accepted is 1 or more");
    mismatches(amounts).forEach(text -> problems.require(false, text));
    problems.refuseIfAny();
    return new Workload(partsPerFiring, charging, failures, amounts);
  }

  /**
   * What speaks against amounts of drivers.
   *
   * @param amounts what one event takes of each driver
   * @return one message for each obstacle, each saying what would be accepted
   */
  public static List<String> mismatches(Map<Driver, Amount<?>> amounts) {
    List<String> mismatches = new ArrayList<>();
    new TreeMap<>(amounts)
        .forEach(
            (driver, amount) -> {
              if (!driver.isMeasured()) {
                mismatches.add(
                    "each "
                        + driver.word()
                        + " is counted; accepted are amounts of what is measured");
              } else if (!amount.kind().equals(driver.kind())) {
                mismatches.add(
                    driver.word()
                        + " is "
                        + amount
                        + "; accepted is a measure of "
                        + driver.kind());
              } else if (amount.si() <= 0) {
                mismatches.add(driver.word() + " is " + amount + "; accepted is more than zero");
              }
            });
    return List.copyOf(mismatches);
  }

  /** {@return how many parts share one firing} */
  public int partsPerFiring() {
    return partsPerFiring;
  }

  /**
   * How full the last charge of sintering is.
   *
   * @param parts the good parts, 1 or more
   * @return how many parts it holds; 0 if it is full or holds a fraction of a part
   */
  public long partsInLastFiring(long parts) {
    Tally passed = tally(Driver.SINTERED_PART);
    return passed.denominator.equals(BigInteger.ONE)
        ? passed
            .through(parts)
            .subtract(BigInteger.valueOf(failures.trialParts()))
            .mod(BigInteger.valueOf(partsPerFiring))
            .longValueExact()
        : 0;
  }

  /**
   * How often a driver's event has happened.
   *
   * @param driver the driver
   * @return the formula in n and the names of {@link #inputs}
   */
  public String formula(Driver driver) {
    String events = tally(driver).formula;
    return driver.isMeasured() ? driver.word() + " x " + events : events;
  }

  /**
   * The figures of a formula.
   *
   * @param driver the driver
   * @return the figures, each with its source
   */
  public List<Input> inputs(Driver driver) {
    List<Input> inputs = new ArrayList<>();
    Source plan = Source.user("the plan");
    inputs.add(Input.of("parts per firing", Amounts.ratio(partsPerFiring), plan));
    Amount<?> amount = amounts.get(driver);
    if (amount != null) {
      inputs.add(Input.of(driver.word(), amount, plan));
    }
    if (driver.event() != Driver.GOOD_PART) {
      for (StageYield stage : failures.stages()) {
        if (stage.parts().si() != 1) {
          inputs.add(Input.of(partsName(stage), stage.parts(), stage.source()));
        }
        if (stage.charges().si() != 1) {
          inputs.add(Input.of(chargesName(stage), stage.charges(), stage.source()));
        }
      }
      if (failures.trialParts() > 0) {
        inputs.add(
            Input.of("trial parts", Amounts.ratio(failures.trialParts()), failures.trialSource()));
        inputs.add(
            Input.of(
                "trial firings", Amounts.ratio(failures.trialFirings()), failures.trialSource()));
      }
    }
    return List.copyOf(inputs);
  }

  /** The events of a driver. */
  Tally tally(Driver driver) {
    Tally tally = tallies.get(driver.event());
    if (tally == null) {
      throw new IllegalStateException("no tally of " + driver);
    }
    return tally;
  }

  /** What one event takes of a driver, in its SI unit; 1 where events are counted. */
  BigDecimal perEvent(Driver driver) {
    Amount<?> amount = amounts.get(driver);
    if (amount != null) {
      return Decimals.si(amount);
    }
    if (driver.isMeasured()) {
      throw new IllegalArgumentException(
          "the " + driver.word() + " is not stated; accepted is a measure of " + driver.kind());
    }
    return BigDecimal.ONE;
  }

  private void compose() {
    Tally good = Tally.goodParts();
    Passage sintering = pass(failures.at(Stage.SINTER), good);
    Passage debinding = pass(failures.at(Stage.DEBIND), sintering.taken);
    Passage printing = pass(failures.at(Stage.PRINT), debinding.taken);
    int parts = failures.trialParts();
    int firings = failures.trialFirings();
    tallies.put(Driver.GOOD_PART, good);
    tallies.put(Driver.PART, printing.passed.after(parts, "trial parts"));
    tallies.put(Driver.DEBOUND_PART, debinding.passed.after(parts, "trial parts"));
    tallies.put(Driver.SINTERED_PART, sintering.passed.after(parts, "trial parts"));
    tallies.put(Driver.DEBINDING, debinding.charges.after(firings, "trial firings"));
    tallies.put(Driver.FIRING, sintering.charges.after(firings, "trial firings"));
  }

  /** What a stage takes from the one before, passes, and fires. */
  private record Passage(Tally taken, Tally passed, Tally charges) {}

  private Passage pass(StageYield stage, Tally wanted) {
    Share partYield = Share.of(stage.parts());
    Share chargeYield = Share.of(stage.charges());
    Tally passed = partYield.isOne() ? wanted : started(wanted, partYield, partsName(stage));
    Tally charges = charges(passed);
    if (!chargeYield.isOne()) {
      if (charging == ChargeRule.WHOLE && failures.rule() == FailureRule.PLANNED_STARTS) {
        String name = chargesName(stage);
        Tally lost =
            charges
                .times(
                    chargeYield.denominator.subtract(chargeYield.numerator),
                    chargeYield.numerator,
                    charges.formula + " x (1 - " + name + ") / " + name)
                .roundedUp();
        passed =
            passed.plus(
                lost.times(
                    BigInteger.valueOf(partsPerFiring),
                    BigInteger.ONE,
                    "parts per firing x " + lost.formula));
        charges = charges.plus(lost);
      } else {
        passed = started(passed, chargeYield, chargesName(stage));
        charges = charges(passed);
      }
    }
    Tally taken = stage.afterFailure() == AfterFailure.SCRAPPED ? passed : wanted;
    return new Passage(taken, passed, charges);
  }

  private Tally started(Tally wanted, Share yield, String name) {
    Tally expected =
        wanted.times(yield.denominator, yield.numerator, wanted.formula + " / " + name);
    return failures.rule() == FailureRule.PLANNED_STARTS ? expected.roundedUp() : expected;
  }

  private Tally charges(Tally parts) {
    Tally full =
        parts.times(
            BigInteger.ONE,
            BigInteger.valueOf(partsPerFiring),
            parts.formula + " / parts per firing");
    return charging == ChargeRule.WHOLE ? full.roundedUp() : full;
  }

  private static String partsName(StageYield stage) {
    return stage.stage().words() + " yield";
  }

  private static String chargesName(StageYield stage) {
    return "charge yield of " + stage.stage().words();
  }

  /** A share as an exact fraction. */
  private record Share(BigInteger numerator, BigInteger denominator) {
    static Share of(Amount<Dimensionless> share) {
      BigDecimal decimal = Decimals.si(share);
      int scale = Math.max(0, decimal.scale());
      BigInteger numerator = decimal.setScale(scale).unscaledValue();
      BigInteger denominator = BigInteger.TEN.pow(scale);
      BigInteger common = numerator.gcd(denominator);
      return new Share(numerator.divide(common), denominator.divide(common));
    }

    boolean isOne() {
      return numerator.equals(denominator);
    }
  }
}
