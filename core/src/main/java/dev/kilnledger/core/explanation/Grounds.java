package dev.kilnledger.core.explanation;

import dev.kilnledger.core.source.Standing;
import java.util.Comparator;
import java.util.List;

/** What a figure rests on. */
final class Grounds {
  /** Unlike the standings before it, what the user states can be looked up by the user. */
  private static final List<Standing> WEAKEST_FIRST =
      List.of(
          Standing.FROM_MEMORY,
          Standing.COMMON_PRACTICE,
          Standing.USER,
          Standing.RECOMPUTED,
          Standing.QUOTED,
          Standing.PUBLISHED);

  private Grounds() {}

  static List<Explanation> of(Explanation root) {
    return root.nodes()
        .filter(node -> node.source().isPresent())
        .map(Grounds::alone)
        .distinct()
        .sorted(Comparator.comparing(node -> WEAKEST_FIRST.indexOf(standing(node))))
        .toList();
  }

  /** Of what was computed the formula is kept, as it is the formula that has the source. */
  private static Explanation alone(Explanation node) {
    return Explanation.builder().from(node).children(List.of()).build();
  }

  static Standing standing(Explanation ground) {
    return ground.source().orElseThrow().standing();
  }
}
