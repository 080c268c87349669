package dev.kilnledger.core.document.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of a JSON document, with its place. */
final class JsonValue {
  /** What it is. */
  enum Type {
    TEXT("text"),
    NUMBER("a number"),
    BOOLEAN("true or false"),
    NULL("null"),
    LIST("a list"),
    OBJECT("an object");

    private final String words;

    Type(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  private static final int LONGEST_SHOWN = 60;

  private final Type type;
  private final String text;
  private final List<JsonValue> items;
  private final Map<String, JsonValue> fields;
  private final int line;
  private final int column;

  private JsonValue(
      Type type,
      String text,
      List<JsonValue> items,
      Map<String, JsonValue> fields,
      int line,
      int column) {
    this.type = type;
    this.text = text;
    this.items = items;
    this.fields = fields;
    this.line = line;
    this.column = column;
  }

  static JsonValue scalar(Type type, String text, int line, int column) {
    return new JsonValue(type, text, List.of(), Map.of(), line, column);
  }

  static JsonValue list(List<JsonValue> items, int line, int column) {
    return new JsonValue(Type.LIST, "", items, Map.of(), line, column);
  }

  static JsonValue object(Map<String, JsonValue> fields, int line, int column) {
    return new JsonValue(Type.OBJECT, "", List.of(), fields, line, column);
  }

  Type type() {
    return type;
  }

  /** The characters of text, number or truth value. */
  String text() {
    return text;
  }

  List<JsonValue> items() {
    return items;
  }

  Map<String, JsonValue> fields() {
    return fields;
  }

  /** This object without a field. */
  JsonValue without(String field) {
    Map<String, JsonValue> rest = new LinkedHashMap<>(fields);
    rest.remove(field);
    return object(rest, line, column);
  }

  /** The place in a document; of the cells of a table, which have no column number, its name. */
  String where(String path) {
    if (column > 0) {
      return "line " + line + ", column " + column + ", " + (path.isEmpty() ? "/" : path);
    }
    return "line " + line + (path.isEmpty() ? "" : ", column " + TableForm.columnOf(path));
  }

  /** The value for a message. */
  String shown() {
    return switch (type) {
      case TEXT -> "\"" + abridged() + "\"";
      case NUMBER, BOOLEAN -> abridged();
      default -> type.words();
    };
  }

  private String abridged() {
    if (text.length() <= LONGEST_SHOWN) {
      return text;
    }
    boolean pair = Character.isHighSurrogate(text.charAt(LONGEST_SHOWN - 1));
    return text.substring(0, pair ? LONGEST_SHOWN - 1 : LONGEST_SHOWN) + "…";
  }
}
