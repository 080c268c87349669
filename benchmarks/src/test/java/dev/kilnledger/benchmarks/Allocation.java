package dev.kilnledger.benchmarks;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.function.Supplier;

/** Counts the bytes that a call allocates on its thread. */
final class Allocation {
  private static final int CALLS = 50;

  private Allocation() {}

  /**
   * The bytes of one call once all is loaded. The compiler may leave allocations out later, so this
   * is what a call takes at most; the smallest of several counts, as the machine now and then
   * allocates on a thread's account.
   */
  static long bytes(Supplier<?> call) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    Object last = null;
    long least = Long.MAX_VALUE;
    for (int round = 0; round < 5; round++) {
      long before = threads.getCurrentThreadAllocatedBytes();
      for (int i = 0; i < CALLS; i++) {
        last = call.get();
      }
      least = Math.min(least, (threads.getCurrentThreadAllocatedBytes() - before) / CALLS);
    }
    if (last == null) {
      throw new IllegalStateException("a call answers something, so that it cannot be left out");
    }
    return least;
  }
}
