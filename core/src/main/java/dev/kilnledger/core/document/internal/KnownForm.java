package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A value that a library knows by name, told by that name, or one of its own. */
final class KnownForm<T> extends Form<T> {
  private final Map<String, T> byName;
  private final Function<T, String> name;
  private final Form<T> own;

  KnownForm(List<T> known, Function<T, String> name, Form<T> own) {
    this.byName =
        known.stream().collect(Collectors.toMap(name, one -> one, (a, b) -> a, TreeMap::new));
    this.name = name;
    this.own = own;
  }

  @Override
  @Nullable T read(JsonValue value, String path, Reading reading) {
    if (value.type() != JsonValue.Type.TEXT) {
      return own.read(value, path, reading);
    }
    T found = byName.get(value.text());
    if (found == null) {
      reading.problem(value, path, value.shown() + " is not known", accepted());
    }
    return found;
  }

  @Override
  String accepted() {
    return "an object"
        + (byName.isEmpty()
            ? ""
            : byName.keySet().stream()
                .map(one -> "\"" + one + "\"")
                .collect(Collectors.joining(", ", ", or one of the names ", "")));
  }

  @Override
  void write(T value, JsonGenerator out) throws IOException {
    if (value.equals(byName.get(name.apply(value)))) {
      out.writeString(name.apply(value));
    } else {
      own.write(value, out);
    }
  }

  @Override
  Map<String, Object> schema(Definitions definitions) {
    return Map.of("anyOf", List.of(Map.of("type", "string"), own.schema(definitions)));
  }
}
