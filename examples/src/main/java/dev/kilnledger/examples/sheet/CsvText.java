package dev.kilnledger.examples.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Comma-separated values as RFC 4180 has them: lines end in CR LF, and a cell with a comma, a
 * quotation mark or a line end stands in quotation marks. Numbers have a point and no exponent,
 * whatever the locale.
 *
 * <p>A spreadsheet takes text that begins with = + - @ for a formula. Such text gets an apostrophe
 * in front and stands in quotation marks, so that it is shown as text; numbers, negative ones too,
 * stay numbers.
 */
public final class CsvText {
  private static final String STARTS_FORMULA = "=+-@\t\r";

  private CsvText() {}

  /**
   * A sheet with its header, the unit of a column in brackets behind its name.
   *
   * @param sheet the sheet
   * @return the lines, each with its end
   */
  public static String of(Sheet<?> sheet) {
    List<String> header = new ArrayList<>();
    for (Column<?> column : sheet.columns()) {
      header.add(text(column.name() + (column.code().isEmpty() ? "" : " (" + column.code() + ")")));
    }
    StringBuilder lines = new StringBuilder(line(header));
    for (List<Cell> row : sheet.cells()) {
      lines.append(line(row.stream().map(CsvText::cell).toList()));
    }
    return lines.toString();
  }

  private static String cell(Cell cell) {
    return cell.number()
        .map(number -> number.stripTrailingZeros().toPlainString())
        .orElseGet(() -> text(cell.shown()));
  }

  /**
   * One line of cells that are ready.
   *
   * @param cells numbers, or text from {@link #text}
   * @return the line with its end
   */
  public static String line(List<String> cells) {
    return cells.stream().collect(Collectors.joining(",", "", "\r\n"));
  }

  /**
   * Text as a cell.
   *
   * @param text any text
   * @return the cell, quoted where it has to be
   */
  public static String text(String text) {
    boolean formula = !text.isEmpty() && STARTS_FORMULA.indexOf(text.charAt(0)) >= 0;
    if (!formula && text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n')) {
      return text;
    }
    return '"' + (formula ? "'" : "") + text.replace("\"", "\"\"") + '"';
  }
}
