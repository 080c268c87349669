package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.reading.ByteSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A document: an object that states its kind and version before its other fields.
 *
 * @param <T> the value
 */
public final class DocumentForm<T> implements Document<T> {
  private static final String KIND = "document";
  private static final String VERSION = "schemaVersion";

  private final String kind;
  private final int version;
  private final ObjectForm<T> form;

  /**
   * A document.
   *
   * @param kind its kind, such as {@code "materials"}
   * @param version the version of its form
   * @param form its other fields
   */
  public DocumentForm(String kind, int version, ObjectForm<T> form) {
    this.kind = kind;
    this.version = version;
    this.form = form;
  }

  @Override
  public String kind() {
    return kind;
  }

  @Override
  public int schemaVersion() {
    return version;
  }

  @Override
  public T read(ByteSource source, DocumentLimits limits) throws IOException {
    Reading reading = new Reading();
    JsonValue value = JsonTree.read(source, limits, reading);
    T read = value == null ? null : read(value, reading);
    reading.refuseIfAny();
    return Objects.requireNonNull(read, kind);
  }

  private @Nullable T read(JsonValue value, Reading reading) {
    if (!Form.isType(value, JsonValue.Type.OBJECT, "an object", "", reading)) {
      return null;
    }
    boolean fits = states(value, KIND, JsonValue.Type.TEXT, kind, reading);
    fits = states(value, VERSION, JsonValue.Type.NUMBER, String.valueOf(version), reading) && fits;
    // what is wrong with a document of another kind or version says nothing
    return fits ? form.read(value.without(KIND).without(VERSION), "", reading) : null;
  }

  private static boolean states(
      JsonValue value, String field, JsonValue.Type type, String expected, Reading reading) {
    JsonValue stated = value.fields().get(field);
    if (stated == null) {
      reading.problem(value, "", "the field " + field + " is missing", expected);
      return false;
    }
    if (stated.type() != type || !stated.text().equals(expected)) {
      reading.problem(stated, "/" + field, stated.shown() + " stands there", expected);
      return false;
    }
    return true;
  }

  @Override
  public void write(T value, OutputStream out) throws IOException {
    JsonGenerator json = generator(out);
    json.writeStartObject();
    json.writeStringField(KIND, kind);
    json.writeNumberField(VERSION, version);
    form.writeFields(value, json);
    json.writeEndObject();
    json.flush();
    out.write('\n');
    out.flush();
  }

  @Override
  public String text(T value) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      write(value, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  @Override
  public String schema() {
    Definitions definitions = new Definitions();
    Map<String, Object> body =
        withField(
            withField(form.body(definitions), VERSION, Map.of("const", version)),
            KIND,
            Map.of("const", kind));
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", "Kilnledger document: " + kind);
    schema.putAll(body);
    schema.put("$defs", definitions.all());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      JsonGenerator json = generator(bytes);
      writePlain(schema, json);
      json.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toString(StandardCharsets.UTF_8) + "\n";
  }

  private static JsonGenerator generator(OutputStream out) throws IOException {
    JsonGenerator json =
        JsonFactory.builder().build().createGenerator(out).setPrettyPrinter(new DocumentPrinter());
    return json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
  }

  private static void writePlain(Object value, JsonGenerator json) throws IOException {
    if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      // maps of a few constants have no order of their own
      for (Map.Entry<?, ?> entry : inOrder(map).entrySet()) {
        json.writeFieldName((String) entry.getKey());
        writePlain(entry.getValue(), json);
      }
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        writePlain(item, json);
      }
      json.writeEndArray();
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else {
      json.writeString((String) value);
    }
  }

  private static Map<?, ?> inOrder(Map<?, ?> map) {
    return map instanceof LinkedHashMap ? map : new TreeMap<>(map);
  }

  /** A schema of an object with one required field more, the first. */
  static Map<String, Object> withField(
      Map<String, Object> body, String field, Map<String, Object> schema) {
    Map<String, Object> properties = new LinkedHashMap<>();
    properties.put(field, schema);
    Map<?, ?> rest = (Map<?, ?>) Objects.requireNonNull(body.get("properties"));
    rest.forEach((name, of) -> properties.put((String) name, of));
    List<Object> required = new ArrayList<>();
    required.add(field);
    required.addAll((List<?>) Objects.requireNonNull(body.get("required")));
    Map<String, Object> result = new LinkedHashMap<>(body);
    result.put("properties", properties);
    result.put("required", required);
    return result;
  }
}
