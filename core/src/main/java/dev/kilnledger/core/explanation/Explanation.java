package dev.kilnledger.core.explanation;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Standing;
import java.io.Serializable;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.immutables.value.Value;

/**
 * A figure with all it stands on: a tree whose nodes say what they are, their value, how it came
 * about and where it is from. A node without children was given and has a source; any other has a
 * formula in the names of its children, or says of what it is the sum.
 *
 * <p>Results make these trees of their own lines, so that what is explained is what was computed.
 * In a formula, x is the sign of multiplication; whatever follows a comma outside brackets is a
 * remark.
 *
 * <p>Example: {@code computed("mass", grams(26.79), "density x volume", given("density", ...),
 * given("volume", ...)).text()} is
 *
 * <pre>
 * mass: 26.79 g, from density x volume
 *   density: 8.93 g/cm³, at 20 °C; a handbook (from memory)
 *   volume: 3 cm³; the drawing (stated by the user)
 * </pre>
 */
@Value.Immutable
@ValueStyle
public interface Explanation extends Serializable {
  /** {@return what it is; in a formula of the node above, the figure goes by this name} */
  String what();

  /**
   * {@return the figure: an amount, a span or estimate, an amount of money, a date, a number or
   * text, as it was given or computed}
   */
  Serializable value();

  /**
   * {@return the figure for people; unless stated, an amount in the unit it was given in, with up
   * to six digits}
   */
  @Value.Default
  default String shown() {
    return ShownValue.of(value());
  }

  /** {@return under which condition it holds; empty where it needs none} */
  @Value.Default
  default String condition() {
    return "";
  }

  /** {@return how the figure follows from its children; empty where it was given} */
  Optional<String> formula();

  /** {@return where a figure given, or the formula, comes from} */
  Optional<Source> source();

  /** {@return what the figure stands on, in the order of the formula} */
  List<Explanation> children();

  /**
   * A figure that was given.
   *
   * @param what what it is
   * @param value the figure
   * @param source where it comes from
   * @return a node without children
   */
  static Explanation given(String what, Serializable value, Source source) {
    return builder().what(what).value(value).source(source).build();
  }

  /**
   * An input of a formula.
   *
   * @param input the input
   * @return a node without children
   */
  static Explanation given(Input input) {
    return given(input.name(), input.value(), input.source());
  }

  /**
   * A fact.
   *
   * @param what what it is
   * @param fact the fact with condition and source
   * @return a node without children
   */
  static Explanation given(String what, Sourced<? extends Serializable> fact) {
    return builder()
        .what(what)
        .value(fact.value())
        .condition(fact.condition())
        .source(fact.source())
        .build();
  }

  /**
   * A figure that was computed.
   *
   * @param what what it is
   * @param value the figure
   * @param formula how it follows, in the names of the children
   * @param children what it stands on, at least one node
   * @return a node with children
   * @throws IllegalArgumentException if there are no children
   */
  static Explanation computed(
      String what, Serializable value, String formula, Explanation... children) {
    return builder().what(what).value(value).formula(formula).children(List.of(children)).build();
  }

  /**
   * The same figure by another name, such as the one it has in a formula.
   *
   * @param what the name
   * @return a node with the same children
   */
  default Explanation as(String what) {
    return builder().from(this).what(what).build();
  }

  /**
   * A node below this one.
   *
   * @param path the names from child to child
   * @return the node
   * @throws IllegalArgumentException if there is none of a name; the message lists what there is
   */
  default Explanation at(String... path) {
    Explanation node = this;
    for (String name : path) {
      Explanation above = node;
      node =
          above.children().stream()
              .filter(child -> child.what().equals(name))
              .findFirst()
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          above.what()
                              + " does not stand on \""
                              + name
                              + "\"; accepted is one of "
                              + above.children().stream().map(Explanation::what).toList()));
    }
    return node;
  }

  /** {@return this node and all below it, each before its children} */
  default Stream<Explanation> nodes() {
    return Stream.concat(Stream.of(this), children().stream().flatMap(Explanation::nodes));
  }

  /** {@return this node and all below it with their places, each before its children, to draw} */
  default List<ExplanationNode> walk() {
    return Walk.through(this);
  }

  /**
   * {@return what the figure rests on: every distinct figure given, and every source of a formula,
   * the weakest first: from memory, common practice, stated by the user, recomputed, quoted,
   * published. What the user states comes before what was computed and after what nobody can look
   * up}
   */
  default List<Explanation> grounds() {
    return Grounds.of(this);
  }

  /**
   * What the figure rests on by the standing of its sources, such as all that is from memory.
   *
   * @param standing a standing
   * @param others further ones
   * @return the {@link #grounds} of these standings
   */
  default List<Explanation> grounds(Standing standing, Standing... others) {
    Set<Standing> wanted = EnumSet.of(standing, others);
    return grounds().stream().filter(node -> wanted.contains(Grounds.standing(node))).toList();
  }

  /** {@return this node alone, as one line of any length, to be read aloud} */
  default String line() {
    return ExplanationText.line(this);
  }

  /**
   * {@return the whole tree as indented text of at most 100 columns; what stands in it more than
   * once is opened the first time only}
   */
  default String text() {
    return text(Integer.MAX_VALUE);
  }

  /**
   * The tree as indented text of at most 100 columns, down to a depth.
   *
   * @param depth how many levels below this node to open, 0 or more
   * @return the text, ending with a line end
   */
  default String text(int depth) {
    return ExplanationText.tree(this, depth);
  }

  /**
   * {@return the whole tree, one line of at most 100 columns for each node: its place, what it is,
   * its value, and as much of formula and source as there is room for}
   */
  default List<String> outline() {
    return ExplanationText.outline(this);
  }

  /**
   * Starts one.
   *
   * @return a builder; what and value are required, and a formula or a source
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Explanation} values. */
  final class Builder extends ImmutableExplanation.Builder {
    Builder() {}
  }

  /**
   * Refuses nodes that explain nothing.
   *
   * @throws IllegalArgumentException if the name is blank, if neither formula nor source is there,
   *     or if neither children nor a source are
   */
  @Value.Check
  default void check() {
    new Problems("explanation of " + what())
        .text("what", what())
        .require(
            formula().isPresent() || source().isPresent(),
            "there is neither formula nor source; accepted is at least one")
        .require(
            !children().isEmpty() || source().isPresent(),
            "there is nothing below it and no source; accepted is at least one")
        .require(
            formula().isPresent() || children().isEmpty(),
            "there is no formula for what is below it; accepted is a formula")
        .refuseIfAny();
  }
}
