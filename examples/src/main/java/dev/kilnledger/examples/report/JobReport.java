package dev.kilnledger.examples.report;

import dev.kilnledger.costing.breakeven.Crossing;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.uncertainty.Tornado;
import dev.kilnledger.costing.uncertainty.UncertainStatement;
import java.util.Optional;

/**
 * The answer to a job as one page that stands alone: no script, no font, no picture from elsewhere.
 * Whatever is known beyond the answer is added before it is written:
 *
 * <pre>{@code
 * String page = JobReport.of("Prices are invented.", answer)
 *     .with(crossing, "buying at EUR 45.00")
 *     .with(uncertainStatement)
 *     .with(tornado)
 *     .html();
 * }</pre>
 *
 * @param remark what has to be said of the data, such as that they are invented
 * @param answer the answer to the job
 * @param breakEven making the parts against another way of having them, if that was asked
 * @param uncertainty how sure the cost is, if that was asked
 * @param inputs which inputs move the cost, if that was asked
 */
public record JobReport(
    String remark,
    JobAnswer answer,
    Optional<BreakEven> breakEven,
    Optional<UncertainStatement> uncertainty,
    Optional<Tornado> inputs) {

  /**
   * Two ways of having the parts.
   *
   * @param crossing from how many parts on making them costs no more
   * @param other what the other way is, in a few words such as "buying at EUR 45.00"
   */
  public record BreakEven(Crossing crossing, String other) {}

  /**
   * A report on an answer alone.
   *
   * @param remark what has to be said of the data
   * @param answer the answer
   * @return the report
   */
  public static JobReport of(String remark, JobAnswer answer) {
    return new JobReport(remark, answer, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * The same with a break-even.
   *
   * @param crossing from how many parts on making them costs no more
   * @param other what the other way is, in a few words
   * @return the report
   */
  public JobReport with(Crossing crossing, String other) {
    return new JobReport(
        remark, answer, Optional.of(new BreakEven(crossing, other)), uncertainty, inputs);
  }

  /**
   * The same with the uncertainty of its cost.
   *
   * @param statement the draws
   * @return the report
   */
  public JobReport with(UncertainStatement statement) {
    return new JobReport(remark, answer, breakEven, Optional.of(statement), inputs);
  }

  /**
   * The same with what moves its cost.
   *
   * @param tornado a bar for each input
   * @return the report
   */
  public JobReport with(Tornado tornado) {
    return new JobReport(remark, answer, breakEven, uncertainty, Optional.of(tornado));
  }

  /** {@return the page, the same for the same report; it is XML as well as HTML, in UTF-8} */
  public String html() {
    return ReportPage.of(this);
  }
}
