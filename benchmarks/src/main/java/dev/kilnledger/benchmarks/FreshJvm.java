package dev.kilnledger.benchmarks;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLClassLoader;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * Runs programs each in a JVM of its own. Its class path is this one's, with directories packed
 * into jars, as programs are shipped and as class-data sharing asks for.
 */
final class FreshJvm implements AutoCloseable {
  private final Path folder;
  private final String classPath;

  FreshJvm() throws IOException {
    folder = Files.createTempDirectory("fresh-jvm");
    List<String> jars = new ArrayList<>();
    for (Path path : classPath()) {
      jars.add((Files.isDirectory(path) ? packed(path, jars.size()) : path).toString());
    }
    classPath = String.join(File.pathSeparator, jars);
  }

  /** What launches the tests may have a loader of its own and stand alone on the class path. */
  private static List<Path> classPath() {
    if (FreshJvm.class.getClassLoader() instanceof URLClassLoader loader) {
      return Arrays.stream(loader.getURLs())
          .map(url -> Path.of(URI.create(url.toString())))
          .toList();
    }
    return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
        .map(Path::of)
        .toList();
  }

  private Path packed(Path classes, int number) throws IOException {
    Path jar = folder.resolve(number + ".jar");
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
        Stream<Path> files = Files.walk(classes)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = classes.relativize(file).toString().replace(File.separatorChar, '/');
        out.putNextEntry(new JarEntry(name));
        Files.copy(file, out);
        out.closeEntry();
      }
    }
    return jar;
  }

  /** {@return a file that is deleted with this} */
  Path file(String name) {
    return folder.resolve(name);
  }

  /**
   * Runs a program from the start of its JVM to the end.
   *
   * @param options options of the JVM
   * @param program the class with the main method
   * @param arguments its arguments
   * @return what it printed
   * @throws IOException if the JVM cannot be started
   * @throws InterruptedException if the wait for its end is interrupted
   * @throws IllegalStateException if it ended with an error
   */
  String run(List<String> options, Class<?> program, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-cp", classPath, program.getName()));
    command.addAll(List.of(arguments));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    String printed = new String(process.getInputStream().readAllBytes(), Charset.defaultCharset());
    int code = process.waitFor();
    if (code != 0) {
      throw new IllegalStateException(
          program.getSimpleName() + " ended with " + code + " and printed: " + printed);
    }
    return printed;
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      files
          .sorted(Comparator.reverseOrder())
          .forEach(
              file -> {
                try {
                  Files.delete(file);
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              });
    }
  }
}
