package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.units.Amounts.cubicMetres;
import static dev.kilnledger.units.Amounts.cubicMetresPerHour;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.litres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Law;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.profile.AnyProfile;
import dev.kilnledger.thermal.profile.AnyProfile.Programme;
import dev.kilnledger.thermal.profile.GetterFill;
import dev.kilnledger.thermal.profile.Profile;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What holds for the oxygen of every firing and the air of every room. */
@Domain(AnyProfile.class)
@Domain(DomainContext.Global.class)
class AtmosphereLawsTest {
  private static OxygenBudget budget(Profile profile, double carbon, double space, double inflow) {
    return GetterBalance.standard()
        .budget(
            profile,
            GetterFill.of(Workbench.carbon(), grams(carbon)),
            CrucibleAir.builder()
                .voidVolume(litres(space))
                .oxygenInflow(
                    Sourced.of(
                        Span.of(gramsPerHour(inflow), gramsPerHour(2 * inflow)),
                        Source.user("invented for the tests")))
                .build(),
            Workbench.copper());
  }

  @Law
  void asksForTheSameCarbonWithASegmentCutInTwo(
      @ForAll Programme programme,
      @ForAll @IntRange(max = 5) int which,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double share,
      @ForAll @DoubleRange(min = 0.1, max = 5) double space) {
    var whole = budget(programme.profile(), 50, space, 0.1).carbonNeeded();
    var cut = budget(programme.cut(which, share), 50, space, 0.1).carbonNeeded();
    assertThat(cut.low().si()).isCloseTo(whole.low().si(), within(1e-9 * whole.high().si()));
    assertThat(cut.high().si()).isCloseTo(whole.high().si(), within(1e-9 * whole.high().si()));
  }

  @Law
  void burnsTwiceTheCarbonToMonoxideThatItBurnsToDioxide(
      @ForAll Programme programme, @ForAll @DoubleRange(min = 0.1, max = 5) double space) {
    for (BudgetLine line : budget(programme.profile(), 50, space, 0.1).lines()) {
      // C + O2 = CO2 and 2 C + O2 = 2 CO, atomic weights 12.011 and 15.999.
      double perOxygen = 12.011 / 31.998;
      assertThat(line.carbon().low().si())
          .isCloseTo(line.oxygen().low().si() * perOxygen, within(1e-4 * line.carbon().low().si()));
      assertThat(line.carbon().high().si())
          .isCloseTo(
              2 * line.oxygen().high().si() * perOxygen, within(1e-4 * line.carbon().high().si()));
      assertThat(line.oxygen().low().si()).isGreaterThanOrEqualTo(0);
    }
  }

  @Law
  void asksForNoLessCarbonWhereMoreAirGetsIn(
      @ForAll Programme programme,
      @ForAll @DoubleRange(min = 0.1, max = 5) double space,
      @ForAll @DoubleRange(min = 1, max = 3) double more) {
    var here = budget(programme.profile(), 50, space, 0.1).carbonNeeded();
    assertThat(budget(programme.profile(), 50, space, 0.1 * more).carbonNeeded().high().si())
        .isGreaterThanOrEqualTo(here.high().si() * (1 - 1e-12));
    assertThat(budget(programme.profile(), 50, space * more, 0.1).carbonNeeded().high().si())
        .isGreaterThanOrEqualTo(here.high().si() * (1 - 1e-12));
  }

  @Law
  void lastsNoShorterWithMoreCarbon(
      @ForAll Programme programme,
      @ForAll @DoubleRange(min = 0.1, max = 20) double carbon,
      @ForAll @DoubleRange(min = 1, max = 5) double more) {
    OxygenBudget little = budget(programme.profile(), carbon, 1, 0.5);
    OxygenBudget much = budget(programme.profile(), carbon * more, 1, 0.5);
    if (little.spentAtEarliest().isEmpty()) {
      assertThat(much.spentAtEarliest()).isEmpty();
    }
    much.spentAtEarliest()
        .ifPresent(
            at ->
                assertThat(at.si())
                    .isGreaterThanOrEqualTo(
                        little.spentAtEarliest().orElseThrow().si() * (1 - 1e-9)));
  }

  @Law
  void fillsARoomInProportionToWhatIsGivenOff(
      @ForAll @DoubleRange(min = 0.1, max = 50) double rate,
      @ForAll @DoubleRange(min = 1.01, max = 5) double times,
      @ForAll @IntRange(min = 1, max = 12) int hours,
      @ForAll @IntRange(min = 20, max = 500) int supply) {
    double here = peak(rate, hours, supply);
    assertThat(peak(rate * times, hours, supply)).isCloseTo(here * times, within(1e-9 * here));
    // Never more than the steady concentration, nor than if nothing were carried off.
    assertThat(here).isLessThanOrEqualTo(rate / 1000 / supply * (1 + 1e-9));
    assertThat(here).isLessThanOrEqualTo(rate / 1000 * hours / 50 * (1 + 1e-9));
  }

  @Law
  void clearsARoomWithMoreAir(
      @ForAll @DoubleRange(min = 0.1, max = 50) double rate,
      @ForAll @IntRange(min = 1, max = 12) int hours,
      @ForAll @IntRange(min = 20, max = 500) int supply,
      @ForAll @IntRange(min = 1, max = 500) int more) {
    assertThat(peak(rate, hours, supply + more)).isLessThan(peak(rate, hours, supply));
  }

  private static double peak(double rate, int hours, int supply) {
    GasRelease release =
        GasRelease.of(
            Substance.carbonMonoxide(), List.of(ReleaseStep.of(hours(hours), gramsPerHour(rate))));
    return WellMixedRoom.standard()
        .answer(release, RoomAir.of(cubicMetres(50), cubicMetresPerHour(supply)))
        .peak()
        .si();
  }
}
