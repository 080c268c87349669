package dev.kilnledger.examples.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet as a table of plain text. Numbers stand at the right of their column. Where a row would
 * be wider than 100 columns, the widest texts are broken into lines; where that is not enough, the
 * columns go on below, each block with the first column again.
 */
final class SheetTable {
  private static final int WIDTH = 100;
  private static final int NARROWEST = 16;
  private static final String INDENT = "  ";
  private static final String GAP = "  ";

  private final List<Column<?>> columns;
  private final List<List<Cell>> cells;
  private final List<Integer> widths = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();

  private SheetTable(List<Column<?>> columns, List<List<Cell>> cells) {
    this.columns = columns;
    this.cells = cells;
    for (int column = 0; column < columns.size(); column++) {
      int width =
          Math.max(columns.get(column).name().length(), columns.get(column).unit().length());
      for (List<Cell> row : cells) {
        width = Math.max(width, row.get(column).shown().length());
      }
      widths.add(width);
    }
    narrow();
  }

  static String of(Sheet<?> sheet) {
    SheetTable table = new SheetTable(List.copyOf(sheet.columns()), sheet.cells());
    table.text.append(sheet.title()).append('\n');
    int first = 0;
    while (first < table.columns.size()) {
      List<Integer> block = table.block(first);
      table.rows(block);
      first = block.get(block.size() - 1) + 1;
      if (first < table.columns.size()) {
        table.text.append('\n');
      }
    }
    return table.text.toString();
  }

  /** Takes what is too much from the texts, always from the widest of them. */
  private void narrow() {
    int over = INDENT.length() - GAP.length() - WIDTH;
    for (int width : widths) {
      over += GAP.length() + width;
    }
    for (int widest = widestText(); over > 0 && widest >= 0; widest = widestText()) {
      widths.set(widest, widths.get(widest) - 1);
      over--;
    }
  }

  /** The widest column of text that can be narrower, or -1. */
  private int widestText() {
    int widest = -1;
    for (int column = 0; column < columns.size(); column++) {
      int width = widths.get(column);
      if (!columns.get(column).numeric()
          && width > Math.max(NARROWEST, columns.get(column).name().length())
          && (widest < 0 || width > widths.get(widest))) {
        widest = column;
      }
    }
    return widest;
  }

  /** The columns from one on that fit side by side, with the very first in front of them. */
  private List<Integer> block(int first) {
    List<Integer> block = new ArrayList<>();
    int used = INDENT.length();
    if (first > 0) {
      block.add(0);
      used += widths.get(0) + GAP.length();
    }
    int next = first;
    do {
      block.add(next);
      used += widths.get(next) + GAP.length();
      next++;
    } while (next < columns.size() && used + widths.get(next) <= WIDTH);
    return block;
  }

  private void rows(List<Integer> block) {
    if (block.stream().anyMatch(column -> !columns.get(column).name().isEmpty())) {
      line(block.stream().map(column -> columns.get(column).name()).toList(), block);
    }
    if (block.stream().anyMatch(column -> !columns.get(column).unit().isEmpty())) {
      line(block.stream().map(column -> columns.get(column).unit()).toList(), block);
    }
    for (List<Cell> row : cells) {
      line(block.stream().map(column -> row.get(column).shown()).toList(), block);
    }
  }

  /** One row, of as many lines as its longest text takes. */
  private void line(List<String> row, List<Integer> block) {
    List<List<String>> broken = new ArrayList<>();
    int height = 1;
    for (int at = 0; at < block.size(); at++) {
      broken.add(filled(row.get(at), widths.get(block.get(at))));
      height = Math.max(height, broken.get(at).size());
    }
    for (int line = 0; line < height; line++) {
      StringBuilder out = new StringBuilder();
      for (int at = 0; at < block.size(); at++) {
        String part = line < broken.get(at).size() ? broken.get(at).get(line) : "";
        String room = " ".repeat(widths.get(block.get(at)) - part.length());
        boolean right = columns.get(block.get(at)).numeric();
        out.append(at == 0 ? INDENT : GAP).append(right ? room + part : part + room);
      }
      text.append(out.toString().stripTrailing()).append('\n');
    }
  }

  /** Words filled to a width; a word that is wider is cut. */
  private static List<String> filled(String words, int width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words.split("[ \r\n]", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && longer.length() > width) {
        lines.add(line);
        longer = word;
      }
      while (longer.length() > width) {
        lines.add(longer.substring(0, width));
        longer = longer.substring(width);
      }
      line = longer;
    }
    lines.add(line);
    return lines;
  }
}
