package dev.kilnledger.core.explanation;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.immutables.value.Value;

/** A node of an explanation and its place in the tree, all that is needed to draw it. */
@Value.Immutable
@ValueStyle
public interface ExplanationNode extends Serializable {
  /**
   * {@return the place in the tree: the number among the children of each node above, counted from
   * 1; empty for the figure itself}
   */
  @Value.Parameter
  List<Integer> place();

  /** {@return the node} */
  @Value.Parameter
  Explanation explanation();

  /** {@return how many nodes are above it} */
  default int depth() {
    return place().size();
  }

  /** {@return the place for people, such as {@code "1.3.2"}; empty for the figure itself} */
  default String number() {
    return String.join(".", place().stream().map(String::valueOf).toList());
  }

  /** All nodes of a tree, each before its children. */
  static List<ExplanationNode> walk(Explanation root) {
    List<ExplanationNode> nodes = new ArrayList<>();
    add(List.of(), root, nodes);
    return List.copyOf(nodes);
  }

  private static void add(List<Integer> place, Explanation node, List<ExplanationNode> nodes) {
    nodes.add(ImmutableExplanationNode.of(place, node));
    for (int i = 0; i < node.children().size(); i++) {
      List<Integer> below = new ArrayList<>(place);
      below.add(i + 1);
      add(below, node.children().get(i), nodes);
    }
  }
}
