package dev.kilnledger.costing.uncertainty;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.apache.commons.rng.JumpableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Blocks of trials, each on a sub-stream of its own of one generator, and handed over in their
 * order: what comes out depends on the seed alone, and not on how many threads have worked on it.
 */
final class Blocks {
  private final int threads;

  Blocks(int threads) {
    this.threads = threads;
  }

  /** One block; it looks from time to time whether its thread was interrupted, and then ends. */
  interface Task<T> {
    T run(int block, UniformRandomProvider random);
  }

  /**
   * Runs blocks until there is no more, one is not accepted, or this thread is interrupted; what
   * was computed until then is handed over all the same.
   *
   * @return whether it was interrupted
   */
  <T> boolean run(long seed, int blocks, Task<T> task, Predicate<T> goesOn) {
    JumpableUniformRandomProvider source =
        (JumpableUniformRandomProvider) RandomSource.XO_SHI_RO_256_PP.create(seed);
    return threads == 1 ? here(source, blocks, task, goesOn) : inPool(source, blocks, task, goesOn);
  }

  private static <T> boolean here(
      JumpableUniformRandomProvider source, int blocks, Task<T> task, Predicate<T> goesOn) {
    for (int block = 0; block < blocks; block++) {
      boolean more = goesOn.test(task.run(block, source.jump()));
      if (Thread.currentThread().isInterrupted()) {
        return true;
      }
      if (!more) {
        return false;
      }
    }
    return false;
  }

  private <T> boolean inPool(
      JumpableUniformRandomProvider source, int blocks, Task<T> task, Predicate<T> goesOn) {
    ExecutorService pool = Executors.newFixedThreadPool(threads, Blocks::thread);
    Deque<Future<T>> ahead = new ArrayDeque<>();
    int next = 0;
    try {
      do {
        for (; next < blocks && ahead.size() < 2 * threads; next++) {
          int block = next;
          UniformRandomProvider random = source.jump();
          ahead.add(pool.submit(() -> task.run(block, random)));
        }
        T result = ahead.element().get();
        ahead.remove();
        if (!goesOn.test(result)) {
          return false;
        }
        if (Thread.interrupted()) {
          throw new InterruptedException();
        }
      } while (!ahead.isEmpty());
      return false;
    } catch (InterruptedException e) {
      collect(pool, ahead, goesOn);
      Thread.currentThread().interrupt();
      return true;
    } catch (ExecutionException e) {
      throw unwrapped(e);
    } finally {
      pool.shutdownNow();
    }
  }

  /** Stops the threads, and hands over what they have computed. */
  private static <T> void collect(
      ExecutorService pool, Deque<Future<T>> ahead, Predicate<T> goesOn) {
    pool.shutdownNow();
    boolean ended = false;
    while (!ended) {
      try {
        ended = pool.awaitTermination(1, TimeUnit.MINUTES);
      } catch (InterruptedException e) {
        ended = pool.isTerminated(); // it is ending already
      }
    }
    for (Future<T> future : ahead) {
      if (future.isDone()) {
        try {
          boolean more = goesOn.test(future.get());
          if (!more) {
            return;
          }
        } catch (InterruptedException e) {
          throw new IllegalStateException("what is done needs no waiting", e);
        } catch (ExecutionException e) {
          throw unwrapped(e);
        }
      }
    }
  }

  private static RuntimeException unwrapped(ExecutionException failure) {
    if (failure.getCause() instanceof RuntimeException cause) {
      return cause;
    }
    if (failure.getCause() instanceof Error cause) {
      throw cause;
    }
    return new IllegalStateException(failure.getCause());
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "kilnledger trials");
    thread.setDaemon(true);
    return thread;
  }
}
