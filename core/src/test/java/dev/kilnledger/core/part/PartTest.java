package dev.kilnledger.core.part;

import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.cubicMillimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

class PartTest {
  private static Envelope box(double x, double y, double z) {
    return Envelope.of(millimetres(x), millimetres(y), millimetres(z));
  }

  @Test
  void fillsItsEnvelopeIfItIsABox() {
    Part block =
        Part.builder()
            .name("block")
            .finishedVolume(cubicMillimetres(10 * 20 * 30))
            .envelope(box(10, 20, 30))
            .thickestSection(millimetres(10))
            .build();
    assertThat(block.envelope().volume().si()).isEqualTo(6e-6, offset(1e-20));
  }

  /** Published names never change their meaning. */
  @Test
  void codesOfFindingsStayWhatTheyAre() {
    assertThat(PartFinding.values())
        .extracting(PartFinding::code)
        .containsExactly(
            "solids-loading",
            "densification",
            "moulding-shrinkage",
            "final-relative-density",
            "measured-shrinkage",
            "shrinkage-calibration",
            "fired-density",
            "open-pores-sealed",
            "binder-left",
            "overhang",
            "unsupported-span",
            "own-weight",
            "slenderness",
            "support-stated");
  }

  @Test
  void tellsAllThatIsWrongTogether() {
    assertThatThrownBy(
            () ->
                Part.builder()
                    .name(" ")
                    .envelope(box(10, 20, 30))
                    .thickestSection(millimetres(12))
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("name is blank")
        .hasMessageContaining(
            "neither finished volume nor finished mass is stated; accepted is at least one")
        .hasMessageContaining(
            "thickest section is 12 mm; accepted is up to the envelope's smallest side, 10 mm");
  }

  @Test
  void refusesAVolumeBeyondItsEnvelope() {
    assertThatThrownBy(() -> TestStock.part().finishedVolume(cubicCentimetres(12.5)).build())
        .hasMessage(
            "part test cam: finished volume is 12.5000 cm³; accepted is up to the envelope's"
                + " volume, 12.0000 cm³");
  }

  @Test
  void refusesSizesOfZero() {
    assertThatThrownBy(
            () ->
                TestStock.part()
                    .finishedVolume(cubicCentimetres(0))
                    .finishedMass(grams(-1))
                    .thickestSection(millimetres(0))
                    .build())
        .hasMessageContaining("finished volume is 0 cm³; accepted is more than zero")
        .hasMessageContaining("finished mass is -1 g; accepted is more than zero")
        .hasMessageContaining("thickest section is 0 mm; accepted is more than zero");
    assertThatThrownBy(() -> box(0, -1, 5))
        .hasMessageContaining("x is 0 mm")
        .hasMessageContaining("y is -1 mm");
  }

  @Test
  void fitsUprightOrTurnedAboutTheVertical() {
    assertThat(box(30, 10, 50).fitsIn(box(10, 30, 50))).isTrue();
    assertThat(box(30, 10, 50).fitsIn(box(50, 30, 10))).isFalse();
    assertThat(box(20, 30, 40).fitsIn(box(20, 30, 40))).isTrue();
    assertThat(box(31, 5, 5).fitsIn(box(20, 30, 40))).isFalse();
    assertThat(box(5, 31, 5).fitsIn(box(20, 30, 40))).isFalse();
    assertThat(box(25, 25, 5).fitsIn(box(20, 30, 40))).isFalse();
    assertThat(box(5, 5, 41).fitsIn(box(20, 30, 40))).isFalse();
    assertThat(box(30, 10, 50).smallestSide()).isEqualTo(millimetres(10));
    assertThat(box(10, 30, 5).smallestSide()).isEqualTo(millimetres(5));
    assertThat(box(30, 10.25, 50).format()).isEqualTo("30.0 mm x 10.3 mm x 50.0 mm");
  }
}
