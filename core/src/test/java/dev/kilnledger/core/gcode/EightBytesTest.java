package dev.kilnledger.core.gcode;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Eight bytes at once, each held against one byte at a time. */
class EightBytesTest {
  private static long eight(String text) {
    return EightBytes.at(text.getBytes(StandardCharsets.ISO_8859_1), 0);
  }

  @Test
  void marksEachByteThatIsNoDigitAndNoOther() {
    for (int b = 0; b < 256; b++) {
      boolean digit = b >= '0' && b <= '9';
      for (int place = 0; place < 8; place++) {
        String text = "0".repeat(place) + (char) b + "9".repeat(7 - place);
        // the first byte lies lowest, and a mark is its top bit
        assertThat(EightBytes.others(eight(text)))
            .as("byte %d at %d", b, place)
            .isEqualTo(digit ? 0 : 0x80L << (8 * place));
      }
    }
    assertThat(EightBytes.others(eight("1.25 Y-3"))).isEqualTo(0x00_80_80_80_00_00_80_00L);
  }

  @Test
  void numbersTheFirstMark() {
    assertThat(EightBytes.first(EightBytes.others(eight("1234.678")))).isEqualTo(4);
    assertThat(EightBytes.first(EightBytes.others(eight("1.3.5.7.")))).isEqualTo(1);
    assertThat(EightBytes.first(0)).isEqualTo(8);
  }

  @Test
  void readsTheDigitsThatTheyBeginWith() {
    String digits = "9081726";
    for (int count = 1; count <= 7; count++) {
      String text = digits.substring(0, count) + "X".repeat(8 - count);
      assertThat(EightBytes.number(eight(text), count))
          .isEqualTo(Long.parseLong(digits.substring(0, count)));
    }
    assertThat(EightBytes.number(EightBytes.without(eight("12.345Y6"), 2), 5)).isEqualTo(12_345);
  }

  @Test
  void findsTheEndOfALineWhereverItStands() {
    for (String end : new String[] {"\n", "\r"}) {
      for (int length = 0; length < 30; length++) {
        for (int after = 0; after < 12; after++) {
          String text = "\u000b".repeat(length) + end + "\n".repeat(after);
          byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
          for (int from = 0; from <= length; from++) {
            assertThat(EightBytes.lineEnd(bytes, from)).isEqualTo(length);
          }
        }
      }
    }
  }
}
