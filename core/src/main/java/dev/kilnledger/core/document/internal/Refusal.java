package dev.kilnledger.core.document.internal;

import dev.kilnledger.core.reading.InputProblem;
import java.util.ArrayList;
import java.util.List;

/** What a value says that cannot be built: sentences of what is wrong and what is accepted. */
public final class Refusal {
  private Refusal() {}

  /**
   * The problems of a refusal.
   *
   * @param where where the value stands
   * @param path the same as a JSON pointer
   * @param refusal what was thrown
   * @return one problem for each sentence
   */
  public static List<InputProblem> problems(
      String where, String path, IllegalArgumentException refusal) {
    List<InputProblem> problems = new ArrayList<>();
    for (String sentence : String.valueOf(refusal.getMessage()).split("; and ", -1)) {
      String[] halves = sentence.split("; accepted (?:is|are) ", 2);
      problems.add(
          InputProblem.of(
              where, path, halves[0], halves.length > 1 ? halves[1] : "a value that fits"));
    }
    return problems;
  }
}
