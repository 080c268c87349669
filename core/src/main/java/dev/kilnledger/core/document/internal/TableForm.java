package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Values as a table of comma-separated values, one in each line below a header of column names. A
 * column is named after the field that it holds, with dots where fields lie in each other; an empty
 * cell stands for a field left out. What a row means is told by the form that the value has in JSON
 * documents as well.
 *
 * @param <T> the value of a row
 */
public final class TableForm<T> {
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final ObjectForm<T> row;
  private final Map<String, Cell> columns = new LinkedHashMap<>();
  private final List<String> required = new ArrayList<>();

  /**
   * A table without columns.
   *
   * @param row the form of a row
   */
  public TableForm(ObjectForm<T> row) {
    this.row = row;
  }

  /**
   * Adds a column that has to be there.
   *
   * @param name its name
   * @param cell how the field stands in it
   * @return this
   */
  public TableForm<T> required(String name, Cell cell) {
    required.add(name);
    return optional(name, cell);
  }

  /**
   * Adds a column that may be left out; it is written if a row has something in it.
   *
   * @param name its name
   * @param cell how the field stands in it
   * @return this
   */
  public TableForm<T> optional(String name, Cell cell) {
    columns.put(name, cell);
    return this;
  }

  /** The column of a field. */
  static String columnOf(String path) {
    return path.substring(1).replace('/', '.');
  }

  /**
   * Reads a table.
   *
   * @param source its bytes, UTF-8
   * @param limits how large it may be
   * @return the values in their order
   * @throws UnreadableInputException if it is not such a table, with all problems
   * @throws IOException if the bytes cannot be read
   */
  public List<T> read(ByteSource source, DocumentLimits limits) throws IOException {
    Reading reading = new Reading();
    String text = text(source, limits, reading);
    List<T> values = text == null ? List.of() : read(text, limits, reading);
    reading.refuseIfAny();
    return values;
  }

  private static @Nullable String text(ByteSource source, DocumentLimits limits, Reading reading)
      throws IOException {
    int most = (int) Math.min(limits.bytes(), Integer.MAX_VALUE - 16);
    try (InputStream in = source.open()) {
      byte[] bytes = in.readNBytes(most + 1);
      if (bytes.length > most) {
        reading.problem("table", "it is too large", "up to " + most + " bytes");
        return null;
      }
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      reading.problem("table", "its bytes are no UTF-8", "text in UTF-8");
      return null;
    }
  }

  private List<T> read(String text, DocumentLimits limits, Reading reading) {
    List<CsvText.Row> rows = CsvText.read(text, limits.textLength(), reading);
    if (rows.isEmpty()) {
      reading.problem("line 1", "there is no header", String.join(",", columns.keySet()));
      return List.of();
    }
    List<String> header = rows.get(0).fields();
    List<T> values = new ArrayList<>();
    if (!isHeader(header, reading)) {
      return values; // without it nothing can be said of the rows
    }
    for (CsvText.Row line : rows.subList(1, rows.size())) {
      if (line.fields().size() != header.size()) {
        reading.problem(
            "line " + line.line(),
            line.fields().size() + " fields stand there",
            header.size() + " as in the header");
        continue;
      }
      T value = row.read(value(header, line), "", reading);
      if (value != null) {
        values.add(value);
      }
    }
    return values;
  }

  private boolean isHeader(List<String> header, Reading reading) {
    boolean fine = true;
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i);
      if (!columns.containsKey(name)) {
        reading.problem(
            "line 1, column " + (i + 1),
            "the column "
                + JsonValue.scalar(JsonValue.Type.TEXT, name, 1, 0).shown()
                + " is not known",
            String.join(",", columns.keySet()) + ", with commas between them");
        fine = false;
      } else if (header.indexOf(name) < i) {
        reading.problem(
            "line 1, column " + (i + 1), "the column " + name + " stands twice", "once");
        fine = false;
      }
    }
    for (String name : required) {
      if (!header.contains(name)) {
        reading.problem("line 1", "the column " + name + " is missing", "a header with it");
        fine = false;
      }
    }
    return fine;
  }

  private JsonValue value(List<String> header, CsvText.Row line) {
    Map<String, JsonValue> fields = new LinkedHashMap<>();
    for (int i = 0; i < header.size(); i++) {
      String text = line.fields().get(i);
      if (!text.isEmpty()) {
        Cell cell = Objects.requireNonNull(columns.get(header.get(i)));
        Cell.put(fields, header.get(i), cell.read(text, line.line()), line.line());
      }
    }
    return JsonValue.object(fields, line.line(), 0);
  }

  /**
   * Writes a table in UTF-8, lines ended by carriage return and line feed.
   *
   * @param values the values
   * @param out takes the bytes; it is flushed and left open
   * @throws IOException if they cannot be written
   */
  public void write(List<T> values, OutputStream out) throws IOException {
    List<JsonValue> rows = new ArrayList<>();
    for (T value : values) {
      rows.add(tree(value));
    }
    List<String> header =
        columns.keySet().stream()
            .filter(
                name ->
                    required.contains(name)
                        || rows.stream()
                            .anyMatch(row -> Cell.at(row, name).type() != JsonValue.Type.NULL))
            .toList();
    StringBuilder text = new StringBuilder();
    CsvText.write(header, text);
    for (JsonValue line : rows) {
      CsvText.write(header.stream().map(name -> cell(name, Cell.at(line, name))).toList(), text);
    }
    out.write(text.toString().getBytes(StandardCharsets.UTF_8));
    out.flush();
  }

  private String cell(String name, JsonValue value) {
    return value.type() == JsonValue.Type.NULL
        ? ""
        : Objects.requireNonNull(columns.get(name)).write(value);
  }

  /** What the value is in a JSON document. */
  private JsonValue tree(T value) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator json = JsonFactory.builder().build().createGenerator(bytes)) {
      row.write(value, json);
    }
    JsonValue tree =
        JsonTree.read(ByteSource.of(bytes.toByteArray()), DocumentLimits.standard(), new Reading());
    return Objects.requireNonNull(tree);
  }

  /**
   * The table as text.
   *
   * @param values the values
   * @return the text
   */
  public String text(List<T> values) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      write(values, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
