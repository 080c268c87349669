package dev.kilnledger.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.execution.LocalExecutionControlProvider;

/** A session that runs scripts in this process and refuses a snippet that does not work. */
public final class JShellScript implements AutoCloseable {
  /** The shell puts its own in its place, for the thread that starts it. */
  private final ClassLoader contextBefore = Thread.currentThread().getContextClassLoader();

  private final JShell shell =
      JShell.builder().executionEngine(new LocalExecutionControlProvider(), Map.of()).build();

  /** Starts with nothing imported. */
  public JShellScript() {
    shell.addToClasspath(Shell.classPath());
  }

  /**
   * {@return what the snippets of a text print, each having been accepted and run}
   *
   * @param text read line by line, as the shell reads what is typed
   */
  public String run(String text) {
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      SourceCodeAnalysis analysis = shell.sourceCodeAnalysis();
      StringBuilder snippet = new StringBuilder();
      for (String line : text.lines().toList()) {
        snippet.append(line).append('\n');
        CompletionInfo read = analysis.analyzeCompletion(snippet.toString());
        while (read.completeness().isComplete()) {
          shell.eval(read.source()).forEach(this::accepted);
          snippet.setLength(0);
          snippet.append(read.remaining());
          read = analysis.analyzeCompletion(read.remaining());
        }
      }
      assertThat(analysis.analyzeCompletion(snippet.toString()).completeness())
          .as("%s", snippet)
          .isEqualTo(SourceCodeAnalysis.Completeness.EMPTY);
    } finally {
      System.setOut(before);
    }
    return printed.toString(StandardCharsets.UTF_8);
  }

  private void accepted(SnippetEvent event) {
    String source = event.snippet().source();
    assertThat(event.status())
        .as(
            "%s\n%s",
            source, shell.diagnostics(event.snippet()).map(d -> d.getMessage(null)).toList())
        .isEqualTo(Snippet.Status.VALID);
    assertThat(event.exception()).as("%s", source).isNull();
  }

  @Override
  public void close() {
    shell.close();
    Thread.currentThread().setContextClassLoader(contextBefore);
  }
}
