package dev.kilnledger.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ShellTest {
  private static final String START = read(Shell.script("start.jsh"));

  @Test
  void theTourRunsAndPrintsWhatIsPinned() throws IOException {
    try (JShellScript session = new JShellScript()) {
      session.run(START);
      String printed = session.run(read(Shell.script("tour.jsh")));
      assertThat(printed).isEqualTo(read(Path.of("src", "test", "resources", "tour.txt")));
      assertThat(printed.lines()).allMatch(line -> line.length() <= 100);
    }
    for (String file : List.of("core", "cash", "charges", "metals")) {
      assertThat(Path.of("target", "tour", file + ".csv")).isNotEmptyFile();
    }
    assertThat(Files.readString(Path.of("target", "tour", "charges.csv")))
        .startsWith(
            "parts,energy (kW.h),core lag (K),usage per part (EUR),average of 100 (EUR),worst"
                + " finding\r\n");
  }

  @Test
  void everythingIsImported() {
    for (String module : List.of("units", "core", "thermal", "costing")) {
      String descriptor = read(Path.of("..", module, "src/main/java/module-info.java"));
      Pattern.compile("exports ([a-z.]+);")
          .matcher(descriptor)
          .results()
          .map(export -> "import " + export.group(1) + ".*;\n")
          .forEach(line -> assertThat(START).contains(line));
    }
  }

  /**
   * A name that stands in two packages would mean neither of them, so one is imported by itself.
   */
  @Test
  void everyNameMeansOneType() throws IOException {
    Map<String, Integer> names = new TreeMap<>();
    for (String module : List.of("units", "core", "thermal", "costing")) {
      Path sources = Path.of("..", module, "src/main/java");
      try (Stream<Path> files = Files.walk(sources)) {
        files
            .filter(file -> file.toString().endsWith(".java"))
            .filter(file -> START.contains("import " + packageOf(sources, file) + ".*;"))
            .filter(file -> read(file).contains("\npublic "))
            .forEach(file -> names.merge(file.getFileName().toString(), 1, Integer::sum));
      }
    }
    assertThat(names).hasSizeGreaterThan(300);
    names.forEach(
        (file, packages) -> {
          if (packages > 1) {
            assertThat(START).contains("." + file.replace(".java", ";\n"));
          }
        });
  }

  private static String packageOf(Path sources, Path file) {
    return sources.relativize(file.getParent()).toString().replace(File.separatorChar, '.');
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
