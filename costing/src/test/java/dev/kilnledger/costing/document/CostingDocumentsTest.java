package dev.kilnledger.costing.document;

import static dev.kilnledger.costing.document.DocumentProof.problems;
import static dev.kilnledger.costing.document.DocumentProof.read;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.document.CoreDocuments;
import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.costing.offer.BreakRule;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.ExchangeRates;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CostingDocumentsTest {
  private static final Document<PriceBook> PRICE_BOOK = CostingDocuments.priceBook();
  private static final Document<Job> JOB = CostingDocuments.job(Jobs.STANDARD);
  private static final Document<AnswerFigures> ANSWER = CostingDocuments.answer();

  static List<Document<?>> documents() {
    return List.of(PRICE_BOOK, CostingDocuments.exchangeRates(), JOB, ANSWER);
  }

  private static ExchangeRate dollars() {
    return ExchangeRate.builder()
        .base(CurrencyUnit.USD)
        .counter(CurrencyUnit.EUR)
        .rate(new BigDecimal("0.92"))
        .date(LocalDate.of(2026, 11, 20))
        .source(Source.user("invented for this test"))
        .build();
  }

  @Test
  void whatIsNotStatedIsNotWritten() {
    assertThat(JOB.text(Jobs.plain())).doesNotContain("groups");
    assertThat(JOB.text(Jobs.everything())).contains("groups");
  }

  @Test
  void aSumIsInOneCurrency() {
    assertThatThrownBy(() -> Sum.of(BigMoney.parse("EUR 1.005"), Money.parse("USD 1.00")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("sum: it is EUR 1.005 and USD 1.00; accepted is one currency");
  }

  /** Several suppliers, packs, periods and currencies. */
  private static PriceBook book() {
    return PriceBook.builder()
        .currency(CurrencyUnit.EUR)
        .asOf(LocalDate.of(2026, 11, 25))
        .oldAfterDays(90)
        .addOffers(
            Jobs.offer("bronze filament", Amounts.grams(500), "80.00")
                .tax(Tax.INCLUDED)
                .taxRate(Amounts.percent(20))
                .addBreaks(
                    PriceBreak.of(5, BigMoney.parse("EUR 74.00")),
                    PriceBreak.of(10, BigMoney.parse("EUR 69.995")))
                .breakRule(BreakRule.INCREMENTAL)
                .minimumOrder(2)
                .orderIncrement(2)
                .available(40)
                .validFrom(LocalDate.of(2026, 11, 1))
                .validThrough(LocalDate.of(2026, 12, 31))
                .shelfLife(Amounts.days(365))
                .build(),
            Jobs.offer("bronze filament", Amounts.kilograms(1), "150.00")
                .supplier("works by the river")
                .tax(Tax.EXCLUDED)
                .build())
        .addAllOffers(
            ExchangeRates.of(List.of(dollars()))
                .convert(
                    List.of(
                        Offer.builder()
                            .from(Jobs.offer("kiln", Amounts.ratio(1), "1").build())
                            .price(BigMoney.parse("USD 1600.00"))
                            .build()),
                    CurrencyUnit.EUR))
        .addShipping(
            ShippingTerms.builder()
                .supplier("corner shop")
                .charge(BigMoney.parse("EUR 5.90"))
                .freeFrom(BigMoney.parse("EUR 100.00"))
                .tax(Tax.INCLUDED)
                .taxRate(Amounts.percent(20))
                .source(Source.user("the shop's terms"))
                .build())
        .build();
  }

  @Test
  void priceBooksStandWithAllTheirTerms() {
    DocumentProof.roundTrip(PRICE_BOOK, book());
    DocumentProof.roundTrip(CostingDocuments.exchangeRates(), ExchangeRates.of(List.of(dollars())));
  }

  @Test
  void anyOffersAreReadBack() {
    RandomOffers offers = new RandomOffers(20261125);
    for (int i = 0; i < 200; i++) {
      Offer offer = offers.next();
      PriceBook book =
          PriceBook.builder()
              .currency(offer.price().getCurrencyUnit())
              .asOf(LocalDate.of(2026, 11, 25))
              .addOffers(offer)
              .build();
      DocumentProof.readBack(PRICE_BOOK, book);
      assertThat(DocumentProof.violations(PRICE_BOOK, PRICE_BOOK.text(book))).isEmpty();
    }
  }

  /** 1600 x 0.92 = 1472 and 10 x 0.92 = 9.2; the price keeps its cents, 2 + 2 digits. */
  @Test
  void pricesOfOtherCurrenciesAreConvertedWhereTheBookIsRead() {
    String text =
        """
        {"document": "price-book", "schemaVersion": 1, "currency": "EUR", "asOf": "2026-11-25",
         "exchangeRates": [{"base": "USD", "counter": "EUR", "rate": "0.92", "date": "2026-11-20",
           "source": {"text": "the bank", "standing": "user"}}],
         "offers": [{"item": "kiln", "supplier": "s", "price": "1600.00", "priceCurrency": "USD",
           "referenceQuantity": {"value": 1, "unit": "1"},
           "source": {"text": "seen", "standing": "user"}}],
         "shipping": [{"supplier": "s", "charge": {"amount": "10", "currency": "USD"},
           "source": {"text": "seen", "standing": "user"}}]}
        """;
    PriceBook book = read(PRICE_BOOK, text);
    assertThat(book.offer("kiln").price()).isEqualTo(BigMoney.parse("EUR 1472.0000"));
    assertThat(book.offer("kiln").convertedAt()).isPresent();
    assertThat(book.shipping().get(0).charge()).isEqualTo(BigMoney.parse("EUR 9.20"));
    DocumentProof.roundTrip(PRICE_BOOK, book);
    assertThat(problems(PRICE_BOOK, text.replace("\"base\": \"USD\"", "\"base\": \"GBP\"")))
        .anyMatch(p -> p.contains("there is no rate from USD to EUR"));
  }

  @Test
  void datesThatAreNeededAndMoneyThatIsNoneAreTold() {
    assertThat(
            problems(
                PRICE_BOOK,
                """
                {"document": "price-book", "schemaVersion": 1, "currency": "euro",
                 "exchangeRates": [{"base": "USD", "counter": "XXZ", "rate": "0.92"}],
                 "offers": [
                   {"item": "a", "supplier": "s", "price": 12.5, "priceCurrency": "EUR",
                    "referenceQuantity": {"value": 1, "unit": "K"},
                    "source": {"text": "t", "standing": "user"}},
                   {"item": "b", "supplier": "s", "price": "12,50", "priceCurrency": "EUR",
                    "referenceQuantity": {"value": 1, "unit": "kg"}, "date": "2026-02-30",
                    "source": {"text": "t", "standing": "user"}},
                   {"item": "c", "supplier": "s", "price": "1e3", "priceCurrency": "EUR",
                    "referenceQuantity": {"value": 1, "unit": "kg"},
                    "source": {"text": "t", "standing": "user"}}]}
                """))
        .contains(
            "line 1, column 1, /: the field asOf is missing; accepted is a date such as"
                + " \"2026-11-25\"",
            "line 1, column 60, /currency: \"euro\" stands there; accepted is an ISO 4217 code such"
                + " as \"EUR\"",
            "line 2, column 20, /exchangeRates/0: the field date is missing; accepted is a date such"
                + " as \"2026-11-25\"",
            "line 4, column 44, /offers/0/price: 12.5 stands there; accepted is a decimal number as"
                + " text, such as \"12.50\"",
            "line 7, column 44, /offers/1/price: \"12,50\" stands there; accepted is a decimal"
                + " number as text, such as \"12.50\"",
            "line 8, column 62, /offers/1/date: \"2026-02-30\" stands there; accepted is a date such"
                + " as \"2026-11-25\"")
        .anyMatch(p -> p.contains("/exchangeRates/0/counter: \"XXZ\" stands there"))
        .anyMatch(p -> p.contains("/offers/0/referenceQuantity: \"1 K\" stands there"))
        .anyMatch(p -> p.contains("/offers/2/price: \"1e3\" stands there"));
  }

  @Test
  void jobsStandWithFewInputsOrWithAll() {
    DocumentProof.roundTrip(JOB, Jobs.plain());
    DocumentProof.roundTrip(JOB, Jobs.everything());
    DocumentProof.roundTrip(CostingDocuments.job(MaterialLibrary.empty()), Jobs.everything());
  }

  @Test
  void answersAreReadBackAsTheirFigures() {
    for (Job job : List.of(Jobs.plain(), Jobs.everything())) {
      AnswerFigures figures = AnswerFigures.of(WholeJob.standard().answer(job));
      DocumentProof.roundTrip(ANSWER, figures);
      assertThat(figures.statement().firstPart().lines()).isNotEmpty();
      assertThat(figures.statement().caveats()).isNotEmpty();
      assertThat(figures.cautions()).isNotEmpty();
    }
  }

  /**
   * So that no attribute can be left out of a form without a test that fails. The shares of a
   * feedstock are computed of those stated.
   */
  @Test
  void samplesStateEverythingThatCanBe() {
    assertThat(
            Attributes.unstated(
                Jobs.everything(), Jobs.plain(), book(), MaterialLibrary.standard()))
        // other names of fractions that are stated; reflection does not always take them for such
        .isSubsetOf(
            "Feedstock.binderMassFraction",
            "Feedstock.metalMassFraction",
            "Feedstock.solidsLoading");
  }

  @Test
  void documentsOfTheFirstVersionAreReadForGood() {
    assertThat(DocumentProof.pinned(PRICE_BOOK, "v1/price-book.json")).isEqualTo(book());
    assertThat(DocumentProof.pinned(CostingDocuments.exchangeRates(), "v1/exchange-rates.json"))
        .isEqualTo(ExchangeRates.of(List.of(dollars())));
    assertThat(DocumentProof.pinned(JOB, "v1/job.json")).isEqualTo(Jobs.everything());
    assertThat(DocumentProof.pinned(ANSWER, "v1/answer.json").statement().parts()).isEqualTo(100);
  }

  @ParameterizedTest
  @MethodSource("documents")
  void schemasInTheJarAreThoseOfTheForms(Document<?> document) throws IOException {
    DocumentProof.shipped(document);
  }

  /** Whatever is struck out or doubled is either read or told, and never ends in an exception. */
  @Tag("sampled")
  @Test
  void jobsWithLinesStruckOutAreReadOrRefused() {
    List<String> lines = JOB.text(Jobs.everything()).lines().toList();
    int refused = 0;
    for (int i = 0; i < lines.size(); i++) {
      List<String> rest = new ArrayList<>(lines);
      if (i % 2 == 0) {
        rest.remove(i);
      } else {
        rest.add(i, rest.get(i));
      }
      try {
        JOB.read(String.join("\n", rest));
      } catch (UnreadableInputException e) {
        assertThat(e.problems()).isNotEmpty().allMatch(p -> !p.accepted().isBlank());
        refused++;
      }
    }
    assertThat(refused).isGreaterThan(lines.size() / 2);
  }

  @Test
  void problemsAreADocumentToo() {
    List<InputProblem> problems =
        List.of(
            InputProblem.of("line 1, column 2, /a", "/a", "5 stands there", "text"),
            InputProblem.of("job", "it is none", "one"));
    DocumentProof.roundTrip(CoreDocuments.problems(), problems);
  }
}
