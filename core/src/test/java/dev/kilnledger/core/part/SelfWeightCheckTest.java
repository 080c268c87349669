package dev.kilnledger.core.part;

import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.pascals;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.PASCAL;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.core.source.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelfWeightCheckTest {
  private static final SelfWeightCheck CHECK = SelfWeightCheck.standard();

  /** phi 0.55, f 0.9514: green 1.2004 times the finished 20 x 20 x 30 mm, section of 6 mm. */
  private static final Passage PASSAGE = passage(30);

  private static Passage passage(double height) {
    return MassBalancePassage.standard()
        .passage(
            TestStock.part()
                .envelope(Envelope.of(millimetres(20), millimetres(20), millimetres(height)))
                .finishedVolume(cubicCentimetres(5))
                .build(),
            TestStock.loaded(0.55, 0.9514));
  }

  private static SupportFacts.Builder overhang(double length, double thickness) {
    return SupportFacts.builder()
        .overhang(SelfWeightBeam.overhang(millimetres(length), millimetres(thickness)));
  }

  private static Finding of(SupportFacts facts, PartFinding code) {
    return CHECK.check(PASSAGE, facts).stream()
        .filter(f -> f.code() == code)
        .findFirst()
        .orElseThrow();
  }

  /** By hand: 3 x 5500 x 9.80665 x 0.02^2 / 0.004 = 16 180.97 Pa, a span a quarter of it. */
  @Test
  void beamsBendUnderTheirOwnWeight() {
    SelfWeightBeam overhang = SelfWeightBeam.overhang(millimetres(20), millimetres(4));
    SelfWeightBeam span = SelfWeightBeam.span(millimetres(20), millimetres(4));
    assertThat(overhang.stress(kilogramsPerCubicMetre(5500)).in(PASCAL))
        .isCloseTo(16_180.97, within(0.005));
    assertThat(span.stress(kilogramsPerCubicMetre(5500)).in(PASCAL))
        .isCloseTo(4_045.24, within(0.005));
    assertThat(overhang.longest(kilogramsPerCubicMetre(5500), pascals(16_180.9725)).in(MILLIMETRE))
        .isCloseTo(20, within(1e-6));
  }

  /**
   * w L4 / (8 E I) and 5 w L4 / (384 E I), beam tables, from memory; a bar 10 mm wide, 4 mm thick,
   * 20 mm long of 5500 kg/m3, E = 1 MPa: w = 2.157463 N/m, I = 5.3333e-11 m4.
   */
  @Test
  void beamsSagAsBeamTablesSay() {
    double w = 5500 * 9.80665 * 0.01 * 0.004;
    double i = 0.01 * Math.pow(0.004, 3) / 12;
    SelfWeightBeam overhang = SelfWeightBeam.overhang(millimetres(20), millimetres(4));
    SelfWeightBeam span = SelfWeightBeam.span(millimetres(20), millimetres(4));
    assertThat(overhang.sag(kilogramsPerCubicMetre(5500), pascals(1e6)).si())
        .isCloseTo(w * Math.pow(0.02, 4) / (8 * 1e6 * i), within(1e-12));
    assertThat(span.sag(kilogramsPerCubicMetre(5500), pascals(1e6)).si())
        .isCloseTo(5 * w * Math.pow(0.02, 4) / (384 * 1e6 * i), within(1e-12));
    // half the length a sixteenth, twice the thickness a quarter
    assertThat(SelfWeightBeam.overhang(millimetres(10), millimetres(4)).sagAgainst(overhang))
        .isCloseTo(1 / 16.0, within(1e-12));
    assertThat(SelfWeightBeam.overhang(millimetres(20), millimetres(8)).sagAgainst(overhang))
        .isCloseTo(1 / 4.0, within(1e-12));
    assertThat(overhang.sagAgainst(span)).isCloseTo(1.5 * 32 / 5, within(1e-12));
  }

  /** 20 mm of 4500 kg/m3 weigh 0.88 kPa on their foot (quoted in a review, recomputed). */
  @Test
  void footCarriesTheWeightAboveIt() {
    Finding soft = of(SupportFacts.unknown(), PartFinding.OWN_WEIGHT);
    double density = PASSAGE.green().density().si();
    double height = PASSAGE.green().envelope().z().si();
    assertThat(4500 * SelfWeightBeam.GRAVITY * 0.02).isCloseTo(880, within(5.0));
    assertThat(soft.measured().orElseThrow().si())
        .isCloseTo(density * 9.80665 * height, within(1e-6));
    assertThat(soft.severity()).isEqualTo(Severity.UNDETERMINED);
  }

  @Test
  void withoutStrengthsItTellsWhatIsNeeded() {
    // finished 20 mm and 4 mm are 24.0 and 4.8 mm green; green 0.55 x 8960 + 0.45 x 1240 = 5486
    // kg/m3: 3 x 5486 x 9.80665 x 0.1 x 1.2004 = 19.37 kPa; brown 0.55 x 8960 = 4928: 17.4 kPa
    List<Finding> findings = CHECK.check(PASSAGE, overhang(20, 4).build());
    assertThat(findings)
        .extracting(Finding::code)
        .containsExactly(
            PartFinding.OVERHANG,
            PartFinding.OWN_WEIGHT,
            PartFinding.OVERHANG,
            PartFinding.OWN_WEIGHT,
            PartFinding.SLENDERNESS,
            PartFinding.SUPPORT_STATED);
    Finding soft = findings.get(0);
    assertThat(soft.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(soft.measured().orElseThrow().si()).isCloseTo(19_373, within(5.0));
    assertThat(soft.message())
        .startsWith(
            "softened, before its binder leaves: an overhang of 24.0 mm, 4.8 mm thick, bends under"
                + " its own weight with 193")
        .endsWith(
            "Pa, and what its body stands is not stated; softened bodies are quoted with 200 to"
                + " 25000 Pa; nothing lies under it: shorten or thicken it, or bury it in packing");
    assertThat(soft.basis().standing()).isEqualTo(Standing.QUOTED);
    Finding brown = findings.get(2);
    assertThat(brown.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(brown.measured().orElseThrow().si()).isCloseTo(17_403, within(5.0));
    assertThat(brown.message()).contains("brown: an overhang").contains("it may crack below that");
  }

  /** Green 24.0 mm, 4.8 mm thick: 19.4 kPa. */
  @ParameterizedTest
  @CsvSource({"20000, 30000, PASSED", "10000, 30000, UNDETERMINED", "5000, 19000, WARNING"})
  void holdsTheStressAgainstTheStrengthMeasured(double low, double high, Severity severity) {
    SupportFacts facts =
        overhang(20, 4)
            .softenedStrength(TestStock.sourced(Span.of(pascals(low), pascals(high))))
            .build();
    Finding finding = of(facts, PartFinding.OVERHANG);
    assertThat(finding.severity()).isEqualTo(severity);
    assertThat(finding.limit()).contains(pascals(low));
    assertThat(finding.basis().standing()).isEqualTo(Standing.FROM_MEMORY);
    String bare = "and its body stands " + (int) low + " to " + (int) high + " Pa";
    if (severity == Severity.PASSED) {
      assertThat(finding.message()).endsWith(bare);
    } else {
      assertThat(finding.message()).contains(bare + "; up to ");
    }
  }

  /** A quarter of an overhang's stress, 19 373 Pa / 4, and beam tables have the same ratio. */
  @Test
  void spansAreCheckedLikeOverhangs() {
    SupportFacts facts =
        SupportFacts.builder()
            .span(SelfWeightBeam.span(millimetres(20), millimetres(4)))
            .complete(true)
            .build();
    List<Finding> findings = CHECK.check(PASSAGE, facts);
    assertThat(findings)
        .extracting(Finding::code)
        .startsWith(PartFinding.UNSUPPORTED_SPAN, PartFinding.OWN_WEIGHT)
        .hasSize(6);
    assertThat(findings.get(0).measured().orElseThrow().si()).isCloseTo(19_373 / 4.0, within(2.0));
    assertThat(findings.get(0).message()).contains("an unsupported span of 24.0 mm, 4.8 mm thick");
    assertThatThrownBy(
            () ->
                CHECK.check(
                    PASSAGE,
                    SupportFacts.builder()
                        .span(SelfWeightBeam.span(millimetres(20), millimetres(7)))
                        .build()))
        .hasMessageContaining("span is 7 mm thick; accepted is up to the part's thickest section");
  }

  /** L scales with the root of the strength: 24.0 mm x sqrt(5000 / 19 373) = 12.2 mm. */
  @Test
  void tellsWhatWouldHold() {
    SupportFacts facts =
        overhang(20, 4)
            .softenedStrength(TestStock.sourced(Span.of(pascals(5000), pascals(6000))))
            .build();
    assertThat(of(facts, PartFinding.OVERHANG).message())
        .contains("and its body stands 5000 to 6000 Pa; up to 12.2 mm would hold for certain");
  }

  @Test
  void moreThanAnySoftenedBodyStandsIsWarnedOf() {
    Finding finding = of(overhang(20, 2).build(), PartFinding.OVERHANG);
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(finding.message()).contains("more than any softened body quoted stands");
  }

  @Test
  void tappedPackingCarriesAndPouredPackingSettles() {
    Finding tapped = of(overhang(20, 2).bed(SupportFacts.Bed.TAPPED).build(), PartFinding.OVERHANG);
    assertThat(tapped.severity()).isEqualTo(Severity.NOTE);
    // 5486 x 9.80665 x 2.4 mm = 129 Pa
    assertThat(tapped.message())
        .endsWith(
            "the packing tapped under it carries it with 129 Pa as long as it fills the hollow");
    Finding poured =
        of(
            overhang(20, 2)
                .bed(SupportFacts.Bed.POURED)
                .powder(MaterialLibrary.standard().packingPowder("alumina"))
                .build(),
            PartFinding.OVERHANG);
    assertThat(poured.severity()).isEqualTo(Severity.WARNING);
    // from 560 to 1500 kg/m3: 1 - 560 / 1500
    assertThat(poured.message())
        .endsWith("settles by up to 63 % of its depth before it carries: tap it");
  }

  /** Up to 5 times as high as wide, common practice; 20 mm wide, section of 6 mm. */
  @ParameterizedTest
  @CsvSource({
    "30, NONE, PASSED",
    "31, NONE, NOTE",
    "101, NONE, WARNING",
    "101, POURED, WARNING",
    "101, TAPPED, NOTE"
  })
  void tallPartsAreSlender(double height, SupportFacts.Bed bed, Severity severity) {
    SupportFacts facts = SupportFacts.builder().bed(bed).build();
    assertThat(CHECK.check(passage(height), facts))
        .filteredOn(f -> f.code() == PartFinding.SLENDERNESS)
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(severity);
              assertThat(f.basis().standing()).isEqualTo(Standing.COMMON_PRACTICE);
            });
  }

  /** Envelopes 20 mm wide whichever way they lie, sections of 6 mm; 101 / 20 and 101 / 6. */
  @Test
  void saysHowSlenderAPartIs() {
    String ratio = "as printed it is 5.1 times as high as its envelope is wide";
    String wall =
        ", and 16.8 times as high as its thickest section: a wall that stands alone leans or falls";
    assertThat(slenderness(20, 40, 101, SupportFacts.Bed.NONE))
        .isEqualTo(ratio + wall + "; tap packing in beside it, or lay it down");
    assertThat(slenderness(40, 20, 101, SupportFacts.Bed.TAPPED))
        .isEqualTo(ratio + wall + "; the tapped packing beside it holds it upright");
    assertThat(slenderness(20, 20, 30, SupportFacts.Bed.NONE))
        .isEqualTo("as printed it is 1.5 times as high as its envelope is wide");
    assertThat(slenderness(20, 20, 31, SupportFacts.Bed.NONE))
        .contains("and 5.2 times as high as its thickest section")
        .endsWith("; tap packing in beside it, or lay it down");
  }

  private static String slenderness(double x, double y, double z, SupportFacts.Bed bed) {
    Passage passage =
        MassBalancePassage.standard()
            .passage(
                TestStock.part()
                    .envelope(Envelope.of(millimetres(x), millimetres(y), millimetres(z)))
                    .finishedVolume(cubicCentimetres(5))
                    .build(),
                TestStock.loaded(0.55, 0.9514));
    return CHECK.check(passage, SupportFacts.builder().bed(bed).build()).stream()
        .filter(f -> f.code() == PartFinding.SLENDERNESS)
        .findFirst()
        .orElseThrow()
        .message();
  }

  /** sqrt(200 x 0.0072 / (3 x 5486 x 9.80665)) = 2.99 mm, the section being 7.2 mm green. */
  @Test
  void nothingIsCertainWithoutSupportData() {
    Finding unknown = of(SupportFacts.unknown(), PartFinding.SUPPORT_STATED);
    assertThat(unknown.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(unknown.message())
        .isEqualTo(
            "whether anything hangs free is not stated, and without that nothing is certain; even"
                + " as thick as its thickest section an overhang of more than 3.0 mm green asks"
                + " more than the softest body quoted stands");
    Finding none = of(SupportFacts.builder().complete(true).build(), PartFinding.SUPPORT_STATED);
    assertThat(none.severity()).isEqualTo(Severity.PASSED);
    assertThat(none.message()).isEqualTo("all that hangs free is stated");
    assertThat(of(overhang(5, 4).build(), PartFinding.SUPPORT_STATED).message())
        .startsWith("whether anything else hangs free is not stated");
    SupportFacts span =
        SupportFacts.builder().span(SelfWeightBeam.span(millimetres(5), millimetres(4))).build();
    assertThat(of(span, PartFinding.SUPPORT_STATED).message())
        .startsWith("whether anything else hangs free is not stated");
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> CHECK.check(PASSAGE, overhang(20, 7).build()))
        .hasMessage(
            "support of test cam: overhang is 7 mm thick; accepted is up to the part's thickest"
                + " section, 6 mm");
    assertThatThrownBy(
            () ->
                SupportFacts.builder()
                    .span(SelfWeightBeam.overhang(millimetres(1), millimetres(1)))
                    .softenedStrength(TestStock.sourced(Span.of(pascals(0), pascals(1))))
                    .build())
        .hasMessageContaining("span is held at one end; accepted is a span")
        .hasMessageContaining("lowest softened strength is 0 Pa");
    assertThatThrownBy(
            () ->
                SupportFacts.builder()
                    .overhang(SelfWeightBeam.span(millimetres(1), millimetres(1)))
                    .brownStrength(TestStock.sourced(Span.of(pascals(0), pascals(1))))
                    .build())
        .hasMessageContaining("overhang is held at both ends; accepted is an overhang")
        .hasMessageContaining("lowest brown strength is 0 Pa");
    assertThatThrownBy(() -> SelfWeightBeam.span(millimetres(0), millimetres(1)))
        .hasMessageContaining("length is 0 mm");
  }
}
