package dev.kilnledger.core.equipment;

import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.Law;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.units.Amount;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;

/** What holds for every charge that is laid out: parts keep their distances and stay inside. */
class ArrangementLawsTest {
  /** A nanometre is granted so that what just fits is not refused; as much again for rounding. */
  private static final double ROUNDING = 2e-6;

  /** A cavity, a part and the space to keep, in whole millimetres. */
  record Laid(boolean round, int wide, int deep, int high, int x, int y, int z, int space) {
    Cavity cavity() {
      return round
          ? RoundCavity.of(millimetres(wide), millimetres(high))
          : BoxCavity.of(millimetres(wide), millimetres(deep), millimetres(high));
    }

    ChargePart part() {
      return ChargePart.of(Envelope.of(millimetres(x), millimetres(y), millimetres(z)));
    }

    Optional<Arrangement> most() {
      return PatternArranger.standard().most(cavity(), part(), Spacing.of(millimetres(space)));
    }

    int parts() {
      return most().map(Arrangement::parts).orElse(0);
    }
  }

  @Provide
  Arbitrary<Laid> laid() {
    Arbitrary<Integer> room = Arbitraries.integers().between(30, 200);
    Arbitrary<Integer> side = Arbitraries.integers().between(5, 60);
    return Combinators.combine(
            Arbitraries.of(true, false),
            room,
            room,
            room,
            side,
            side,
            side,
            Arbitraries.integers().between(0, 15))
        .as(Laid::new);
  }

  @Law
  void keepsPartsApartAndFromTheWall(@ForAll("laid") Laid laid) {
    laid.most()
        .ifPresent(
            arrangement -> {
              for (int layer = 0; layer < arrangement.layers(); layer++) {
                apart(laid, arrangement, arrangement.layer(layer));
              }
            });
  }

  @Law
  void neverClaimsMoreThanCanBe(@ForAll("laid") Laid laid) {
    laid.most()
        .ifPresent(
            arrangement -> {
              assertThat(arrangement.parts()).isBetween(1, arrangement.atMost());
              double parts = arrangement.parts() * (double) laid.x() * laid.y() * laid.z();
              assertThat(parts).isLessThanOrEqualTo(laid.cavity().volume().si() * 1e9 + ROUNDING);
              assertThat(arrangement.freeHeight().in(MILLIMETRE)).isGreaterThanOrEqualTo(-ROUNDING);
            });
  }

  @Law
  void holdsNoFewerPartsInMoreRoom(@ForAll("laid") Laid laid) {
    Laid higher =
        new Laid(
            laid.round(),
            laid.wide(),
            laid.deep(),
            laid.high() + 20,
            laid.x(),
            laid.y(),
            laid.z(),
            laid.space());
    assertThat(higher.parts()).isGreaterThanOrEqualTo(laid.parts());
    Laid closer =
        new Laid(
            laid.round(),
            laid.wide(),
            laid.deep(),
            laid.high(),
            laid.x(),
            laid.y(),
            laid.z(),
            Math.max(0, laid.space() - 3));
    assertThat(closer.parts()).isGreaterThanOrEqualTo(laid.parts());
  }

  @Law
  void takesASmallPartWhereverALargerOneGoes(@ForAll("laid") Laid laid) {
    Laid smaller =
        new Laid(
            laid.round(),
            laid.wide(),
            laid.deep(),
            laid.high(),
            laid.x() - 1,
            laid.y() - 1,
            laid.z() - 1,
            laid.space());
    assertThat(smaller.parts()).isGreaterThanOrEqualTo(laid.parts());
  }

  @Law
  void laysOutTheSameWhicheverWayTheBoxIsTurned(@ForAll("laid") Laid laid) {
    Laid turned =
        new Laid(
            laid.round(),
            laid.round() ? laid.wide() : laid.deep(),
            laid.round() ? laid.deep() : laid.wide(),
            laid.high(),
            laid.y(),
            laid.x(),
            laid.z(),
            laid.space());
    assertThat(turned.parts()).isEqualTo(laid.parts());
  }

  private static void apart(Laid laid, Arrangement arrangement, List<Place> places) {
    Envelope standing = arrangement.standingEnvelope();
    for (int i = 0; i < places.size(); i++) {
      double[] a = half(standing, places.get(i));
      inside(laid, places.get(i), a);
      for (int k = 0; k < i; k++) {
        double[] b = half(standing, places.get(k));
        double dx = Math.abs(mm(places.get(i).x()) - mm(places.get(k).x())) - a[0] - b[0];
        double dy = Math.abs(mm(places.get(i).y()) - mm(places.get(k).y())) - a[1] - b[1];
        assertThat(Math.max(dx, dy)).isGreaterThanOrEqualTo(laid.space() - ROUNDING);
      }
    }
  }

  private static void inside(Laid laid, Place place, double[] half) {
    double x = Math.abs(mm(place.x())) + half[0];
    double y = Math.abs(mm(place.y())) + half[1];
    if (laid.round()) {
      assertThat(Math.hypot(x, y)).isLessThanOrEqualTo(laid.wide() / 2.0 - laid.space() + ROUNDING);
    } else {
      assertThat(x).isLessThanOrEqualTo(laid.wide() / 2.0 - laid.space() + ROUNDING);
      assertThat(y).isLessThanOrEqualTo(laid.deep() / 2.0 - laid.space() + ROUNDING);
    }
  }

  private static double[] half(Envelope standing, Place place) {
    double x = mm(standing.x()) / 2;
    double y = mm(standing.y()) / 2;
    return place.turned() ? new double[] {y, x} : new double[] {x, y};
  }

  private static double mm(Amount<Length> length) {
    return length.in(MILLIMETRE);
  }
}
