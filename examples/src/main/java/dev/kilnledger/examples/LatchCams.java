package dev.kilnledger.examples;

import dev.kilnledger.costing.job.JobAnswer;
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
    return String.join(
        "\n",
        job(),
        HowSureTheFiringIs.text(),
        ThreeBudgets.text(ThreeBudgets.plan()),
        BandOfUncertainty.text());
  }

  /** {@return the job itself: part, firing, findings, cost, and what an adviser hands over} */
  static String job() {
    JobAnswer answer = WholeJob.standard().answer(WindowWorkshop.latchCams(100));
    String remark = "Equipment, prices, lives and losses are invented for this example.";
    return JobText.of(remark, answer, 1, 2, 10, 100) + "\n" + AdviceText.of(answer);
  }
}
