package dev.kilnledger.costing.fuzz;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Makes new inputs of well-formed ones: bits turned over, ranges cut, repeated and moved, pieces of
 * another input, words of the grammar, and numbers that lie at the edge of what numbers are.
 */
final class Mutator {
  private static final int LONGEST = 1 << 16;
  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-0",
          "-1",
          "1",
          "1e308",
          "-1e308",
          "1e309",
          "1e-320",
          "4.9e-324",
          "2147483647",
          "2147483648",
          "-2147483649",
          "9223372036854775807",
          "9223372036854775808",
          "1e9",
          "1e10",
          "0.1",
          "1.0000000000000002",
          "99999999999999999999999999",
          "NaN",
          "Infinity",
          "0x10",
          "+1",
          ".5",
          "5.",
          "1e",
          "1e+",
          "1_0",
          "1,5",
          "٣",
          "00001",
          "1e-9999",
          "1E99999");
  private static final int[] BYTES = {0, 1, 10, 13, 32, 34, 44, 92, 127, 128, 192, 254, 255};

  private final SplittableRandom random;
  private final List<byte[]> seeds;
  private final List<byte[]> words;

  Mutator(long seed, List<byte[]> seeds, List<String> words) {
    this.random = new SplittableRandom(seed);
    this.seeds = seeds;
    this.words = words.stream().map(word -> word.getBytes(StandardCharsets.UTF_8)).toList();
  }

  /** The next input: a seed with one other number in it, or changed in one to eight places. */
  byte[] next() {
    byte[] input = anySeed();
    if (random.nextInt(3) == 0) {
      return withOtherNumber(input, random.nextInt(input.length + 1));
    }
    for (int changes = 1 + random.nextInt(8); changes > 0; changes--) {
      input = changed(input);
    }
    return input.length <= LONGEST ? input : Arrays.copyOf(input, LONGEST);
  }

  private byte[] anySeed() {
    return seeds.get(random.nextInt(seeds.size())).clone();
  }

  private byte[] changed(byte[] input) {
    int from = random.nextInt(input.length + 1);
    int to = Math.min(input.length, from + 1 + random.nextInt(1 << (1 + random.nextInt(8))));
    return switch (random.nextInt(11)) {
      case 0 -> turned(input, from);
      case 1 -> put(input, from, (byte) BYTES[random.nextInt(BYTES.length)]);
      case 2 -> put(input, from, (byte) random.nextInt(256));
      case 3 -> spliced(input, from, to, new byte[0]);
      case 4 -> Arrays.copyOf(input, from);
      case 5 -> repeated(input, from, to);
      case 6 -> spliced(input, from, from, Arrays.copyOfRange(input, from, to));
      case 7 -> withPieceOf(anySeed(), input, from, to);
      case 8 -> spliced(input, from, random.nextBoolean() ? from : to, anyWord());
      case 9, 10 -> withOtherNumber(input, from);
      default -> input;
    };
  }

  private static byte[] put(byte[] input, int at, byte b) {
    if (at < input.length) {
      input[at] = b;
    }
    return input;
  }

  private byte[] turned(byte[] input, int at) {
    return at < input.length ? put(input, at, (byte) (input[at] ^ 1 << random.nextInt(8))) : input;
  }

  private byte[] repeated(byte[] input, int from, int to) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(input, 0, from);
    for (int times = 1 << random.nextInt(10); times > 0 && out.size() < LONGEST; times--) {
      out.write(input, from, to - from);
    }
    out.write(input, to, input.length - to);
    return out.toByteArray();
  }

  private byte[] withPieceOf(byte[] other, byte[] input, int from, int to) {
    int start = random.nextInt(other.length + 1);
    int end = Math.min(other.length, start + 1 + random.nextInt(256));
    return spliced(input, from, to, Arrays.copyOfRange(other, start, end));
  }

  private byte[] anyWord() {
    return words.isEmpty() ? new byte[0] : words.get(random.nextInt(words.size()));
  }

  /** Replaces the next number after a place. */
  private byte[] withOtherNumber(byte[] input, int from) {
    int start = from;
    while (start < input.length && !isOfNumber(input[start])) {
      start++;
    }
    int end = start;
    while (end < input.length && isOfNumber(input[end])) {
      end++;
    }
    String number =
        switch (random.nextInt(4)) {
          case 0 -> NUMBERS.get(random.nextInt(NUMBERS.size()));
          case 1 -> old(input, start, end) + "0".repeat(1 + random.nextInt(8));
          case 2 -> "0." + "0".repeat(random.nextInt(8)) + old(input, start, end).replace(".", "");
          default -> "" + random.nextInt(1000);
        };
    return spliced(input, start, end, number.getBytes(StandardCharsets.UTF_8));
  }

  private static String old(byte[] input, int start, int end) {
    return new String(input, start, end - start, StandardCharsets.UTF_8);
  }

  private static boolean isOfNumber(byte b) {
    return (b >= '0' && b <= '9') || b == '.';
  }

  private static byte[] spliced(byte[] input, int from, int to, byte[] piece) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(input, 0, from);
    out.writeBytes(piece);
    out.write(input, to, input.length - to);
    return out.toByteArray();
  }
}
