package dev.kilnledger.examples.report;

import java.util.List;
import org.jsoup.nodes.Element;

/** A table with a caption, the names of its columns, and a name for each row. */
final class Table {
  private final Element body;
  private final List<Boolean> numbers;

  /**
   * Begins a table.
   *
   * @param parent where it goes
   * @param caption what it holds
   * @param columns the names of the columns, the first that of the rows; a name that begins with #
   *     is that of a column of numbers
   */
  Table(Element parent, String caption, String... columns) {
    Element frame =
        parent
            .appendElement("div")
            .addClass("frame")
            .attr("role", "region")
            .attr("tabindex", "0")
            .attr("aria-label", caption);
    Element table = frame.appendElement("table");
    table.appendElement("caption").text(caption);
    Element head = table.appendElement("thead").appendElement("tr");
    numbers = List.of(columns).stream().map(column -> column.startsWith("#")).toList();
    for (String column : columns) {
      Element cell = head.appendElement("th").attr("scope", "col");
      cell.text(column.startsWith("#") ? column.substring(1) : column);
      if (column.startsWith("#")) {
        cell.addClass("number");
      }
    }
    body = table.appendElement("tbody");
  }

  /** A row: its name, then one cell for each further column. */
  Element row(String name, String... cells) {
    Element row = body.appendElement("tr");
    row.appendElement("th").attr("scope", "row").text(name);
    for (int i = 0; i < cells.length; i++) {
      Element cell = row.appendElement("td").text(Words.kept(cells[i]));
      if (numbers.get(i + 1)) {
        cell.addClass("number");
      }
    }
    return row;
  }

  /** A row that sums up those above it. */
  void total(String name, String... cells) {
    row(name, cells).addClass("total");
  }
}
