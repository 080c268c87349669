package dev.kilnledger.core.progress;

import java.time.Duration;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Estimates from progress how long work will still take, at the mean pace so far. It holds state:
 * one for each piece of work.
 *
 * <p>Example: 30 s after the start a quarter is done, so 90 s are left.
 */
public final class RemainingTime implements Progress {
  private final LongSupplier nanoseconds;
  private final long start;
  private volatile Pace pace = new Pace(0, 0);

  /**
   * Starts to measure.
   *
   * @param nanoseconds a clock that only goes forward, such as {@code System::nanoTime}
   */
  public RemainingTime(LongSupplier nanoseconds) {
    this.nanoseconds = nanoseconds;
    this.start = nanoseconds.getAsLong();
  }

  @Override
  public void at(double fraction) {
    pace = new Pace(fraction, nanoseconds.getAsLong() - start);
  }

  /** {@return the share that is done, from 0 to 1} */
  public double fraction() {
    return pace.fraction;
  }

  /** {@return what is left at the mean pace so far; empty before there is any progress} */
  public Optional<Duration> estimate() {
    Pace now = pace;
    return now.fraction > 0
        ? Optional.of(Duration.ofNanos(Math.round(now.elapsed * (1 - now.fraction) / now.fraction)))
        : Optional.empty();
  }

  /** Fraction and time belong together, whoever reads them meanwhile. */
  private static final class Pace {
    private final double fraction;
    private final long elapsed;

    Pace(double fraction, long elapsed) {
      this.fraction = fraction;
      this.elapsed = elapsed;
    }
  }
}
