package dev.kilnledger.thermal.conduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.Law;
import dev.kilnledger.thermal.profile.AnyProfile;
import dev.kilnledger.thermal.profile.AnyProfile.Programme;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amounts;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What conduction must do to every profile, whatever body it goes into. */
@Domain(AnyProfile.class)
@Domain(DomainContext.Global.class)
class ConductionLawsTest {
  /** The standard engine promises 0.02 K; two answers may lie apart by twice that. */
  private static final double TOLERANCE = 0.05;

  private static Charge charge(BodyShape shape, double millimetres) {
    return Bodies.body(shape, millimetres / 1000, 2.5e-7).build();
  }

  private static CoreHistory core(Charge charge, Profile profile) {
    return EigenmodeConduction.standard().forecast(charge, profile);
  }

  @Law
  void isTheSameWithASegmentCutInTwo(
      @ForAll Programme programme,
      @ForAll BodyShape shape,
      @ForAll @IntRange(min = 10, max = 80) int size,
      @ForAll @IntRange(max = 5) int which,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double share) {
    CoreHistory whole = core(charge(shape, size), programme.profile());
    CoreHistory cut = core(charge(shape, size), programme.cut(which, share));
    for (double at = 0; at <= 1; at += 0.1) {
      var time = whole.profile().duration().multiply(at * (1 - 1e-9));
      assertThat(cut.coreAt(time).si()).isCloseTo(whole.coreAt(time).si(), within(TOLERANCE));
    }
  }

  /** Fourier: the same Fo, the same temperatures (Carslaw and Jaeger, section 1.7). */
  @Law
  void isTheSameAtTheSameFourierNumber(
      @ForAll Programme programme,
      @ForAll BodyShape shape,
      @ForAll @IntRange(min = 10, max = 60) int size,
      @ForAll @DoubleRange(min = 1.1, max = 3) double larger) {
    CoreHistory small = core(charge(shape, size), programme.profile());
    CoreHistory large = core(charge(shape, size * larger), programme.profile(0, larger * larger));
    for (double at = 0; at <= 1; at += 0.1) {
      double a = small.coreAt(small.profile().duration().multiply(at * (1 - 1e-9))).si();
      double b = large.coreAt(large.profile().duration().multiply(at * (1 - 1e-9))).si();
      assertThat(b).isCloseTo(a, within(TOLERANCE));
    }
  }

  /** No heat comes from nowhere: the core stays within what its surface has been. */
  @Law
  void keepsTheCoreWithinWhatTheKilnHasBeen(
      @ForAll Programme programme,
      @ForAll BodyShape shape,
      @ForAll @IntRange(min = 10, max = 120) int size) {
    Profile profile = programme.profile();
    CoreHistory history = core(charge(shape, size), profile);
    double lowest = profile.start().si();
    for (Segment segment : profile.segments()) {
      lowest = Math.min(lowest, segment.end().si());
    }
    for (CorePoint point : history.points()) {
      assertThat(point.core().si()).isBetween(lowest - TOLERANCE, profile.peak().si() + TOLERANCE);
    }
    assertThat(history.peakShortfall().si()).isGreaterThanOrEqualTo(-TOLERANCE);
  }

  @Law
  void addsUpAsHeatDoes(
      @ForAll Programme programme,
      @ForAll BodyShape shape,
      @ForAll @IntRange(min = 10, max = 80) int size,
      @ForAll @IntRange(min = 1, max = 300) int hotter) {
    // The equation is linear: everything so many degrees hotter, the core as well.
    CoreHistory here = core(charge(shape, size), programme.profile());
    CoreHistory there = core(charge(shape, size), programme.profile(hotter, 1));
    for (double at = 0; at <= 1; at += 0.25) {
      var time = here.profile().duration().multiply(at * (1 - 1e-9));
      assertThat(there.coreAt(time).si() - here.coreAt(time).si())
          .isCloseTo(hotter, within(TOLERANCE));
    }
  }

  /** The lag of a steady ramp is rate x size² / (2, 4, 6 a), the same section of the textbook. */
  @Law
  void lagsWithTheRateAndTheSquareOfTheSize(
      @ForAll BodyShape shape,
      @ForAll @DoubleRange(min = 1, max = 300) double rate,
      @ForAll @DoubleRange(min = 5, max = 100) double size) {
    var lag =
        EigenmodeConduction.standard().steadyLag(charge(shape, size), Amounts.kelvinPerHour(rate));
    double half = size / 1000;
    double expected = rate / 3600 * half * half / (Bodies.perShape(2, 4, 6, shape) * 2.5e-7);
    assertThat(lag.si()).isCloseTo(expected, within(1e-9 * expected));
    assertThat(EigenmodeConduction.standard().rateForLag(charge(shape, size), lag).si())
        .isCloseTo(rate / 3600, within(1e-9 * rate));
  }

  @Law
  void getsTheCoreNoLessHotByALongerHold(
      @ForAll BodyShape shape,
      @ForAll @IntRange(min = 20, max = 120) int size,
      @ForAll @IntRange(min = 100, max = 1100) int peak,
      @ForAll @IntRange(min = 5, max = 300) int minutes,
      @ForAll @IntRange(min = 1, max = 300) int more) {
    assertThat(held(shape, size, peak, minutes + more).corePeak().si())
        .isGreaterThanOrEqualTo(held(shape, size, peak, minutes).corePeak().si() - TOLERANCE);
  }

  private static CoreHistory held(BodyShape shape, int size, int peak, int minutes) {
    Programme programme =
        new Programme(
            20, List.of(new AnyProfile.Step(peak, 60), new AnyProfile.Step(peak, minutes)));
    return core(charge(shape, size), programme.profile());
  }

  /** Two methods that have nothing in common but the equation. */
  @Property(tries = 8, seed = "20261125")
  void agreesWithFiniteVolumes(
      @ForAll Programme programme,
      @ForAll BodyShape shape,
      @ForAll @IntRange(min = 20, max = 60) int size) {
    Charge charge = charge(shape, size);
    CoreHistory one = core(charge, programme.profile());
    CoreHistory other = EnthalpyConduction.standard().forecast(charge, programme.profile());
    // Sixty volumes: 1/60² of the lag, which is up to the whole span of the profile.
    double span = programme.profile().peak().si() - 293;
    for (double at = 0.1; at <= 1; at += 0.1) {
      var time = one.profile().duration().multiply(at * (1 - 1e-9));
      assertThat(other.coreAt(time).si())
          .isCloseTo(one.coreAt(time).si(), within(0.2 + span / 1000));
    }
    other.heat().ifPresent(heat -> assertThat(Math.abs(heat.imbalance().si())).isLessThan(1e-6));
  }
}
