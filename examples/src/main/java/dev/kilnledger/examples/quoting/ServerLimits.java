package dev.kilnledger.examples.quoting;

import java.time.Duration;

/**
 * What a server takes on.
 *
 * @param bytes the longest request, above zero
 * @param computing how many jobs are computed at once, above zero
 * @param waiting how many more may wait for their turn, above zero
 * @param patience how long a request may wait and compute, above zero
 */
public record ServerLimits(int bytes, int computing, int waiting, Duration patience) {
  /**
   * Refuses limits that let nothing through.
   *
   * @param bytes the longest request
   * @param computing how many jobs are computed at once
   * @param waiting how many more may wait for their turn
   * @param patience how long a request may wait and compute
   * @throws IllegalArgumentException if one is not above zero
   */
  public ServerLimits {
    if (bytes < 1 || computing < 1 || waiting < 1 || patience.isZero() || patience.isNegative()) {
      throw new IllegalArgumentException(
          "server limits are "
              + bytes
              + " bytes, "
              + computing
              + " computing, "
              + waiting
              + " waiting, "
              + patience
              + "; accepted are all above zero");
    }
  }

  /** {@return a mebibyte, a job for each processor, 32 waiting, and 20 seconds} */
  public static ServerLimits standard() {
    return new ServerLimits(
        1 << 20, Runtime.getRuntime().availableProcessors(), 32, Duration.ofSeconds(20));
  }
}
