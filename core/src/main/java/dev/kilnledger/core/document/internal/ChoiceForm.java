package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One of several kinds of object, told apart by its field {@code "type"}.
 *
 * @param <T> what they have in common
 */
public final class ChoiceForm<T> extends Form<T> {
  private static final String TYPE = "type";

  private final String name;
  private final Map<String, Variant<? extends T>> variants = new LinkedHashMap<>();

  private ChoiceForm(String name) {
    this.name = name;
  }

  /**
   * Starts a form without kinds of object.
   *
   * @param <T> what they have in common
   * @param name its name in the schema
   * @return the form
   */
  public static <T> ChoiceForm<T> named(String name) {
    return new ChoiceForm<>(name);
  }

  private static final class Variant<V> {
    private final Class<V> type;
    private final ObjectForm<V> form;

    Variant(Class<V> type, ObjectForm<V> form) {
      this.type = type;
      this.form = form;
    }
  }

  /**
   * Adds a kind of object.
   *
   * @param <V> the kind
   * @param word what its field {@code "type"} says
   * @param type the kind
   * @param form its other fields
   * @return this
   */
  public <V extends T> ChoiceForm<T> with(String word, Class<V> type, ObjectForm<V> form) {
    variants.put(word, new Variant<>(type, form));
    return this;
  }

  @Override
  @Nullable T read(JsonValue value, String path, Reading reading) {
    String accepted = "one of " + String.join(", ", variants.keySet());
    if (!isType(value, JsonValue.Type.OBJECT, path, reading)) {
      return null;
    }
    JsonValue type = value.fields().get(TYPE);
    if (type == null) {
      reading.problem(value, path, "the field " + TYPE + " is missing", accepted);
      return null;
    }
    Variant<? extends T> variant = variants.get(type.text());
    if (type.type() != JsonValue.Type.TEXT || variant == null) {
      reading.problem(type, path + "/" + TYPE, type.shown() + " stands there", accepted);
      return null;
    }
    return variant.form.read(value.without(TYPE), path, reading);
  }

  @Override
  String accepted() {
    return "an object with a field " + TYPE;
  }

  @Override
  void write(T value, JsonGenerator out) throws IOException {
    for (Map.Entry<String, Variant<? extends T>> variant : variants.entrySet()) {
      if (variant.getValue().type.isInstance(value)) {
        out.writeStartObject();
        out.writeStringField(TYPE, variant.getKey());
        writeFields(variant.getValue(), value, out);
        out.writeEndObject();
        return;
      }
    }
    throw new IllegalArgumentException("there is no form for " + value);
  }

  private static <V> void writeFields(Variant<V> variant, Object value, JsonGenerator out)
      throws IOException {
    variant.form.writeFields(variant.type.cast(value), out);
  }

  @Override
  Map<String, Object> schema(Definitions definitions) {
    return definitions.reference(
        name,
        () -> {
          List<Object> kinds = new ArrayList<>();
          variants.forEach(
              (word, variant) -> {
                Map<String, Object> body = variant.form.body(definitions);
                kinds.add(DocumentForm.withField(body, TYPE, Map.of("const", word)));
              });
          return Map.of("oneOf", kinds);
        });
  }
}
