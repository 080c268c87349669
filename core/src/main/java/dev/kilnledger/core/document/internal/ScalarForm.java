package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A text, a number or a truth value. */
final class ScalarForm<T> extends Form<T> {
  /** How it is written. */
  interface Writer<T> {
    void write(T value, JsonGenerator out) throws IOException;
  }

  private final JsonValue.Type type;
  private final String accepted;
  private final Function<String, T> parser;
  private final Writer<T> writer;
  private final Map<String, Object> schema;

  /**
   * A form.
   *
   * @param type what stands in the document
   * @param accepted what is accepted, for messages
   * @param parser makes the value of its characters; refuses with an IllegalArgumentException
   * @param writer writes the value
   * @param schema its schema
   */
  ScalarForm(
      JsonValue.Type type,
      String accepted,
      Function<String, T> parser,
      Writer<T> writer,
      Map<String, Object> schema) {
    this.type = type;
    this.accepted = accepted;
    this.parser = parser;
    this.writer = writer;
    this.schema = schema;
  }

  /** A value that stands as text. */
  static <T> ScalarForm<T> text(
      String accepted,
      Function<String, T> parser,
      Function<T, String> printer,
      Map<String, Object> schema) {
    return new ScalarForm<>(
        JsonValue.Type.TEXT,
        accepted,
        parser,
        (value, out) -> out.writeString(printer.apply(value)),
        schema);
  }

  @Override
  @Nullable T read(JsonValue value, String path, Reading reading) {
    if (!isType(value, type, path, reading)) {
      return null;
    }
    try {
      return parser.apply(value.text());
    } catch (IllegalArgumentException e) {
      reading.problem(value, path, value.shown() + " stands there", accepted);
      return null;
    }
  }

  @Override
  String accepted() {
    return accepted;
  }

  @Override
  void write(T value, JsonGenerator out) throws IOException {
    writer.write(value, out);
  }

  @Override
  Map<String, Object> schema(Definitions definitions) {
    return schema;
  }
}
