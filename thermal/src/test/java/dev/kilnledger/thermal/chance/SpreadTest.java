package dev.kilnledger.thermal.chance;

import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.source.Source;
import org.junit.jupiter.api.Test;

class SpreadTest {
  private static final Source SAID = Source.user("made for the tests");

  /** The worked example of the type: 95 % of a rectangular law on -6 to 6 lie below 5.4. */
  @Test
  void isEvenBetweenLimits() {
    var spread = Spread.rectangular(kelvinDifference(-6), kelvinDifference(6), SAID);
    assertThat(spread.quantile(percent(95)).in(KELVIN_DIFFERENCE)).isCloseTo(5.4, within(1e-12));
    assertThat(spread.quantile(percent(50)).in(KELVIN_DIFFERENCE)).isCloseTo(0, within(1e-12));
  }

  /** Tables of the normal law: 1.644854 and 2.326348 standard deviations for 95 and 99 %. */
  @Test
  void isNormalAboutAMean() {
    var spread = Spread.normal(kelvinDifference(-4), kelvinDifference(3), SAID);
    assertThat(spread.quantile(percent(95)).si()).isCloseTo(-4 + 3 * 1.644854, within(3e-6));
    assertThat(spread.quantile(percent(1)).si()).isCloseTo(-4 - 3 * 2.326348, within(3e-6));
  }

  /** Even in the logarithm: a quarter of the way from 1/1.5 to 1.5 is 1.5^(-1/2). */
  @Test
  void isEvenInTheLogarithm() {
    var spread = Spread.logRectangular(ratio(1 / 1.5), ratio(1.5), SAID);
    assertThat(spread.quantile(percent(25)).si()).isCloseTo(1 / Math.sqrt(1.5), within(1e-12));
    assertThat(spread.quantile(percent(50)).si()).isCloseTo(1, within(1e-12));
  }

  /** A geometric standard deviation of 1.2: one standard deviation up, at 84.1345 %, is 1.2. */
  @Test
  void isNormalInTheLogarithm() {
    var spread = Spread.logNormal(ratio(1), ratio(1.2), SAID);
    assertThat(spread.quantile(ratio(0.8413447461)).si()).isCloseTo(1.2, within(1e-9));
  }

  @Test
  void isOneValueWhereNothingIsInDoubt() {
    var spread = Spread.exactly(kelvinDifference(2), SAID);
    assertThat(spread.isExact()).isTrue();
    assertThat(Spread.rectangular(kelvinDifference(2), kelvinDifference(3), SAID).isExact())
        .isFalse();
    assertThat(spread.quantile(percent(1))).isEqualTo(kelvinDifference(2));
  }

  @Test
  void refusesWhatHasNoLogarithm() {
    assertThatThrownBy(() -> Spread.logRectangular(ratio(0), ratio(2), SAID))
        .hasMessage(
            "rectangular in the logarithm spread: it begins at 0; accepted is more than zero");
    assertThatThrownBy(() -> Spread.rectangular(ratio(0), ratio(1), SAID).quantile(ratio(1)))
        .hasMessage("quantile: share is 1; accepted is more than 0 and less than 1");
    assertThatThrownBy(() -> Spread.rectangular(ratio(0), ratio(1), SAID).quantile(ratio(0)))
        .hasMessage("quantile: share is 0; accepted is more than 0 and less than 1");
  }
}
