package dev.kilnledger.examples.sheet;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.METRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.joda.money.CurrencyUnit.EUR;
import static org.joda.money.CurrencyUnit.USD;

import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetTest {
  private static final List<Amount<Length>> LENGTHS = List.of(millimetres(5), metres(1234.5));

  @Test
  void numbersStandAtTheRightBelowTheirUnit() {
    Sheet<Amount<Length>> sheet =
        Sheet.of("lengths", LENGTHS)
            .text("as given", length -> length)
            .amount("length", METRE, 3, length -> length);
    assertThat(sheet)
        .hasToString(
            """
            lengths
              as given    length
                               m
              5 mm         0.005
              1234.5 m  1234.500
            """);
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG"})
  void separatedValuesAreTheSameInEveryLocale(String tag) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      Sheet<Amount<Length>> sheet =
          Sheet.of("lengths", LENGTHS)
              .count("no.", length -> LENGTHS.indexOf(length) + 1)
              .amount("length", METRE, 1, length -> length)
              .amountIfAny(
                  "kiln", CELSIUS, 0, l -> Optional.of(l).filter(this::small).map(this::hot))
              .money("price", EUR, length -> BigMoney.of(EUR, new BigDecimal("0.3333")));
      assertThat(CsvText.of(sheet).split("\r\n", -1))
          .containsExactly(
              "no.,length (m),kiln (Cel),price (EUR)",
              "1,0.005,820,0.3333",
              "2,1234.5,,0.3333",
              "");
    } finally {
      Locale.setDefault(before);
    }
  }

  private boolean small(Amount<Length> length) {
    return length.isLessThan(metres(1));
  }

  private Amount<Temperature> hot(Amount<Length> length) {
    return celsius(815 + length.in(METRE) * 1000);
  }

  /** RFC 4180, section 2, rules 5 to 7, and what a spreadsheet takes for a formula. */
  @Test
  void textIsQuotedWhereItHasToBe() {
    assertThat(CsvText.text("plain")).isEqualTo("plain");
    assertThat(CsvText.text("b\"bb")).isEqualTo("\"b\"\"bb\"");
    assertThat(CsvText.text("b\r\nbb")).isEqualTo("\"b\r\nbb\"");
    assertThat(CsvText.text("a,b")).isEqualTo("\"a,b\"");
    assertThat(CsvText.text("=1+1")).isEqualTo("\"'=1+1\"");
    assertThat(List.of("+1", "-1", "@a", "\ta"))
        .allSatisfy(text -> assertThat(CsvText.text(text)).isEqualTo("\"'" + text + "\""));
    assertThat(CsvText.of(Sheet.of("", List.of(-5)).count("n", n -> n))).isEqualTo("n\r\n-5\r\n");
  }

  @Test
  void wideSheetsAreBrokenIntoLinesAndThenIntoBlocks() {
    Sheet<String> texts = Sheet.of("long", List.of("so it goes ".repeat(30).strip()));
    for (int column = 1; column <= 9; column++) {
      texts = texts.text("column " + column, text -> text);
    }
    String table = texts.toString();
    assertThat(table.lines()).allMatch(line -> line.length() <= 100);
    assertThat(table).contains("column 9").contains("\n\n  column 1 ");
    String facts =
        Facts.sheet("steel", Facts.of(MaterialLibrary.standard().alloys().get(3))).toString();
    assertThat(facts.lines()).allMatch(line -> line.length() <= 100);
    assertThat(facts).doesNotContain("\n\n");
  }

  @Test
  void moneyOfAnotherCurrencyIsRefused() {
    Sheet<BigMoney> sheet =
        Sheet.of("prices", List.of(BigMoney.of(USD, 3))).money("price", EUR, money -> money);
    assertThatThrownBy(sheet::toString)
        .hasMessage("column \"price\": USD 3; accepted is money in EUR");
  }
}
