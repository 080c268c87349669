package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.units.Amounts.cubicMetres;
import static dev.kilnledger.units.Amounts.cubicMetresPerHour;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.gramsPerMole;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.partsPerMillion;
import static dev.kilnledger.units.TradeUnits.CUBIC_METRE_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.GRAM_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.PARTS_PER_MILLION;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.Workbench;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WellMixedRoomTest {
  private static final WellMixedRoom MODEL = WellMixedRoom.standard();

  private static GasRelease monoxide(double... gramsPerHourHours) {
    List<ReleaseStep> steps = new ArrayList<>();
    for (int i = 0; i < gramsPerHourHours.length; i += 2) {
      steps.add(
          ReleaseStep.of(hours(gramsPerHourHours[i + 1]), gramsPerHour(gramsPerHourHours[i])));
    }
    return GasRelease.of(Substance.carbonMonoxide(), steps);
  }

  private static LimitAnswer limit(RoomAnswer answer, String name) {
    return answer.limits().stream()
        .filter(held -> held.limit().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** 55 and 40 mg/m3 stand beside 50 and 35 ppm in the OSHA page: 1 mg/m3 of rounding. */
  @ParameterizedTest
  @CsvSource({"50, 55, 2.5", "35, 40, 1", "200, 229, 1"})
  void convertsAsThePublishedLimitsDo(double ppm, double milligrams, double rounding) {
    // G / Q with G in g/h and Q of 1000 m3/h gives mg/m3
    RoomAnswer answer =
        MODEL.answer(monoxide(milligrams, 100), RoomAir.ofChanges(cubicMetres(50), 20));
    assertThat(answer.peakShare().orElseThrow().in(PARTS_PER_MILLION))
        .isCloseTo(ppm, within(rounding));
  }

  /** 100 g/h at 1000 m3/h: 100 mg/m3 / 28.010 g/mol x 24.465 l/mol. */
  @Test
  void reachesTheSteadyConcentration() {
    RoomAnswer answer =
        MODEL.answer(monoxide(100, 20), RoomAir.of(cubicMetres(50), cubicMetresPerHour(1000)));
    assertThat(answer.peak().si()).isCloseTo(1e-4, within(1e-12));
    assertThat(answer.peakShare().orElseThrow().in(PARTS_PER_MILLION))
        .isCloseTo(100 / 28.010 * 24.465, within(0.01));
  }

  /** Dormand and Prince 8(5,3) on V dc/dt = G - Q c with its integral. */
  @Test
  void agreesWithAnIndependentIntegrator() {
    double volume = 40;
    double flow = 60 / 3600.0;
    RoomAnswer answer =
        MODEL.answer(
            monoxide(2, 1, 12, 0.5, 0, 1.5, 5, 2),
            RoomAir.of(cubicMetres(40), cubicMetresPerHour(60)));
    double[] state = {0, 0};
    double[][] steps = {{2, 1}, {12, 0.5}, {0, 1.5}, {5, 2}, {0, 3}};
    for (double[] step : steps) {
      double rate = step[0] / 3.6e6;
      OrdinaryDifferentialEquation room =
          new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
              return 2;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
              return new double[] {(rate - flow * y[0]) / volume, y[0]};
            }
          };
      state =
          new DormandPrince853Integrator(1e-6, 600, 1e-16, 1e-12)
              .integrate(room, new ODEState(0, state), step[1] * 3600)
              .getPrimaryState();
    }
    // 8 h after the start
    double meanOfEightHours = state[1] / (8 * 3600);
    double molar = 8.314462618 * 298.15 / 101325 / 0.028010;
    LimitAnswer osha = limit(answer, "OSHA PEL");
    assertThat(osha.highest().si()).isGreaterThanOrEqualTo(meanOfEightHours * molar * (1 - 1e-6));
    assertThat(osha.highest().si()).isCloseTo(meanOfEightHours * molar, within(3e-7));
  }

  @Test
  void withoutSupplyTheRoomKeepsAll() {
    RoomAnswer answer =
        MODEL.answer(monoxide(10, 1), RoomAir.of(cubicMetres(50), cubicMetresPerHour(0)));
    assertThat(answer.peak().si()).isCloseTo(0.010 / 50, within(1e-15)); // kg in m3
    RoomPoint last = answer.points().get(answer.points().size() - 1);
    assertThat(last.concentration().si()).isCloseTo(0.010 / 50, within(1e-15));
    assertThat(last.time().in(HOUR)).as("8 h after the release").isCloseTo(9, within(1e-9));
  }

  @Test
  void supplyNeededJustKeepsTheLimit() {
    GasRelease release = monoxide(5, 3, 40, 1, 2, 6);
    RoomAnswer poor = MODEL.answer(release, RoomAir.ofChanges(cubicMetres(50), 0.5));
    for (LimitAnswer held : poor.limits()) {
      if (held.supplyNeeded().si() > 0) {
        RoomAnswer just = MODEL.answer(release, RoomAir.of(cubicMetres(50), held.supplyNeeded()));
        double limit = held.limit().concentration().value().si();
        assertThat(limit(just, held.limit().name()).highest().si())
            .isCloseTo(limit, within(limit * 1e-6));
      }
    }
    assertThat(limit(poor, "NIOSH ceiling").isKept()).isFalse();
    assertThat(poor.findings())
        .anyMatch(f -> f.severity() == Severity.STOP && f.message().contains("NIOSH ceiling"))
        .anyMatch(f -> f.severity() == Severity.WARNING && f.message().contains("OSHA PEL"))
        .allMatch(
            f ->
                f.message().contains(" at most with ")
                    == (f.message().contains("ceiling") || f.message().contains("IDLH")))
        .allMatch(
            f ->
                f.message().contains(" at most with ")
                    || f.message().contains(" as a mean over 8.00 h with 25 m³/h of supply air;"));
    assertThat(poor.cautions()).containsExactly(Caution.CARBON_MONOXIDE);
    // for a long steady release it is G / c: 10 g/h at 35 ppm of 28.010 g/mol in 24.465 l
    double steady =
        limit(MODEL.answer(monoxide(10, 200), RoomAir.ofChanges(cubicMetres(50), 1)), "NIOSH REL")
            .supplyNeeded()
            .in(CUBIC_METRE_PER_HOUR);
    assertThat(steady).isCloseTo(10e-3 / (35e-6 * 28.010e-3 / 0.0244654), within(0.05));
  }

  @Test
  void nothingReleasedNeedsNoAir() {
    RoomAnswer answer = MODEL.answer(monoxide(0, 1), RoomAir.ofChanges(cubicMetres(50), 0));
    assertThat(answer.findings()).allMatch(f -> f.severity() == Severity.PASSED);
    assertThat(answer.limits()).allMatch(held -> held.supplyNeeded().si() == 0);
  }

  @Test
  void namesEachProductOfTheBinder() {
    Binder polyoxymethylene =
        MaterialLibrary.standard().binders().stream()
            .filter(b -> b.hazardousProducts().toString().contains("formaldehyde, the main"))
            .findFirst()
            .orElseThrow();
    List<RoomAnswer> answers =
        MODEL.binderProducts(
            polyoxymethylene,
            List.of(ReleaseStep.of(hours(2), gramsPerHour(10))),
            RoomAir.ofChanges(cubicMetres(50), 2));
    assertThat(answers)
        .extracting(a -> a.release().substance().name())
        .containsExactly("formaldehyde", "carbon monoxide");
    assertThat(limit(answers.get(0), "OSHA PEL").limit().concentration().value())
        .isEqualTo(partsPerMillion(0.75));
    assertThat(answers.get(0).release().mass().in(GRAM)).isCloseTo(20, within(1e-12));
    assertThat(answers.get(0).release().peakRate().in(GRAM_PER_HOUR)).isCloseTo(10, within(1e-12));
  }

  @Test
  void takesABinderOfUnknownProductsForItsVapour() {
    Binder wax =
        Binder.builder()
            .from(MaterialLibrary.standard().binder("polylactide"))
            .name("wax")
            .hazardousProducts(List.of())
            .build();
    List<ReleaseStep> steps = List.of(ReleaseStep.of(hours(2), gramsPerHour(10)));
    assertThat(MODEL.binderProducts(wax, steps, RoomAir.ofChanges(cubicMetres(50), 2)))
        .extracting(a -> a.release().substance())
        .containsExactly(Substance.named("vapour of wax"));
    assertThat(Substance.namedIn("acetaldehyde")).containsExactly(Substance.named("acetaldehyde"));
  }

  @Test
  void saysWhereNoLimitIsKnown() {
    RoomAnswer answer =
        MODEL.answer(
            GasRelease.of(
                Substance.named("wax vapour"), List.of(ReleaseStep.of(hours(1), gramsPerHour(5)))),
            RoomAir.ofChanges(cubicMetres(50), 2));
    assertThat(answer.findings()).hasSize(1);
    assertThat(answer.findings().get(0).severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(answer.findings().get(0).message())
        .isEqualTo(
            "up to 5.0 g of wax vapour, for which no limit is known here: see the safety data"
                + " sheet");
    assertThat(answer.peakShare()).isEmpty();
    assertThat(answer.cautions()).containsExactly(Caution.BINDER_FUMES);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> RoomAir.of(cubicMetres(0), cubicMetresPerHour(-1)))
        .hasMessageContaining("volume is 0 m³")
        .hasMessageContaining("supply air is -1 m³/h");
    assertThatThrownBy(() -> ReleaseStep.of(hours(0), gramsPerHour(-1)))
        .hasMessageContaining("duration is 0 h")
        .hasMessageContaining("rate is -1 g/h");
    assertThatThrownBy(() -> GasRelease.of(Substance.carbonMonoxide(), List.of()))
        .hasMessageContaining("there is no step");
    assertThatThrownBy(() -> Substance.of(" ", gramsPerMole(0), List.of()))
        .hasMessageContaining("name is blank")
        .hasMessageContaining("molar mass is 0 g/mol");
    assertThatThrownBy(
            () ->
                ImmutableSubstance.of(
                    "smoke", Optional.empty(), Substance.carbonMonoxide().limits()))
        .hasMessage(
            "substance smoke: there are limits but no molar mass; accepted is a molar mass with"
                + " them");
    assertThatThrownBy(
            () ->
                ExposureLimit.of(
                    "", hours(-1), Sourced.of(partsPerMillion(0), Source.user("test"))))
        .hasMessageContaining("name is blank")
        .hasMessageContaining("averaged over is -1 h")
        .hasMessageContaining("concentration is 0 ppm");
  }

  @Test
  void isSerializable() throws Exception {
    RoomAnswer answer = MODEL.answer(monoxide(1, 1), RoomAir.ofChanges(cubicMetres(50), 2));
    assertThat(Workbench.thawed(answer)).isEqualTo(answer);
  }
}
