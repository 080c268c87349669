package dev.kilnledger.core.part;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Dimensionless;

/** The findings of a passage. */
final class PassageFindings {
  private static final Amount<VolumeFraction> LOW_LOADING = Amounts.volumeFraction(0.45);
  private static final Source LOW_LOADING_BASIS =
      Source.commonPractice(
          "below a solids loading of about 0.45 the brown part slumps and shrinkage passes 20 %");
  private static final Span<Dimensionless> MOULDING =
      Span.of(Amounts.percent(13), Amounts.percent(18));
  private static final Source MOULDING_BASIS =
      Source.fromMemory(
          "German and Bose, Injection Molding of Metals and Ceramics: 13 to 18 % at solids loadings"
              + " of 0.55 to 0.65");
  private static final Source MASS_BALANCE = Source.recomputed("conservation of the metal's mass");

  /** For the rounding of a product of three factors. */
  private static final double ROUNDING = 1e-9;

  private PassageFindings() {}

  static List<Finding> of(Passage passage) {
    Part part = passage.part();
    Feedstock feedstock = passage.feedstock();
    PrintConditions conditions = passage.conditions();
    double metalInGreen = passage.metalInGreen().si();
    double metalInSintered = passage.metalInSintered().si();
    List<Finding> findings = new ArrayList<>();
    findings.add(loading(feedstock));
    findings.add(densification(part, passage.metalInGreen(), passage.metalInSintered()));
    findings.add(moulding(part, Amounts.ratio(1 - Math.cbrt(metalInGreen / metalInSintered))));
    Sourced<Estimate<VolumeFraction>> usual = feedstock.alloy().expectedRelativeDensity();
    conditions
        .finalRelativeDensity()
        .ifPresent(stated -> findings.add(stated(part, stated.value().expected(), usual)));
    conditions
        .measuredShrinkage()
        .ifPresent(
            measured ->
                findings.add(
                    measured(
                        part, metalInGreen, measured.value(), passage.expectedRelativeDensity())));
    return List.copyOf(findings);
  }

  private static Finding loading(Feedstock feedstock) {
    Amount<VolumeFraction> loading = feedstock.solidsLoading();
    boolean low = loading.isLessThan(LOW_LOADING);
    return Finding.builder()
        .code(PartFinding.SOLIDS_LOADING)
        .severity(low ? Severity.WARNING : Severity.PASSED)
        .subject(feedstock.name())
        .message(
            "the solids loading is "
                + loading.format(TradeUnits.VOLUME_PERCENT, 1)
                + (low
                    ? ": the brown part may slump, and it shrinks a great deal"
                    : ", enough for the brown part to keep its shape"))
        .measured(loading)
        .limit(LOW_LOADING)
        .basis(LOW_LOADING_BASIS)
        .build();
  }

  private static Finding densification(
      Part part, Amount<VolumeFraction> green, Amount<VolumeFraction> sintered) {
    boolean denser = sintered.isGreaterThan(green);
    return Finding.builder()
        .code(PartFinding.DENSIFICATION)
        .severity(denser ? Severity.PASSED : Severity.WARNING)
        .subject(part.name())
        .message(
            "metal fills "
                + Percent.of(green)
                + " of the green part and "
                + Percent.of(sintered)
                + " of the sintered one"
                + (denser ? "" : ": it does not get denser, so this is not sintered metal yet"))
        .measured(sintered)
        .limit(green)
        .basis(MASS_BALANCE)
        .build();
  }

  private static Finding moulding(Part part, Amount<Dimensionless> shrinkage) {
    boolean usual = MOULDING.contains(shrinkage);
    boolean above = shrinkage.isGreaterThan(MOULDING.high());
    return Finding.builder()
        .code(PartFinding.MOULDING_SHRINKAGE)
        .severity(usual ? Severity.PASSED : Severity.NOTE)
        .subject(part.name())
        .message(
            "the mean linear shrinkage is "
                + Percent.of(shrinkage)
                + (usual ? ", in" : above ? ", above" : ", below")
                + " the range of injection-moulded parts, "
                + MOULDING.format(TradeUnits.PERCENT, 0))
        .measured(shrinkage)
        .limit(above ? MOULDING.high() : MOULDING.low())
        .basis(MOULDING_BASIS)
        .build();
  }

  private static Finding stated(
      Part part, Amount<VolumeFraction> stated, Sourced<Estimate<VolumeFraction>> usual) {
    Span<VolumeFraction> span = usual.value().span();
    boolean inside = span.contains(stated);
    return Finding.builder()
        .code(PartFinding.FINAL_RELATIVE_DENSITY)
        .severity(inside ? Severity.PASSED : Severity.WARNING)
        .subject(part.name())
        .message(
            "the relative density stated is "
                + Percent.of(stated)
                + (inside ? ", within" : ", outside")
                + " the alloy's range, "
                + Percent.of(span))
        .measured(stated)
        .limit(nearestEnd(span, stated))
        .basis(usual.source())
        .build();
  }

  private static Finding measured(
      Part part,
      double metalInGreen,
      LinearShrinkage shrinkage,
      Sourced<Estimate<VolumeFraction>> expected) {
    Span<VolumeFraction> span = expected.value().span();
    Estimate<VolumeFraction> implied = implied(metalInGreen, shrinkage);
    boolean overlap =
        implied.span().low().si() <= span.high().si() + ROUNDING
            && implied.span().high().si() >= span.low().si() - ROUNDING;
    return Finding.builder()
        .code(PartFinding.MEASURED_SHRINKAGE)
        .severity(overlap ? Severity.PASSED : Severity.WARNING)
        .subject(part.name())
        .message(
            "the shrinkage measured means a relative density of "
                + Percent.of(implied.span())
                + "; "
                + Percent.of(span)
                + " is expected"
                + (overlap
                    ? ""
                    : ": measure again, or correct solids loading, voids or relative density"))
        .measured(implied.expected())
        .limit(nearestEnd(span, implied.expected()))
        .basis(expected.source())
        .build();
  }

  private static Estimate<VolumeFraction> implied(double metalInGreen, LinearShrinkage y) {
    return Estimate.of(
        implied(metalInGreen, y.x().span().low(), y.y().span().low(), y.z().span().low()),
        implied(metalInGreen, y.x().expected(), y.y().expected(), y.z().expected()),
        implied(metalInGreen, y.x().span().high(), y.y().span().high(), y.z().span().high()));
  }

  private static Amount<VolumeFraction> implied(
      double metalInGreen,
      Amount<Dimensionless> x,
      Amount<Dimensionless> y,
      Amount<Dimensionless> z) {
    return Amounts.volumeFraction(metalInGreen / ((1 - x.si()) * (1 - y.si()) * (1 - z.si())));
  }

  private static Amount<VolumeFraction> nearestEnd(
      Span<VolumeFraction> span, Amount<VolumeFraction> value) {
    double toLow = Math.abs(value.si() - span.low().si());
    double toHigh = Math.abs(value.si() - span.high().si());
    return toHigh < toLow ? span.high() : span.low();
  }
}
