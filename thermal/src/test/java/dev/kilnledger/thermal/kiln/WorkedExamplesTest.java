package dev.kilnledger.thermal.kiln;

import static dev.kilnledger.thermal.Workbench.layer;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.watts;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.energy.ChargeItem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The worked examples of the documentation, one for each model. */
class WorkedExamplesTest {
  /**
   * t = -(C/UA) ln(1 - UA dT/P) = 5.894804 h and 20 + 3000/1.9 = 1598.947 °C, by the closed form.
   */
  @Test
  void transientKilnIsAsDocumented() {
    double side = Math.sqrt(1 / 6.0); // a square metre inside
    Kiln kiln =
        Workbench.kiln(1700)
            .chamber(Envelope.of(metres(side), metres(side), metres(side)))
            .power(watts(3000))
            .outsideFilm(wattsPerSquareMetreKelvin(1e9))
            .wall(List.of(layer("wall of no mass", 1, 0.0019, 1e-6)))
            .build();
    List<ChargeItem> charge =
        List.of(
            ChargeItem.of(
                "charge",
                kilograms(35),
                Sourced.of(joulesPerKilogramKelvin(1000), Source.user("test"))));
    TransientKiln model = TransientKiln.standard();
    List<FullPowerPoint> curve = model.fullPower(kiln, charge, celsius(1100));
    FullPowerPoint last = curve.get(curve.size() - 1);
    // the last point lies half a minute before the end of a step that ends above 1100 °C
    assertThat(last.time().in(HOUR)).isCloseTo(5.89, within(1.0 / 60));
    assertThat(model.ceiling(kiln).in(CELSIUS)).isCloseTo(1599, within(0.06));
  }

  /** IEC 60584-1:2013, class 2, as compared in public tables. */
  @Test
  void thermocoupleIsAsDocumented() {
    assertThat(Thermocouple.K.tolerance(celsius(1000)).orElseThrow().in(KELVIN_DIFFERENCE))
        .isCloseTo(7.5, within(1e-9));
    assertThat(Thermocouple.K.tolerance(celsius(1201))).isEmpty();
    assertThat(Thermocouple.S.tolerance(celsius(1300)).orElseThrow().in(KELVIN_DIFFERENCE))
        .isCloseTo(3.25, within(1e-9));
  }
}
