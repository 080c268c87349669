package dev.kilnledger.thermal.kiln;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.Optional;
import javax.measure.quantity.Temperature;

/**
 * Thermocouples by their type letter with the tolerance of class 2, IEC 60584-1:2013: the greater
 * of a fixed difference and a share of the temperature in °C. For new wire: what it drifts in use
 * comes on top.
 *
 * <p>Example: type K may be 7.5 K off at 1000 °C and has no tolerance above 1200 °C; type S may be
 * 3.25 K off at 1300 °C.
 */
public enum Thermocouple {
  /** Nickel-chromium against nickel-aluminium. */
  K(2.5, 0.0075, 1200),
  /** Nickel-chromium-silicon against nickel-silicon. */
  N(2.5, 0.0075, 1200),
  /** Platinum with 10 % of rhodium against platinum. */
  S(1.5, 0.0025, 1600),
  /** Platinum with 13 % of rhodium against platinum. */
  R(1.5, 0.0025, 1600);

  private static final Source STANDARD =
      Source.quoted("IEC 60584-1:2013, class 2, as compared in public tables");
  private static final double BASE_METAL_FROM = -40;

  private final double least;
  private final double share;
  private final double highest;

  Thermocouple(double least, double share, double highest) {
    this.least = least;
    this.share = share;
    this.highest = highest;
  }

  /** {@return the temperatures for which a tolerance is stated} */
  public Span<Temperature> range() {
    double from = this == K || this == N ? BASE_METAL_FROM : 0;
    return Span.of(Amounts.celsius(from), Amounts.celsius(highest));
  }

  /**
   * How far a new thermocouple may read wrong, up or down.
   *
   * @param temperature the temperature
   * @return the tolerance, empty where the standard states none
   */
  public Optional<Amount<TemperatureDifference>> tolerance(Amount<Temperature> temperature) {
    return range().contains(temperature)
        ? Optional.of(
            Amounts.kelvinDifference(Math.max(least, share * Math.abs(temperature.in(CELSIUS)))))
        : Optional.empty();
  }

  /**
   * Whether a tolerance is stated at the peak of a firing.
   *
   * @param peak the highest temperature
   * @return passed with the tolerance, or a warning that there is none
   */
  public Finding finding(Amount<Temperature> peak) {
    Optional<Amount<TemperatureDifference>> tolerance = tolerance(peak);
    Finding.Builder finding =
        KilnFinding.SENSOR_TOLERANCE
            .about("thermocouple type " + name())
            .limit(range().high())
            .basis(STANDARD)
            .severity(tolerance.isPresent() ? PASSED : WARNING)
            .message(
                tolerance
                    .map(
                        t ->
                            "at "
                                + peak.format(CELSIUS, 0)
                                + " a new one of class 2 may read wrong by "
                                + t.format(KELVIN_DIFFERENCE, 1)
                                + " up or down")
                    .orElse(
                        "no tolerance is stated at "
                            + peak.format(CELSIUS, 0)
                            + ", only for "
                            + range().format(CELSIUS, 0)
                            + ": choose a type made for it"));
    tolerance.ifPresent(finding::measured);
    return finding.build();
  }
}
