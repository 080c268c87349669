package dev.kilnledger.thermal.burnout;

import static dev.kilnledger.units.Amounts.atmospheres;
import static dev.kilnledger.units.Amounts.bars;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.gramsPerMole;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.micrometres;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.Law;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.AnyProfile;
import dev.kilnledger.thermal.profile.AnyProfile.Programme;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MassFraction;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/**
 * What holds for every binder and every profile: heat drives it out, and nothing brings it back.
 */
@Domain(AnyProfile.class)
@Domain(DomainContext.Global.class)
class BurnOutLawsTest {
  /** The integrals are closed forms kept in logarithms: some roundings of exponents up to 100. */
  private static final double ROUNDING = 1e-10;

  /** Energies and orders as they are published for the binders of feedstocks. */
  @Provide
  Arbitrary<BinderKinetics> binder() {
    return Combinators.combine(
            Arbitraries.integers().between(120, 240),
            Arbitraries.integers().between(8, 14),
            Arbitraries.of(0.0, 0.5, 1.0, 1.5, 2.0),
            Arbitraries.integers().between(1, 99))
        .as(
            (energy, decade, order, share) ->
                BurnOutTest.kinetics(
                    step(energy, decade, order, share / 100.0),
                    step(energy + 20, decade, 1, 1 - share / 100.0)));
  }

  private static DecompositionStep step(int energy, int decade, double order, double share) {
    return DecompositionStep.of(
        kilojoulesPerMole(energy),
        ReactionOrder.of(Frequencies.perSecond(Math.pow(10, decade)), ratio(order)),
        massFraction(share));
  }

  private static Amount<MassFraction> left(BinderKinetics binder, Profile profile) {
    return BurnOut.standard().along(binder, TemperatureHistory.of(profile)).end().remaining();
  }

  @Law
  void leavesBetweenNothingAndAllAndNeverComesBack(
      @ForAll("binder") BinderKinetics binder, @ForAll Programme programme) {
    double before = 1;
    for (BurnOutPoint point :
        BurnOut.standard().along(binder, TemperatureHistory.of(programme.profile())).points()) {
      assertThat(point.remaining().si()).isBetween(0.0, before + ROUNDING);
      assertThat(point.rate().si()).isGreaterThanOrEqualTo(0);
      before = point.remaining().si();
    }
  }

  @Law
  void isTheSameWithASegmentCutInTwo(
      @ForAll("binder") BinderKinetics binder,
      @ForAll Programme programme,
      @ForAll @IntRange(max = 5) int which,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double share) {
    assertThat(left(binder, programme.cut(which, share)).si())
        .isCloseTo(left(binder, programme.profile()).si(), within(ROUNDING));
  }

  @Law
  void leavesNoMoreBinderWhenItIsHotter(
      @ForAll("binder") BinderKinetics binder,
      @ForAll Programme programme,
      @ForAll @IntRange(min = 1, max = 100) int hotter) {
    assertThat(left(binder, programme.profile(hotter, 1)).si())
        .isLessThanOrEqualTo(left(binder, programme.profile()).si() + ROUNDING);
  }

  @Law
  void leavesNoMoreBinderWhenItTakesLonger(
      @ForAll("binder") BinderKinetics binder,
      @ForAll Programme programme,
      @ForAll @DoubleRange(min = 1.01, max = 5) double longer) {
    assertThat(left(binder, programme.profile(0, longer)).si())
        .isLessThanOrEqualTo(left(binder, programme.profile()).si() + ROUNDING);
  }

  @Law
  void reachesAConversionWhereItSays(
      @ForAll("binder") BinderKinetics binder,
      @ForAll Programme programme,
      @ForAll @IntRange(min = 1, max = 99) int percent) {
    BurnOut model = BurnOut.standard();
    TemperatureHistory history = TemperatureHistory.of(programme.profile());
    model
        .reaching(binder, history, massFraction(percent / 100.0))
        .ifPresent(
            point -> {
              // Found by bisection in time, where the loss may be as fast as some percent a second.
              assertThat(point.conversion().si()).isCloseTo(percent / 100.0, within(1e-6));
              assertThat(model.at(binder, history, point.time()).conversion().si())
                  .isCloseTo(point.conversion().si(), within(1e-6));
            });
  }

  /** Without a limit of its own anything goes; with one, a thicker wall never goes faster. */
  @Law
  void allowsAThickerWallNoFasterLoss(
      @ForAll @DoubleRange(min = 0.5, max = 20) double wall,
      @ForAll @DoubleRange(min = 1.01, max = 4) double times,
      @ForAll @IntRange(min = 200, max = 500) int temperature) {
    double square = rate(Workbench.wallLimit().forWall(millimetres(wall)), temperature);
    double thicker = rate(Workbench.wallLimit().forWall(millimetres(wall * times)), temperature);
    assertThat(thicker).isCloseTo(square / (times * times), within(1e-9 * square));
    double pores = rate(pores(2, 0.4).forWall(millimetres(wall)), temperature);
    double deeper = rate(pores(2, 0.4).forWall(millimetres(wall * times)), temperature);
    // The square law of pore pressure: rate x L² is what the pressure difference stands for.
    assertThat(deeper).isCloseTo(pores / (times * times), within(1e-9 * pores));
  }

  @Law
  void holdsThePressureThatItAllows(
      @ForAll @DoubleRange(min = 1.1, max = 5) double bars,
      @ForAll @DoubleRange(min = 0.2, max = 0.6) double porosity,
      @ForAll @IntRange(min = 200, max = 500) int temperature) {
    PorePressureLimit limit = pores(bars, porosity);
    Amount<Frequency> allowed = limit.allowedAt(celsius(temperature));
    assertThat(limit.pressureAt(allowed, celsius(temperature)).si())
        .isCloseTo(bars * 1e5, within(1e-7 * bars * 1e5));
    assertThat(limit.pressureAt(allowed.multiply(0), celsius(temperature)))
        .isEqualTo(limit.ambient());
    assertThat(limit.pressureAt(allowed.multiply(2), celsius(temperature)))
        .isGreaterThan(limit.highest());
  }

  /** Kozeny and Carman: the square of the grain, and the more pores the easier. */
  @Law
  void letsMoreGasThroughCoarserAndOpenerBodies(
      @ForAll @DoubleRange(min = 0.2, max = 0.6) double porosity,
      @ForAll @DoubleRange(min = 1.01, max = 1.5) double more,
      @ForAll @IntRange(min = 1, max = 50) int grain) {
    double here = PorePressureLimit.kozenyCarman(micrometres(grain), volumeFraction(porosity)).si();
    assertThat(
            PorePressureLimit.kozenyCarman(micrometres(2 * grain), volumeFraction(porosity)).si())
        .isCloseTo(4 * here, within(1e-12 * here));
    assertThat(
            PorePressureLimit.kozenyCarman(micrometres(grain), volumeFraction(porosity * more))
                .si())
        .isGreaterThan(here);
  }

  private static double rate(LossRateLimit limit, int temperature) {
    return limit.allowedAt(celsius(temperature)).si();
  }

  private static PorePressureLimit pores(double bars, double porosity) {
    Amount<Length> half = millimetres(2.5);
    return PorePressureLimit.builder()
        .permeability(PorePressureLimit.kozenyCarman(micrometres(10), volumeFraction(porosity)))
        .viscosity(PorePressureLimit.pascalSeconds(3e-5))
        .molarMass(gramsPerMole(44))
        .binderPerVolume(kilogramsPerCubicMetre(450))
        .halfSection(half)
        .ambient(atmospheres(1))
        .highest(bars(bars))
        .source(Source.user("invented for the tests"))
        .build();
  }
}
