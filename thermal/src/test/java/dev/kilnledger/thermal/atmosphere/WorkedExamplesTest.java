package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.units.Amounts.bars;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicMetres;
import static dev.kilnledger.units.Amounts.cubicMetresPerHour;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.PARTS_PER_MILLION;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.profile.GetterFill;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** The worked examples of the documentation, one for each model. */
class WorkedExamplesTest {
  /** Ideal gas law and stoichiometry, computed in other software; digits of the documentation. */
  @Test
  void airGasIsAsDocumented() {
    AirGas air = AirGas.standard();
    assertThat(air.held(litres(1), celsius(20)).si()).isCloseTo(0.041571, within(5e-7));
    Amount<Mass> oxygen = AirGas.oxygenIn(air.held(litres(1), celsius(20)));
    assertThat(oxygen.in(GRAM)).isCloseTo(0.27862, within(5e-6));
    assertThat(AirGas.carbonFor(oxygen).low().in(GRAM)).isCloseTo(0.1046, within(5e-5));
    assertThat(AirGas.carbonFor(oxygen).high().in(GRAM)).isCloseTo(0.2092, within(5e-5));
  }

  /** McBride, Zehe and Gordon, NASA/TP-2002-211556 evaluated elsewhere: 18 726.0 J/mol. */
  @Test
  void thermochemistryIsAsDocumented() {
    assertThat(
            Thermochemistry.standard()
                .state(Species.COPPER, kelvin(1000))
                .orElseThrow()
                .heating()
                .si())
        .isCloseTo(18_726, within(0.5));
  }

  /** 1516 K where the emf of Holzheid and O'Neill meet carbon, computed in other software. */
  @Test
  void carbonAtmosphereIsAsDocumented() {
    assertThat(
            CarbonAtmosphere.standard()
                .reducesAbove(Oxide.CHROMIUM, bars(1))
                .expected()
                .orElseThrow()
                .in(CELSIUS))
        .isCloseTo(1243, within(0.5));
  }

  /** 100 g/h / 1000 m3/h = 100 mg/m3; / 28.010 g/mol x 24.465 l/mol = 87.3 ppm. */
  @Test
  void wellMixedRoomIsAsDocumented() {
    GasRelease release =
        GasRelease.of(
            Substance.carbonMonoxide(), List.of(ReleaseStep.of(hours(20), gramsPerHour(100))));
    assertThat(
            WellMixedRoom.standard()
                .answer(release, RoomAir.of(cubicMetres(50), cubicMetresPerHour(1000)))
                .peakShare()
                .orElseThrow()
                .in(PARTS_PER_MILLION))
        .isCloseTo(87.3, within(0.1));
  }

  /**
   * By hand, 0.278623 g of oxygen in a litre at 20 °C. Least, all to dioxide (12.011/31.998), from
   * 650 °C on: first air left 293.15/923.15, drawn in 293.15/923.15 - 293.15/1273.15, 9 h of
   * inflow: 0.21126 g. Most, all to monoxide, from 350 °C on: all of the first air, drawn in
   * 293.15/623.15 - 293.15/1273.15, 14.143 h of inflow: 0.79029 g.
   */
  @Test
  void getterBalanceIsAsDocumented() {
    Profile firing =
        Profile.from(celsius(20))
            .rampTo(celsius(1000), kelvinPerHour(140))
            .hold(hours(3))
            .coolTo(celsius(20), kelvinPerHour(100))
            .build();
    CrucibleAir air =
        CrucibleAir.builder()
            .voidVolume(litres(1))
            .oxygenInflow(
                Sourced.of(
                    Span.of(gramsPerHour(0.05), gramsPerHour(0.05)), Source.user("invented")))
            .build();
    Span<Mass> needed =
        GetterBalance.standard()
            .budget(firing, GetterFill.of(Workbench.carbon(), grams(50)), air, Workbench.copper())
            .carbonNeeded();
    assertThat(needed.low().in(GRAM)).isCloseTo(0.21126, within(5e-6));
    assertThat(needed.high().in(GRAM)).isCloseTo(0.79029, within(5e-6));
  }

  /** 16 to 18 % of chromium and up to 0.03 % of carbon: ASTM B883, MIM-316L. */
  @Test
  void metalInCarbonGasIsAsDocumented() {
    assertThat(severities("stainless steel 316L"))
        .containsExactly(Severity.WARNING, Severity.WARNING);
    assertThat(severities("titanium grade 2").get(0)).isEqualTo(Severity.STOP);
    assertThat(severities("copper")).containsExactly(Severity.PASSED, Severity.PASSED);
  }

  private static List<Severity> severities(String name) {
    Alloy alloy = MaterialLibrary.standard().alloy(name);
    return MetalInCarbonGas.standard().findings(alloy).stream().map(Finding::severity).toList();
  }
}
