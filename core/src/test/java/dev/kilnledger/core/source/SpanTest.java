package dev.kilnledger.core.source;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.units.TradeUnits;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;

class SpanTest {
  private final Span<Temperature> window = Span.of(celsius(780), celsius(840));

  @Test
  void containsItsEndsAndNothingBeyond() {
    assertThat(window.contains(celsius(780))).isTrue();
    assertThat(window.contains(celsius(840))).isTrue();
    assertThat(window.contains(celsius(779.9))).isFalse();
    assertThat(window.contains(celsius(840.1))).isFalse();
    Span<Temperature> point = Span.of(celsius(820), celsius(820));
    assertThat(point.contains(celsius(820))).isTrue();
  }

  @Test
  void readsWithTheUnitOnce() {
    assertThat(window.format(TradeUnits.CELSIUS, 0)).isEqualTo("780 to 840 °C");
    // 780 °C is 1436 °F and 840 °C is 1544 °F exactly (definition of the scales).
    assertThat(window.format(TradeUnits.FAHRENHEIT, 0)).isEqualTo("1436 to 1544 °F");
    assertThat(Span.of(ratio(40), ratio(60)).format(TradeUnits.ONE, 0)).isEqualTo("40 to 60");
  }

  @Test
  void refusesEndsInTheWrongOrder() {
    assertThatThrownBy(() -> Span.of(celsius(840), celsius(780)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("span: low is 840 °C and high is 780 °C; accepted is low up to high");
  }

  @Test
  void anEstimateLiesInItsSpan() {
    Estimate<?> estimate = Estimate.of(massFraction(0), massFraction(0.01), massFraction(0.02));
    assertThat(estimate.span()).isEqualTo(Span.of(massFraction(0), massFraction(0.02)));
    assertThat(Estimate.exactly(massFraction(0.01)).span())
        .isEqualTo(Span.of(massFraction(0.01), massFraction(0.01)));
    assertThatThrownBy(() -> Estimate.of(massFraction(0), massFraction(0.03), massFraction(0.02)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("estimate: expected is 0.03 kg/kg; accepted is from 0 kg/kg to 0.02 kg/kg");
    assertThatThrownBy(() -> Estimate.of(massFraction(0.2), massFraction(0.1), massFraction(0)))
        .hasMessageStartingWith("span: low is 0.2 kg/kg and high is 0 kg/kg");
  }
}
