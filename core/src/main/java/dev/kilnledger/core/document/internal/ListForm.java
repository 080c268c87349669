package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Several values in their order, or each at most once. */
final class ListForm<T> extends Form<List<T>> {
  private final Form<T> item;
  private final boolean distinct;

  ListForm(Form<T> item, boolean distinct) {
    this.item = item;
    this.distinct = distinct;
  }

  @Override
  @Nullable List<T> read(JsonValue value, String path, Reading reading) {
    if (!isType(value, JsonValue.Type.LIST, path, reading)) {
      return null;
    }
    List<T> read = new ArrayList<>();
    for (int i = 0; i < value.items().size(); i++) {
      JsonValue one = value.items().get(i);
      T of = item.read(one, path + "/" + i, reading);
      if (of != null && distinct && read.contains(of)) {
        reading.problem(one, path + "/" + i, one.shown() + " stands twice", "each once");
      } else if (of != null) {
        read.add(of);
      }
    }
    return read.size() == value.items().size() ? read : null;
  }

  @Override
  String accepted() {
    return "a list";
  }

  @Override
  void write(List<T> values, JsonGenerator out) throws IOException {
    out.writeStartArray();
    for (T value : values) {
      item.write(value, out);
    }
    out.writeEndArray();
  }

  @Override
  Map<String, Object> schema(Definitions definitions) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("type", "array");
    schema.put("items", item.schema(definitions));
    if (distinct) {
      schema.put("uniqueItems", true);
    }
    return schema;
  }
}
