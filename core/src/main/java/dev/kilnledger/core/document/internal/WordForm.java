package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One of several values, each told by a word. */
final class WordForm<E> extends Form<E> {
  private final Map<String, E> byWord;

  WordForm(Map<String, E> words) {
    byWord = new LinkedHashMap<>(words);
  }

  @Override
  @Nullable E read(JsonValue value, String path, Reading reading) {
    if (!isType(value, JsonValue.Type.TEXT, path, reading)) {
      return null;
    }
    E chosen = byWord.get(value.text());
    if (chosen == null) {
      reading.problem(value, path, value.shown() + " stands there", accepted());
    }
    return chosen;
  }

  @Override
  String accepted() {
    return "one of " + String.join(", ", byWord.keySet());
  }

  @Override
  void write(E value, JsonGenerator out) throws IOException {
    for (Map.Entry<String, E> word : byWord.entrySet()) {
      if (word.getValue().equals(value)) {
        out.writeString(word.getKey());
        return;
      }
    }
    throw new IllegalArgumentException("there is no word for " + value);
  }

  @Override
  Map<String, Object> schema(Definitions definitions) {
    return Map.of("enum", List.copyOf(byWord.keySet()));
  }
}
