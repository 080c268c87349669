package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.costing.explanation.StatementExplainer;
import dev.kilnledger.costing.explanation.StatementFigure;
import dev.kilnledger.costing.ledger.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The inputs on which two statements stand and that differ. */
final class InputChanges {
  /** Told as rules. */
  private static final Set<String> RULES = Set.of("n", "parts per firing");

  private final Map<List<Object>, Change> changes = new LinkedHashMap<>();

  private InputChanges() {}

  static List<Change> between(
      Statement from, StatementExplainer fromBy, Statement to, StatementExplainer toBy) {
    InputChanges found = new InputChanges();
    Map<String, Explanation> before = lines(from, fromBy);
    Map<String, Explanation> after = lines(to, toBy);
    for (String item : union(before, after)) {
      found.compare(item, of(before, item), of(after, item));
    }
    return List.copyOf(found.changes.values());
  }

  /** What differs below figures of the same names. */
  static List<Change> between(
      String where, Map<String, Explanation> before, Map<String, Explanation> after) {
    InputChanges found = new InputChanges();
    for (String name : union(before, after)) {
      // a figure that only one has is told as a figure
      if (before.containsKey(name) && after.containsKey(name)) {
        found.compare(where, of(before, name), of(after, name));
      }
    }
    return List.copyOf(found.changes.values());
  }

  private static Set<String> union(Map<String, Explanation> a, Map<String, Explanation> b) {
    Set<String> names = new LinkedHashSet<>(a.keySet());
    names.addAll(b.keySet());
    return names;
  }

  private static Optional<Explanation> of(Map<String, Explanation> figures, String name) {
    return Optional.ofNullable(figures.get(name));
  }

  /** The lines of all parts, and those of the usage that all parts do not need. */
  private static Map<String, Explanation> lines(Statement statement, StatementExplainer by) {
    Map<String, Explanation> lines = new LinkedHashMap<>();
    for (StatementFigure figure : List.of(StatementFigure.ALL_PARTS, StatementFigure.USAGE)) {
      Explanation exact = by.figure(statement, figure).children().get(0);
      exact.children().forEach(line -> lines.putIfAbsent(line.what(), line));
    }
    return lines;
  }

  private void compare(String where, Optional<Explanation> before, Optional<Explanation> after) {
    if (before.isEmpty() || after.isEmpty()) {
      add(where, before, after);
      return;
    }
    List<Explanation> mine = before.get().children();
    List<Explanation> others = after.get().children();
    if (mine.isEmpty() || others.isEmpty()) {
      if (!before.get().shown().equals(after.get().shown())
          && !RULES.contains(before.get().what())
          && !isComputedTheSameWay(before.get(), after.get())) {
        add(where, before, after);
      }
      return;
    }
    String below = below(where, before.get());
    Map<String, List<Explanation>> byName = new LinkedHashMap<>();
    others.forEach(o -> byName.computeIfAbsent(o.what(), name -> new ArrayList<>()).add(o));
    for (Explanation child : mine) {
      List<Explanation> same = byName.getOrDefault(child.what(), List.of());
      compare(
          below,
          Optional.of(child),
          same.isEmpty() ? Optional.empty() : Optional.of(same.remove(0)));
    }
    byName
        .values()
        .forEach(rest -> rest.forEach(o -> add(below, Optional.empty(), Optional.of(o))));
  }

  /** The item, and what the figure directly enters where that is not the line of the item. */
  private static String below(String where, Explanation node) {
    String item = where.contains(": ") ? where.substring(0, where.indexOf(": ")) : where;
    return node.what().equals(item) || node.what().equals("packs")
        ? item
        : item + ": " + node.what();
  }

  /** Figures that a model computed from what changed are no inputs, though they end a tree. */
  private static boolean isComputedTheSameWay(Explanation before, Explanation after) {
    return before.children().isEmpty()
        && after.children().isEmpty()
        && before.source().equals(after.source())
        && before.source().filter(s -> s.standing() == Standing.RECOMPUTED).isPresent();
  }

  private void add(String where, Optional<Explanation> before, Optional<Explanation> after) {
    Change change = Change.of(where, before, after);
    changes.putIfAbsent(
        List.of(change.what(), before.map(Explanation::line), after.map(Explanation::line)),
        change);
  }
}
