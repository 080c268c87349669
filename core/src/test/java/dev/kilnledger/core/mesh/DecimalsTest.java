package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The lexical forms of {@code xs:double} (XML Schema Part 2), of finite numbers only. */
class DecimalsTest {
  @ParameterizedTest
  @CsvSource({
    "0,0",
    "9,9",
    "-1,-1",
    "+2.5,2.5",
    "12e3,12000",
    "125E-2,1.25",
    "-3.e+1,-30",
    ".5,0.5",
    "1e308,1e308"
  })
  void decimalsAreRead(String text, double expected) {
    assertThat(Decimals.parse(text)).isEqualTo(expected);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " 1",
        "1 ",
        "1f",
        "1D",
        "0x1p3",
        "NaN",
        "Infinity",
        "-Infinity",
        "1e309",
        "-1e309",
        "1,5",
        "1/2",
        "1:2",
        "e",
        "E5",
        ".",
        "+",
        "-",
        "+-1",
        "--1",
        "1e",
        "1e5.5",
        "1.2.3"
      })
  void anythingElseIsNotANumber(String text) {
    assertThat(Decimals.parse(text)).isNaN();
  }
}
