package dev.kilnledger.examples;

import java.io.File;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import jdk.jshell.tool.JavaShellToolBuilder;

/**
 * Starts the JDK's own shell with the library on its class path, every package imported, the units
 * at hand, and {@code show} and {@code csv} for results.
 */
public final class Shell {
  private static final List<Path> FOLDERS = List.of(Path.of("examples/jshell"), Path.of("jshell"));

  private Shell() {}

  /**
   * Starts the shell, in the folder of the project or of its examples.
   *
   * @param arguments scripts to run first, and options of the shell
   * @throws Exception if the shell cannot be started
   */
  public static void main(String[] arguments) throws Exception {
    System.out.println("Try:  show(library.feedstock(\"copper in polylactide, generic\"))");
    System.out.println("The tour:  /open " + script("tour.jsh") + "      Leave with:  /exit");
    List<String> options =
        new ArrayList<>(
            List.of("--class-path", classPath(), "--startup", script("start.jsh").toString()));
    options.addAll(List.of(arguments));
    JavaShellToolBuilder.builder().start(options.toArray(String[]::new));
  }

  /** {@return where a script of the shell stands} */
  static Path script(String name) {
    return FOLDERS.stream()
        .map(folder -> folder.resolve(name))
        .filter(Files::exists)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "no "
                        + name
                        + " in "
                        + FOLDERS
                        + " below "
                        + Path.of("").toAbsolutePath()
                        + "; start the shell in the folder of the project"));
  }

  /** {@return what this class was loaded from, as the shell takes it} */
  static String classPath() {
    if (Shell.class.getClassLoader() instanceof URLClassLoader loader) {
      return List.of(loader.getURLs()).stream()
          .map(Shell::path)
          .collect(Collectors.joining(File.pathSeparator));
    }
    return System.getProperty("java.class.path");
  }

  private static String path(URL url) {
    try {
      return Path.of(url.toURI()).toString();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(url + " is no place in the file system", e);
    }
  }
}
