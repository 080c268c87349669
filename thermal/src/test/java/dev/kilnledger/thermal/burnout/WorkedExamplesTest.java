package dev.kilnledger.thermal.burnout;

import static dev.kilnledger.thermal.kinetics.Frequencies.perHour;
import static dev.kilnledger.thermal.kinetics.Frequencies.perSecond;
import static dev.kilnledger.units.Amounts.bars;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.gramsPerMole;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kelvinPerMinute;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.squareMetres;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_MINUTE;
import static dev.kilnledger.units.TradeUnits.KILOJOULE_PER_MOLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.burnout.DebindingProposal.SetBy;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Segment;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The worked examples of the documentation, one for each model. */
class WorkedExamplesTest {
  private static final Source INVENTED = Source.user("invented for the test");

  /** 150 kJ/mol, 1e9 1/s from 300 K at 60 K/h: computed in other software, three decimals. */
  @Test
  void burnOutIsAsDocumented() {
    TemperatureHistory ramp = BurnOutTest.ramp(300, 720, kelvinPerHour(60));
    assertThat(
            BurnOut.standard()
                .reaching(BurnOutTest.FIRST_ORDER, ramp, massFraction(0.5))
                .orElseThrow()
                .temperature()
                .si())
        .isCloseTo(638.911, within(5e-4));
    assertThat(BurnOut.standard().along(BurnOutTest.FIRST_ORDER, ramp).peak().temperature().si())
        .isCloseTo(645.314, within(1e-3));
  }

  /**
   * At the fastest loss at 60 K/h, 645.314 K with 0.60749 converted (computed in other software),
   * {@code A exp(-E/RT) (1 - a)} is 1.02026 per hour; 0.1 % of the rate is kept in hand.
   */
  @Test
  void fastestProfileIsAsDocumented() {
    DebindingProposal proposal =
        FastestProfile.standard()
            .of(
                DebindingTask.builder()
                    .kinetics(BurnOutTest.FIRST_ORDER)
                    .limit(wall(3).knownRate(perHour(1.0203)).build())
                    .start(kelvin(300))
                    .end(kelvin(720))
                    .fastestHeating(kelvinPerHour(300))
                    .ramps(1)
                    .build());
    assertThat(proposal.setBy()).containsExactly(SetBy.LOSS_RATE);
    Segment ramp = proposal.profile().segments().get(0);
    assertThat((ramp.end().si() - ramp.start().si()) / ramp.duration().si() * 3600)
        .isCloseTo(59.94, within(0.02));
  }

  private static WallRateLimit.Builder wall(double millimetres) {
    return WallRateLimit.builder()
        .wall(millimetres(millimetres))
        .knownWall(millimetres(3))
        .knownRate(perHour(0.2))
        .source(INVENTED);
  }

  /** (3/6)^2 x 20 % and (3/6) x 20 %. */
  @Test
  void wallRateLimitIsAsDocumented() {
    assertThat(wall(6).build().allowedAt(kelvin(600)).si() * 3600).isCloseTo(0.05, within(1e-12));
    assertThat(
            wall(6).scaling(WallRateLimit.Scaling.LINEAR).build().allowedAt(kelvin(600)).si()
                * 3600)
        .isCloseTo(0.1, within(1e-12));
  }

  /** Computed in other software: 8.683321 K/min. */
  @Test
  void porePressureLimitIsAsDocumented() {
    PorePressureLimit limit =
        PorePressureLimit.builder()
            .permeability(squareMetres(1e-15))
            .viscosity(PorePressureLimit.pascalSeconds(3e-5))
            .molarMass(gramsPerMole(44))
            .binderPerVolume(kilogramsPerCubicMetre(450))
            .halfSection(millimetres(2.5))
            .ambient(bars(1))
            .highest(bars(2))
            .source(INVENTED)
            .build();
    assertThat(limit.criticalHeatingRate(kilojoulesPerMole(191), kelvin(650)).in(KELVIN_PER_MINUTE))
        .isCloseTo(8.683, within(5e-4));
  }

  /** Peaks of one laboratory in the MaCFP database; the regression computed in other software. */
  @Test
  void kineticFitIsAsDocumented() {
    double[] rates = {1, 2, 5, 10, 20, 50, 100};
    double[] peaks = {604.9, 611.8, 623.8, 633.9, 642.2, 653.5, 662.9};
    List<LossPeak> read = new ArrayList<>();
    for (int i = 0; i < rates.length; i++) {
      read.add(LossPeak.of(kelvinPerMinute(rates[i]), kelvin(peaks[i])));
    }
    KissingerFit fit = KineticFit.standard().kissingerOfPeaks(read);
    assertThat(fit.activationEnergy().expected().in(KILOJOULE_PER_MOLE))
        .isCloseTo(250.49, within(0.005));
    assertThat(fit.logPreExponential().expected().si()).isCloseTo(43.239, within(5e-4));
  }

  /** Straight between rows: half of 0.5 is left half a unit after the second. */
  @Test
  void masterDecompositionCurveIsAsDocumented() {
    MasterDecompositionCurve curve =
        MasterDecompositionCurve.of(
            List.of(
                CurvePoint.of(ratio(-28), ratio(0)),
                CurvePoint.of(ratio(-27), ratio(0.5)),
                CurvePoint.of(ratio(-26), ratio(1))));
    assertThat(curve.unconverted(-26.5)).isCloseTo(0.25, within(1e-12));
  }

  /** The published set of the MaCFP database, 191 kJ/mol and 2.85e13 1/s, has its peak there. */
  @Test
  void decompositionStepIsAsDocumented() {
    DecompositionStep step =
        DecompositionStep.ofPeak(kilojoulesPerMole(191), kelvin(606.921975), kelvinPerMinute(1));
    ReactionOrder order = (ReactionOrder) step.curve();
    assertThat(order.preExponential().si())
        .isCloseTo(2.85e13, within(4e-8 * 2.85e13)); // Tp to 1e-6 K: E/(R T2) 5e-7 K
  }

  /** exp(-1), and (1 - 0.5)^2. */
  @Test
  void reactionOrderIsAsDocumented() {
    assertThat(ReactionOrder.first(perSecond(1)).unconverted(0))
        .isCloseTo(0.367879441, within(1e-9));
    assertThat(ReactionOrder.of(perSecond(1), ratio(0.5)).unconverted(0))
        .isCloseTo(0.25, within(1e-12));
  }

  /** Zou et al. (2009) 183.6 and PMC10648464 96 kJ/mol; the peak is put in and comes out. */
  @Test
  void publishedKineticsAreAsDocumented() {
    List<BinderKinetics> bracket =
        PublishedKinetics.bracket(
            MaterialLibrary.standard().binder("polylactide"), celsius(360), kelvinPerMinute(10));
    assertThat(bracket)
        .extracting(k -> k.steps().get(0).activationEnergy())
        .containsExactly(kilojoulesPerMole(96), kilojoulesPerMole(183.6));
    assertThat(bracket)
        .allSatisfy(
            kinetics ->
                assertThat(
                        BurnOut.standard()
                            .along(kinetics, BurnOutTest.ramp(400, 900, kelvinPerMinute(10)))
                            .peak()
                            .temperature()
                            .in(CELSIUS))
                    .isCloseTo(360, within(0.01)));
  }
}
