package dev.kilnledger.costing.offer;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.days;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.finding.Finding;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

class PriceBookTest {
  private static final Offer WAX = offer("wax", grams(100), "5").build();
  private static final Offer WAX_OF_B =
      offer("wax", grams(500), "20").supplier("supplier B").build();
  private static final Offer WAX_NEXT_YEAR =
      offer("wax", grams(100), "6").validFrom(LocalDate.of(2027, 1, 1)).build();
  private static final BigMoney DOLLARS = BigMoney.parse("USD 9.50");

  @Test
  void findsTheOnlyOfferOfAnItemThatHolds() {
    PriceBook book = book().addOffers(WAX, WAX_NEXT_YEAR).build();
    assertThat(book.offer("wax")).isEqualTo(WAX);
    assertThatThrownBy(() -> book.offer("vax"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no offer of \"vax\"; accepted is one of [wax]");
    assertThatThrownBy(() -> book().addOffers(WAX_NEXT_YEAR).build().offer("wax"))
        .hasMessage(
            "no offer of \"wax\" holds on 2026-11-02; accepted is a day on which one of [supplier"
                + " A: 100 g at EUR 6.00 from 2027-01-01] does");
  }

  @Test
  void neverGuessesWhichOfSeveralOffersIsBought() {
    PriceBook book = book().addOffers(WAX, WAX_OF_B).build();
    assertThat(book.find("wax")).isEmpty();
    assertThat(book.offersOf("wax")).containsExactly(WAX, WAX_OF_B);
    assertThatThrownBy(() -> book.offer("wax"))
        .hasMessage(
            "2 offers of \"wax\" and none is chosen; accepted is a book narrowed to one of"
                + " [supplier A: 100 g at EUR 5.00, supplier B: 500 g at EUR 20.00]");
    assertThat(book.choosing(WAX).offer("wax")).isEqualTo(WAX);
    assertThat(book.choosing("wax", "supplier B").offer("wax")).isEqualTo(WAX_OF_B);
    assertThatThrownBy(() -> book.choosing("wax", "supplier C"))
        .hasMessage(
            "the choice for wax is supplier C; accepted is one of [supplier A: 100 g at EUR 5.00,"
                + " supplier B: 500 g at EUR 20.00]");
  }

  @Test
  void choosesAmongTheOffersOfTheItemOnly() {
    Offer oil = offer("oil", grams(100), "3").build();
    PriceBook book = book().addOffers(WAX, WAX_OF_B, oil).build();
    assertThat(book.choosing("wax", "supplier B").offers()).containsExactly(WAX_OF_B, oil);
    // The oil, which nobody has to choose, is no answer.
    assertThatThrownBy(() -> book.choosing("wax", "supplier C"))
        .hasMessage(
            "the choice for wax is supplier C; accepted is one of [supplier A: 100 g at EUR 5.00,"
                + " supplier B: 500 g at EUR 20.00]");
  }

  @Test
  void saysUntilWhenAnOfferHeld() {
    Offer past = offer("wax", grams(100), "5").validThrough(LocalDate.of(2026, 10, 31)).build();
    PriceBook book = book().addOffers(past).build();
    assertThatThrownBy(() -> book.offer("wax"))
        .hasMessage(
            "no offer of \"wax\" holds on 2026-11-02; accepted is a day on which one of [supplier"
                + " A: 100 g at EUR 5.00 through 2026-10-31] does");
    assertThat(PriceCheck.standard().book(book))
        .extracting(Finding::message)
        .contains(
            "the offer does not hold on 2026-11-02 and is left out: supplier A: 100 g at EUR 5.00,"
                + " through 2026-10-31");
  }

  /** A price is old after more than the days stated: none of them for a price of the day. */
  @Test
  void isNotOldOnTheLastDay() {
    PriceBook sameDay = book().addOffers(WAX).oldAfterDays(0).build();
    assertThat(PriceCheck.standard().offers(sameDay, sameDay.offers()))
        .extracting(finding -> finding.code().code())
        .doesNotContain("price-age");
    Offer week = Offer.builder().from(WAX).date(TODAY.minusDays(7)).build();
    PriceBook aged = book().addOffers(week).oldAfterDays(7).build();
    assertThat(PriceCheck.standard().offers(aged, aged.offers()))
        .extracting(finding -> finding.code().code())
        .doesNotContain("price-age");
    PriceBook older = book().addOffers(week).oldAfterDays(6).build();
    assertThat(PriceCheck.standard().offers(older, older.offers()))
        .extracting(finding -> finding.code().code())
        .contains("price-age");
  }

  /** By hand: 10 packs at 60, from the 5th at 50, from the 9th at 45. */
  @Test
  void pricesOrdersByTheirBreaks() {
    Offer.Builder spool =
        offer("filament", grams(500), "60")
            .addBreaks(PriceBreak.of(5, eur("50")), PriceBreak.of(9, eur("45")));
    Offer allUnits = spool.build();
    assertThat(allUnits.cost(4)).isEqualTo(eur("240.00"));
    assertThat(allUnits.cost(5)).isEqualTo(eur("250"));
    assertThat(allUnits.cost(10)).isEqualTo(eur("450"));
    Offer incremental = spool.breakRule(BreakRule.INCREMENTAL).build();
    assertThat(incremental.cost(4)).isEqualTo(eur("240.00"));
    assertThat(incremental.cost(10)).isEqualTo(eur("530.00")); // 4 x 60 + 4 x 50 + 2 x 45
    assertThat(incremental.cost(0)).isEqualTo(eur("0"));
    assertThat(allUnits.breakRule().words()).isEqualTo("on all packs");
    assertThat(incremental.breakRule().words()).isEqualTo("on the packs from there on");
  }

  @Test
  void ordersInStepsFromAMinimumUpToWhatThereIs() {
    Offer offer =
        offer("boat", ratio(1), "2").minimumOrder(10).orderIncrement(4).available(17L).build();
    assertThat(offer.orderOf(1)).isEqualTo(12);
    assertThat(offer.orderOf(13)).isEqualTo(16);
    assertThat(offer.cost(16)).isEqualTo(eur("32.00"));
    assertThatThrownBy(() -> offer.cost(8))
        .hasMessage("order of boat: it is of 8 packs; accepted is 10 or more in steps of 4");
    assertThatThrownBy(() -> offer.cost(20))
        .hasMessage("order of boat: it is of 20 packs; accepted is up to the 17 available");
  }

  @Test
  void shipsForNothingFromAValueOn() {
    ShippingTerms terms = shipping().freeFrom(eur("50")).build();
    assertThat(terms.chargeOn(eur("49.99"))).isEqualTo(eur("7"));
    assertThat(terms.chargeOn(eur("50.00"))).isEqualTo(eur("0"));
    assertThat(terms.text()).isEqualTo("shipping EUR 7, free from EUR 50");
    assertThat(shipping().build().text()).isEqualTo("shipping EUR 7");
    assertThatThrownBy(
            () ->
                shipping()
                    .supplier("")
                    .charge(eur("-7"))
                    .freeFrom(BigMoney.parse("USD 50"))
                    .taxRate(percent(-1))
                    .build())
        .hasMessageContaining("supplier is blank; accepted is any text")
        .hasMessageContaining("charge is EUR -7; accepted is zero or more")
        .hasMessageContaining("free from is USD 50; accepted is more than zero in EUR")
        .hasMessageContaining("tax rate is -1 %; accepted is zero or more");
  }

  /** By hand: 9.50 x 0.9231 = 8.76945. */
  @Test
  void convertsAtDatedSourcedRatesOnly() {
    ExchangeRate rate = rate("0.9231", TODAY.minusDays(200));
    ExchangeRates rates = ExchangeRates.of(List.of(rate));
    Offer foreign =
        Offer.builder()
            .from(WAX)
            .item("nozzle")
            .price(DOLLARS)
            .addBreaks(PriceBreak.of(2, BigMoney.parse("USD 9")))
            .build();
    List<Offer> converted = rates.convert(List.of(WAX, foreign), CurrencyUnit.EUR);
    assertThat(converted.get(0)).isEqualTo(WAX);
    assertThat(converted.get(1).price().isEqual(eur("8.76945"))).isTrue();
    assertThat(converted.get(1).breaks().get(0).price().isEqual(eur("8.3079"))).isTrue();
    assertThat(converted.get(1).convertedAt()).contains(rate);
    PriceBook book = book().addAllOffers(converted).addShipping(shipping().build()).build();
    assertThat(PriceCheck.standard().book(book))
        .extracting(Finding::message)
        .containsExactly(
            "the exchange rate is of 2026-04-16, 200 days before 2026-11-02: supplier A: 100 g at"
                + " EUR 8.769450");
    assertThatThrownBy(() -> rates.convert(book, CurrencyUnit.USD))
        .hasMessage(
            "exchange rates: there is no rate from EUR to USD; accepted is one of [USD to EUR]");
    PriceBook dollars =
        PriceBook.builder()
            .currency(CurrencyUnit.USD)
            .asOf(TODAY)
            .addOffers(foreign)
            .addShipping(
                ShippingTerms.builder()
                    .supplier("supplier A")
                    .charge(BigMoney.parse("USD 10"))
                    .freeFrom(BigMoney.parse("USD 100"))
                    .source(INVENTED)
                    .build())
            .build();
    PriceBook euros = rates.convert(dollars, CurrencyUnit.EUR);
    assertThat(euros.offer("nozzle")).isEqualTo(converted.get(1));
    assertThat(euros.shipping().get(0).charge().isEqual(eur("9.231"))).isTrue();
    assertThat(euros.shipping().get(0).freeFrom().orElseThrow().isEqual(eur("92.31"))).isTrue();
  }

  @Test
  void refusesToConvertWithoutARate() {
    ExchangeRates rates = ExchangeRates.of(List.of(rate("0.9", TODAY)));
    String missing =
        "exchange rates: there is no rate from EUR to USD; accepted is one of [USD to EUR]";
    assertThatThrownBy(() -> rates.convert(List.of(WAX), CurrencyUnit.USD)).hasMessage(missing);
    assertThatThrownBy(() -> rates.convertTerms(List.of(shipping().build()), CurrencyUnit.USD))
        .hasMessage(missing);
    // A book may be empty, and its currency still has to be converted.
    assertThatThrownBy(() -> rates.convert(book().build(), CurrencyUnit.USD)).hasMessage(missing);
  }

  @Test
  void refusesRatesThatContradict() {
    assertThatThrownBy(() -> ExchangeRates.of(List.of(rate("0.9", TODAY), rate("0.8", TODAY))))
        .hasMessage("exchange rates: the rate from USD to EUR is stated 2 times; accepted is once");
    assertThatThrownBy(
            () -> ExchangeRate.builder().from(rate("0", TODAY)).counter(CurrencyUnit.USD).build())
        .hasMessageContaining("rate is 0; accepted is more than zero");
    PriceBook tomorrow =
        PriceBook.builder()
            .currency(CurrencyUnit.USD)
            .asOf(TODAY)
            .addOffers(Offer.builder().from(WAX).price(DOLLARS).build())
            .build();
    assertThatThrownBy(
            () ->
                ExchangeRates.of(List.of(rate("0.9", TODAY.plusDays(1))))
                    .convert(tomorrow, CurrencyUnit.EUR))
        .hasMessageContaining(
            "the offer of wax is converted at 1 USD = 0.9 EUR on 2026-11-03; accepted is a day up to"
                + " 2026-11-02");
  }

  /** By hand: 5 / 1.19 = 4.2016806723, 4 x 1.19 = 4.76. */
  @Test
  void bringsPricesToOneTaxBasis() {
    Offer gross = Offer.builder().from(WAX).taxRate(percent(19)).build();
    Offer net = offer("oil", grams(1), "4").tax(Tax.EXCLUDED).taxRate(percent(19)).build();
    PriceBook book =
        book()
            .addOffers(gross, net)
            .addShipping(shipping().tax(Tax.EXCLUDED).taxRate(percent(19)).build())
            .build();
    assertThat(book.on(Tax.EXCLUDED).offer("wax").price().isEqual(eur("4.2016806723"))).isTrue();
    PriceBook included = book.on(Tax.INCLUDED);
    assertThat(included.offer("oil").price().isEqual(eur("4.76"))).isTrue();
    assertThat(included.offer("wax")).isEqualTo(gross);
    assertThat(included.shipping().get(0).charge().isEqual(eur("8.33"))).isTrue();
    PriceBook unclear =
        book().addOffers(WAX, Offer.builder().from(net).tax(Tax.UNKNOWN).build()).build();
    assertThatThrownBy(() -> unclear.on(Tax.EXCLUDED))
        .hasMessage(
            "price book with tax excluded: the offer of wax by supplier A is with tax included and"
                + " without rate; accepted is a rate; and the offer of oil by supplier A does not"
                + " say whether it holds the tax; accepted is included or excluded");
    // What stands on the basis already needs no rate; shipping that does not needs one as well.
    PriceBook rateless = book().addOffers(WAX).build();
    assertThat(rateless.on(Tax.INCLUDED).offers()).containsExactly(WAX);
    PriceBook sent =
        book().addOffers(WAX).addShipping(shipping().tax(Tax.EXCLUDED).build()).build();
    assertThatThrownBy(() -> sent.on(Tax.INCLUDED))
        .hasMessage(
            "price book with tax included: the shipping of supplier A is with tax excluded and"
                + " without rate; accepted is a rate");
    assertThatThrownBy(() -> book.on(Tax.UNKNOWN))
        .hasMessageContaining("basis is unknown; accepted is included or excluded");
  }

  @Test
  void tellsWhatDeservesAttention() {
    PriceBook book =
        book()
            .addOffers(
                Offer.builder().from(WAX).date(Optional.empty()).tax(Tax.UNKNOWN).build(),
                Offer.builder().from(WAX_OF_B).date(TODAY.minusDays(181)).build(),
                WAX_NEXT_YEAR)
            .addShipping(shipping().build())
            .build();
    assertThat(PriceCheck.standard().book(book))
        .extracting(finding -> finding.code().code() + ": " + finding.message())
        .containsExactly(
            "price-age: the price carries no date: supplier A: 100 g at EUR 5.00",
            "tax-basis: the price does not say whether it holds the tax: supplier A: 100 g at EUR"
                + " 5.00",
            "price-age: the price is of 2026-05-05, 181 days before 2026-11-02: supplier B: 500 g at"
                + " EUR 20.00",
            "offer-validity: the offer does not hold on 2026-11-02 and is left out: supplier A: 100"
                + " g at EUR 6.00, from 2027-01-01",
            "shipping-terms: what it asks for sending is not known and counts as nothing");
  }

  @Test
  void refusesABookThatContradictsItselfWithAllItsProblems() {
    Offer foreign = offer("nozzle", ratio(1), "9").price(DOLLARS).build();
    Offer tomorrow = offer("kiln", ratio(1), "3200").date(TODAY.plusDays(1)).build();
    assertThatThrownBy(
            () ->
                book()
                    .addOffers(WAX, foreign, tomorrow, WAX)
                    .addShipping(shipping().build(), shipping().charge(DOLLARS).build())
                    .oldAfterDays(-1)
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "price book: old after -1 days; accepted is zero or more; and the offer of nozzle is"
                + " USD 9.50; accepted is the book's currency EUR, into which exchange rates"
                + " convert; and the offer of kiln is dated 2026-11-03; accepted is a day up to"
                + " 2026-11-02; and wax by supplier A in 100 g is offered 2 times; accepted is one"
                + " offer of each pack; and the shipping of supplier A is USD 9.50; accepted is the"
                + " book's currency EUR, into which exchange rates convert; and the shipping of"
                + " supplier A is stated 2 times; accepted is once");
  }

  @Test
  void refusesAnOfferThatCannotBeBought() {
    assertThatThrownBy(() -> offer(" ", celsius(20), "-1").supplier("").build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("item is blank; accepted is any text")
        .hasMessageContaining("supplier is blank; accepted is any text")
        .hasMessageContaining(
            "content is 20 °C, which measures temperature; accepted is a mass, volume, length, area, energy,"
                + " time or number of pieces")
        .hasMessageContaining("price is EUR -1.00; accepted is zero or more");
    assertThatThrownBy(() -> offer("wax", grams(0), "5").build())
        .hasMessageContaining("content is 0 g; accepted is more than zero");
    assertThatThrownBy(() -> offer("nozzle", ratio(1.5), "5").build())
        .hasMessageContaining("content is 1.5 pieces; accepted is a whole number of pieces");
  }

  @Test
  void refusesOrderRulesThatContradictWithAllTheirProblems() {
    assertThatThrownBy(
            () ->
                offer("wax", grams(100), "5")
                    .metered(true)
                    .minimumOrder(0)
                    .orderIncrement(0)
                    .taxRate(percent(-1))
                    .shelfLife(days(0))
                    .validFrom(TODAY)
                    .validThrough(TODAY.minusDays(1))
                    .addBreaks(
                        PriceBreak.of(5, eur("6")), PriceBreak.of(5, BigMoney.parse("USD 1")))
                    .build())
        .hasMessageContaining("minimum order is 0 packs; accepted is 1 or more")
        .hasMessageContaining("order increment is 0 packs; accepted is 1 or more")
        .hasMessageContaining("it is sold by measure and has breaks")
        .hasMessageContaining("tax rate is -1 %; accepted is zero or more")
        .hasMessageContaining("shelf life is 0 d; accepted is more than zero")
        .hasMessageContaining(
            "it holds from 2026-11-02 through 2026-11-01; accepted is a last day not before the"
                + " first")
        .hasMessageContaining(
            "the price from 5 packs is EUR 6; accepted is up to EUR 5.00, the price before it")
        .hasMessageContaining(
            "a break from 5 packs follows one from 5; accepted is from few packs to many")
        .hasMessageContaining("the price from 5 packs is USD 1; accepted is up to EUR 6");
    assertThatThrownBy(() -> offer("wax", grams(100), "5").minimumOrder(10).available(9L).build())
        .hasMessageContaining(
            "available are 9 packs; accepted is the smallest order or more, which is 10 packs in"
                + " steps of 1");
    assertThatThrownBy(() -> offer("wax", grams(100), "5").available(0L).build())
        .hasMessageContaining(
            "available are 0 packs; accepted is the smallest order or more, which is 1 packs in"
                + " steps of 1");
    assertThatThrownBy(() -> PriceBreak.of(1, eur("-1")))
        .hasMessage(
            "price break: it is from 1 packs; accepted is 2 or more; and price is EUR -1; accepted"
                + " is zero or more");
  }

  private static ExchangeRate rate(String rate, LocalDate date) {
    return ExchangeRate.builder()
        .base(CurrencyUnit.USD)
        .counter(CurrencyUnit.EUR)
        .rate(new BigDecimal(rate))
        .date(date)
        .source(INVENTED)
        .build();
  }

  private static ShippingTerms.Builder shipping() {
    ShippingTerms.Builder terms = ShippingTerms.builder();
    terms.supplier("supplier A").charge(eur("7")).source(INVENTED);
    return terms;
  }

  private static PriceBook.Builder book() {
    return PriceBook.builder().currency(CurrencyUnit.EUR).asOf(TODAY);
  }
}
