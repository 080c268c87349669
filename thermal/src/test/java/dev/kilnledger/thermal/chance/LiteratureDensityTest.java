package dev.kilnledger.thermal.chance;

import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The metal of the bench is usually held from 1 h at 950 °C to 4 h at 1050 °C and then has 90 to 96
 * %: a hold of just that work is the bound, whatever the activation energy.
 */
class LiteratureDensityTest {
  private static Draw energy(double kilojoulesPerMole) {
    return Draw.of(input -> 0).with(FiringInput.SINTERING_ENERGY, 1000 * kilojoulesPerMole);
  }

  private static List<Felt> hold(double celsius, double minutes) {
    double kelvin = celsius(celsius).si();
    return List.of(new Felt(new double[] {0, 60 * minutes}, new double[] {kelvin, kelvin}));
  }

  @ParameterizedTest
  @CsvSource({
    "950, 59, 0.6, 0.96",
    "950, 61, 0.9, 0.96",
    "1050, 239, 0.9, 0.96",
    "1050, 241, 0.9, 1"
  })
  void isTheUsualDensityFromTheLeastUsualFiringToTheMost(
      double celsius, double minutes, double least, double most) {
    for (double energy : new double[] {100, 250}) {
      LiteratureDensity model = new LiteratureDensity(copper(), volumeFraction(0.6), true);
      assertThat(model.least(energy(energy), hold(celsius, minutes))).isEqualTo(least);
      assertThat(model.most(energy(energy), hold(celsius, minutes))).isEqualTo(most);
    }
  }

  /** No firing makes a part less dense than it was green. */
  @ParameterizedTest
  @CsvSource({"0.93, 0.93, 0.96", "0.97, 0.97, 0.97"})
  void isNoLessThanGreen(double green, double least, double most) {
    LiteratureDensity model = new LiteratureDensity(copper(), volumeFraction(green), true);
    assertThat(model.least(energy(200), hold(1000, 120))).isEqualTo(least);
    assertThat(model.most(energy(200), hold(1000, 120))).isEqualTo(most);
  }

  @ParameterizedTest
  @CsvSource({"950, 10", "1000, 120", "1050, 600"})
  void tellsNothingWithoutAnEnergy(double celsius, double minutes) {
    LiteratureDensity model = new LiteratureDensity(copper(), volumeFraction(0.6), false);
    assertThat(model.least(energy(0), hold(celsius, minutes))).isEqualTo(0.6);
    assertThat(model.most(energy(0), hold(celsius, minutes))).isEqualTo(1);
  }
}
