package dev.kilnledger.core.part;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.ONE;
import static dev.kilnledger.units.TradeUnits.PASCAL;
import static dev.kilnledger.units.TradeUnits.PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import si.uom.quantity.Density;

/**
 * Tells whether a part keeps its shape in debinding: whether the stress of its own weight stays
 * below what its body stands, first softened with the binder still in it, then brown.
 *
 * <p>Overhangs and spans bend ({@link SelfWeightBeam}); the foot of a body with straight walls
 * carries rho g H. What the softened body stands depends on binder, loading and temperature and has
 * to be measured: quoted yield stresses reach from 0.2 to 25 kPa. Without a figure the check says
 * how much is needed and is undetermined; above all that is quoted it warns. For the brown body,
 * which cracks rather than sags, no range is known.
 *
 * <p>Packing powder tapped under an overhang or span carries its weight, rho g h on each area, and
 * takes the bending away as long as it fills the hollow: what would warn is then a note. Powder
 * that was only poured settles first, by up to 1 - (apparent / tap density) of its depth, so it is
 * not counted. Powder beside the part keeps a slender one from falling over, but does not carry it.
 */
public final class SelfWeightCheck {
  private static final Span<Pressure> QUOTED =
      Span.of(Amounts.pascals(200), Amounts.pascals(25_000));
  private static final Source QUOTED_BASIS =
      Source.quoted("yield stress of softened feedstock, 0.2 to 25 kPa, in a review of debinding");
  private static final Source BENDING =
      Source.fromMemory("Roark's Formulas for Stress and Strain, beams under their own weight");
  private static final Source WEIGHT = Source.recomputed("weight over area, straight walls");
  private static final Amount<Dimensionless> SLENDER = Amounts.ratio(5);
  private static final Source SLENDER_BASIS =
      Source.commonPractice("free-standing green parts up to about 5 times as high as wide");
  private static final SelfWeightCheck STANDARD = new SelfWeightCheck();

  private SelfWeightCheck() {}

  /** {@return the check} */
  public static SelfWeightCheck standard() {
    return STANDARD;
  }

  /**
   * Checks a part that lies as it was printed.
   *
   * @param passage its passage: lengths are taken green, densities green and brown
   * @param facts what is known of its support
   * @return for the softened and for the brown body one finding each on the own weight, and on
   *     overhang and span where they are stated; one on slenderness, one on what is not stated
   * @throws IllegalArgumentException if an overhang or span is thicker than the thickest section
   */
  public List<Finding> check(Passage passage, SupportFacts facts) {
    Problems problems = new Problems("support of " + passage.part().name());
    facts.overhang().ifPresent(beam -> requireThin(problems, "overhang", beam, passage.part()));
    facts.span().ifPresent(beam -> requireThin(problems, "span", beam, passage.part()));
    problems.refuseIfAny();
    List<Finding> findings = new ArrayList<>();
    Body softened =
        new Body(
            passage, facts, "softened, before its binder leaves", passage.green().density(), true);
    Body brown = new Body(passage, facts, "brown", passage.brown().density(), false);
    for (Body body : List.of(softened, brown)) {
      facts.overhang().ifPresent(beam -> findings.add(body.bending(PartFinding.OVERHANG, beam)));
      facts.span().ifPresent(beam -> findings.add(body.bending(PartFinding.UNSUPPORTED_SPAN, beam)));
      findings.add(body.ownWeight());
    }
    findings.add(slenderness(passage, facts));
    findings.add(stated(passage, facts));
    return findings;
  }

  private static void requireThin(Problems problems, String what, SelfWeightBeam beam, Part part) {
    problems.require(
        !beam.thickness().isGreaterThan(part.thickestSection()),
        what
            + " is "
            + beam.thickness()
            + " thick; accepted is up to the part's thickest section, "
            + part.thickestSection());
  }

  private static Finding slenderness(Passage passage, SupportFacts facts) {
    Envelope green = passage.green().envelope();
    Amount<Length> width = green.x().isLessThan(green.y()) ? green.x() : green.y();
    Amount<Dimensionless> ratio = Amounts.ratio(green.z().ratio(width));
    Amount<Dimensionless> wall =
        Amounts.ratio(
            passage.part().envelope().z().ratio(passage.part().thickestSection()));
    boolean slender = ratio.isGreaterThan(SLENDER);
    boolean slenderWall = wall.isGreaterThan(SLENDER);
    boolean held = facts.bed() == SupportFacts.Bed.TAPPED;
    return Finding.builder()
        .code(PartFinding.SLENDERNESS)
        .subject(passage.part().name())
        .severity(slender && !held ? WARNING : slender || slenderWall ? NOTE : PASSED)
        .message(
            "as printed it is "
                + ratio.format(ONE, 1)
                + " times as high as its envelope is wide"
                + (slenderWall
                    ? ", and "
                        + wall.format(ONE, 1)
                        + " times as high as its thickest section: a wall that stands alone leans"
                        + " or falls"
                    : "")
                + (slender || slenderWall
                    ? held
                        ? "; the tapped packing beside it holds it upright"
                        : "; tap packing in beside it, or lay it down"
                    : ""))
        .measured(ratio)
        .limit(SLENDER)
        .basis(SLENDER_BASIS)
        .build();
  }

  private static Finding stated(Passage passage, SupportFacts facts) {
    Amount<Length> thickest =
        passage.part().thickestSection().multiply(passage.oversize().z().expected().si());
    Amount<Length> holds =
        SelfWeightBeam.overhang(thickest, thickest)
            .longest(passage.green().density(), QUOTED.low());
    return Finding.builder()
        .code(PartFinding.SUPPORT_STATED)
        .subject(passage.part().name())
        .severity(facts.complete() ? PASSED : UNDETERMINED)
        .message(
            facts.complete()
                ? "all that hangs free is stated"
                : "whether anything "
                    + (facts.overhang().isPresent() || facts.span().isPresent() ? "else " : "")
                    + "hangs free is not stated, and without that nothing is certain; even as thick"
                    + " as its thickest section an overhang of more than "
                    + holds.format(MILLIMETRE, 1)
                    + " green asks more than the softest body quoted stands")
        .measured(holds)
        .basis(QUOTED_BASIS)
        .build();
  }

  /** The body in one of its two states. */
  private static final class Body {
    private final Passage passage;
    private final SupportFacts facts;
    private final String state;
    private final Amount<Density> density;
    private final Optional<Sourced<Span<Pressure>>> strength;
    private final boolean quoted;

    Body(
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
        case POURED -> "; packing only poured under it settles"
            + facts.powder().map(Body::settling).orElse("")
            + " before it carries: tap it";
        case TAPPED -> "; the packing tapped under it carries it with "
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
}
