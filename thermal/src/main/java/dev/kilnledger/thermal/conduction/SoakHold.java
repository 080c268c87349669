package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.thermal.internal.PeakHold;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * The hold at the peak that a core needs to be at or above a temperature for a time at a stretch.
 *
 * <p>That time grows with the hold, so the least hold is the root of one increasing function, each
 * value of which is a forecast of the changed profile: bracketed by doubling, then regula falsi
 * (the method of Illinois) to a second.
 *
 * <p>Example: a cylinder of 50 mm radius and 0.15 mm2/s, heated at 100 K/h to 1000 °C, lags 115.7
 * K; for an hour at 990 °C or above at its core it takes a hold of 3.04 h, two of which pass before
 * the core is there.
 */
public final class SoakHold {
  private static final double TO = 1; // s
  private static final double LONGEST = 1000 * 3600.0; // s

  private final Conduction conduction;

  /**
   * A calculator on a model of conduction.
   *
   * @param conduction the model
   */
  public SoakHold(Conduction conduction) {
    this.conduction = conduction;
  }

  /** {@return the calculator on {@link EnthalpyConduction#standard()}} */
  public static SoakHold standard() {
    return new SoakHold(EnthalpyConduction.standard());
  }

  /**
   * The hold needed.
   *
   * @param charge the charge
   * @param profile the profile; the last of its longest holds at the peak is what changes, or a
   *     hold is put in where the peak is first reached
   * @param temperature what the core has to be at or above
   * @param soak for how long at a stretch, above zero
   * @return the answer; without a hold where up to 1000 h are not enough, as where the temperature
   *     is the peak itself, which the core only draws near to
   * @throws IllegalArgumentException if the soak is not above zero or the model cannot take the
   *     charge
   */
  public Soak of(
      Charge charge, Profile profile, Amount<Temperature> temperature, Amount<Time> soak) {
    new Problems("soak of " + charge.name()).positive("soak", soak).refuseIfAny();
    PeakHold hold = PeakHold.of(profile);
    double programmed = hold.seconds();
    double had = coreSoak(charge, profile, temperature);
    double needed =
        temperature.isLessThan(profile.peak())
            ? least(
                seconds -> coreSoak(charge, hold.with(seconds), temperature) - soak.si(),
                programmed,
                had - soak.si())
            : Double.POSITIVE_INFINITY;
    Soak.Builder result = Soak.builder().programmedHold(hours(programmed)).coreSoak(hours(had));
    Finding.Builder finding =
        ConductionFinding.CORE_SOAK
            .about(charge.name())
            .measured(hours(had))
            .limit(soak)
            .basis(conduction.forecast(charge, profile).model());
    String told =
        "the core is at or above "
            + temperature.format(CELSIUS, 0)
            + " for "
            + hours(had).format(HOUR, 2)
            + " at a stretch, asked are "
            + soak.format(HOUR, 2);
    if (Double.isInfinite(needed)) {
      return result
          .finding(
              finding
                  .severity(STOP)
                  .message(told + ": no hold at " + profile.peak().format(CELSIUS, 0) + " does it")
                  .build())
          .build();
    }
    boolean enough = had >= soak.si();
    return result
        .neededHold(hours(needed))
        .neededProfile(hold.with(needed))
        .finding(
            finding
                .severity(enough ? PASSED : WARNING)
                .message(told + ", for which a hold of " + hours(needed).format(HOUR, 2) + " does")
                .build())
        .build();
  }

  private double coreSoak(Charge charge, Profile profile, Amount<Temperature> temperature) {
    return conduction.forecast(charge, profile).core().longestTimeAbove(temperature).si();
  }

  private interface Excess {
    double at(double seconds);
  }

  /** The least hold, rounded up to within a second, at which there is no shortfall. */
  private static double least(Excess excess, double programmed, double atProgrammed) {
    double low = atProgrammed < 0 ? programmed : 0;
    double atLow = atProgrammed < 0 ? atProgrammed : excess.at(0);
    if (atLow >= 0) {
      return 0;
    }
    double high = atProgrammed < 0 ? Math.max(programmed, 60) - atProgrammed : programmed;
    double atHigh = atProgrammed < 0 ? excess.at(high) : atProgrammed;
    while (atHigh < 0) {
      if (high > LONGEST) {
        return Double.POSITIVE_INFINITY;
      }
      low = high;
      atLow = atHigh;
      high *= 2;
      atHigh = excess.at(high);
    }
    double weightLow = atLow;
    double weightHigh = atHigh;
    while (high - low > TO) {
      // Never nearer to an end than half the accuracy asked, so that both ends move.
      double x = high - weightHigh * (high - low) / (weightHigh - weightLow);
      x = Math.min(Math.max(x, low + TO / 2), high - TO / 2);
      double at = excess.at(x);
      if (at >= 0) {
        high = x;
        weightHigh = at;
        weightLow /= 2;
      } else {
        low = x;
        weightLow = at;
        weightHigh /= 2;
      }
    }
    return high;
  }

  private static Amount<Time> hours(double seconds) {
    return Amounts.seconds(seconds).to(HOUR);
  }
}
