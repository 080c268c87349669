package dev.kilnledger.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
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

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
