package dev.kilnledger.costing.resource;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.joda.money.BigMoney;
import org.junit.jupiter.api.Test;

/** Lives are given with six digits, so half a unit of the sixth is the tolerance of each check. */
class WeibullLifeTest {
  private static final WeibullLife LIFE = WeibullLife.of(2, ratio(10), INVENTED);

  @Test
  void hasTheMeanAndTheQuantileOfTheDistribution() {
    // Recomputed for beta 2, eta 10: 10 Gamma(1.5) = 8.86227, 10 sqrt(-ln 0.9) = 3.24593.
    assertThat(LIFE.mean()).isEqualTo(ratio(8.86227));
    assertThat(LIFE.outlastedBy(percent(90))).isEqualTo(ratio(3.24593));
    assertThat(LIFE.toFailure().life()).isEqualTo(ratio(8.86227));
    assertThat(LIFE.toFailure().failing()).isEqualTo(ratio(1));
  }

  @Test
  void endsEarlierWhereItIsReplacedInTime() {
    // 10 sqrt(pi) / 2 erf(1), erf(1) = 0.8427007929 (Abramowitz and Stegun, table 7.1, from
    // memory).
    PlannedLife planned = LIFE.replacedAt(ratio(10));
    assertThat(planned.life().si())
        .isCloseTo(10 * Math.sqrt(Math.PI) / 2 * 0.8427007929, within(5e-6));
    assertThat(planned.failing().si()).isCloseTo(1 - Math.exp(-1), within(1e-15));
    assertThat(planned.source().text())
        .isEqualTo(
            "mean of a Weibull life of shape 2.0 and scale 10, replaced at 10 (at failure or a"
                + " stated age); invented");
    // (5 exp(-1) + 50 (1 - exp(-1))) / 7.46824 = 4.47836...
    assertThat(LIFE.costPerUse(planned, eur("5"), eur("50")).getAmount().doubleValue())
        .isCloseTo((5 * Math.exp(-1) + 50 * (1 - Math.exp(-1))) / 7.46824, within(1e-12));
    // A piece with shape 1 does not age: M(T) = eta (1 - exp(-T / eta)).
    assertThat(WeibullLife.of(1, hours(100), INVENTED).replacedAt(hours(50)).life().si() / 3600)
        .isCloseTo(100 * (1 - Math.exp(-0.5)), within(5e-5));
  }

  @Test
  void findsTheCheapestAge() {
    BigMoney planned = eur("10");
    BigMoney failure = eur("100");
    PlannedLife cheapest = LIFE.replacedAtCheapest(planned, failure);
    assertThat(cheapest.rule()).isEqualTo(LifeRule.AT_CHEAPEST_AGE);
    double best = cost(cheapest);
    double age = cheapest.interval().orElseThrow().si();
    for (double other = 0.1; other < 40; other += 0.01) {
      // Lives of six digits move a cost by at most 5e-6 of itself.
      assertThat(cost(LIFE.replacedAt(ratio(other)))).isGreaterThan(best * (1 - 1e-5));
    }
    assertThat(age).isBetween(1.0, 10.0);
    assertThat(best).isLessThan(cost(LIFE.toFailure()));
    // Nothing is gained where a failure costs no more, or where pieces do not age.
    assertThat(LIFE.replacedAtCheapest(failure, planned).interval()).isEmpty();
    assertThat(
            WeibullLife.of(1, ratio(10), INVENTED).replacedAtCheapest(planned, failure).interval())
        .isEmpty();
  }

  /**
   * Where a failure costs hardly more, the cheapest age lies beyond eta. At it the condition of the
   * javadoc holds: h(T) M(T) - F(T) = p / (f - p), for beta 2 with h = 2 T / eta^2.
   */
  @Test
  void findsAnAgeBeyondTheScale() {
    PlannedLife late = LIFE.replacedAtCheapest(eur("10"), eur("11"));
    double age = late.interval().orElseThrow().si();
    assertThat(age).isGreaterThan(10);
    // Age and life of six digits each: some 1e-6 of a left side of 11.
    assertThat(2 * age / 100 * late.life().si() - late.failing().si())
        .isCloseTo(10, within(11 * 2e-6));
    // 10 / 0.001 would be reached beyond a thousand scales: no age pays.
    assertThat(LIFE.replacedAtCheapest(eur("10"), eur("10.001")).interval()).isEmpty();
  }

  private static double cost(PlannedLife life) {
    return LIFE.costPerUse(life, eur("10"), eur("100")).getAmount().doubleValue();
  }

  @Test
  void givesAWearingResourceItsLife() {
    Wearing crucible =
        Wearing.builder()
            .item("crucible")
            .driver(Driver.FIRING)
            .life(LIFE.replacedAt(ratio(6)))
            .build();
    assertThat(crucible.life().si()).isBetween(5.0, 6.0);
    assertThat(crucible.source().text()).contains("replaced at 6");
  }

  @Test
  void refusesWhatIsNoLife() {
    assertThatThrownBy(() -> WeibullLife.of(0, ratio(0), INVENTED))
        .hasMessage(
            "Weibull life: shape is 0.0; accepted is 0.1 to 100; and scale is 0; accepted is more"
                + " than zero");
    assertThatThrownBy(() -> LIFE.replacedAt(grams(-1)))
        .hasMessage(
            "Weibull life: interval is -1 g; accepted is more than zero; and interval is -1 g;"
                + " accepted is a measure of ratio");
    assertThatThrownBy(() -> LIFE.costPerUse(LIFE.toFailure(), eur("0"), eur("1")))
        .hasMessageContaining("planned replacement costs EUR 0; accepted is more than zero");
    assertThat(WeibullLife.of(0.1, ratio(10), INVENTED).shape()).isEqualTo(0.1);
    assertThat(WeibullLife.of(100, ratio(10), INVENTED).shape()).isEqualTo(100);
    assertThatThrownBy(() -> LIFE.outlastedBy(ratio(1))).hasMessageContaining("share is 1");
    assertThatThrownBy(() -> LIFE.replacedAtCheapest(eur("0"), BigMoney.parse("USD 1")))
        .hasMessageContaining("planned replacement costs EUR 0")
        .hasMessageContaining("a failure costs USD 1; accepted is zero or more in the currency");
  }
}
