package dev.kilnledger.core.part;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.ONE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;

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
    SelfWeightBody softened =
        new SelfWeightBody(
            passage, facts, "softened, before its binder leaves", passage.green().density(), true);
    SelfWeightBody brown =
        new SelfWeightBody(passage, facts, "brown", passage.brown().density(), false);
    for (SelfWeightBody body : List.of(softened, brown)) {
      facts.overhang().ifPresent(beam -> findings.add(body.bending(PartFinding.OVERHANG, beam)));
      facts
          .span()
          .ifPresent(beam -> findings.add(body.bending(PartFinding.UNSUPPORTED_SPAN, beam)));
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
        Amounts.ratio(passage.part().envelope().z().ratio(passage.part().thickestSection()));
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
            .longest(passage.green().density(), SelfWeightBody.QUOTED.low());
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
        .basis(SelfWeightBody.QUOTED_BASIS)
        .build();
  }
}
