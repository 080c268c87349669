package dev.kilnledger.core.part;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.PASCAL;
import static dev.kilnledger.units.TradeUnits.PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import si.uom.quantity.Density;

/** The body of a part in one of its two states: softened, or brown. */
final class SelfWeightBody {
  static final Span<Pressure> QUOTED = Span.of(Amounts.pascals(200), Amounts.pascals(25_000));
  static final Source QUOTED_BASIS =
      Source.quoted("yield stress of softened feedstock, 0.2 to 25 kPa, in a review of debinding");
  private static final Source BENDING =
      Source.fromMemory("Roark's Formulas for Stress and Strain, beams under their own weight");
  private static final Source WEIGHT = Source.recomputed("weight over area, straight walls");

  private final Passage passage;
  private final SupportFacts facts;
  private final String state;
  private final Amount<Density> density;
  private final Optional<Sourced<Span<Pressure>>> strength;
  private final boolean quoted;

  SelfWeightBody(
      Passage passage,
      SupportFacts facts,
      String state,
      Amount<Density> density,
      boolean softened) {
    this.passage = passage;
    this.facts = facts;
    this.state = state;
    this.density = density;
    this.strength = softened ? facts.softenedStrength() : facts.brownStrength();
    this.quoted = softened;
  }

  Finding bending(PartFinding code, SelfWeightBeam finished) {
    SelfWeightBeam beam = green(finished);
    Amount<Pressure> stress = beam.stress(density);
    Severity bare = severity(stress);
    boolean carried = bare != PASSED && facts.bed() == SupportFacts.Bed.TAPPED;
    String hint =
        bare == PASSED
            ? ""
            : strength
                    .map(
                        s ->
                            "; up to "
                                + beam.longest(density, s.value().low()).format(MILLIMETRE, 1)
                                + " would hold for certain")
                    .orElse("")
                + bed(beam);
    return finding(
        code,
        carried ? NOTE : bare,
        stress,
        (code == PartFinding.OVERHANG ? "an overhang" : "an unsupported span")
            + " of "
            + beam.length().format(MILLIMETRE, 1)
            + ", "
            + beam.thickness().format(MILLIMETRE, 1)
            + " thick, bends under its own weight with ",
        hint,
        BENDING);
  }

  Finding ownWeight() {
    Amount<Pressure> stress = weight(passage.green().envelope().z());
    return finding(
        PartFinding.OWN_WEIGHT,
        severity(stress),
        stress,
        "the foot of straight walls "
            + passage.green().envelope().z().format(MILLIMETRE, 1)
            + " high carries ",
        "",
        WEIGHT);
  }

  private Finding finding(
      PartFinding code,
      Severity severity,
      Amount<Pressure> stress,
      String what,
      String hint,
      Source basis) {
    Finding.Builder finding =
        Finding.builder()
            .code(code)
            .subject(passage.part().name())
            .severity(severity)
            .message(state + ": " + what + stress.format(PASCAL, 0) + ", " + held(stress) + hint)
            .measured(stress)
            .basis(strength.isEmpty() && quoted ? QUOTED_BASIS : basis);
    strength.ifPresent(s -> finding.limit(s.value().low()));
    return finding.build();
  }

  private Severity severity(Amount<Pressure> stress) {
    if (strength.isEmpty()) {
      return quoted && stress.isGreaterThan(QUOTED.high()) ? WARNING : UNDETERMINED;
    }
    Span<Pressure> stands = strength.get().value();
    return !stress.isGreaterThan(stands.low())
        ? PASSED
        : stress.isGreaterThan(stands.high()) ? WARNING : UNDETERMINED;
  }

  private String held(Amount<Pressure> stress) {
    if (strength.isPresent()) {
      return "and its body stands " + strength.get().value().format(PASCAL, 0);
    }
    if (!quoted) {
      return "and what its body stands is not stated: it may crack below that";
    }
    return stress.isGreaterThan(QUOTED.high())
        ? "more than any softened body quoted stands, " + QUOTED.format(PASCAL, 0)
        : "and what its body stands is not stated; softened bodies are quoted with "
            + QUOTED.format(PASCAL, 0);
  }

  private String bed(SelfWeightBeam beam) {
    return switch (facts.bed()) {
      case NONE -> "; nothing lies under it: shorten or thicken it, or bury it in packing";
      case POURED ->
          "; packing only poured under it settles"
              + facts.powder().map(SelfWeightBody::settling).orElse("")
              + " before it carries: tap it";
      case TAPPED ->
          "; the packing tapped under it carries it with "
              + weight(beam.thickness()).format(PASCAL, 0)
              + " as long as it fills the hollow";
    };
  }

  private static String settling(PackingPowder powder) {
    double least = powder.apparentDensity().value().low().si();
    double most = powder.tapDensity().value().high().si();
    return " by up to "
        + Amounts.percent(100 * (1 - least / most)).format(PERCENT, 0)
        + " of its depth";
  }

  private Amount<Pressure> weight(Amount<Length> height) {
    return Amounts.pascals(density.si() * SelfWeightBeam.GRAVITY * height.si());
  }

  private SelfWeightBeam green(SelfWeightBeam finished) {
    double x = passage.oversize().x().expected().si();
    double y = passage.oversize().y().expected().si();
    Amount<Length> length = finished.length().multiply(Math.max(x, y));
    Amount<Length> thickness =
        finished.thickness().multiply(passage.oversize().z().expected().si());
    return finished.held() == SelfWeightBeam.Held.OVERHANG
        ? SelfWeightBeam.overhang(length, thickness)
        : SelfWeightBeam.span(length, thickness);
  }
}
