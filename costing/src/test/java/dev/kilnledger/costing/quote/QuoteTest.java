package dev.kilnledger.costing.quote;

import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.costing.ledger.Rounding;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class QuoteTest {
  private static final CostPlusQuoter QUOTER = CostPlusQuoter.standard();
  private static final CurrencyUnit KWD = CurrencyUnit.of("KWD");

  /** Recomputed by hand: 80 / 0.8 and 80 x 1.2. */
  @Test
  void marginIsAShareOfThePriceAndMarkupOfTheCost() {
    assertThat(Uplift.margin(percent(20)).priceOf(eur("80")).isEqual(eur("100"))).isTrue();
    assertThat(Uplift.markup(percent(20)).priceOf(eur("80")).isEqual(eur("96"))).isTrue();
  }

  @Test
  void refusesAnUpliftThatNoPriceHas() {
    assertThatThrownBy(() -> Uplift.margin(percent(100)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "uplift: margin is 100 %; accepted is zero or more and less than 1, as no price is all"
                + " margin");
    assertThatThrownBy(() -> Uplift.markup(percent(-1)))
        .hasMessage("uplift: markup is -1 %; accepted is zero or more");
  }

  /** Published examples of tax software's and money libraries' documentation; recomputed. */
  @Test
  void takesTheNetOutOfTheGross() {
    TaxedAmount taxed = TaxedAmount.ofGross(money("EUR 2.99"), percent(4), Rounding.HALF_EVEN);
    assertThat(taxed).isEqualTo(TaxedAmount.of(money("EUR 2.88"), money("EUR 0.11")));
    assertThat(taxed.gross()).isEqualTo(money("EUR 2.99"));
    assertThat(TaxedAmount.ofNet(money("EUR 2.88"), percent(4), Rounding.HALF_EVEN).tax())
        .isEqualTo(money("EUR 0.12")); // 0.1152: putting it on is not taking it out
    assertThatThrownBy(() -> TaxedAmount.ofNet(money("EUR 1"), percent(-4), Rounding.HALF_UP))
        .hasMessage("tax: rate is -4 %; accepted is zero or more");
    assertThatThrownBy(() -> TaxedAmount.ofGross(money("EUR 1"), percent(-4), Rounding.HALF_UP))
        .hasMessage("tax: rate is -4 %; accepted is zero or more");
  }

  /** Published (5 in 3:7; 100.00 in thirds); recomputed. Minor units by ISO 4217. */
  @Test
  void splitsWithoutLosingAUnit() {
    assertThat(split("EUR 0.05", 3, 7)).containsExactly(money("EUR 0.02"), money("EUR 0.03"));
    assertThat(split("EUR 100.00", 1, 1, 1))
        .containsExactly(money("EUR 33.34"), money("EUR 33.33"), money("EUR 33.33"));
    assertThat(split("EUR -100.00", 1, 1, 1)).first().isEqualTo(money("EUR -33.34"));
    assertThat(split("JPY 100", 1, 1, 1))
        .containsExactly(money("JPY 34"), money("JPY 33"), money("JPY 33"));
    assertThat(split("KWD 100.000", 1, 1, 1))
        .containsExactly(money("KWD 33.334"), money("KWD 33.333"), money("KWD 33.333"));
    assertThatThrownBy(() -> split("EUR 1.00", 0, -1))
        .hasMessage(
            "split: the weights are [0, -1]; accepted is at least one above zero; and weight 2 is"
                + " -1; accepted is zero or more");
  }

  /** A property; weights and sums of a fixed seed. */
  @Test
  void sharesAreWithinOneUnitOfTheirProportionAndAddUp() {
    Random random = new Random(5);
    for (int round = 0; round < 500; round++) {
      int[] weights = random.ints(1 + random.nextInt(9), 0, 50).toArray();
      weights[0]++;
      int sum = Arrays.stream(weights).sum();
      int cents = random.nextInt(10_000);
      List<Money> shares = split(Money.ofMinor(CurrencyUnit.EUR, cents).toString(), weights);
      assertThat(shares.stream().mapToInt(Money::getAmountMinorInt).sum()).isEqualTo(cents);
      for (int i = 0; i < weights.length; i++) {
        assertThat(Math.abs(shares.get(i).getAmountMinorInt() * sum - cents * weights[i]))
            .isLessThan(sum);
      }
    }
  }

  /**
   * By hand: 3 x 33.335 = 100.005 -> 100.00 (even), 7 x 0.33 = 2.31; 19 % of each and of the sum.
   */
  @Test
  void putsTaxOnLinesOrOnTheirSum() {
    List<QuoteItem> items =
        List.of(
            QuoteItem.of("tag", 3, eur("33.335")),
            QuoteItem.of("ring", 7, eur("0.33")),
            QuoteItem.of("clip", 1, eur("0.13")));
    Quote perLine = QUOTER.quote(items, atCost(QuoteTax.PER_LINE).build());
    assertThat(perLine.lines())
        .extracting(line -> line.amount().net() + " + " + line.amount().tax())
        .containsExactly("EUR 100.00 + EUR 19.00", "EUR 2.31 + EUR 0.44", "EUR 0.13 + EUR 0.02");
    assertThat(perLine.total().gross()).isEqualTo(money("EUR 121.90"));
    Quote onSum = QUOTER.quote(items, atCost(QuoteTax.ON_SUM).build());
    // 102.44 x 0.19 = 19.4636 -> 19.46; shares 18.996, 0.4388, 0.0247: one unit more to the first
    // and the second, whose remainders are the largest.
    assertThat(onSum.lines())
        .extracting(line -> line.amount().tax())
        .containsExactly(money("EUR 19.00"), money("EUR 0.44"), money("EUR 0.02"));
    assertThat(onSum.total()).isEqualTo(TaxedAmount.of(money("EUR 102.44"), money("EUR 19.46")));
    assertThat(onSum.roundings()).hasSize(4);
    RoundingStep first = onSum.roundings().get(0);
    assertThat(first.what()).isEqualTo("tag: unit price x parts");
    assertThat(first.exact().isEqual(eur("100.005"))).isTrue();
    assertThat(first.added().isEqual(eur("-0.005"))).isTrue();
    assertThat(
            QUOTER
                .quote(items, atCost(QuoteTax.PER_LINE).rounding(Rounding.HALF_UP).build())
                .total()
                .net())
        .isEqualTo(money("EUR 102.45"));
  }

  /** By hand: 2.875 x 1.04 = 2.99, net 2.875 -> 2.88, and 0.11. */
  @Test
  void takesTaxOutOfGrossLines() {
    Quote quote =
        QUOTER.quote(
            List.of(QuoteItem.of("ring", 1, eur("2.875"))),
            atCost(QuoteTax.FROM_GROSS).taxRate(percent(4)).build());
    assertThat(quote.lines().get(0).amount())
        .isEqualTo(TaxedAmount.of(money("EUR 2.88"), money("EUR 0.11")));
  }

  @Test
  void appliesQuantityBreaksAndAMinimumCharge() {
    QuoteTerms terms =
        atCost(QuoteTax.ON_SUM)
            .uplift(Uplift.margin(percent(20)))
            .addBreaks(QuantityBreak.of(10, Uplift.margin(percent(10))))
            .minimumCharge(money("EUR 25"))
            .build();
    Quote small = QUOTER.quote(List.of(QuoteItem.of("ring", 2, eur("8"))), terms);
    assertThat(small.lines())
        .extracting(line -> line.name() + " " + line.amount().net() + " (" + line.formula() + ")")
        .containsExactly(
            "ring EUR 20.00 (EUR 8 with margin 20 %)",
            "minimum charge EUR 5.00 (up to EUR 25.00 from EUR 20.00)");
    assertThat(small.total()).isEqualTo(TaxedAmount.of(money("EUR 25.00"), money("EUR 4.75")));
    Quote large = QUOTER.quote(List.of(QuoteItem.of("ring", 10, eur("9"))), terms);
    assertThat(large.total().net()).isEqualTo(money("EUR 100.00"));
    assertThat(large.lines()).hasSize(1);
  }

  @Test
  void asksNoMinimumChargeOfASumThatReachesIt() {
    QuoteTerms terms = atCost(QuoteTax.ON_SUM).minimumCharge(money("EUR 25")).build();
    Quote quote = QUOTER.quote(List.of(QuoteItem.of("ring", 5, eur("5"))), terms);
    assertThat(quote.lines()).extracting(QuoteLine::name).containsExactly("ring");
  }

  /** By hand: a gross of 25.00 at 25 % holds a net of 20.00; 2 x 8 x 1.25 = 20.00 lack 5.00. */
  @Test
  void takesTheTaxOutOfAMinimumChargeWhereItIsGross() {
    QuoteTerms terms =
        atCost(QuoteTax.FROM_GROSS).taxRate(percent(25)).minimumCharge(money("EUR 25")).build();
    Quote quote = QUOTER.quote(List.of(QuoteItem.of("ring", 2, eur("8"))), terms);
    assertThat(quote.lines().get(1).unitPrice().isEqual(eur("4"))).isTrue();
    assertThat(quote.lines().get(1).parts()).isEqualTo(1);
    assertThat(quote.lines().get(1).amount())
        .isEqualTo(TaxedAmount.of(money("EUR 4.00"), money("EUR 1.00")));
    assertThat(quote.total()).isEqualTo(TaxedAmount.of(money("EUR 20.00"), money("EUR 5.00")));
    assertThat(quote.roundings())
        .extracting(RoundingStep::what)
        .containsExactly(
            "ring: unit price x parts x (1 + tax rate)",
            "line 1: gross / (1 + tax rate)",
            "line 2: gross / (1 + tax rate)");
  }

  @Test
  void quotesWhatCostsNothing() {
    for (QuoteTax policy : QuoteTax.values()) {
      Quote quote =
          QUOTER.quote(List.of(QuoteItem.of("ring", 1, eur("0"))), atCost(policy).build());
      assertThat(quote.total()).isEqualTo(TaxedAmount.of(money("EUR 0"), money("EUR 0")));
    }
  }

  @Test
  void splitsALineOverItsPartsWhateverTheirNumber() {
    Quote quote =
        QUOTER.quote(
            List.of(QuoteItem.of("ring", 3, BigMoney.parse("KWD 33.3333334"))),
            atCost(QuoteTax.PER_LINE).build());
    assertThat(quote.currency()).isEqualTo(KWD);
    assertThat(quote.lines().get(0).netPerPart())
        .containsExactly(
            PartShare.of(1, money("KWD 33.334")), PartShare.of(2, money("KWD 33.333")));
    Quote even =
        QUOTER.quote(
            List.of(QuoteItem.of("ring", 1_000_000, BigMoney.parse("JPY 12"))),
            atCost(QuoteTax.PER_LINE).build());
    assertThat(even.lines().get(0).netPerPart())
        .containsExactly(PartShare.of(1_000_000, money("JPY 12")));
  }

  /** A property; costs and quantities of a fixed seed. */
  @ParameterizedTest
  @EnumSource
  void linesAndPartsAddUpToTheTotals(QuoteTax policy) {
    Random random = new Random(11);
    for (int round = 0; round < 200; round++) {
      List<QuoteItem> items =
          random
              .ints(1 + random.nextInt(5), 0, 1_000_000)
              .mapToObj(
                  cost ->
                      QuoteItem.of(
                          "part " + cost,
                          1 + cost % 13,
                          BigMoney.of(CurrencyUnit.EUR, BigDecimal.valueOf(cost, 5))))
              .toList();
      Quote quote = QUOTER.quote(items, atCost(policy).uplift(Uplift.margin(percent(30))).build());
      Money gross = Money.zero(CurrencyUnit.EUR);
      for (QuoteLine line : quote.lines()) {
        gross = gross.plus(line.amount().gross());
        Money parts = Money.zero(CurrencyUnit.EUR);
        for (PartShare share : line.netPerPart()) {
          parts = parts.plus(share.each().multipliedBy(share.parts()));
        }
        assertThat(parts).isEqualTo(line.amount().net());
      }
      assertThat(quote.total().gross()).isEqualTo(gross);
    }
  }

  @Test
  void refusesWhatCannotBeQuotedWithAllProblems() {
    QuoteTerms terms = atCost(QuoteTax.ON_SUM).minimumCharge(money("USD 1")).build();
    assertThatThrownBy(() -> QUOTER.quote(List.of(), terms))
        .hasMessage("quote: there is no item; accepted is one or more");
    assertThatThrownBy(
            () ->
                QUOTER.quote(
                    List.of(
                        QuoteItem.of("a", 1, eur("1")),
                        QuoteItem.of("b", 1, BigMoney.parse("JPY 1"))),
                    terms))
        .hasMessage(
            "quote: b costs JPY 1; accepted is one currency, that of the first item, EUR; and the"
                + " minimum charge is USD 1.00; accepted is in EUR");
    assertThatThrownBy(() -> QuoteItem.of("", 0, eur("-1")))
        .hasMessageContaining("name is blank; accepted is any text")
        .hasMessageContaining("parts is 0; accepted is 1 or more")
        .hasMessageContaining("cost per part is EUR -1; accepted is zero or more");
    assertThatThrownBy(
            () ->
                atCost(QuoteTax.ON_SUM)
                    .taxRate(percent(-1))
                    .minimumCharge(money("EUR 0"))
                    .addBreaks(
                        QuantityBreak.of(3, Uplift.markup(ratio(0))),
                        QuantityBreak.of(2, Uplift.markup(ratio(0))))
                    .build())
        .hasMessageContaining("tax rate is -1 %; accepted is zero or more")
        .hasMessageContaining("minimum charge is EUR 0.00; accepted is more than zero")
        .hasMessageContaining(
            "a break from 2 parts follows one from 3; accepted is from few parts to many");
    assertThatThrownBy(() -> QuantityBreak.of(1, Uplift.markup(ratio(0))))
        .hasMessage("quantity break: it is from 1 parts; accepted is 2 or more");
  }

  @Test
  void refusesTwoBreaksFromTheSameNumber() {
    assertThatThrownBy(
            () ->
                atCost(QuoteTax.ON_SUM)
                    .addBreaks(
                        QuantityBreak.of(10, Uplift.markup(percent(20))),
                        QuantityBreak.of(10, Uplift.markup(percent(10))))
                    .build())
        .hasMessage(
            "quote terms: a break from 10 parts follows one from 10; accepted is from few parts to"
                + " many");
  }

  @Test
  void saysHowTaxIsPutOn() {
    assertThat(QuoteTax.values())
        .extracting(QuoteTax::words)
        .containsExactly(
            "tax on each line", "tax on the sum", "tax taken out of each line's gross");
  }

  private static QuoteTerms.Builder atCost(QuoteTax policy) {
    QuoteTerms.Builder terms = QuoteTerms.builder();
    terms.uplift(Uplift.markup(ratio(0))).taxRate(percent(19)).taxPolicy(policy);
    return terms;
  }

  private static List<Money> split(String total, int... weights) {
    return LargestRemainder.standard()
        .split(money(total), Arrays.stream(weights).mapToObj(BigDecimal::valueOf).toList());
  }

  private static Money money(String text) {
    return Money.parse(text);
  }
}
