package dev.kilnledger.core.explanation;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
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

  /**
   * A node at its place.
   *
   * @param place the number among the children of each node above, counted from 1
   * @param explanation the node
   * @return the node with its place
   */
  static ExplanationNode of(List<Integer> place, Explanation explanation) {
    return ImmutableExplanationNode.of(place, explanation);
  }
}
