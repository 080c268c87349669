package dev.kilnledger.thermal.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.progress.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BlocksTest {
  private static final List<Integer> IN_ORDER = IntStream.range(0, Blocks.COUNT).boxed().toList();

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8})
  void runsAllInTheirOrder(int threads) {
    List<Double> heard = new ArrayList<>();
    assertThat(Blocks.run(1, threads, (block, random) -> block, heard::add)).isEqualTo(IN_ORDER);
    assertThat(heard).hasSize(Blocks.COUNT).isSorted().endsWith(1.0).startsWith(1.0 / 64, 2.0 / 64);
  }

  @Test
  void givesEachBlockAStreamOfItsOwn() {
    List<Long> alone = Blocks.run(5, 1, (block, random) -> random.nextLong(), Progress.unheard());
    assertThat(alone).doesNotHaveDuplicates();
    assertThat(Blocks.run(5, 4, (block, random) -> random.nextLong(), Progress.unheard()))
        .isEqualTo(alone);
    assertThat(Blocks.run(6, 1, (block, random) -> random.nextLong(), Progress.unheard()))
        .doesNotContainAnyElementsOf(alone);
    // one more, for what is checked beside the blocks
    assertThat(Blocks.streams(5)).hasSize(Blocks.COUNT + 1);
    assertThat(alone).doesNotContain(Blocks.streams(5).get(Blocks.COUNT).nextLong());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void tellsTheCallerWhatWentWrong(int threads) {
    assertThatThrownBy(
            () ->
                Blocks.run(
                    1,
                    threads,
                    (block, random) -> {
                      throw new ArithmeticException("block " + block / Blocks.COUNT);
                    },
                    Progress.unheard()))
        .isExactlyInstanceOf(ArithmeticException.class)
        .hasMessage("block 0");
    assertThatThrownBy(
            () ->
                Blocks.run(
                    1,
                    threads,
                    (block, random) -> {
                      throw new StackOverflowError("too deep");
                    },
                    Progress.unheard()))
        .isExactlyInstanceOf(StackOverflowError.class);
  }

  @Test
  void endsEarlyWhereInterrupted() {
    List<Integer> done =
        Blocks.run(
            1,
            1,
            (block, random) -> block,
            share -> {
              if (share == 8.0 / Blocks.COUNT) {
                Thread.currentThread().interrupt();
              }
            });
    assertThat(Thread.interrupted()).as("the thread stays interrupted").isTrue();
    assertThat(done).isEqualTo(IN_ORDER.subList(0, 8));
  }

  /** Two blocks are under way when it is interrupted: they end early, and count. */
  @Test
  void keepsWhatIsUnderWayWhereInterrupted() {
    CountDownLatch underWay = new CountDownLatch(2);
    List<Integer> done =
        Blocks.run(
            1,
            2,
            (block, random) -> {
              if (block > 8) { // does not end by itself
                underWay.countDown();
                while (!Thread.currentThread().isInterrupted()) {
                  Thread.onSpinWait();
                }
              }
              return block;
            },
            share -> {
              if (share == 8.0 / Blocks.COUNT) {
                await(underWay);
                Thread.currentThread().interrupt();
              }
            });
    assertThat(Thread.interrupted()).as("the thread stays interrupted").isTrue();
    assertThat(done).isEqualTo(IN_ORDER.subList(0, 11));
  }

  private static void await(CountDownLatch latch) {
    try {
      assertThat(latch.await(1, TimeUnit.MINUTES)).isTrue();
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  /** Ten draws in 64 blocks are none or one in each, a million 15,625. */
  @ParameterizedTest
  @ValueSource(ints = {1, 10, 64, 100, 10_000, 1_000_000, Integer.MAX_VALUE})
  void sharesTheDrawsOutEvenly(int draws) {
    long sum = 0;
    for (int block = 0; block < Blocks.COUNT; block++) {
      int size = DrawnBlock.size(block, draws);
      assertThat(size).isBetween(draws / 64, draws / 64 + 1);
      sum += size;
    }
    assertThat(sum).isEqualTo(draws);
  }
}
