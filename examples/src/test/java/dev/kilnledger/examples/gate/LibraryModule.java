package dev.kilnledger.examples.gate;

import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A module that is published: where its classes are, as a folder or as a jar. */
enum LibraryModule {
  UNITS(Amount.class),
  CORE(Alloy.class),
  THERMAL(Profile.class),
  COSTING(Job.class);

  private final Class<?> member;

  LibraryModule(Class<?> member) {
    this.member = member;
  }

  /** {@return the name of its folder} */
  String folder() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  Path place() {
    try {
      return Path.of(member.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** {@return the packages that any module may use} */
  Set<String> openPackages() {
    ModuleDescriptor descriptor = ModuleFinder.of(place()).findAll().iterator().next().descriptor();
    return descriptor.exports().stream()
        .filter(export -> !export.isQualified())
        .map(ModuleDescriptor.Exports::source)
        .collect(Collectors.toSet());
  }

  /** {@return its files by their path in it, in order} */
  Map<String, byte[]> files() {
    try {
      if (Files.isDirectory(place())) {
        return files(place());
      }
      try (FileSystem jar = FileSystems.newFileSystem(place())) {
        return files(jar.getPath("/"));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, byte[]> files(Path root) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(root)) {
      for (Path path : (Iterable<Path>) paths.filter(Files::isRegularFile)::iterator) {
        files.put(root.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
      }
    }
    return files;
  }
}
