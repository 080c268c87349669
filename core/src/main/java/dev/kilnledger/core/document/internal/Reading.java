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
    problem(at.where(path), what, accepted);
  }

  void problem(String where, String what, String accepted) {
    count++;
    if (problems.size() < MOST) {
      problems.add(InputProblem.of(where, what, accepted));
    }
  }

  /** Takes over what a value said of itself: sentences of what is wrong and what is accepted. */
  void refused(JsonValue at, String path, IllegalArgumentException refusal) {
    String message = String.valueOf(refusal.getMessage());
    for (String sentence : message.split("; and ", -1)) {
      String[] halves = sentence.split("; accepted (?:is|are) ", 2);
      problem(at, path, halves[0], halves.length > 1 ? halves[1] : "a value that fits");
    }
  }

  boolean isFine() {
    return count == 0;
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
