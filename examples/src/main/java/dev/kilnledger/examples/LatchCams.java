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
    out.print(text());
  }

  /** {@return what is printed} */
  static String text() {
    return JobText.of(
        "Equipment, prices, lives and losses are invented for this example.",
        WholeJob.standard().answer(WindowWorkshop.latchCams(100)),
        1,
        2,
        10,
        100);
  }
}
