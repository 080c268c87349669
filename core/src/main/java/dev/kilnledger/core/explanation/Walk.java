package dev.kilnledger.core.explanation;

import java.util.ArrayList;
import java.util.List;

/** All nodes of a tree with their places, each before its children. */
final class Walk {
  private final List<ExplanationNode> nodes = new ArrayList<>();

  private Walk() {}

  static List<ExplanationNode> through(Explanation root) {
    Walk walk = new Walk();
    walk.add(List.of(), root);
    return List.copyOf(walk.nodes);
  }

  private void add(List<Integer> place, Explanation node) {
    nodes.add(ExplanationNode.of(place, node));
    for (int i = 0; i < node.children().size(); i++) {
      List<Integer> below = new ArrayList<>(place);
      below.add(i + 1);
      add(below, node.children().get(i));
    }
  }
}
