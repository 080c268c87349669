package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.progress.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.apache.commons.rng.JumpableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * The draws in a fixed number of blocks, each on a sub-stream of its own of one generator, put
 * together in their order: what comes out does not depend on how many threads have worked on it.
 */
final class Blocks {
  static final int COUNT = 64;

  private Blocks() {}

  /** One block; it ends early where its thread is interrupted. */
  interface Task<T> {
    T run(int block, UniformRandomProvider random);
  }

  /** The sub-streams of a seed, one for each block and one more. */
  static List<UniformRandomProvider> streams(long seed) {
    JumpableUniformRandomProvider source =
        (JumpableUniformRandomProvider) RandomSource.XO_SHI_RO_256_PP.create(seed);
    List<UniformRandomProvider> streams = new ArrayList<>();
    for (int block = 0; block <= COUNT; block++) {
      streams.add(source.jump());
    }
    return streams;
  }

  /** Runs all blocks, or those begun when this thread is interrupted. */
  static <T> List<T> run(long seed, int threads, Task<T> task, Progress progress) {
    List<UniformRandomProvider> streams = streams(seed);
    if (threads > 1) {
      return inPool(streams, threads, task, progress);
    }
    List<T> results = new ArrayList<>();
    while (results.size() < COUNT && !Thread.currentThread().isInterrupted()) {
      results.add(task.run(results.size(), streams.get(results.size())));
      progress.at((double) results.size() / COUNT);
    }
    return results;
  }

  private static <T> List<T> inPool(
      List<UniformRandomProvider> streams, int threads, Task<T> task, Progress progress) {
    ExecutorService pool = Executors.newFixedThreadPool(threads, Blocks::thread);
    List<Future<T>> futures = new ArrayList<>();
    for (int number = 0; number < COUNT; number++) {
      int block = number;
      Callable<T> call = () -> task.run(block, streams.get(block));
      futures.add(pool.submit(call));
    }
    List<T> results = new ArrayList<>();
    try {
      for (Future<T> future : futures) {
        results.add(future.get());
        progress.at((double) results.size() / COUNT);
      }
    } catch (InterruptedException e) {
      pool.shutdownNow(); // blocks under way end early, those not begun never do
      collect(pool, futures.subList(results.size(), futures.size()), results);
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      throw unwrapped(e);
    } finally {
      pool.shutdownNow();
    }
    return results;
  }

  private static <T> void collect(ExecutorService pool, List<Future<T>> futures, List<T> results) {
    boolean ended = false;
    while (!ended) {
      try {
        ended = pool.awaitTermination(1, TimeUnit.MINUTES);
      } catch (InterruptedException e) {
        ended = pool.isTerminated(); // it is ending already
      }
    }
    for (Future<T> future : futures) {
      if (future.isDone()) {
        try {
          results.add(future.get());
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
    Thread thread = new Thread(work, "kilnledger draws");
    thread.setDaemon(true);
    return thread;
  }
}
