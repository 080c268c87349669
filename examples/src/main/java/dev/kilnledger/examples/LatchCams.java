package dev.kilnledger.examples;

import dev.kilnledger.costing.job.WholeJob;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Prints the job of a hundred latch cams, from material to the cost of the hundredth part. */
public final class LatchCams {
  private LatchCams() {}

  /**
   * Prints the job.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.print(JobText.of(WholeJob.standard().answer(WindowWorkshop.latchCams(100)), 1, 2, 10, 100));
  }
}
