package dev.kilnledger.costing.accounting;

import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.yield.BinomialYield;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class YieldTest {
  /** Published example of a rolled throughput yield; recomputed: 0.95 x 0.84 x 0.88. */
  @Test
  void yieldsRoll() {
    ProcessChain chain =
        ProcessChain.of(
            List.of(
                step("print", "0", 0.95), step("debind", "0", 0.84), step("sinter", "0", 0.88)));
    assertThat(chain.rolledYield()).isEqualByComparingTo("0.70224");
  }

  /** By hand: 10 / 0.8379 + 2 / 0.882 + 25 / 0.9 = 11.934598 + 2.267574 + 27.777778. */
  @Test
  void aLateLossCarriesAllEarlierCost() {
    ProcessChain chain =
        ProcessChain.of(
            List.of(
                step("print", "10", 0.95), step("debind", "2", 0.98), step("sinter", "25", 0.90)));
    assertThat(chain.costPerGoodPart().getAmount().setScale(5, RoundingMode.HALF_UP))
        .hasToString("41.97995");
    assertThat(chain.costs().get(0).surviving()).isEqualByComparingTo("0.8379");
  }

  /** One good part at 99 %: 1 - 0.5^6 = 0.984, 1 - 0.5^7 = 0.992 (by hand). */
  @Test
  void startsOnePartUntilOneIsGood() {
    assertThat(BinomialYield.standard().starts(1, percent(50), percent(99))).isEqualTo(7);
    assertThat(BinomialYield.standard().starts(1, percent(50), percent(50))).isEqualTo(1);
    assertThat(BinomialYield.standard().starts(12, percent(100), percent(99))).isEqualTo(12);
  }

  /** Against the binomial sum in exact decimals. */
  @ParameterizedTest
  @CsvSource({"1, 0.9, 0.95", "10, 0.9, 0.95", "25, 0.7, 0.9", "40, 0.97, 0.999", "3, 0.05, 0.5"})
  void isTheSmallestNumberThatIsLikelyEnough(int good, BigDecimal yield, BigDecimal confidence) {
    int starts =
        BinomialYield.standard()
            .starts(good, ratio(yield.doubleValue()), ratio(confidence.doubleValue()));
    assertThat(atLeast(good, starts, yield)).isGreaterThanOrEqualTo(confidence);
    assertThat(atLeast(good, starts - 1, yield)).isLessThan(confidence);
  }

  private static BigDecimal atLeast(int good, int starts, BigDecimal yield) {
    BigDecimal sum = BigDecimal.ZERO;
    BigDecimal ways = BigDecimal.ONE; // starts over k
    for (int k = 0; k <= starts; k++) {
      if (k >= good) {
        sum =
            sum.add(
                ways.multiply(yield.pow(k))
                    .multiply(BigDecimal.ONE.subtract(yield).pow(starts - k)));
      }
      ways = ways.multiply(BigDecimal.valueOf(starts - k)).divide(BigDecimal.valueOf(k + 1));
    }
    return sum;
  }

  @Test
  void refusesWhatCannotSucceed() {
    assertThatThrownBy(() -> StepCost.of(step("print", "1", 1), BigDecimal.ZERO))
        .hasMessage("cost of step print: surviving is 0; accepted is above 0 and up to 1");
    assertThatThrownBy(() -> StepCost.of(step("print", "1", 1), new BigDecimal("1.01")))
        .hasMessage("cost of step print: surviving is 1.01; accepted is above 0 and up to 1");
    assertThat(StepCost.of(step("print", "1", 1), BigDecimal.ONE).surviving()).isOne();
    assertThatThrownBy(() -> step(" ", "-1", 0))
        .hasMessageContaining("name is blank; accepted is any text")
        .hasMessageContaining("cost is EUR -1; accepted is zero or more")
        .hasMessageContaining("yield is 0; accepted is above 0 and up to 1");
    assertThatThrownBy(() -> ProcessChain.of(List.of()))
        .hasMessage("process chain: there is no step; accepted is one or more");
    assertThatThrownBy(
            () ->
                ProcessChain.of(
                    List.of(
                        step("print", "1", 1),
                        ProcessStep.of("sinter", BigMoney.parse("USD 1"), ratio(1)))))
        .hasMessage(
            "process chain: the steps cost in [EUR, USD]; accepted is one currency for all");
  }

  private static ProcessStep step(String name, String cost, double yield) {
    return ProcessStep.of(name, eur(cost), ratio(yield));
  }
}
