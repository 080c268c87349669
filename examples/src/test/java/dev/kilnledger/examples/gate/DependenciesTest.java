package dev.kilnledger.examples.gate;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.kilnledger.examples.gate.Bill.Component;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What the published modules bring along: how much, under which licences, and byte by byte the
 * artifacts that are listed in DEPENDENCIES.md. {@code -Dkilnledger.write=true} writes the list.
 */
class DependenciesTest {
  private static final Path LIST = Path.of("..", "DEPENDENCIES.md");

  /** By SPDX; UCUM's terms of use let its table of units be copied and used as it is. */
  private static final Set<String> ACCEPTED =
      Set.of("Apache-2.0", "BSD-3-Clause", "EPL-2.0", "UCUM");

  @BeforeAll
  static void billsOfMaterialsAreWritten() {
    assumeTrue(Bill.isWritten(), "the build is offline");
  }

  /** The budget: artifacts of others that a module brings, and kilobytes of them. */
  @ParameterizedTest
  @CsvSource({"UNITS, 10, 550", "CORE, 19, 1700", "THERMAL, 21, 1850", "COSTING, 22, 1900"})
  void othersStayWithinTheBudget(LibraryModule module, int artifacts, int kilobytes)
      throws IOException {
    List<Component> others = others(module);
    assertThat(others).as("artifacts").hasSize(artifacts);
    long bytes = 0;
    for (Component other : others) {
      bytes += Files.size(jar(other));
    }
    assertThat(bytes).as("bytes").isLessThanOrEqualTo(kilobytes * 1000L);
  }

  /** The budget of our own classes and resources, in kilobytes before they are packed. */
  @ParameterizedTest
  @CsvSource({"UNITS, 110", "CORE, 1750", "THERMAL, 3150", "COSTING, 3550"})
  void ourOwnStayWithinTheBudget(LibraryModule module, int kilobytes) {
    long bytes =
        module.files().entrySet().stream()
            .filter(file -> !file.getKey().startsWith("META-INF/maven/"))
            .mapToLong(file -> file.getValue().length)
            .sum();
    assertThat(bytes).isLessThanOrEqualTo(kilobytes * 1000L);
  }

  @ParameterizedTest
  @EnumSource
  void licencesAreAccepted(LibraryModule module) throws IOException {
    for (Component component : Bill.of(module)) {
      assertThat(component.licences())
          .as("licences of %s", component.coordinates())
          .isNotEmpty()
          .isSubsetOf(ACCEPTED);
    }
  }

  @Test
  void listIsTheOneOfTheBuild() throws IOException {
    Map<String, Component> all = new TreeMap<>();
    Map<String, Set<String>> modules = new TreeMap<>();
    for (LibraryModule module : LibraryModule.values()) {
      for (Component other : others(module)) {
        all.put(other.coordinates(), other);
        modules
            .computeIfAbsent(other.coordinates(), key -> new LinkedHashSet<>())
            .add(module.folder());
      }
    }
    String text =
        all.values().stream()
            .map(
                it ->
                    "| %s | %s | %s | `%s` |\n"
                        .formatted(
                            it.coordinates(),
                            String.join(", ", it.licences()),
                            String.join(", ", modules.get(it.coordinates())),
                            it.hash()))
            .collect(
                Collectors.joining(
                    "",
                    """
                    # What the library brings along

                    All artifacts that run with the four modules, with the licences that their projects state.
                    Written by `DependenciesTest`, which holds the build against it; the hash is of the jar.

                    | artifact | licence | brought by | SHA-256 |
                    |---|---|---|---|
                    """,
                    ""));
    if (Boolean.getBoolean("kilnledger.write")) {
      Files.writeString(LIST, text, UTF_8);
    }
    assertThat(text).isEqualToNormalizingNewlines(Files.readString(LIST, UTF_8));
  }

  private static List<Component> others(LibraryModule module) throws IOException {
    return Bill.of(module).stream().filter(component -> !component.isOurs()).toList();
  }

  private static Path jar(Component component) {
    String name = component.name() + "-" + component.version() + ".jar";
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
      if (entry.endsWith(name)) {
        return Path.of(entry);
      }
    }
    throw new AssertionError(name + " is not on the class path");
  }
}
