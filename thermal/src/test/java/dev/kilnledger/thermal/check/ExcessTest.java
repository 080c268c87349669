package dev.kilnledger.thermal.check;

import static dev.kilnledger.units.Amounts.seconds;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExcessTest {
  /** A billionth is rounding, and no more than that is. */
  @ParameterizedTest
  @CsvSource({
    "0.5, false",
    "1, false",
    "1.0000000005, false",
    "1.000000001, false",
    "1.000000002, true",
    "2, true"
  })
  void isWhatLiesAboveByMoreThanRounding(double amount, boolean exceeds) {
    assertThat(Excess.exceeds(seconds(amount), seconds(1))).isEqualTo(exceeds);
    assertThat(Excess.exceeds(seconds(4 * amount), seconds(4))).isEqualTo(exceeds);
  }
}
