package dev.kilnledger.thermal.densification;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KILOJOULE_PER_MOLE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.TemperatureDifference;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * What can be said of a firing from the alloy alone: how near melting it gets, whether it gives
 * less or more work of sintering than usual firings of that alloy, and so in which wide interval
 * the density lies.
 *
 * <p>Usual are the ends of the alloy's sintering window and hold. Whether a firing gives more work
 * than one of them depends on the activation energy, so that is asked for the whole range of
 * published ones. No sigmoid is used: only that more work never makes a part less dense, which
 * holds until it swells.
 *
 * <p>Example: copper, solidus 1084.62 °C, at 1070 °C is 14.6 K below it and gets a warning; at 1040
 * °C it passes, and after 30 h there gets a warning for more heat than 4 h at 1050 °C.
 */
public final class DensificationLimits {
  /** How near the solidus a part should not get, for the error of thermocouple and kiln. */
  public static final Amount<TemperatureDifference> MARGIN = Amounts.kelvinDifference(20);

  private static final int ENERGIES_TRIED = 9;
  private static final Source MARGIN_BASIS =
      Source.commonPractice("20 K for the error of thermocouple and kiln");
  private static final DensificationLimits STANDARD = new DensificationLimits();

  private DensificationLimits() {}

  /** {@return the calculator} */
  public static DensificationLimits standard() {
    return STANDARD;
  }

  /**
   * How near melting a part gets, and whether it is over-fired.
   *
   * @param alloy the alloy
   * @param felt the temperature that the part feels
   * @return one finding on the solidus and one on over-firing
   */
  public List<Finding> check(Alloy alloy, TemperatureHistory felt) {
    return List.of(solidus(alloy, felt), overFired(alloy, felt));
  }

  /**
   * The density without a sintering curve of one's own powder.
   *
   * @param alloy the alloy
   * @param felt the temperature that the part feels, from cold
   * @param metalInGreen the share of the green volume that metal fills, the lowest density there is
   * @return an interval, and the finding that the density is undetermined
   */
  public LiteratureForecast forecast(
      Alloy alloy, TemperatureHistory felt, Amount<VolumeFraction> metalInGreen) {
    Span<VolumeFraction> usual = alloy.expectedRelativeDensity().value().span();
    Optional<Span<MolarEnergy>> energies = SinteringEnergies.rangeOf(alloy);
    double low = metalInGreen.si();
    double high = 1;
    if (energies.isPresent()) {
      if (least(energies.get(), aboveShortest(alloy, felt)) >= 0) {
        low = Math.max(low, usual.low().si());
      }
      if (most(energies.get(), aboveLongest(alloy, felt)) <= 0) {
        high = Math.max(low, usual.high().si());
      }
    }
    Optional<Span<Time>> equivalent = energies.map(range -> equivalent(alloy, felt, range));
    Span<VolumeFraction> density =
        Span.of(Amounts.volumeFraction(low), Amounts.volumeFraction(high));
    List<Finding> findings = new ArrayList<>();
    findings.add(undetermined(alloy, density, energies, equivalent));
    findings.addAll(check(alloy, felt));
    return ImmutableLiteratureForecast.of(equivalent, density, findings);
  }

  private static Finding undetermined(
      Alloy alloy,
      Span<VolumeFraction> density,
      Optional<Span<MolarEnergy>> energies,
      Optional<Span<Time>> equivalent) {
    String told =
        energies.isPresent() && equivalent.isPresent()
            ? "by activation energies published from "
                + energies.get().format(KILOJOULE_PER_MOLE, 0)
                + " the firing equals a hold at "
                + middle(alloy).format(CELSIUS, 0)
                + " of "
                + equivalent.get().format(HOUR, 2)
            : "no activation energy is published for " + alloy.name();
    return DensificationFinding.SINTERING_CURVE
        .about(alloy.name())
        .severity(UNDETERMINED)
        .message(
            told
                + "; no sintering curve of your powder is given, so the relative density is only"
                + " known to lie from "
                + density.format(TradeUnits.VOLUME_PERCENT, 0)
                + ": fire coupons and fit one")
        .basis(alloy.expectedRelativeDensity().source())
        .build();
  }

  private static Finding solidus(Alloy alloy, TemperatureHistory felt) {
    Amount<Temperature> hottest = felt.hottest().temperature();
    Amount<Temperature> solidus = alloy.solidus().value();
    boolean meltIsMeant = alloy.sinteringWindow().value().high().isGreaterThan(solidus);
    Amount<TemperatureDifference> below = Relations.difference(hottest, solidus);
    Severity severity;
    String verdict;
    if (!hottest.isLessThan(alloy.liquidus().value())) {
      severity = STOP;
      verdict = "it melts";
    } else if (below.si() <= 0) {
      severity = meltIsMeant ? WARNING : STOP;
      verdict =
          (meltIsMeant ? "part of it melts, as is meant there" : "part of it melts")
              + ", and a curve for the solid no longer holds";
    } else if (below.isLessThan(MARGIN)) {
      severity = WARNING;
      verdict = "an error of thermocouple or kiln may melt it";
    } else {
      severity = PASSED;
      verdict = "it stays solid";
    }
    return DensificationFinding.FELT_BELOW_SOLIDUS
        .about(alloy.name())
        .severity(severity)
        .message(
            "the part gets as hot as "
                + hottest.format(CELSIUS, 0)
                + " and its solidus is "
                + solidus.format(CELSIUS, 0)
                + ": "
                + verdict)
        .measured(hottest)
        .limit(solidus)
        .basis(severity == WARNING && below.si() > 0 ? MARGIN_BASIS : alloy.solidus().source())
        .build();
  }

  private static Finding overFired(Alloy alloy, TemperatureHistory felt) {
    Finding.Builder finding =
        DensificationFinding.OVER_FIRED.about(alloy.name()).basis(alloy.sinteringHold().source());
    Optional<Span<MolarEnergy>> energies = SinteringEnergies.rangeOf(alloy);
    if (energies.isEmpty()) {
      return finding
          .severity(UNDETERMINED)
          .message("no activation energy is published to compare with usual firings")
          .build();
    }
    String usual =
        "the hottest and longest usual firing, "
            + alloy.sinteringHold().value().high().format(HOUR, 1)
            + " at "
            + alloy.sinteringWindow().value().high().format(CELSIUS, 0);
    if (most(energies.get(), aboveLongest(alloy, felt)) <= 0) {
      return finding.severity(PASSED).message("it gets no more heat than " + usual).build();
    }
    boolean sure = least(energies.get(), aboveLongest(alloy, felt)) > 0;
    return finding
        .severity(sure ? WARNING : NOTE)
        .message(
            "it gets more heat than "
                + usual
                + (sure ? "" : ", by some of the published activation energies")
                + ": grains grow, and pores may swell again")
        .build();
  }

  /** ln of the work of a history over that of the coolest and shortest usual firing. */
  private static ToDoubleFunction<Amount<MolarEnergy>> aboveShortest(
      Alloy alloy, TemperatureHistory felt) {
    return above(felt, alloy.sinteringWindow().value().low(), alloy.sinteringHold().value().low());
  }

  /** ln of the work of a history over that of the hottest and longest usual firing. */
  private static ToDoubleFunction<Amount<MolarEnergy>> aboveLongest(
      Alloy alloy, TemperatureHistory felt) {
    return above(
        felt, alloy.sinteringWindow().value().high(), alloy.sinteringHold().value().high());
  }

  private static ToDoubleFunction<Amount<MolarEnergy>> above(
      TemperatureHistory felt, Amount<Temperature> temperature, Amount<Time> hold) {
    return energy ->
        Math.log(
            Densification.standard().equivalentHold(energy, felt, temperature).si() / hold.si());
  }

  private static Span<Time> equivalent(
      Alloy alloy, TemperatureHistory felt, Span<MolarEnergy> range) {
    ToDoubleFunction<Amount<MolarEnergy>> hours =
        energy -> Densification.standard().equivalentHold(energy, felt, middle(alloy)).in(HOUR);
    return Span.of(Amounts.hours(least(range, hours)), Amounts.hours(most(range, hours)));
  }

  private static Amount<Temperature> middle(Alloy alloy) {
    Span<Temperature> window = alloy.sinteringWindow().value();
    return Relations.shifted(
        window.low(), Relations.difference(window.low(), window.high()).divide(2));
  }

  private static double least(
      Span<MolarEnergy> range, ToDoubleFunction<Amount<MolarEnergy>> function) {
    return energies(range).stream().mapToDouble(function).min().orElseThrow();
  }

  private static double most(
      Span<MolarEnergy> range, ToDoubleFunction<Amount<MolarEnergy>> function) {
    return energies(range).stream().mapToDouble(function).max().orElseThrow();
  }

  // In between as well: the work relative to a hold need not be monotone in the energy.
  private static List<Amount<MolarEnergy>> energies(Span<MolarEnergy> range) {
    List<Amount<MolarEnergy>> energies = new ArrayList<>();
    Amount<MolarEnergy> step = range.high().subtract(range.low()).divide(ENERGIES_TRIED - 1.0);
    for (int i = 0; i < ENERGIES_TRIED - 1; i++) {
      energies.add(range.low().add(step.multiply(i)));
    }
    energies.add(range.high());
    return energies;
  }
}
