package dev.kilnledger.costing.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.units.Amounts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PriceListCsvTest {
  private static final PriceListCsv CSV = PriceListCsv.standard();
  private static final String HEADER =
      "item,supplier,referenceQuantity,price,priceCurrency,source.text,source.standing\n";

  private static List<String> problems(String text) {
    try {
      CSV.read(text);
      throw new AssertionError("was read");
    } catch (UnreadableInputException e) {
      return e.problems().stream().map(InputProblem::text).toList();
    }
  }

  /** The example of the documentation. */
  @Test
  void plainListIsRead() throws UnreadableInputException {
    List<Offer> offers =
        CSV.read(
            """
            item,supplier,referenceQuantity,price,priceCurrency,date,source.text,source.standing
            bronze filament,corner shop,500 g,80.00,EUR,2026-11-02,seen in the shop,user
            electricity,town works,1 kW.h,0.30,EUR,2026-11-02,the bill,user
            """);
    assertThat(offers).hasSize(2);
    assertThat(offers.get(0).content()).isEqualTo(Amounts.grams(500));
    assertThat(offers.get(0).price()).isEqualTo(BigMoney.parse("EUR 80.00"));
    assertThat(offers.get(1).source().text()).isEqualTo("the bill");
    assertThat(offers.get(1).tax()).isEqualTo(Tax.UNKNOWN);
  }

  @Test
  void isWrittenAsItReads() throws IOException {
    List<Offer> offers =
        List.of(Jobs.offer("bronze filament", Amounts.grams(500), "80.00").build());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    CSV.write(offers, bytes);
    assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo(CSV.text(offers));
    assertThat(CSV.read(bytes.toString(StandardCharsets.UTF_8))).isEqualTo(offers);
  }

  @Test
  void wireFormIsPinned() throws UnreadableInputException {
    List<Offer> offers =
        List.of(
            Jobs.offer("bronze, fine", Amounts.grams(500), "80.00")
                .tax(Tax.INCLUDED)
                .taxRate(Amounts.percent(20))
                .addBreaks(
                    PriceBreak.of(5, BigMoney.parse("EUR 74.00")),
                    PriceBreak.of(10, BigMoney.parse("EUR 69.995")))
                .minimumOrder(2)
                .available(40)
                .shelfLife(Amounts.days(365))
                .build(),
            Jobs.offer("=cmd()", Amounts.ratio(1), "40.00").supplier("the \"old\" shop").build());
    String text =
        "item,supplier,referenceQuantity,price,priceCurrency,valueAddedTaxIncluded,taxRate,metered,"
            + "eligibleQuantity.minValue,eligibleQuantity.maxValue,breaks,breakRule,date,shelfLife,"
            + "source.text,source.standing\r\n"
            + "\"bronze, fine\",corner shop,500 g,80.00,EUR,true,20 %,false,2,40,"
            + "5: 74.00; 10: 69.995,all-units,2026-11-02,365 d,invented for this test,user\r\n"
            + "'=cmd(),\"the \"\"old\"\" shop\",1,40.00,EUR,,,false,,,,,2026-11-02,,"
            + "invented for this test,user\r\n";
    assertThat(CSV.text(offers)).isEqualTo(text);
    assertThat(CSV.read(text)).isEqualTo(offers);
  }

  @Test
  void anyOffersAreReadBackInAnyLocale() throws UnreadableInputException {
    RandomOffers random = new RandomOffers(4180);
    List<Offer> offers = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      offers.add(random.next());
    }
    String text = CSV.text(offers);
    assertThat(CSV.read(text)).isEqualTo(offers);
    assertThat(CSV.text(CSV.read(text))).isEqualTo(text);
    Locale before = Locale.getDefault();
    try {
      for (String locale : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
        Locale.setDefault(Locale.forLanguageTag(locale));
        assertThat(CSV.text(offers)).isEqualTo(text);
        assertThat(CSV.read(text)).isEqualTo(offers);
      }
    } finally {
      Locale.setDefault(before);
    }
    assertThat(CSV.read(CSV.text(List.of()))).isEmpty();
  }

  /** Cells that begin like formulas are text, and are guarded where they are written. */
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@x", "'quoted", "'=1", "''", "\t=1", "\r=1"})
  void formulasAreText(String item) throws UnreadableInputException {
    Offer offer = Jobs.offer(item, Amounts.grams(1), "1.00").build();
    String text = CSV.text(List.of(offer));
    assertThat(text.lines().toList().get(1)).matches("(?s)\"?'.*");
    assertThat(CSV.read(text)).containsExactly(offer);
    // as somebody else may have written it
    assertThat(CSV.read(HEADER + "\"" + item + "\",s,1 g,1.00,EUR,t,user\n").get(0).item())
        .isEqualTo(item.equals("'=1") || item.equals("''") ? item.substring(1) : item);
  }

  @Test
  void everythingThatIsWrongIsToldAtOnceByLineAndColumn() {
    assertThat(
            problems(
                "item,supplier,referenceQuantity,price,priceCurrency,date,metered,breaks,"
                    + "eligibleQuantity.minValue,source.text,source.standing\n"
                    + "a,s,500,80.00,EUR,2026-11-02,yes,,,t,user\n"
                    + "b,s,five g,\"80,00\",Euro,02.11.2026,,5: 90.00,٣,t,hearsay\n"
                    + "c,s,1 kg,-1,EUR,,,5 70.00,,t,\n"
                    + "d,s,1 kg\n"
                    + ",s,1 parsec,=1+1,EUR,,,,1.5,t,user\n"))
        .contains(
            "line 2, column metered: \"yes\" stands there; accepted is true or false",
            "line 3, column referenceQuantity: \"five g\" stands there; accepted is a number and a"
                + " UCUM unit code of mass, volume, length, area, energy, time, ratio",
            "line 3, column price: \"80,00\" stands there; accepted is a decimal number as text, such"
                + " as \"12.50\"",
            "line 3, column priceCurrency: \"Euro\" stands there; accepted is an ISO 4217 code such"
                + " as \"EUR\"",
            "line 3, column date: \"02.11.2026\" stands there; accepted is a date such as"
                + " \"2026-11-25\"",
            "line 3, column eligibleQuantity.minValue: \"٣\" stands there; accepted is a whole"
                + " number",
            "line 3, column source.standing: \"hearsay\" stands there; accepted is one of published,"
                + " quoted, recomputed, common-practice, from-memory, user",
            "line 4, column breaks.0: the field price is missing; accepted is a decimal number as"
                + " text, such as \"12.50\"",
            "line 4, column source: the field standing is missing; accepted is one of published,"
                + " quoted, recomputed, common-practice, from-memory, user",
            "line 5: 3 fields stand there; accepted is 11 as in the header",
            "line 6: the field item is missing; accepted is text",
            "line 6, column price: \"=1+1\" stands there; accepted is a decimal number as text, such"
                + " as \"12.50\"",
            "line 6, column eligibleQuantity.minValue: 1.5 stands there; accepted is a whole number")
        .anyMatch(p -> p.startsWith("line 6, column referenceQuantity: \"1 parsec\" stands there"));
    assertThat(problems(HEADER + "a,s,500 g,-1,EUR,t,user\na,s,0 g,1,EUR,t,user\n"))
        .anyMatch(p -> p.startsWith("line 2: offer of a: price is EUR -1"))
        .anyMatch(p -> p.startsWith("line 3: offer of a: content is 0 g"));
  }

  @Test
  void headersAreHeldStrictly() {
    assertThat(problems("")).singleElement().asString().contains("there is no header");
    assertThat(problems("item;supplier;price\n"))
        .first()
        .asString()
        .startsWith("line 1, column 1: the column \"item;supplier;price\" is not known")
        .endsWith("with commas between them");
    assertThat(problems("i".repeat(60_000) + "\n"))
        .allSatisfy(problem -> assertThat(problem).hasSizeLessThan(1000));
    assertThat(problems(HEADER.replace("supplier", "item")))
        .containsExactly(
            "line 1, column 2: the column item stands twice; accepted is once",
            "line 1: the column supplier is missing; accepted is a header with it");
    assertThat(problems(HEADER.replace("price,", "Price,"))).hasSize(2);
  }

  @Test
  void bytesAreUtf8WithOrWithoutByteOrderMark() throws IOException {
    String row = "Bronzefäden,s,500 g,1,EUR,t,user\n";
    assertThat(CSV.read("\uFEFF" + HEADER + row).get(0).item()).isEqualTo("Bronzefäden");
    byte[] latin = (HEADER + row).getBytes(StandardCharsets.ISO_8859_1);
    assertThatThrownBy(() -> CSV.read(ByteSource.of(latin)))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessage("table: its bytes are no UTF-8; accepted is text in UTF-8");
  }

  @Test
  void listsWithoutEndAreRefused() {
    byte[] long_ =
        (HEADER + "a,s,1 g,1,EUR,t,user\n".repeat(1000)).getBytes(StandardCharsets.UTF_8);
    DocumentLimits small = DocumentLimits.builder().bytes(1000).textLength(20).build();
    assertThatThrownBy(() -> CSV.read(ByteSource.of(long_), small))
        .hasMessage("table: it is too large; accepted is up to 1000 bytes");
    assertThatThrownBy(
            () ->
                CSV.read(
                    ByteSource.of(("item\n" + "x".repeat(50)).getBytes(StandardCharsets.UTF_8)),
                    small))
        .hasMessageContaining("a field of 50 characters stands there; accepted is up to 20");
    assertThat(problems(HEADER + "x,\n".repeat(10_000))).hasSize(101);
  }
}
