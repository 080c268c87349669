package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Values by a key that is written as text, in the order of the text. */
final class MapForm<K, V> extends Form<Map<K, V>> {
  private final Function<String, K> key;
  private final Function<K, String> text;
  private final Form<V> item;

  MapForm(Function<String, K> key, Function<K, String> text, Form<V> item) {
    this.key = key;
    this.text = text;
    this.item = item;
  }

  @Override
  @Nullable Map<K, V> read(JsonValue value, String path, Reading reading) {
    if (!isType(value, JsonValue.Type.OBJECT, path, reading)) {
      return null;
    }
    Map<K, V> read = new LinkedHashMap<>();
    value
        .fields()
        .forEach(
            (name, field) -> {
              String place = path + "/" + escaped(name);
              try {
                K one = key.apply(name);
                V of = item.read(field, place, reading);
                if (of != null) {
                  read.put(one, of);
                }
              } catch (IllegalArgumentException e) {
                reading.refused(field, place, e);
              }
            });
    return read.size() == value.fields().size() ? read : null;
  }

  @Override
  String accepted() {
    return "an object";
  }

  @Override
  void write(Map<K, V> values, JsonGenerator out) throws IOException {
    Map<String, V> sorted = new TreeMap<>();
    values.forEach((one, of) -> sorted.put(text.apply(one), of));
    out.writeStartObject();
    for (Map.Entry<String, V> entry : sorted.entrySet()) {
      out.writeFieldName(entry.getKey());
      item.write(entry.getValue(), out);
    }
    out.writeEndObject();
  }

  @Override
  Map<String, Object> schema(Definitions definitions) {
    return Map.of("type", "object", "additionalProperties", item.schema(definitions));
  }
}
