package dev.kilnledger.core.document.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** The named schemas of a document. */
final class Definitions {
  private final Map<String, Map<String, Object>> byName = new TreeMap<>();

  /** A reference to a named schema, which is made when it is first asked for. */
  Map<String, Object> reference(String name, Supplier<Map<String, Object>> schema) {
    if (!byName.containsKey(name)) {
      // a form that holds itself finds its name taken
      byName.put(name, Map.of());
      byName.put(name, schema.get());
    }
    return Map.of("$ref", "#/$defs/" + name);
  }

  Map<String, Object> all() {
    return new LinkedHashMap<>(byName);
  }
}
