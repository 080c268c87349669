package dev.kilnledger.costing.document;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.costing.job.JobAnswer;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;

/** What a job document comes to: an answer, or all that is wrong with the document. */
@Value.Immutable
@ValueStyle
public interface JobReply extends Serializable {
  /** {@return the answer; empty where the job cannot be computed} */
  @Value.Parameter
  Optional<JobAnswer> answer();

  /** {@return what is wrong, empty where there is an answer} */
  @Value.Parameter
  List<InputProblem> problems();

  /** {@return the document to send back: the answer, or the problems} */
  @Value.Parameter
  String text();

  /**
   * {@return whether there is an answer; a job that will not come out has one too, with the
   * findings that say so}
   */
  default boolean isAnswered() {
    return answer().isPresent();
  }

  /**
   * A reply.
   *
   * @param answer the answer, if there is one
   * @param problems what is wrong
   * @param text the document to send back
   * @return the reply
   */
  static JobReply of(Optional<JobAnswer> answer, List<InputProblem> problems, String text) {
    return ImmutableJobReply.of(answer, problems, text);
  }
}
