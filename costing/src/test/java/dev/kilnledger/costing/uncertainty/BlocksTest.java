package dev.kilnledger.costing.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BlocksTest {
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void handsBlocksOverInTheirOrder(int threads) {
    List<Integer> heard = new ArrayList<>();
    assertThat(new Blocks(threads).run(7, 9, (block, random) -> block, heard::add)).isFalse();
    assertThat(heard).containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8);
    List<Integer> three = new ArrayList<>();
    assertThat(
            new Blocks(threads)
                .run(
                    7,
                    9,
                    (block, random) -> block,
                    block -> {
                      three.add(block);
                      return block < 2;
                    }))
        .isFalse();
    assertThat(three).containsExactly(0, 1, 2);
    assertThat(Thread.currentThread().isInterrupted()).isFalse();
  }

  /** A single thread is the calling one; others do not keep a program from ending. */
  @Test
  void worksOnThreadsOfItsOwnOrOnNone() {
    Set<Thread> workers = ConcurrentHashMap.newKeySet();
    new Blocks(1).run(7, 3, (block, random) -> workers.add(Thread.currentThread()), any -> true);
    assertThat(workers).containsExactly(Thread.currentThread());
    workers.clear();
    new Blocks(2).run(7, 3, (block, random) -> workers.add(Thread.currentThread()), any -> true);
    assertThat(workers).isNotEmpty().doesNotContain(Thread.currentThread());
    assertThat(workers).allMatch(Thread::isDaemon);
  }

  /** Interrupted when four blocks are ready: they are handed over, as many of them as wanted. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void handsOverWhatIsReadyWhenInterrupted(int wanted) {
    CountDownLatch ready = new CountDownLatch(4);
    List<Integer> heard = new ArrayList<>();
    boolean interrupted =
        new Blocks(2)
            .run(
                7,
                100,
                (block, random) -> {
                  ready.countDown();
                  return block;
                },
                block -> {
                  heard.add(block);
                  if (block == 0) {
                    await(ready);
                    Thread.currentThread().interrupt();
                  }
                  return heard.size() < wanted;
                });
    assertThat(interrupted).isTrue();
    assertThat(Thread.interrupted()).isTrue();
    assertThat(heard).startsWith(0, 1).isSorted().hasSize(wanted);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void throwsWhatABlockThrows(int threads) {
    Blocks blocks = new Blocks(threads);
    assertThatThrownBy(
            () ->
                blocks.run(
                    7,
                    3,
                    (block, random) -> {
                      throw new ArithmeticException("no number");
                    },
                    any -> true))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("no number");
    assertThatThrownBy(
            () ->
                blocks.run(
                    7,
                    3,
                    (block, random) -> {
                      throw new StackOverflowError("too deep");
                    },
                    any -> true))
        .isInstanceOf(StackOverflowError.class)
        .hasMessage("too deep");
  }
}
