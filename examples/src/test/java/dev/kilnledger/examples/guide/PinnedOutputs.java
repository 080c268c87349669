package dev.kilnledger.examples.guide;

import dev.kilnledger.examples.JShellScript;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;

/**
 * Writes again what the tour and the session of the guide to research print, and the page of the
 * data, after a change that was meant. Read the difference before it is kept.
 */
public final class PinnedOutputs {
  private PinnedOutputs() {}

  /**
   * Writes the files, in the folder of the examples.
   *
   * @param arguments none
   * @throws IOException if one cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    String start = Guide.file(Path.of("jshell", "start.jsh"));
    try (JShellScript tour = new JShellScript()) {
      tour.run(start);
      Files.writeString(
          Path.of("src", "test", "resources", "tour.txt"),
          tour.run(Guide.file(Path.of("jshell", "tour.jsh"))));
    }
    try (JShellScript session = new JShellScript()) {
      session.run(start);
      Files.writeString(Path.of("guides", "research.md"), research(session));
    }
    Files.writeString(Path.of("guides", "data.md"), DataPage.text());
  }

  private static String research(JShellScript session) {
    Matcher block = Guide.FENCED.matcher(Guide.read("research.md").text());
    StringBuilder text = new StringBuilder();
    String printed = "";
    while (block.find()) {
      if (block.group(1).equals("jsh")) {
        printed = session.run(block.group(2)).strip().replace("\r\n", "\n");
      } else if (block.group(1).equals("text")) {
        block.appendReplacement(text, Matcher.quoteReplacement("```text\n" + printed + "\n```"));
      }
    }
    return block.appendTail(text).toString();
  }
}
