package dev.kilnledger.thermal.densification;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Law;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.AnyProfile;
import dev.kilnledger.thermal.profile.AnyProfile.Programme;
import dev.kilnledger.thermal.profile.Profile;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What holds for every sintering curve and every profile: heat makes denser, never less dense. */
@Domain(AnyProfile.class)
@Domain(DomainContext.Global.class)
class DensificationLawsTest {
  /** Logarithms of integrals over exponents up to 200, each with some roundings. */
  private static final double ROUNDING = 1e-9;

  private static final Densification MODEL = Densification.standard();

  @Provide
  Arbitrary<SinteringCurve> curve() {
    return Combinators.combine(
            Arbitraries.integers().between(100, 450),
            Arbitraries.doubles().between(-30, -12).ofScale(2),
            Arbitraries.doubles().between(0.3, 3).ofScale(2),
            Arbitraries.integers().between(45, 70))
        .as(
            (energy, location, width, initial) ->
                SinteringCurve.builder()
                    .name("invented powder")
                    .activationEnergy(kilojoulesPerMole(energy))
                    .base(SinteringCurve.Base.NATURAL)
                    .location(ratio(location))
                    .width(ratio(width))
                    .initialDensity(volumeFraction(initial / 100.0))
                    .range(Span.of(celsius(300), celsius(1200)))
                    .source(Source.user("invented for the tests"))
                    .build());
  }

  private static double density(SinteringCurve curve, Profile profile) {
    return MODEL.along(curve, TemperatureHistory.of(profile)).density().expected().si();
  }

  @Law
  void staysBetweenItsInitialAndFullDensity(
      @ForAll("curve") SinteringCurve curve, @ForAll Programme programme) {
    double before = curve.initialDensity().si();
    for (DensityPoint point :
        MODEL.along(curve, TemperatureHistory.of(programme.profile())).points()) {
      assertThat(point.density().expected().si()).isBetween(before - ROUNDING, 1.0);
      before = point.density().expected().si();
    }
  }

  @Law
  void isTheSameWithASegmentCutInTwo(
      @ForAll("curve") SinteringCurve curve,
      @ForAll Programme programme,
      @ForAll @IntRange(max = 5) int which,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double share) {
    assertThat(density(curve, programme.cut(which, share)))
        .isCloseTo(density(curve, programme.profile()), within(ROUNDING));
  }

  @Law
  void isNeverLessDenseWhenItIsHotterOrTakesLonger(
      @ForAll("curve") SinteringCurve curve,
      @ForAll Programme programme,
      @ForAll @IntRange(max = 90) int hotter,
      @ForAll @DoubleRange(min = 1, max = 5) double longer) {
    assertThat(density(curve, programme.profile(hotter, longer)))
        .isGreaterThanOrEqualTo(density(curve, programme.profile()) - ROUNDING);
  }

  @Law
  void needsTheWorkThatMakesItsDensity(
      @ForAll("curve") SinteringCurve curve, @ForAll @DoubleRange(max = 1) double share) {
    double initial = curve.initialDensity().si();
    double density = initial + (0.001 + 0.998 * share) * (1 - initial);
    assertThat(curve.densityAt(curve.logWorkFor(volumeFraction(density))).si())
        .isCloseTo(density, within(ROUNDING));
  }

  @Law
  void isItsOwnEquivalentAsAHold(
      @ForAll @IntRange(min = 100, max = 450) int energy,
      @ForAll @IntRange(min = 400, max = 1400) int temperature,
      @ForAll @DoubleRange(min = 0.1, max = 20) double hours) {
    TemperatureHistory hold =
        TemperatureHistory.of(Profile.from(celsius(temperature)).hold(hours(hours)).build());
    assertThat(MODEL.equivalentHold(kilojoulesPerMole(energy), hold, celsius(temperature)).in(HOUR))
        .isCloseTo(hours, within(ROUNDING * hours));
  }

  @Law
  void takesLongerAtALowerTemperature(
      @ForAll Programme programme,
      @ForAll @IntRange(min = 100, max = 450) int energy,
      @ForAll @IntRange(min = 500, max = 1300) int temperature,
      @ForAll @IntRange(min = 1, max = 200) int lower) {
    TemperatureHistory history = TemperatureHistory.of(programme.profile());
    assertThat(
            MODEL.equivalentHold(kilojoulesPerMole(energy), history, celsius(temperature - lower)))
        .isGreaterThan(
            MODEL.equivalentHold(kilojoulesPerMole(energy), history, celsius(temperature)));
  }
}
