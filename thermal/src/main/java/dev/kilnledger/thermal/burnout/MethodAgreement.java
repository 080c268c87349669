package dev.kilnledger.thermal.burnout;

import static dev.kilnledger.units.TradeUnits.KILOJOULE_PER_MOLE;
import static dev.kilnledger.units.TradeUnits.MASS_PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MolarEnergy;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Compares the activation energies that an integral and a differential method read off runs. */
final class MethodAgreement {
  private static final double WITHIN = 0.1;
  private static final Source BASIS =
      Source.fromMemory(
          "Vyazovkin et al., ICTAC recommendations, Thermochim. Acta 520 (2011) 1: integral and"
              + " differential energies differ where the energy varies with conversion");

  private MethodAgreement() {}

  static Finding of(IsoconversionalFit integral, IsoconversionalFit differential) {
    int count = integral.energies().size();
    new Problems("kinetic fit")
        .require(
            integral.energies().stream()
                .map(EnergyAtConversion::conversion)
                .toList()
                .equals(
                    differential.energies().stream().map(EnergyAtConversion::conversion).toList()),
            "the fits are at different conversions; accepted are two fits of the same runs")
        .refuseIfAny();
    int worst =
        IntStream.range(0, count)
            .boxed()
            .max(Comparator.comparingDouble(i -> apart(integral, differential, i)))
            .orElseThrow();
    double apart = apart(integral, differential, worst);
    Estimate<MolarEnergy> one = integral.energies().get(worst).activationEnergy();
    Estimate<MolarEnergy> other = differential.energies().get(worst).activationEnergy();
    boolean held = one.span().contains(other.expected()) && other.span().contains(one.expected());
    boolean agree = apart <= WITHIN || held;
    return BurnOutFinding.METHODS_AGREE
        .about("activation energy")
        .severity(agree ? Severity.PASSED : Severity.WARNING)
        .message(
            "at a loss of "
                + integral.energies().get(worst).conversion().format(MASS_PERCENT, 0)
                + " the integral method tells "
                + one.expected().format(KILOJOULE_PER_MOLE, 1)
                + " and the differential one "
                + other.expected().format(KILOJOULE_PER_MOLE, 1)
                + (agree
                    ? apart <= WITHIN ? "" : ": each in the interval of the other"
                    : ": the energy changes as the loss goes on, or the runs are noisy"))
        .measured(Amounts.ratio(apart))
        .limit(Amounts.ratio(WITHIN))
        .basis(BASIS)
        .build();
  }

  private static double apart(
      IsoconversionalFit integral, IsoconversionalFit differential, int index) {
    double one = integral.energies().get(index).activationEnergy().expected().si();
    double other = differential.energies().get(index).activationEnergy().expected().si();
    return Math.abs(one - other) / ((one + other) / 2);
  }
}
