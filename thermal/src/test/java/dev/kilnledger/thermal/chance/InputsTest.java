package dev.kilnledger.thermal.chance;

import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.kinetics;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.densification.SinteringEnergies;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.quantity.MolarEnergy;
import org.junit.jupiter.api.Test;

/** The laws of the inputs, by what their documentation states. */
class InputsTest {
  private static final Source SAID = Source.user("made for the tests");

  private static Inputs inputs(FiringSetup.Builder setup) {
    return inputs(UncertainFiring.builder().setup(setup.build()));
  }

  private static Inputs inputs(UncertainFiring.Builder firing) {
    UncertainFiring built = firing.build();
    return new Inputs(built, FiringForecast.of(built.setup()));
  }

  /** At the shares of 1e-5 either way that count as the ends. */
  private static void spreads(Inputs inputs, FiringInput input, double low, double high) {
    assertThat(inputs.least(input)).isCloseTo(low, within(2e-5 * (high - low)));
    assertThat(inputs.most(input)).isCloseTo(high, within(2e-5 * (high - low)));
    assertThat(inputs.varies(input)).isEqualTo(high > low);
  }

  @Test
  void takesWhatIsNotStatedAsDocumented() {
    Inputs inputs = inputs(setup(copper(), 1000));
    spreads(inputs, FiringInput.KILN_OFFSET, -10, 10);
    spreads(inputs, FiringInput.THERMOCOUPLE, -1, 1);
    spreads(inputs, FiringInput.DRIFT, 0, 0);
    spreads(inputs, FiringInput.METAL_SHARE, 0.9, 0.9);
    // without kinetics of the user's own
    spreads(inputs, FiringInput.BINDER_ENERGY, 1, 1);
    Span<MolarEnergy> energies = SinteringEnergies.rangeOf(copper()).orElseThrow();
    spreads(inputs, FiringInput.SINTERING_ENERGY, energies.low().si(), energies.high().si());
    assertThat(inputs.knowsSinteringEnergy()).isTrue();
    assertThat(inputs.anythingVaries()).isTrue();
    assertThat(inputs.medians().get(FiringInput.KILN_OFFSET)).isZero();
    // the factor to which a packing is known is one in the logarithm
    double factor =
        PackingLayer.of(FiringForecast.of(setup(copper(), 1000).build()).hottest())
            .material()
            .conductivityFactor()
            .si();
    assertThat(factor).isGreaterThan(1.2);
    spreads(inputs, FiringInput.PACKING_CONDUCTIVITY, 1 / factor, factor);
    assertThat(inputs.medians().get(FiringInput.PACKING_CONDUCTIVITY)).isCloseTo(1, within(1e-12));
  }

  @Test
  void takesWhatIsStated() {
    Inputs inputs =
        inputs(
            UncertainFiring.builder()
                .setup(setup(copper(), 1000).addKinetics(kinetics()).build())
                .kilnOffset(Spread.rectangular(kelvinDifference(-3), kelvinDifference(1), SAID))
                .thermocoupleError(Spread.rectangular(ratio(-0.5), ratio(0), SAID))
                .drift(Spread.rectangular(kelvinDifference(0), kelvinDifference(4), SAID))
                .packingConductivity(Spread.rectangular(ratio(0.8), ratio(1.1), SAID))
                .metalShare(Spread.rectangular(massFraction(0.88), massFraction(0.91), SAID))
                .binderEnergy(Spread.rectangular(ratio(0.97), ratio(1.03), SAID))
                .sinteringEnergy(
                    Spread.rectangular(kilojoulesPerMole(180), kilojoulesPerMole(190), SAID)));
    spreads(inputs, FiringInput.KILN_OFFSET, -3, 1);
    spreads(inputs, FiringInput.THERMOCOUPLE, -0.5, 0);
    spreads(inputs, FiringInput.DRIFT, 0, 4);
    spreads(inputs, FiringInput.PACKING_CONDUCTIVITY, 0.8, 1.1);
    spreads(inputs, FiringInput.METAL_SHARE, 0.88, 0.91);
    spreads(inputs, FiringInput.BINDER_ENERGY, 0.97, 1.03);
    spreads(inputs, FiringInput.SINTERING_ENERGY, 180e3, 190e3);
    assertThat(inputs.assumed())
        .extracting(Finding::message)
        .containsExactly("the type of the thermocouple is not stated: it is taken to read right");
  }

  @Test
  void knowsWhereNothingVariesOrIsKnown() {
    FiringSetup.Builder setup = setup(copper(), 1000);
    UncertainFiring.Builder certain =
        UncertainFiring.builder()
            .setup(setup.build())
            .kilnOffset(Spread.exactly(kelvinDifference(2), SAID))
            .thermocoupleError(Spread.exactly(ratio(0), SAID))
            .packingConductivity(Spread.exactly(ratio(1), SAID))
            .sinteringEnergy(Spread.exactly(kilojoulesPerMole(200), SAID));
    assertThat(inputs(certain).anythingVaries()).isFalse();
    assertThat(SinteringEnergies.rangeOf(Workbench.titanium())).as("none is published").isEmpty();
    assertThat(inputs(setup(Workbench.titanium(), 1250)).knowsSinteringEnergy()).isFalse();
  }

  @Test
  void knowsAMeasuredConductivityForCertain() {
    Inputs inputs =
        inputs(
            setup(copper(), 1000)
                .packingConductivity(
                    Sourced.of(PropertyCurve.constant(wattsPerMetreKelvin(0.3)), SAID)));
    spreads(inputs, FiringInput.PACKING_CONDUCTIVITY, 1, 1);
  }

  /** 12 % either way for one's own kinetics; of two, each in half of the draws. */
  @Test
  void choosesAmongTheKineticsAndDoubtsTheirEnergy() {
    Inputs inputs = inputs(setup(copper(), 1000).addKinetics(kinetics(), kinetics()));
    spreads(inputs, FiringInput.BINDER_ENERGY, 0.88, 1.12);
    assertThat(inputs.at(FiringInput.KINETICS, 0.01)).isZero();
    assertThat(inputs.at(FiringInput.KINETICS, 0.49)).isZero();
    assertThat(inputs.at(FiringInput.KINETICS, 0.51)).isEqualTo(1);
    assertThat(inputs.at(FiringInput.KINETICS, 1)).as("the end itself").isEqualTo(1);
  }

  /** Student's t of 30 degrees of freedom: 95 % below 1.6973 (table of the distribution). */
  @Test
  void takesTheNumbersOfACurveByStudent() {
    Inputs inputs = inputs(setup(copper(), 1000).sinteringCurve(Workbench.sinteringCurve()));
    for (FiringInput input :
        new FiringInput[] {
          FiringInput.SINTERING_ENERGY,
          FiringInput.CURVE_LOCATION,
          FiringInput.CURVE_WIDTH,
          FiringInput.INITIAL_DENSITY,
          FiringInput.DENSITY_SCATTER
        }) {
      assertThat(inputs.at(input, 0.95)).isCloseTo(1.6973, within(5e-5));
      assertThat(inputs.at(input, 0.5)).isCloseTo(0, within(1e-9));
    }
    assertThat(inputs(setup(copper(), 1000)).varies(FiringInput.CURVE_WIDTH)).isFalse();
  }
}
