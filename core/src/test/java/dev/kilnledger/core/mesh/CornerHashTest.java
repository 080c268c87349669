package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CornerHashTest {
  /**
   * Were they drawn by chance from 2^64, that any two of a million are the same would have a chance
   * of n2 / 2 / 2^64 = 3e-8 (the birthday problem).
   */
  @Test
  void millionCornersOfAPlaneHaveAsManyNumbers() {
    long[] first = new long[1_000_000];
    long[] second = new long[first.length];
    for (int i = 0; i < first.length; i++) {
      int row = i / 1000;
      int column = i % 1000;
      first[i] = CornerHash.of(row * 0.5, column * 0.5, 0);
      second[i] = CornerHash.second(first[i]);
    }
    assertThat(different(first)).isEqualTo(1_000_000);
    assertThat(different(second)).isEqualTo(1_000_000);
  }

  private static long different(long[] numbers) {
    long[] sorted = numbers.clone();
    Arrays.sort(sorted);
    return 1 + IntStream.range(1, sorted.length).filter(i -> sorted[i] != sorted[i - 1]).count();
  }

  @Test
  void oneZeroOrTheOtherIsTheSameCorner() {
    assertThat(CornerHash.of(-0.0, 0.0, -0.0)).isEqualTo(CornerHash.of(0.0, -0.0, 0.0));
  }

  @Test
  void coordinatesInAnotherOrderAreAnotherCorner() {
    long[] orders = {
      CornerHash.of(1, 2, 3),
      CornerHash.of(1, 3, 2),
      CornerHash.of(2, 1, 3),
      CornerHash.of(2, 3, 1),
      CornerHash.of(3, 1, 2),
      CornerHash.of(3, 2, 1)
    };
    assertThat(different(orders)).isEqualTo(6);
  }
}
