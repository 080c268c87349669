package dev.kilnledger.core.document.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.reading.UnreadableInputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The examples of RFC 4180, section 2, and what it leaves no room for. */
class CsvTextTest {
  private static List<List<String>> read(String text) throws UnreadableInputException {
    Reading reading = new Reading();
    List<CsvText.Row> rows = CsvText.read(text, 1000, reading);
    reading.refuseIfAny();
    return rows.stream().map(CsvText.Row::fields).toList();
  }

  @Test
  void examplesOfTheStandardAreRead() throws UnreadableInputException {
    List<List<String>> twoLines =
        List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    assertThat(read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")).isEqualTo(twoLines);
    assertThat(read("aaa,bbb,ccc\r\nzzz,yyy,xxx")).isEqualTo(twoLines);
    assertThat(read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx")).isEqualTo(twoLines);
    assertThat(read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"))
        .isEqualTo(List.of(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx")));
    assertThat(read("\"aaa\",\"b\"\"bb\",\"ccc\""))
        .isEqualTo(List.of(List.of("aaa", "b\"bb", "ccc")));
    // spaces are part of a field
    assertThat(read(" a , b")).isEqualTo(List.of(List.of(" a ", " b")));
    assertThat(read("a,,\n,\"\",b\n"))
        .isEqualTo(List.of(List.of("a", "", ""), List.of("", "", "b")));
    assertThat(read("")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "a,b\"c|line 1, character 4: a quote stands inside a field without quotes",
        "\"a\"b,c|line 1, character 4: something follows the closing quote of \"a\"",
        "a,\"b|line 1, character 3: a quote is opened and never closed",
        "a,b\tc|line 1, character 4: a control character stands there",
      })
  void whatIsNoRecordIsTold(String text, String problem) {
    assertThatThrownBy(() -> read(text))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageStartingWith(problem);
  }

  @Test
  void linesEndWithALineFeedAndAtTheEndOfTheText() {
    assertThatThrownBy(() -> read("a\r"))
        .hasMessageStartingWith("line 1, character 2: a control character stands there");
    assertThatThrownBy(() -> read("\ta"))
        .hasMessageStartingWith("line 1, character 1: a control character stands there");
  }

  @Test
  void fieldsHaveALongestLength() {
    Reading reading = new Reading();
    assertThat(CsvText.read("12345,1\n123456,2\n1,\"never closed", 5, reading))
        .containsExactly(new CsvText.Row(1, List.of("12345", "1")));
    assertThatThrownBy(reading::refuseIfAny)
        .hasMessageContaining("line 2, character 7: a field of 6 characters stands there; accepted")
        .hasMessageContaining("up to 5 (RFC 4180)")
        .hasMessageContaining("line 3, character 3: a quote is opened and never closed");
  }

  @Test
  void longFieldsAreToldByTheirBeginning() {
    String twenty = "x".repeat(20);
    assertThatThrownBy(() -> read('"' + twenty + "\"y"))
        .hasMessageContaining("the closing quote of \"" + twenty + "\"");
    assertThatThrownBy(() -> read('"' + twenty + "x\"y"))
        .hasMessageContaining("the closing quote of \"" + twenty + "…\"");
  }

  /** RFC 4180 section 2: quotes where there are commas, quotes or line ends, and only there. */
  @Test
  void quotesStandWhereTheyAreNeeded() {
    StringBuilder out = new StringBuilder();
    CsvText.write(List.of("a b", "", "a,b", "a\"b", "a\nb", " a", "a ", "\t", "!é"), out);
    assertThat(out.toString())
        .isEqualTo("a b,,\"a,b\",\"a\"\"b\",\"a\nb\",\" a\",\"a \",\"\t\",!é\r\n");
  }

  @Test
  void readingGoesOnBehindAProblem() {
    Reading reading = new Reading();
    List<CsvText.Row> rows =
        CsvText.read("a\"b\r\n\"x\ny\",\"z\"\r\n\"q\"r\r\nlast,one\rtwo\r\n1,2\r\n", 1000, reading);
    assertThat(rows)
        .containsExactly(
            new CsvText.Row(2, List.of("x\ny", "z")), new CsvText.Row(6, List.of("1", "2")));
    assertThatThrownBy(reading::refuseIfAny)
        .hasMessageContaining("line 1, character 2: a quote stands inside")
        .hasMessageContaining("line 4, character 4: something follows")
        .hasMessageContaining("line 5, character 9: a control character");
  }

  @Test
  void fieldsOfAnyCharactersAreReadBack() throws UnreadableInputException {
    Random random = new Random(4180);
    String alphabet = "ab ,\"'\r\n\t;=é→\u0000";
    for (int i = 0; i < 2000; i++) {
      List<List<String>> rows = new ArrayList<>();
      StringBuilder text = new StringBuilder();
      for (int row = 0; row < 3; row++) {
        List<String> fields = new ArrayList<>(List.of("first"));
        for (int field = 0; field < 3; field++) {
          StringBuilder content = new StringBuilder();
          for (int n = random.nextInt(6); n > 0; n--) {
            content.append(alphabet.charAt(random.nextInt(alphabet.length())));
          }
          fields.add(content.toString());
        }
        rows.add(fields);
        CsvText.write(fields, text);
      }
      assertThat(read(text.toString())).isEqualTo(rows);
    }
  }
}
