package dev.kilnledger.core.reading;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** An input that cannot be read as what it should be, with everything that is wrong with it. */
public final class UnreadableInputException extends IOException {
  private static final long serialVersionUID = 1;

  /** What is wrong, in its order. */
  private final ArrayList<InputProblem> problems;

  /**
   * Tells what is wrong.
   *
   * @param problems the problems, at least one
   */
  public UnreadableInputException(List<InputProblem> problems) {
    super(problems.stream().map(InputProblem::text).collect(Collectors.joining("\n")));
    this.problems = new ArrayList<>(problems);
  }

  /**
   * Tells the one thing that is wrong.
   *
   * @param problem the problem
   */
  public UnreadableInputException(InputProblem problem) {
    this(List.of(problem));
  }

  /** {@return the problems in their order} */
  public List<InputProblem> problems() {
    return Collections.unmodifiableList(problems);
  }
}
