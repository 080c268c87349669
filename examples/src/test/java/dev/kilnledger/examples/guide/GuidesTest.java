package dev.kilnledger.examples.guide;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.examples.JShellScript;
import dev.kilnledger.examples.guide.Guide.Block;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the guides show stands in programs that compile, and is what they print. */
class GuidesTest {
  private static final String SOURCES = programs();

  static Stream<String> guides() {
    try (Stream<Path> files = Files.list(Path.of("guides"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".md"))
          .sorted()
          .toList()
          .stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All programs of the examples, with lines moved to the left as a guide has them. */
  private static String programs() {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .sorted()
          .map(Guide::file)
          .map(GuidesTest::leftOfItsMarks)
          .collect(Collectors.joining("\n"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String leftOfItsMarks(String program) {
    return program
        .lines()
        .map(line -> line.replaceFirst("^ {4}", ""))
        .collect(Collectors.joining("\n"));
  }

  @ParameterizedTest
  @MethodSource("guides")
  void everyProgramShownIsCompiled(String guide) {
    assertThat(Guide.read(guide).blocksOf("java"))
        .allSatisfy(shown -> assertThat(SOURCES).contains(shown.strip()));
  }

  @ParameterizedTest
  @MethodSource("guides")
  void everyClassNamedExists(String guide) {
    List<String> names =
        Pattern.compile("`((?:units|core|thermal|costing|examples)(?:\\.[a-z]+)*\\.[A-Z]\\w+)`")
            .matcher(Guide.read(guide).text())
            .results()
            .map(result -> result.group(1))
            .toList();
    for (String name : names) {
      assertThat(exists("dev.kilnledger." + name)).as(name).isTrue();
    }
  }

  private static boolean exists(String name) {
    try {
      Class.forName(name, false, GuidesTest.class.getClassLoader());
      return true;
    } catch (ClassNotFoundException e) {
      return false;
    }
  }

  @ParameterizedTest
  @MethodSource("guides")
  void everyFileLinkedIsThere(String guide) {
    Pattern.compile("\\]\\(([^)#]+)\\)")
        .matcher(Guide.read(guide).text())
        .results()
        .map(link -> link.group(1))
        .filter(link -> !link.startsWith("https:"))
        .forEach(link -> assertThat(Path.of("guides", link)).exists());
  }

  /** The blocks of a guide to research run one after the other in one session. */
  @Test
  void theSessionShownPrintsWhatIsShown() {
    try (JShellScript session = new JShellScript()) {
      session.run(Guide.file(Path.of("jshell", "start.jsh")));
      String printed = "";
      for (Block block : Guide.read("research.md").blocks()) {
        if (block.language().equals("jsh")) {
          printed = session.run(block.text());
        } else if (block.language().equals("text")) {
          assertThat(printed.strip().replace("\r\n", "\n")).isEqualTo(block.text().strip());
        }
      }
    }
  }

  @Test
  void embeddingPrintsWhatIsShown() {
    String printed = printedBy(() -> Embedding.main(new String[0]));
    assertThat(Guide.read("embedding.md").blocksOf("text"))
        .isNotEmpty()
        .allSatisfy(shown -> assertThat(printed).contains(shown));
  }

  @ParameterizedTest
  @ValueSource(strings = "guides/tile.gcode")
  void thePrintProgrammePrintsWhatIsShown(String programme) {
    String printed =
        printedBy(
            () -> {
              try {
                PrintProgrammes.main(new String[] {programme});
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    assertThat(Guide.read("print-programmes.md").blocksOf("text"))
        .isNotEmpty()
        .allSatisfy(shown -> assertThat(printed).contains(shown));
  }

  @Test
  void thePageOfTheDataIsWhatTheLibraryHolds() {
    assertThat(Guide.file(Path.of("guides", "data.md"))).isEqualTo(DataPage.text());
  }

  private static String printedBy(Runnable program) {
    PrintStream before = System.out;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
      program.run();
    } finally {
      System.setOut(before);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
