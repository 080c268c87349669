package dev.kilnledger.core.explanation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Explanations as text, the same on every machine. */
final class ExplanationText {
  private static final int WIDTH = 100;
  private static final int INDENT = 2;

  /** Deeper nodes are not indented further, so that there is room for words. */
  private static final int DEEPEST = 50;

  private static final String CUT = " ...";

  private ExplanationText() {}

  static String line(Explanation node) {
    return head(node)
        + node.formula().map(formula -> ", from " + formula).orElse("")
        + node.source().map(source -> "; " + source.cite()).orElse("");
  }

  private static String head(Explanation node) {
    return node.what()
        + ": "
        + node.shown()
        + (node.condition().isEmpty() ? "" : ", " + node.condition());
  }

  static String tree(Explanation root, int depth) {
    StringBuilder text = new StringBuilder();
    add(root, 0, depth, new HashSet<>(), text);
    return text.toString();
  }

  private static void add(
      Explanation node, int depth, int deepest, Set<Explanation> told, StringBuilder text) {
    boolean again = !node.children().isEmpty() && !told.add(node);
    String indent = " ".repeat(Math.min(DEEPEST, INDENT * depth));
    for (String line : filled(again ? head(node) + ", as above" : line(node), indent)) {
      text.append(line).append('\n');
    }
    if (!again && depth < deepest) {
      node.children().forEach(child -> add(child, depth + 1, deepest, told, text));
    }
  }

  /** Words filled to the width; lines after the first are indented twice as far again. */
  private static List<String> filled(String words, String indent) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(indent);
    String further = indent + " ".repeat(2 * INDENT);
    int start = line.length();
    for (String word : words.split(" ", -1)) {
      String rest = word;
      if (line.length() > start && line.length() + 1 + rest.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(further);
        start = further.length();
      }
      line.append(line.length() > start ? " " : "");
      while (line.length() + rest.length() > WIDTH) {
        int room = WIDTH - line.length();
        lines.add(line + rest.substring(0, room));
        rest = rest.substring(room);
        line = new StringBuilder(further);
        start = further.length();
      }
      line.append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  static List<String> outline(Explanation root) {
    return Walk.through(root).stream()
        .map(node -> cut((node.number() + " " + line(node.explanation())).stripLeading()))
        .toList();
  }

  private static String cut(String line) {
    return line.length() <= WIDTH ? line : line.substring(0, WIDTH - CUT.length()) + CUT;
  }
}
