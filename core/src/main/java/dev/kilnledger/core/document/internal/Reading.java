package dev.kilnledger.core.document.internal;

import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.util.ArrayList;
import java.util.List;

/** The reading of one document: gathers what is wrong with it. */
final class Reading {
  private static final int MOST = 100;

  private final List<InputProblem> problems = new ArrayList<>();
  private long count;

  void problem(JsonValue at, String path, String what, String accepted) {
    problem(InputProblem.of(at.where(path), path, what, accepted));
  }

  void problem(String where, String what, String accepted) {
    problem(InputProblem.of(where, what, accepted));
  }

  void problem(InputProblem problem) {
    count++;
    if (problems.size() < MOST) {
      problems.add(problem);
    }
  }

  /** Takes over what a value said of itself. */
  void refused(JsonValue at, String path, IllegalArgumentException refusal) {
    Refusal.problems(at.where(path), path, refusal).forEach(this::problem);
  }

  void refuseIfAny() throws UnreadableInputException {
    if (count > problems.size()) {
      problems.add(
          InputProblem.of("document", (count - MOST) + " problems more are not told", "none"));
    }
    if (count > 0) {
      throw new UnreadableInputException(problems);
    }
  }
}
