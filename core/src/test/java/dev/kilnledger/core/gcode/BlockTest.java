package dev.kilnledger.core.gcode;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How a line is taken apart: NIST RS274/NGC section 3.3, and the custom of extruding machines. */
class BlockTest {
  private final Block block = new Block();

  private Block parsed(String line) {
    return parsed(line, "");
  }

  /** The line with its end mark in a buffer that goes on after it. */
  private Block parsed(String line, String after) {
    byte[] bytes = (line + "\n" + after).getBytes(StandardCharsets.ISO_8859_1);
    block.parse(bytes, 0);
    return block;
  }

  private List<Object> all(String line, String after) {
    parsed(line, after);
    List<Object> told = new ArrayList<>();
    for (int i = 0; i < block.codeCount(); i++) {
      told.add(Block.codeName(block.code(i)));
    }
    for (char letter = 'A'; letter <= 'Z'; letter++) {
      if (block.has(letter)) {
        told.add(letter + "=" + block.value(letter));
      }
    }
    told.add(block.comments());
    told.add(String.valueOf(block.passedOver()));
    told.add(String.valueOf(block.problem()));
    return told;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "G1",
        "G1 X",
        "G1 X-",
        "G1 X1",
        "G1 X1.",
        "G1 X1 ",
        "G28 X",
        "N4",
        "START",
        "(a",
        "(a)",
        "G1*",
        "N3 G1 X5 E1*92",
        "N3 G1 X5 E1*92 ",
        "M117 a",
        "G1 X+",
        "/",
        "%"
      })
  void readsNothingBeyondItsLine(String line) {
    List<Object> alone = all(line, "");
    for (String after :
        List.of("5", ".5", "-5", "+5", " 5", "\t7", ";", ")", "*1", "%", "/", "_x")) {
      assertThat(all(line, after)).as("followed by %s", after).isEqualTo(alone);
    }
  }

  @Test
  void takesALineApart() {
    assertThat(all("\t g1 x 1.5Y-.25 z+3 (up) f12 00 ; done", ""))
        .containsExactly("G1", "F=1200.0", "X=1.5", "Y=-0.25", "Z=3.0", 2L, "null", "null");
    assertThat(all("G 92.1 A7 \t", "")).containsExactly("G92.1", "A=7.0", 0L, "null", "null");
    assertThat(all("G0 X1 \t 2 Y3", ""))
        .containsExactly("G0", "X=12.0", "Y=3.0", 0L, "null", "null");
  }

  /** RS274/NGC 3.3: white space inside a number says nothing, wherever in the buffer it stands. */
  @ParameterizedTest
  @CsvSource({"X1 5,15", "X1 .5,1.5", "X1. 5,1.5", "X-1 2 .5,-12.5", "X12 Y3,12", "X1.5 \tY3,1.5"})
  void whiteSpaceMayStandInsideANumber(String line, double value) {
    for (String after : List.of("", "G1 X12.5 Y77.25")) {
      assertThat(parsed(line, after).problem()).isNull();
      assertThat(block.value('X')).isEqualTo(value);
      // a second point is none
      assertThat(parsed("X1.5 .5", after).problem()).startsWith("no word begins with '.'");
    }
  }

  /** The nearest double, as the Java language specification, 3.10.2, has it of a literal. */
  @Test
  void readsEachNumberAsTheNearestDouble() {
    Random random = new Random(5);
    List<String> numbers = new ArrayList<>();
    for (int last = 0; last < 10; last++) {
      numbers.add("0.900719925474099" + last); // about 2^53
      numbers.add("9.00719925474099" + last + "3");
    }
    for (int i = 0; i < 2000; i++) {
      StringBuilder digits = new StringBuilder("0.");
      int count = 1 + random.nextInt(30);
      for (int digit = 0; digit < count; digit++) {
        digits.append((char) ('0' + random.nextInt(10)));
      }
      numbers.add(digits.toString());
    }
    numbers.add("0.0000000000000000000001"); // 22 decimals
    numbers.add("0.00000000000000000000001");
    for (String number : numbers) {
      assertThat(parsed("X" + number).value('X')).isEqualTo(Double.parseDouble(number));
      assertThat(parsed("X-" + number).value('X')).isEqualTo(-Double.parseDouble(number));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "  /G1 X9 | an optional block",
        "G1 X1..5 | no word begins with '.'",
        "G1 [ | no word begins with '['",
        "G1 {3 | no word begins with '{'",
        "G1 @3 | no word begins with '@'",
        "G1 ~ | no word begins with '~'",
        "G1 \u007f | no word begins with '?'",
        "G1 \u00e4 | no word begins with '?'",
        "G-1 | there is no G of that number; accepted is 0 to 4999",
        "M-1 | there is no M of that number; accepted is 0 to 4999",
        "G5000 | there is no G of that number; accepted is 0 to 4999",
        "M5000 | there is no M of that number; accepted is 0 to 4999",
        "G1 N7 X | no number after X; accepted is a decimal number",
        "G1 X5 Y | no number after Y; accepted is a decimal number",
        "G1 X1 X2 | X stands twice; accepted is once in a line",
        "G1 X1000000000001 | X is larger than any machine; accepted is up to 1e12",
        "G1 X-1000000000001 | X is larger than any machine; accepted is up to 1e12",
        "G0G0G0G0G0G0G0G0G0G0G0G0G0G0G0G0G0 | more than 16 codes in one line",
        "G1*118 X5 | something after the checksum; accepted is nothing, or a comment",
      })
  void saysWhyALineIsNotUnderstood(String line, String why) {
    // 'G' is 0x47 and '1' is 0x31, whose exclusive or is 0x76.
    assertThat(parsed(line).problem()).startsWith(why);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "%",
        "  % tape",
        "G4999",
        "X1000000000000",
        "G0G0G0G0G0G0G0G0G0G0G0G0G0G0G0G0",
        "G0 A1 Z1"
      })
  void understandsWhatIsJustStillAccepted(String line) {
    assertThat(parsed(line).problem()).isNull();
    assertThat(parsed(line).passedOver()).isNull();
  }

  @Test
  void takesLettersAloneAfterHomingAndCodesThatAreNotKnown() {
    assertThat(all("G28 X Y", "")).containsExactly("G28", "X=0.0", "Y=0.0", 0L, "null", "null");
    assertThat(all("G29 X Y", "")).containsExactly("G29", "X=0.0", "Y=0.0", 0L, "null", "null");
    assertThat(parsed("F5 X").problem()).startsWith("no number after X");
  }

  @Test
  void passesOverWhatIsNamedByItsFirstWord() {
    assertThat(parsed("N3 M117 hello").passedOver()).isEqualTo("M117");
    assertThat(parsed("M104.5 S200").passedOver()).isEqualTo("M104.5");
    assertThat(parsed("N3 START_PRINT").passedOver()).isEqualTo("START_PRINT");
    assertThat(parsed("az_AZ09.5").passedOver()).isEqualTo("az_AZ09");
    for (String end : List.of("{", "[", "`", "@", ":", "/", "^")) {
      assertThat(parsed("AZaz" + end + "x").passedOver()).isEqualTo("AZaz");
    }
    assertThat(parsed("A".repeat(32) + "B").passedOver()).isEqualTo("A".repeat(32));
  }

  @Test
  void countsACommentAfterTheChecksum() {
    assertThat(parsed("G1*118 ; done").problem()).isNull();
    assertThat(block.comments()).isEqualTo(1);
    assertThat(parsed("G1* 118").problem()).isNull();
    assertThat(parsed("G1*117").problem()).isEqualTo("the checksum does not fit; accepted is 118");
  }

  @Test
  void namesCodesAsTheyAreWritten() {
    assertThat(Block.codeName(921)).isEqualTo("G92.1");
    assertThat(Block.codeName(Block.M)).isEqualTo("M0");
    assertThat(Block.codeName(Block.M - 1)).isEqualTo("G9999.9");
  }

  /** The same near the end of a buffer as far from it, and as the library of Java reads it. */
  @Test
  void readsNumbersOfAnyLength() {
    Random random = new Random(7);
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder(random.nextInt(4) == 0 ? "-" : "");
      int wholes = random.nextInt(11);
      digits(text, wholes, random);
      if (wholes == 0 || random.nextBoolean()) {
        text.append('.');
        digits(text, wholes == 0 ? 1 + random.nextInt(10) : random.nextInt(11), random);
      }
      double expected = Double.parseDouble(text.toString());
      for (String after : List.of("", "12345678.12345678", "\u00b1\u00b9\u00ff:/...........")) {
        for (String word : List.of(text.toString(), text + " ", text + "Y1", text + ";")) {
          assertThat(parsed("X" + word, after).problem()).as(word).isNull();
          assertThat(block.value('X')).as(word).isEqualTo(expected);
        }
      }
    }
  }

  private static void digits(StringBuilder text, int count, Random random) {
    for (int i = 0; i < count; i++) {
      text.append((char) ('0' + random.nextInt(10)));
    }
  }

  @ParameterizedTest
  @ValueSource(chars = {'/', ':', '\u00b0', '\u00b9', '\u00ba', '\u00ff', '\u0080'})
  void takesNoOtherByteForADigit(char other) {
    String after = "1234567890123456";
    assertThat(parsed("X1" + other + "2", after).problem()).startsWith("no word begins with");
    assertThat(parsed("G1 X" + other, after).problem()).startsWith("no number after X");
    assertThat(parsed("G1 X1." + other, after).problem()).startsWith("no word begins with");
  }
}
