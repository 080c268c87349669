package dev.kilnledger.core.part;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.List;

/** Holds the density of a fired part, weighed in water, against what its alloy lets expect. */
public final class FiredDensityCheck {
  private static final Amount<VolumeFraction> FULL = Amounts.volumeFraction(1);
  private static final Source SEALING =
      Source.fromMemory("ISO 2738: parts with open pores are impregnated before weighing in water");
  private static final FiredDensityCheck STANDARD = new FiredDensityCheck();

  private FiredDensityCheck() {}

  /** {@return the check} */
  public static FiredDensityCheck standard() {
    return STANDARD;
  }

  /**
   * Checks a fired part.
   *
   * @param weighing its weighings
   * @param alloy what it should be made of
   * @return one finding on the density and one on the open pores
   */
  public List<Finding> check(ArchimedesWeighing weighing, Alloy alloy) {
    return List.of(density(weighing, alloy), sealing(weighing));
  }

  private static Finding density(ArchimedesWeighing weighing, Alloy alloy) {
    Sourced<Estimate<VolumeFraction>> expected = alloy.expectedRelativeDensity();
    Span<VolumeFraction> span = expected.value().span();
    Amount<VolumeFraction> measured = weighing.relativeDensity(alloy);
    boolean impossible = measured.isGreaterThan(FULL);
    boolean porous = measured.isLessThan(span.low());
    boolean dense = measured.isGreaterThan(span.high());
    Severity severity =
        impossible || porous ? Severity.WARNING : dense ? Severity.NOTE : Severity.PASSED;
    String verdict =
        impossible
            ? ": denser than the alloy can be, so weighings, water or alloy are not as stated"
            : porous
                ? ": less dense than expected"
                : dense ? ": denser than expected" : ", as expected";
    return Finding.builder()
        .code(PartFinding.FIRED_DENSITY)
        .severity(severity)
        .subject(weighing.specimen())
        .message(
            weighing.density().format(TradeUnits.GRAM_PER_CUBIC_CENTIMETRE, 3)
                + " is "
                + Percent.of(measured)
                + " of full density"
                + verdict
                + " ("
                + Percent.of(span)
                + ")")
        .measured(measured)
        .limit(impossible ? FULL : dense ? span.high() : span.low())
        .basis(expected.source())
        .build();
  }

  private static Finding sealing(ArchimedesWeighing weighing) {
    boolean sealed = weighing.impregnatedInAir().isPresent();
    return Finding.builder()
        .code(PartFinding.OPEN_PORES_SEALED)
        .severity(sealed ? Severity.PASSED : Severity.NOTE)
        .subject(weighing.specimen())
        .message(
            sealed
                ? "open pores were filled before weighing in water"
                : "open pores were not filled: if there are any, the density reads too high")
        .measured(weighing.openPorosity())
        .basis(SEALING)
        .build();
  }
}
