package dev.kilnledger.thermal.firing;

import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.thermal.Workbench.stainless;
import static dev.kilnledger.units.Amounts.bars;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.TradeUnits.CUBIC_CENTIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.atmosphere.OxygenBudget;
import dev.kilnledger.thermal.atmosphere.Protection;
import dev.kilnledger.thermal.energy.ChargeItem;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;

class StageForecastTest {
  private final FiringForecast copper = FiringForecast.of(informed(copper(), 1000).build());
  private final StageForecast debinding = copper.stages().get(0);
  private final StageForecast sintering = copper.stages().get(1);

  private static StageForecast sinteringOf(FiringSetup.Builder setup) {
    return FiringForecast.of(setup.build()).stages().get(1);
  }

  @Test
  void knowsTheCoolingOfAKilnWhoseWallIsKnown() {
    assertThat(sintering.coolingKnown()).isTrue();
    assertThat(sintering.course().duration()).isGreaterThan(sintering.programme().duration());
    StageForecast bare =
        sinteringOf(setup(copper(), 1000).kiln(kiln(1300).wall(List.of()).build()));
    assertThat(bare.coolingKnown()).isFalse();
    assertThat(bare.programme()).isEqualTo(bare.stage().profile());
  }

  @Test
  void heatsTheMetalWhereItIsKnown() {
    FiringSetup setup = sintering.setup();
    assertThat(sintering.items())
        .isEqualTo(
            ChargeItem.chargeOf(
                sintering.stage(), setup.crucible(), copper(), setup.metal().orElseThrow()));
    assertThat(sinteringOf(setup(copper(), 1000).partsVolume(Optional.empty())).items())
        .isEqualTo(ChargeItem.chargeOf(sintering.stage(), setup.crucible(), copper(), grams(0)));
  }

  /** While the kiln heats: the worse the charge conducts the cooler its core. */
  @Test
  void feelsTheKilnLaterTheWorseTheChargeConducts() {
    Amount<Time> heating = hours(6);
    double kiln = sintering.course().temperatureAt(heating).si();
    double quickest = sintering.feltAtQuickest().temperatureAt(heating).si();
    double usual = sintering.felt().temperatureAt(heating).si();
    double slowest = sintering.feltAtSlowest().temperatureAt(heating).si();
    assertThat(kiln).isGreaterThan(quickest);
    assertThat(quickest).isGreaterThan(usual);
    assertThat(usual).isGreaterThan(slowest);
    assertThat(sintering.felt(sintering.charge())).isEqualTo(sintering.felt());
  }

  /**
   * By hand: pi / 4 x 16 cm x 16 cm x 14 cm less 1500 g at 3.9 g/cm³, and of 10 cm³ of green parts
   * 1 / (1 + 0.1 / 1.24 x 8.9 / 0.9) = 55.63 % metal.
   */
  @Test
  void leavesTheGasWhatGrainsAndMetalDoNotTake() {
    double empty = Math.PI / 4 * 16 * 16 * 14 - 1500 / 3.9;
    double metal = 10 / (1 + 0.1 / 1.24 * 8.9 / 0.9);
    assertThat(sintering.voidVolume().orElseThrow().in(CUBIC_CENTIMETRE))
        .isCloseTo(empty - metal, within(1e-6));
    StageForecast without = sinteringOf(setup(copper(), 1000).partsVolume(Optional.empty()));
    assertThat(without.voidVolume().orElseThrow().in(CUBIC_CENTIMETRE))
        .isCloseTo(empty, within(1e-6));
    // 11 kg of grains are 2821 cm³ and alone too much; 10.9 kg leave 20 cm³, and 40 cm³ of metal do
    // not go in
    assertThat(packed(11, 0.001).voidVolume()).isEmpty();
    assertThat(packed(10.9, 0.001).voidVolume()).isPresent();
    assertThat(packed(10.9, 72).voidVolume()).isEmpty();
  }

  private static StageForecast packed(double kilograms, double greenCubicCentimetres) {
    FiringStage stage =
        sintering(1000).packingMass(kilograms(kilograms)).getter(carbon(), grams(300)).build();
    return ImmutableStageForecast.of(
        setup(copper(), 1000).partsVolume(cubicCentimetres(greenCubicCentimetres)).build(), stage);
  }

  @Test
  void asksForTheOxygenWhereCarbonIsLaidIn() {
    assertThat(debinding.oxygen()).isEmpty();
    OxygenBudget oxygen = sintering.oxygen().orElseThrow();
    assertThat(oxygen.exchangeKnown()).isTrue();
    assertThat(sinteringOf(setup(copper(), 1000)).oxygen().orElseThrow().exchangeKnown()).isFalse();
    assertThat(packed(11, 0.001).oxygen()).isEmpty();
  }

  @Test
  void asksWhetherCarbonKeepsTheMetalBrightWithAndWithoutTheNitrogenOfTheAir() {
    assertThat(debinding.protection()).isEmpty();
    assertThat(sinteringOf(setup(stainless(), 1250)).protection())
        .extracting(Protection::carbonMonoxide)
        .containsExactly(bars(0.35), bars(1));
    assertThat(sintering.protection())
        .extracting(Protection::temperature)
        .containsOnly(sintering.felt().peak());
  }

  @Test
  void tellsAFindingWithItsName() {
    Finding finding =
        Finding.builder()
            .code(AtmosphereFinding.CARBON_LASTS)
            .severity(Severity.NOTE)
            .subject("granular carbon")
            .message("it lasts")
            .basis(Source.user("told"))
            .build();
    Finding told = sintering.tell(finding);
    assertThat(told.message()).isEqualTo("sintering: it lasts");
    assertThat(told)
        .isEqualTo(Finding.builder().from(finding).message("sintering: it lasts").build());
  }
}
