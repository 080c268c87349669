package dev.kilnledger.core.document.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How a field of a document stands in a cell of a table. What is not of the form asked for is
 * passed on as text, so that the field's own form refuses it.
 */
public final class Cell {
  private static final Pattern NUMBER_TEXT =
      Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][-+]?[0-9]+)?");
  private static final String FORMULA_STARTS = "=+-@\t\r";

  /**
   * Text. Where it begins like a formula of a spreadsheet, with one of {@code = + - @}, a tab or a
   * carriage return, it is written after an apostrophe, so that it stays text there too; that
   * apostrophe is no part of it. A text that begins with an apostrophe gets a second one.
   */
  public static final Cell TEXT =
      new Cell((text, line) -> scalar(JsonValue.Type.TEXT, shown(text), line), Cell::guarded);

  /** A plain text that spreadsheets take for a number, a date or a word. */
  public static final Cell PLAIN =
      new Cell((text, line) -> scalar(JsonValue.Type.TEXT, text, line), JsonValue::text);

  /** A number. */
  public static final Cell NUMBER = new Cell(Cell::number, JsonValue::text);

  /** {@code true} or {@code false}. */
  public static final Cell TRUTH = new Cell(Cell::truth, JsonValue::text);

  /** An amount: a number, a space and a UCUM unit, or a number of pieces alone. */
  public static final Cell AMOUNT = new Cell(Cell::amount, Cell::amountText);

  /** How text becomes a value. */
  private interface Reader {
    JsonValue read(String text, int line);
  }

  private final Reader reader;
  private final Function<JsonValue, String> writer;

  private Cell(Reader reader, Function<JsonValue, String> writer) {
    this.reader = reader;
    this.writer = writer;
  }

  /**
   * A list of pairs: {@code 5: 74.00; 10: 70.00}.
   *
   * @param number the path of the number before the colon in an object of the list
   * @param text the path of the text behind it
   * @return the cell
   */
  public static Cell pairs(String number, String text) {
    return new Cell(
        (cell, line) -> {
          List<JsonValue> items = new ArrayList<>();
          for (String pair : cell.split(";", -1)) {
            String[] sides = pair.split(":", 2);
            Map<String, JsonValue> fields = new LinkedHashMap<>();
            put(fields, number, number(sides[0].strip(), line), line);
            if (sides.length > 1) {
              put(fields, text, scalar(JsonValue.Type.TEXT, sides[1].strip(), line), line);
            }
            items.add(JsonValue.object(fields, line, 0));
          }
          return JsonValue.list(items, line, 0);
        },
        list ->
            list.items().stream()
                .map(item -> at(item, number).text() + ": " + at(item, text).text())
                .collect(Collectors.joining("; ")));
  }

  JsonValue read(String text, int line) {
    return reader.read(text, line);
  }

  String write(JsonValue value) {
    return writer.apply(value);
  }

  /** Puts a value where its path leads, through objects that are made on the way. */
  static void put(Map<String, JsonValue> fields, String path, JsonValue value, int line) {
    int dot = path.indexOf('.');
    if (dot < 0) {
      fields.put(path, value);
      return;
    }
    String outer = path.substring(0, dot);
    JsonValue known = fields.get(outer);
    Map<String, JsonValue> inner =
        known == null ? new LinkedHashMap<>() : new LinkedHashMap<>(known.fields());
    put(inner, path.substring(dot + 1), value, line);
    fields.put(outer, JsonValue.object(inner, line, 0));
  }

  /** The value where a path leads, null in the document's sense where there is none. */
  static JsonValue at(JsonValue value, String path) {
    JsonValue found = value;
    for (String name : path.split("\\.", -1)) {
      found = found.fields().getOrDefault(name, scalar(JsonValue.Type.NULL, "", 0));
    }
    return found;
  }

  private static JsonValue scalar(JsonValue.Type type, String text, int line) {
    return JsonValue.scalar(type, text, line, 0);
  }

  private static JsonValue number(String text, int line) {
    boolean number = NUMBER_TEXT.matcher(text).matches();
    return scalar(number ? JsonValue.Type.NUMBER : JsonValue.Type.TEXT, text, line);
  }

  private static JsonValue truth(String text, int line) {
    boolean truth = text.equals("true") || text.equals("false");
    return scalar(truth ? JsonValue.Type.BOOLEAN : JsonValue.Type.TEXT, text, line);
  }

  private static JsonValue amount(String text, int line) {
    int space = text.indexOf(' ');
    JsonValue number = number(space < 0 ? text : text.substring(0, space), line);
    if (number.type() != JsonValue.Type.NUMBER) {
      return scalar(JsonValue.Type.TEXT, text, line);
    }
    String unit = space < 0 ? "1" : text.substring(space + 1);
    return JsonValue.object(
        Map.of("value", number, "unit", scalar(JsonValue.Type.TEXT, unit, line)), line, 0);
  }

  private static String amountText(JsonValue amount) {
    String number = at(amount, "value").text();
    String unit = at(amount, "unit").text();
    return unit.equals("1") ? number : number + " " + unit;
  }

  private static boolean beginsLikeFormula(String text) {
    return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
  }

  private static String guarded(JsonValue value) {
    String text = value.text();
    return beginsLikeFormula(text) || text.startsWith("'") ? "'" + text : text;
  }

  private static String shown(String cell) {
    boolean guarded =
        cell.startsWith("'") && (beginsLikeFormula(cell.substring(1)) || cell.startsWith("''"));
    return guarded ? cell.substring(1) : cell;
  }
}
