package dev.kilnledger.core.firing;

import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.source.Source;
import org.junit.jupiter.api.Test;

class FiringUseTest {
  private static FiringUse.Builder firing() {
    return FiringUse.builder()
        .duration(hours(30))
        .energy(kilowattHours(28))
        .getter(grams(300))
        .partsPerCharge(4)
        .source(Source.user("metered"));
  }

  @Test
  void holdsWhatWasMeasured() {
    assertThat(firing().build().getter()).isEqualTo(grams(300));
    assertThat(firing().getter(grams(0)).build().partsPerCharge()).isEqualTo(4);
    assertThat(firing().partsPerCharge(1).build().partsPerCharge()).isEqualTo(1);
  }

  @Test
  void refusesImpossibleFiringsWithAllProblems() {
    assertThatThrownBy(
            () ->
                firing()
                    .duration(hours(0))
                    .energy(kilowattHours(-1))
                    .getter(grams(-2))
                    .partsPerCharge(0)
                    .build())
        .hasMessage(
            "firing: duration is 0 h; accepted is more than zero; and energy is -1 kWh; accepted"
                + " is zero or more; and getter is -2 g; accepted is zero or more; and parts per"
                + " charge is 0; accepted is 1 or more");
  }
}
