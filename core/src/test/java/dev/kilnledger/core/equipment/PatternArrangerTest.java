package dev.kilnledger.core.equipment;

import static dev.kilnledger.units.Amounts.micrometres;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.part.Outline;
import dev.kilnledger.core.part.PrintAxis;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PatternArrangerTest {
  private static final PatternArranger ARRANGER = PatternArranger.standard();
  private static final Spacing TEN = Spacing.of(millimetres(10));

  private static ChargePart disc(double diameter, double height) {
    return ChargePart.builder()
        .envelope(box(diameter, diameter, height))
        .outline(Outline.ROUND)
        .build();
  }

  private static Envelope box(double x, double y, double z) {
    return Envelope.of(millimetres(x), millimetres(y), millimetres(z));
  }

  private static RoundCavity round(double diameter, double height) {
    return RoundCavity.of(millimetres(diameter), millimetres(height));
  }

  /** The example of the class: q = 3.75 lies between 3.613 for nine and 3.813 for ten. */
  @Test
  void discsInARoundCrucibleFollowThePublishedPackings() {
    Arrangement most = ARRANGER.most(round(160, 100), disc(30, 10), TEN).orElseThrow();
    assertThat(most.perLayer()).isEqualTo(9);
    assertThat(most.layersAtMost()).isEqualTo(4);
    assertThat(most.capacity()).isEqualTo(36);
    // ten circles are proven to want 3.813, so nine are proven to be all
    assertThat(most.optimality()).isEqualTo(Arrangement.Optimality.PROVEN);
    assertThat(most.atMost()).isEqualTo(36);
    assertThat(most.underside(0).in(MILLIMETRE)).isCloseTo(10, within(1e-9));
    assertThat(most.underside(3).in(MILLIMETRE)).isCloseTo(70, within(1e-9));
    assertThat(most.fillHeight().in(MILLIMETRE)).isCloseTo(90, within(1e-9));
    assertThat(most.freeHeight().in(MILLIMETRE)).isCloseTo(10, within(1e-9));
  }

  /** 17 circles want 4.792 and 18 want 4.863: known, not proven. q = (102 - 10 + 5) / 20 = 4.85. */
  @Test
  void saysWhereNothingBetterIsKnown() {
    Arrangement most = ARRANGER.most(round(204, 40), disc(30, 10), TEN).orElseThrow();
    assertThat(most.capacity()).isEqualTo(17);
    assertThat(most.optimality()).isEqualTo(Arrangement.Optimality.BEST_KNOWN);
    assertThat(most.basis().text()).isEqualTo("best known packings of equal circles in a circle");
  }

  /**
   * Of a floor for very many parts the middle is filled, as large as a thousand parts with their
   * gaps: of radius sqrt(1000 x 40 x 40 mm2 / pi) = 714 mm, middles up to 699 mm. Of a hexagonal
   * pattern, 1386 mm2 to a part, 1107 lie there in the mean of all its positions; more than 1000 /
   * 0.866 = 1155 have no room. Of what is not quite round the longer side is the diameter.
   */
  @ParameterizedTest
  @CsvSource({"30, 30", "30, 25", "25, 30"})
  void ofAVeryLargeFloorTheMiddleIsFilled(double x, double y) {
    ChargePart disc = ChargePart.builder().envelope(box(x, y, 10)).outline(Outline.ROUND).build();
    Arrangement most = ARRANGER.most(round(9000, 40), disc, TEN).orElseThrow();
    assertThat(most.perLayer()).isBetween(1107, 1155);
  }

  /** 10 mm below and above are more than the 8 mm that there are. */
  @Test
  void spacingsThatAreHigherThanTheCrucibleLeaveNoLayer() {
    assertThat(ARRANGER.most(round(160, 8), disc(30, 10), TEN)).isEmpty();
  }

  /**
   * Middles may lie in 69 x 35 mm, 34 mm apart (by hand): 69 / 34 = 2, so three along, and 35 / 34
   * = 1, so two across; with every second row shifted by half it would stand out.
   */
  @Test
  void discsInABoxStandInRows() {
    Cavity box = BoxCavity.of(millimetres(113), millimetres(79), millimetres(50));
    Arrangement most = ARRANGER.most(box, disc(24, 10), TEN).orElseThrow();
    assertThat(most.perLayer()).isEqualTo(6);
    assertThat(most.layersAtMost()).isEqualTo(2);
    // Oler: 2 / sqrt(3) x 69 x 35 / 34 / 34 + (69 + 35) / 34 + 1 = 6.5 to a layer
    assertThat(most.optimality()).isEqualTo(Arrangement.Optimality.PROVEN);
    assertThat(most.basis().text()).isEqualTo("square or staggered rows");
    // two along no more, but two, one and two, 34 x sqrt(3) / 2 = 29.4 mm apart
    Cavity shorter = BoxCavity.of(millimetres(111), millimetres(79), millimetres(50));
    assertThat(ARRANGER.most(shorter, disc(24, 10), TEN).orElseThrow().perLayer()).isEqualTo(5);
  }

  @Test
  void placesGoFromTheMiddleOutwards() {
    List<Place> places = ARRANGER.most(round(240, 40), disc(30, 10), TEN).orElseThrow().places();
    assertThat(places.size()).isGreaterThan(20);
    assertThat(places)
        .extracting(place -> Math.hypot(place.x().in(MILLIMETRE), place.y().in(MILLIMETRE)))
        .isSortedAccordingTo(
            // places at one distance come in any order
            (one, other) -> Math.abs(one - other) < 1e-5 ? 0 : Double.compare(one, other));
  }

  /** Two circles want a radius of 2: (90 - 10 + 5) / 2 / 20 > 2, three 2.154. */
  @Test
  void aSinglePartStandsInTheMiddleOfItsLayer() {
    Arrangement most = ARRANGER.most(round(92, 60), disc(30, 10), TEN).orElseThrow();
    assertThat(most.perLayer()).isEqualTo(2);
    assertThat(most.with(3).layer(1))
        .containsExactly(Place.of(millimetres(0), millimetres(0), false));
    assertThat(most.with(3).layer(0)).isEqualTo(most.places());
  }

  /** A plate of 60 x 8 x 40: as printed (60 - 8 wide) 3 in 84 mm; standing lower, 2 layers. */
  @Test
  void laysPartsOnWhicheverSideHoldsMost() {
    Cavity cavity = BoxCavity.of(millimetres(80), millimetres(64), millimetres(70));
    ChargePart.Builder plate = ChargePart.builder().envelope(box(60, 8, 40));
    // as printed: 1 along, (64 - 20 + 10) / 18 = 3 across, (70 - 20 + 10) / 50 = 1 layer
    Arrangement printed = ARRANGER.most(cavity, plate.build(), TEN).orElseThrow();
    assertThat(printed.capacity()).isEqualTo(3);
    // y up: 60 x 40 on the floor, one to a layer, (70 - 20 + 10) / 18 = 3 layers: no better
    Arrangement flat =
        ARRANGER
            .most(cavity, plate.upright(Set.of(PrintAxis.Z, PrintAxis.Y)).build(), TEN)
            .orElseThrow();
    assertThat(flat.up()).isEqualTo(PrintAxis.Z);
    // a lower crucible takes it flat only
    Cavity low = BoxCavity.of(millimetres(80), millimetres(64), millimetres(46));
    Arrangement lying = ARRANGER.most(low, flat.part(), TEN).orElseThrow();
    assertThat(lying.up()).isEqualTo(PrintAxis.Y);
    assertThat(lying.capacity()).isEqualTo(2);
    assertThat(lying.standingEnvelope()).isEqualTo(box(60, 40, 8));
    assertThat(ARRANGER.most(low, printed.part(), TEN)).isEmpty();
  }

  @Test
  void fewerPartsFillTheLowestLayersFromTheMiddle() {
    Arrangement most = ARRANGER.most(round(160, 100), disc(30, 10), TEN).orElseThrow();
    Arrangement ten = most.with(10);
    assertThat(ten.layers()).isEqualTo(2);
    assertThat(ten.layer(0)).hasSize(9);
    assertThat(ten.layer(1)).containsExactly(Place.of(millimetres(0), millimetres(0), false));
    assertThat(ten.fillHeight().in(MILLIMETRE)).isCloseTo(50, within(1e-9));
    assertThatThrownBy(() -> ten.layer(2))
        .hasMessage("arrangement: layer is 2; accepted is from 0 to 1");
    assertThatThrownBy(() -> most.with(37))
        .hasMessage("arrangement: parts are 37; accepted is from 1 to 36");
  }

  /** The corner of a part of 30 x 40 is 25 from its middle: 35 with packing, 70 across. */
  @Test
  void sizesThatJustFitDoFit() {
    ChargePart part = ChargePart.of(box(30, 40, 10));
    assertThat(ARRANGER.most(round(70, 30), part, TEN)).isPresent();
    assertThat(ARRANGER.most(round(69.99, 30), part, TEN)).isEmpty();
    assertThat(ARRANGER.most(round(70, 29.99), part, TEN)).isEmpty();
    Cavity box = BoxCavity.of(millimetres(60), millimetres(50), millimetres(30));
    assertThat(ARRANGER.most(box, part, TEN)).isPresent();
    Spacing headroom = Spacing.builder().from(TEN).headroom(millimetres(1)).build();
    assertThat(ARRANGER.most(box, part, headroom)).isEmpty();
  }

  /** A quarter turn lets 180 x 80 mm into 100 x 200 mm with 10 mm on every side. */
  @Test
  void partsAreTurnedAboutTheVertical() {
    Cavity box = BoxCavity.of(millimetres(100), millimetres(200), millimetres(300));
    Arrangement turned = ARRANGER.most(box, ChargePart.of(box(180, 80, 280)), TEN).orElseThrow();
    assertThat(turned.places()).containsExactly(Place.of(millimetres(0), millimetres(0), true));
    assertThat(turned.optimality()).isEqualTo(Arrangement.Optimality.PROVEN);
    assertThat(ARRANGER.most(box, ChargePart.of(box(180, 81, 280)), TEN)).isEmpty();
  }

  /** A grain of 10 um among millimetres is a slip of the unit; it is counted, not to the end. */
  @Test
  void countingStopsAtAThousandToALayer() {
    ChargePart grain =
        ChargePart.of(Envelope.of(micrometres(10), micrometres(10), micrometres(10)));
    for (Cavity cavity :
        new Cavity[] {
          round(160, 100), BoxCavity.of(millimetres(90), millimetres(2), millimetres(90))
        }) {
      Arrangement many = ARRANGER.most(cavity, grain, Spacing.of(millimetres(0))).orElseThrow();
      assertThat(many.perLayer()).isBetween(800, 1000);
      assertThat(many.layersAtMost()).isEqualTo(1000);
      assertThat(many.optimality()).isEqualTo(Arrangement.Optimality.LOWER_BOUND);
      assertThat(many.atMost()).isEqualTo(Integer.MAX_VALUE);
    }
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> Spacing.of(millimetres(-1)))
        .hasMessageContaining("wall is -1 mm; accepted is zero or more");
    assertThatThrownBy(() -> ChargePart.builder().envelope(box(1, 1, 1)).upright(Set.of()).build())
        .hasMessage("charge part: no axis may point up; accepted is at least one");
    assertThat(ARRANGER.most(round(15, 100), disc(30, 10), TEN)).isEqualTo(Optional.empty());
  }
}
