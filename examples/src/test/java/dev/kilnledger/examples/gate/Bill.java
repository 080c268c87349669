package dev.kilnledger.examples.gate;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a module brings along when it runs, by the bill of materials that the build writes. */
final class Bill {
  /**
   * State "BSD" alone, which the bill takes for the oldest form; their licence files hold the one
   * of three clauses.
   */
  private static final Set<String> UNITS_GROUPS = Set.of("tech.uom.lib", "systems.uom");

  private Bill() {}

  /**
   * An artifact with the licences that its project states, and its SHA-256; empty if it is ours.
   */
  record Component(String group, String name, String version, List<String> licences, String hash) {
    String coordinates() {
      return group + ":" + name + ":" + version;
    }

    boolean isOurs() {
      return group.equals("dev.kilnledger");
    }
  }

  /** {@return whether there is one; a build without a network writes none} */
  static boolean isWritten() {
    return !"offline true".equals(System.getProperty("kilnledger.build"))
        || Files.exists(file(LibraryModule.COSTING));
  }

  private static Path file(LibraryModule module) {
    return Path.of("..", module.folder(), "target", "bom.json");
  }

  static List<Component> of(LibraryModule module) throws IOException {
    Path file = file(module);
    if (!Files.exists(file)) {
      throw new IOException(
          file + " is missing; it is written by the build, as in: mvn -pl examples -am test");
    }
    try (JsonParser parser = new JsonFactory().createParser(file.toFile())) {
      parser.nextToken();
      List<Component> components = new ArrayList<>();
      for (Object component : list(map(value(parser)).get("components"))) {
        components.add(component(map(component)));
      }
      components.sort(Comparator.comparing(Component::coordinates));
      return components;
    }
  }

  private static Component component(Map<?, ?> component) {
    List<String> licences = new ArrayList<>();
    for (Object choice : list(component.get("licenses"))) {
      Map<?, ?> licence = map(map(choice).get("license"));
      Object id = licence.get("id");
      licences.add(String.valueOf(id == null ? licence.get("name") : id));
    }
    if (UNITS_GROUPS.contains(component.get("group"))) {
      licences.replaceAll(licence -> licence.equals("BSD-4-Clause") ? "BSD-3-Clause" : licence);
    }
    if (licences.contains("EPL-2.0")) {
      licences.remove("GPL-2.0-with-classpath-exception");
    }
    String hash = "";
    for (Object entry : list(component.get("hashes"))) {
      if ("SHA-256".equals(map(entry).get("alg"))) {
        hash = String.valueOf(map(entry).get("content"));
      }
    }
    return new Component(
        String.valueOf(component.get("group")),
        String.valueOf(component.get("name")),
        String.valueOf(component.get("version")),
        licences,
        hash);
  }

  private static Map<?, ?> map(Object value) {
    return value == null ? Map.of() : (Map<?, ?>) value;
  }

  private static List<?> list(Object value) {
    return value == null ? List.of() : (List<?>) value;
  }

  private static Object value(JsonParser parser) throws IOException {
    if (parser.currentToken() == JsonToken.START_OBJECT) {
      Map<String, Object> map = new LinkedHashMap<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String name = parser.currentName();
        parser.nextToken();
        map.put(name, value(parser));
      }
      return map;
    }
    if (parser.currentToken() == JsonToken.START_ARRAY) {
      List<Object> list = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        list.add(value(parser));
      }
      return list;
    }
    return parser.getText();
  }
}
