package dev.kilnledger.thermal.profile;

import static dev.kilnledger.thermal.Workbench.alumina;
import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.debindingProfile;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.days;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.material.PackingPowder;
import java.util.List;
import org.junit.jupiter.api.Test;

class FiringRouteTest {

  @Test
  void addsUpItsStages() {
    FiringRoute route =
        FiringRoute.of(
            List.of(
                debinding().build(),
                debinding().name("second debinding").getter(carbon(), grams(20)).build(),
                sintering(1000).getter(carbon(), grams(300)).build()));
    double debinding = 180 / 100.0 + 220 / 30.0 + 2;
    double sintering = 580 / 150.0 + 0.5 + 4 + 3 + 500 / 150.0;
    assertThat(route.duration().in(HOUR))
        .as("sums of doubles") // hence the tolerance
        .isCloseTo(2 * debinding + sintering, within(1e-9));
    assertThat(route.getterMass().in(GRAM)).isCloseTo(320, within(1e-9));
    assertThat(route.peak()).isEqualTo(celsius(1000));
    assertThat(route.debinding()).hasSize(2);
    assertThat(route.sintering()).extracting(FiringStage::name).containsExactly("sintering");
  }

  @Test
  void isMadeOfOneStageForDebindingAndOneForSintering() {
    FiringRoute route = FiringRoute.of(debinding().build(), sintering(1000).build());
    assertThat(route.stages()).containsExactly(debinding().build(), sintering(1000).build());
    assertThat(route.hottest()).isEqualTo(sintering(1000).build());
    assertThat(route.getterMass().in(GRAM)).isZero();
    assertThat(FiringStage.Purpose.DEBINDING.packingUse()).isEqualTo(PackingPowder.Use.DEBINDING);
    assertThat(FiringStage.Purpose.SINTERING.packingUse()).isEqualTo(PackingPowder.Use.SINTERING);
  }

  @Test
  void refusesStagesOutOfOrder() {
    assertThatThrownBy(() -> FiringRoute.of(sintering(1000).build(), debinding().build()))
        .hasMessage(
            "firing route: stage debinding debinds after a sintering stage; accepted is debinding"
                + " first");
    assertThatThrownBy(() -> FiringRoute.of(List.of()))
        .hasMessage(
            "firing route: there is no debinding stage; accepted is at least one; and there is no"
                + " sintering stage; accepted is at least one");
    FiringStage tooCool =
        FiringStage.sintering()
            .profile(debindingProfile())
            .packing(alumina())
            .packingMass(grams(1))
            .build();
    assertThatThrownBy(() -> FiringRoute.of(debinding().build(), tooCool))
        .hasMessage(
            "firing route: stage debinding debinds at up to 420 °C and stage sintering sinters at"
                + " 420 °C; accepted is debinding below the sintering temperature");
  }

  @Test
  void refusesPackingAndGetterWithoutMass() {
    assertThatThrownBy(() -> debinding().name(" ").packingMass(grams(0)).build())
        .hasMessage(
            "stage  : name is blank; accepted is any text; and packing mass is 0 g; accepted is"
                + " more than zero");
    assertThatThrownBy(() -> sintering(1000).getter(carbon(), grams(0)))
        .hasMessage("fill of granular carbon: mass is 0 g; accepted is more than zero");
  }

  @Test
  void refusesStagesThatTakeLongerThanAnybodyFires() {
    assertThatThrownBy(
            () -> debinding().profile(Profile.from(celsius(20)).hold(days(366)).build()).build())
        .hasMessage("stage debinding: the profile takes 366 d; accepted is up to 365 d");
  }

  /** A job document with a start of 2,000,000,000 °C kept the kiln's model busy for minutes. */
  @Test
  void refusesStagesHotterThanAnySolid() {
    assertThatThrownBy(
            () ->
                debinding()
                    .profile(
                        Profile.from(celsius(5001)).coolTo(celsius(20), kelvinPerHour(60)).build())
                    .build())
        .hasMessage("stage debinding: the profile peaks at 5001 °C; accepted is up to 5000 °C");
    assertThat(
            debinding()
                .profile(Profile.from(celsius(20)).rampTo(celsius(5000), kelvinPerHour(60)).build())
                .build()
                .profile()
                .peak())
        .isEqualTo(FiringStage.HOTTEST);
  }
}
