package dev.kilnledger.costing.document;

import dev.kilnledger.core.document.CoreDocuments;
import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.document.internal.Refusal;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.WholeJob;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Answers job documents by answer documents, as an endpoint of quoting software does. What is wrong
 * with a job document comes back as a document too, kind {@code "problems"}, and never as an
 * exception.
 *
 * <pre>{@code
 * JobReply reply = JobDesk.standard().answer(request);
 * int status = reply.isAnswered() ? 200 : 422;
 * String response = reply.text();
 * }</pre>
 *
 * <p>Safe for use by several threads. The limits of size and depth are those of the document; how
 * long a computation may take is the caller's to bound.
 */
public final class JobDesk {
  private final Document<Job> jobs;
  private final WholeJob calculator;

  /**
   * A desk.
   *
   * @param known the materials that may stand by their name
   * @param calculator answers the jobs
   */
  public JobDesk(MaterialLibrary known, WholeJob calculator) {
    this.jobs = CostingDocuments.job(known);
    this.calculator = calculator;
  }

  /** {@return a desk with the standard materials and rules} */
  public static JobDesk standard() {
    return new JobDesk(MaterialLibrary.standard(), WholeJob.standard());
  }

  /**
   * Answers a job document within the standard limits.
   *
   * @param job the document as text
   * @return the answer or the problems
   */
  public JobReply answer(String job) {
    try {
      return answer(ByteSource.of(job.getBytes(StandardCharsets.UTF_8)), DocumentLimits.standard());
    } catch (IOException e) {
      throw new UncheckedIOException("bytes in memory can always be read", e);
    }
  }

  /**
   * Answers a job document.
   *
   * @param job its bytes, UTF-8
   * @param limits how large and deep it may be
   * @return the answer or the problems
   * @throws IOException if the bytes cannot be read
   */
  public JobReply answer(ByteSource job, DocumentLimits limits) throws IOException {
    try {
      return answered(calculator.answer(jobs.read(job, limits)));
    } catch (UnreadableInputException e) {
      return refused(e.problems());
    } catch (IllegalArgumentException e) {
      return refused(Refusal.problems("job", "", e));
    } catch (ArithmeticException e) {
      return refused(
          List.of(
              InputProblem.of(
                  "job",
                  "its figures are too large to be counted: " + e.getMessage(),
                  "figures of things that can be made")));
    }
  }

  private static JobReply answered(JobAnswer answer) {
    return JobReply.of(
        Optional.of(answer), List.of(), CostingDocuments.answer().text(AnswerFigures.of(answer)));
  }

  private static JobReply refused(List<InputProblem> problems) {
    return JobReply.of(Optional.empty(), problems, CoreDocuments.problems().text(problems));
  }
}
