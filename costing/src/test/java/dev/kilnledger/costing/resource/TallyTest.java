package dev.kilnledger.costing.resource;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;

/**
 * The arithmetic in longs that tells by a number below zero that a long does not hold the answer.
 */
class TallyTest {
  private static final BigInteger MOST = BigInteger.valueOf(Long.MAX_VALUE);

  @Test
  void isSmallUpToTheLargestLong() {
    assertThat(Tally.small(BigInteger.ONE)).isEqualTo(1);
    assertThat(Tally.small(MOST)).isEqualTo(Long.MAX_VALUE);
    assertThat(Tally.small(MOST.add(BigInteger.ONE))).isEqualTo(-1);
    assertThat(Tally.small(MOST.multiply(BigInteger.TEN))).isEqualTo(-1);
  }

  @Test
  void multipliesWhatALongHolds() {
    assertThat(Tally.times(3, 5)).isEqualTo(15);
    assertThat(Tally.times(0, 5)).isZero();
    assertThat(Tally.times(5, 0)).isZero();
    assertThat(Tally.times(1L << 31, 1L << 31)).isEqualTo(1L << 62);
    assertThat(Tally.times(1L << 32, 1L << 31)).isNegative(); // 2^63
    assertThat(Tally.times(1L << 40, 1L << 40)).isNegative();
    assertThat(Tally.times(-1, 0)).isNegative();
    assertThat(Tally.times(0, -1)).isNegative();
    assertThat(Tally.times(-1, -1)).isNegative();
  }

  @Test
  void addsWhatALongHolds() {
    assertThat(Tally.plus(3, 5)).isEqualTo(8);
    assertThat(Tally.plus(0, 5)).isEqualTo(5);
    assertThat(Tally.plus(5, 0)).isEqualTo(5);
    assertThat(Tally.plus(Long.MAX_VALUE, 1)).isNegative();
    assertThat(Tally.plus(-1, 9)).isNegative();
    assertThat(Tally.plus(9, -1)).isNegative();
  }

  @Test
  void roundsQuotientsUp() {
    assertThat(Tally.ceil(0, 5)).isZero();
    assertThat(Tally.ceil(1, 5)).isEqualTo(1);
    assertThat(Tally.ceil(10, 5)).isEqualTo(2);
    assertThat(Tally.ceil(11, 5)).isEqualTo(3);
    assertThat(Tally.ceil(Long.MAX_VALUE, 2)).isEqualTo(1L << 62);
    assertThat(Tally.ceil(-1, 5)).isNegative();
    assertThat(Tally.ceil(1, -1)).isNegative();
  }

  /** The quick count is the exact one wherever a long holds it, and below zero elsewhere. */
  @Test
  void isQuickWhereItCanBe() {
    BigInteger three = BigInteger.valueOf(3);
    Tally starts = Tally.goodParts().times(BigInteger.TEN, three, "n / 0.3").roundedUp();
    Tally together = starts.plus(Tally.goodParts().times(three, BigInteger.ONE, "3 n"));
    Tally tried = together.after(2, "trial parts");
    // ceil(10 n / 3) + 3 n + 2
    assertThat(tried.quick(1)).isEqualTo(9);
    assertThat(tried.quick(1_000)).isEqualTo(3_334 + 3_000 + 2);
    assertThat(tried.quick(Long.MAX_VALUE)).isNegative();
    assertThat(tried.through(1_000)).isEqualTo(6_336);
    assertThat(tried.through(Long.MAX_VALUE))
        .isEqualTo(
            MOST.multiply(BigInteger.TEN)
                .add(BigInteger.TWO)
                .divide(three)
                .add(MOST.multiply(three))
                .add(BigInteger.TWO));
    assertThat(tried.formula).isEqualTo("(trial parts + (ceil(n / 0.3) + 3 n))");
  }
}
