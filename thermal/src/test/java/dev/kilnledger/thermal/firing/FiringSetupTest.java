package dev.kilnledger.thermal.firing;

import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.units.Amounts;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Green parts of 10 cm³, nine tenths of their mass copper of 8.9 g/cm³ and one of a binder of 1.24
 * g/cm³: 1 / (0.9 / 8.9 + 0.1 / 1.24) = 5.5015 g/cm³, by hand.
 */
class FiringSetupTest {
  @Test
  void knowsMassAndVolumeOfThePartsFromEither() {
    FiringSetup byVolume = setup(copper(), 1000).build();
    FiringSetup byMass =
        setup(copper(), 1000).partsVolume(Optional.empty()).greenMass(grams(55.015)).build();
    assertThat(byMass.greenVolume().orElseThrow().si())
        .isCloseTo(cubicCentimetres(10).si(), within(1e-9));
    assertThat(byMass.metal().orElseThrow().si())
        .isCloseTo(byVolume.metal().orElseThrow().si(), within(1e-6));
  }

  @Test
  void sharesTheMassOfThePartsBetweenMetalAndBinder() {
    FiringSetup setup = setup(copper(), 1000).build();
    assertThat(setup.metal().orElseThrow().in(GRAM)).isCloseTo(49.513, within(0.001));
    assertThat(setup.binderMass().orElseThrow().in(GRAM)).isCloseTo(5.5015, within(0.0001));
  }

  /** Parts are not without voids, so their mass and their volume may both be known. */
  @Test
  void takesMassAndVolumeOfThePartsAsTheyAreStated() {
    FiringSetup both = setup(copper(), 1000).greenMass(grams(40)).build();
    assertThat(both.greenVolume()).contains(cubicCentimetres(10));
    assertThat(both.metal().orElseThrow().in(GRAM)).isCloseTo(36, within(1e-9));
    assertThat(both.binderMass().orElseThrow().in(GRAM)).isCloseTo(4, within(1e-9));
  }

  @Test
  void doesNotKnowThePartsWhereNeitherIsStated() {
    FiringSetup neither = setup(copper(), 1000).partsVolume(Optional.empty()).build();
    assertThat(neither.greenVolume()).isEmpty();
    assertThat(neither.metal()).isEmpty();
    assertThat(neither.binderMass()).isEmpty();
  }

  @Test
  void wantsAnyDensityBetweenNothingAndAll() {
    for (double target : new double[] {0.001, 0.5, 0.999}) {
      FiringSetup setup = setup(copper(), 1000).targetDensity(volumeFraction(target)).build();
      assertThat(FiringForecast.of(setup).targetDensity()).isEqualTo(volumeFraction(target));
    }
  }

  /** A lid may be tight; of the rest there is no less than something. */
  @Test
  void takesALidThatLetsNoOxygenIn() {
    assertThatCode(
            () ->
                setup(copper(), 1000)
                    .oxygenInflow(
                        Sourced.of(
                            Span.of(gramsPerHour(0), gramsPerHour(1)), Source.user("weighed")))
                    .build())
        .doesNotThrowAnyException();
  }

  @Test
  void refusesWhatNoFiringCanBe() {
    assertThatThrownBy(
            () ->
                setup(copper(), 1000)
                    .thickestSection(millimetres(0))
                    .greenMass(grams(-1))
                    .soak(hours(0))
                    .targetDensity(volumeFraction(1.2))
                    .build())
        .hasMessage(
            "firing setup: thickest section is 0 mm; accepted is more than zero; and green mass is"
                + " -1 g; accepted is more than zero; and soak is 0 h; accepted is more than zero;"
                + " and target density is 1.2 m³/m³; accepted is above 0 and below 1");
    for (int target : new int[] {0, 1}) {
      assertThatThrownBy(() -> setup(copper(), 1000).targetDensity(volumeFraction(target)).build())
          .hasMessage(
              "firing setup: target density is "
                  + target
                  + " m³/m³; accepted is above 0 and below 1");
    }
    assertThatThrownBy(
            () ->
                setup(copper(), 1000)
                    .partsVolume(cubicCentimetres(0))
                    .oxygenInflow(
                        Sourced.of(
                            Span.of(gramsPerHour(-1), gramsPerHour(1)), Source.user("weighed")))
                    .build())
        .hasMessage(
            "firing setup: parts volume is 0 cm³; accepted is more than zero; and lowest oxygen"
                + " inflow is -1 g/h; accepted is zero or more");
  }

  /** The steps of the conduction engine would have no end. */
  @Test
  void refusesAPackingThatConductsLikeNothingThereIs() {
    assertThatThrownBy(
            () ->
                setup(copper(), 1000)
                    .packingConductivity(
                        Sourced.of(
                            PropertyCurve.constant(Amounts.wattsPerMetreKelvin(1e18)),
                            Source.user("a slip of the keys")))
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("packing conductivity is 1E+18 W/(m·K); accepted is up to 1000");
    assertThat(
            setup(copper(), 1000)
                .packingConductivity(
                    Sourced.of(
                        PropertyCurve.constant(Amounts.wattsPerMetreKelvin(1000)),
                        Source.user("the highest")))
                .build()
                .packingConductivity())
        .isPresent();
  }
}
