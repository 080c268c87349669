package dev.kilnledger.thermal.energy;

import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.layer;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;
import static dev.kilnledger.units.TradeUnits.WATT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.thermal.profile.Profile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The worked examples of the documentation, one for each model. */
class WorkedExamplesTest {
  /** A square metre inside. */
  private static Kiln.Builder cube() {
    double side = Math.sqrt(1 / 6.0);
    return kiln(1300)
        .chamber(Envelope.of(metres(side), metres(side), metres(side)))
        .power(kilowatts(20));
  }

  /** 1075 / (0.115/0.35 + 0.050/0.12 + 1/10) = 1271.83 W/m2, and the faces on the way. */
  @Test
  void steadyWallIsAsDocumented() {
    Kiln kiln =
        cube().wall(List.of(layer("brick", 115, 0.35, 800), layer("board", 50, 0.12, 260))).build();
    SteadyWall wall = new SteadyWall(kiln);
    assertThat(wall.loss(celsius(1100), celsius(25)).in(WATT)).isCloseTo(1271.83, within(0.005));
    assertThat(wall.faces(celsius(1100), celsius(25)).get(1).in(CELSIUS))
        .isCloseTo(682.1, within(0.05));
    assertThat(wall.faces(celsius(1100), celsius(25)).get(2).in(CELSIUS))
        .isCloseTo(152.2, within(0.05));
  }

  /** 0.25/0.115 W/(m2 K) x (540 K x 10 h + 1080 K x 2 h); 600 x 1000 x 0.115 x 1080 / 2 J. */
  @Test
  void quasiSteadyEnergyIsAsDocumented() {
    Kiln kiln =
        cube()
            .outsideFilm(wattsPerSquareMetreKelvin(1e12))
            .wall(List.of(layer("brick", 115, 0.25, 600)))
            .build();
    Profile profile =
        Profile.from(celsius(20)).rampTo(celsius(1100), kelvinPerHour(108)).hold(hours(2)).build();
    EnergyBalance balance = QuasiSteadyEnergy.standard().balance(kiln, profile, List.of());
    assertThat(balance.total(EnergyLine.Use.WALL_LOSS).in(KILOWATT_HOUR))
        .isCloseTo(16.4348, within(5e-5));
    assertThat(balance.total(EnergyLine.Use.WALL_STORE).in(KILOWATT_HOUR))
        .isCloseTo(10.35, within(5e-5));
  }

  /** A published example of a low firing: 11.52 kW x 8 h x 0.09. */
  @Test
  void dutyFactorEnergyIsAsDocumented() {
    Profile profile = Profile.from(celsius(20)).rampOver(celsius(800), hours(8)).build();
    assertThat(
            new DutyFactorEnergy(percent(9))
                .balance(cube().power(kilowatts(11.52)).build(), profile, List.of())
                .total()
                .in(KILOWATT_HOUR))
        .isCloseTo(8.2944, within(1e-9));
  }
}
