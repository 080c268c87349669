package dev.kilnledger.examples.gate;

import dev.kilnledger.costing.document.JobDesk;
import dev.kilnledger.costing.document.JobReply;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import jdk.jfr.Recording;

/**
 * Run in a virtual machine of its own, which records what it reads, writes, connects to and starts:
 * a whole job from its document to the answer document. With a further argument it does what the
 * library must not, to show that the watch sees it.
 */
final class Watched {
  static final List<String> EVENTS =
      List.of(
          "jdk.FileRead", "jdk.FileWrite", "jdk.SocketRead", "jdk.SocketWrite", "jdk.ProcessStart");

  private Watched() {}

  /**
   * Answers a job.
   *
   * @param arguments where to write the recording, the job document, and optionally a trespass
   * @throws Exception if the job is not answered
   */
  public static void main(String[] arguments) throws Exception {
    String job = Files.readString(Path.of(arguments[1]), StandardCharsets.UTF_8);
    try (Recording recording = new Recording()) {
      EVENTS.forEach(event -> recording.enable(event).withThreshold(Duration.ZERO));
      recording.start();
      JobReply reply = JobDesk.standard().answer(job);
      if (!reply.isAnswered()) {
        throw new IllegalStateException(reply.text());
      }
      if (arguments.length > 2) {
        trespass(arguments[2], Path.of(arguments[1]));
      }
      recording.stop();
      recording.dump(Path.of(arguments[0]));
    }
  }

  private static void trespass(String kind, Path file) throws IOException {
    switch (kind) {
      case "file" -> Files.readAllBytes(file);
      case "socket" -> {
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
            Socket client = new Socket(server.getInetAddress(), server.getLocalPort());
            Socket accepted = server.accept()) {
          client.getOutputStream().write(1);
          accepted.getInputStream().read();
        }
      }
      case "process" ->
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version")
              .start();
      default -> throw new IllegalArgumentException(kind);
    }
  }
}
