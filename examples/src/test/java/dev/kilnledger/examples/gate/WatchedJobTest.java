package dev.kilnledger.examples.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordingFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A whole job computed in a fresh virtual machine touches nothing but its own classes. */
class WatchedJobTest {
  private static final Path JOB =
      Path.of("src", "test", "resources", "golden", "10-bronze-everything-stated.json")
          .toAbsolutePath();
  private static final Path HOME = Path.of(System.getProperty("java.home"));

  @TempDir Path folder;

  @Test
  void jobReadsNoFileAndUsesNoNetwork() throws Exception {
    assertThat(touched()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "file, jdk.FileRead",
    "socket, jdk.SocketWrite",
    "process, jdk.ProcessStart",
  })
  void watchSeesATrespass(String trespass, String event) throws Exception {
    assertThat(touched(trespass)).anyMatch(it -> it.startsWith(event));
  }

  private Set<String> touched(String... trespass) throws IOException, InterruptedException {
    Path recording = folder.resolve("job.jfr");
    List<String> command =
        new ArrayList<>(
            List.of(
                HOME.resolve(Path.of("bin", "java")).toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Watched.class.getName(),
                recording.toString(),
                JOB.toString()));
    command.addAll(List.of(trespass));
    Path output = folder.resolve("output.txt");
    Process run =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    assertThat(run.waitFor(2, TimeUnit.MINUTES)).as("finished").isTrue();
    assertThat(run.exitValue()).as(Files.readString(output)).isZero();
    Set<String> touched = new TreeSet<>();
    for (RecordedEvent event : RecordingFile.readAllEvents(recording)) {
      if (!isLoadingOfClasses(event)) {
        touched.add(event.getEventType().getName() + ": " + what(event));
      }
    }
    return touched;
  }

  private static boolean isLoadingOfClasses(RecordedEvent event) {
    if (!event.getEventType().getName().equals("jdk.FileRead") || event.getString("path") == null) {
      return false;
    }
    Path path = Path.of(event.getString("path")).toAbsolutePath();
    if (path.startsWith(HOME)) {
      return true;
    }
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
      if (!entry.isEmpty() && path.startsWith(Path.of(entry).toAbsolutePath())) {
        return true;
      }
    }
    return false;
  }

  private static String what(RecordedEvent event) {
    for (String field : List.of("path", "host", "command")) {
      if (event.hasField(field)) {
        return String.valueOf(event.<Object>getValue(field));
      }
    }
    return event.toString();
  }
}
