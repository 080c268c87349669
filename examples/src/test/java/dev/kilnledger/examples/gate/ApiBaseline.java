package dev.kilnledger.examples.gate;

import static java.nio.charset.StandardCharsets.UTF_8;

import japicmp.cmp.JApiCmpArchive;
import japicmp.cmp.JarArchiveComparator;
import japicmp.cmp.JarArchiveComparatorOptions;
import japicmp.model.AccessModifier;
import japicmp.model.JApiBehavior;
import japicmp.model.JApiClass;
import japicmp.model.JApiCompatibility;
import japicmp.model.JApiCompatibilityChange;
import japicmp.model.JApiCompatibilityChangeType;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javassist.bytecode.ClassFile;

/** The API of a module as lines of text, and what a change of it breaks. */
final class ApiBaseline {
  private static final String VERSION = "version ";
  private static final Pattern PROJECT_VERSION =
      Pattern.compile("<artifactId>kilnledger</artifactId>\\s*<version>([^<]+)</version>");

  private ApiBaseline() {}

  /** A version by semantic versioning; before 1.0 a minor version may break. */
  record Version(int major, int minor, int patch) implements Comparable<Version> {
    static Version of(String text) {
      String[] parts = text.split("[.-]", -1);
      return new Version(
          Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2]));
    }

    boolean mayBreak(Version older) {
      return compareTo(older.nextThatMayBreak()) >= 0;
    }

    Version nextThatMayBreak() {
      return major == 0 ? new Version(0, minor + 1, 0) : new Version(major + 1, 0, 0);
    }

    @Override
    public int compareTo(Version other) {
      return Comparator.comparingInt(Version::major)
          .thenComparingInt(Version::minor)
          .thenComparingInt(Version::patch)
          .compare(this, other);
    }

    @Override
    public String toString() {
      return major + "." + minor + "." + patch;
    }
  }

  static Version version(List<String> api) {
    return Version.of(api.get(0).substring(VERSION.length()));
  }

  /** {@return the API of the module as built, with the version of the project} */
  static List<String> of(LibraryModule module) throws IOException {
    Matcher version = PROJECT_VERSION.matcher(Files.readString(Path.of("..", "pom.xml"), UTF_8));
    if (!version.find()) {
      throw new IllegalStateException("the version of the project was not found");
    }
    Set<String> open = module.openPackages();
    Map<String, ClassFile> all = new TreeMap<>();
    for (byte[] file :
        module.files().entrySet().stream()
            .filter(entry -> entry.getKey().endsWith(".class"))
            .filter(entry -> !entry.getKey().equals("module-info.class"))
            .map(Map.Entry::getValue)
            .toList()) {
      ClassFile type = new ClassFile(new DataInputStream(new ByteArrayInputStream(file)));
      all.put(type.getName(), type);
    }
    Set<String> told = new HashSet<>();
    all.values().stream()
        .filter(type -> open.contains(packageOf(type)) && isOpen(type, all))
        .forEach(type -> tell(type, all, told));
    List<String> lines = new ArrayList<>();
    lines.add(VERSION + version.group(1));
    all.values().stream()
        .filter(type -> told.contains(type.getName()))
        .forEach(type -> lines.addAll(ApiText.lines(type)));
    return lines;
  }

  private static String packageOf(ClassFile type) {
    return type.getName().substring(0, type.getName().lastIndexOf('.'));
  }

  /** Open itself and, if it stands within another, within an open one. */
  private static boolean isOpen(ClassFile type, Map<String, ClassFile> all) {
    int outer = type.getName().lastIndexOf('$');
    return ApiText.isOpen(type.getAccessFlags())
        && (outer < 0 || isOpen(all.get(type.getName().substring(0, outer)), all));
  }

  /** With what it inherits from, of which the members can be reached through it. */
  private static void tell(ClassFile type, Map<String, ClassFile> all, Set<String> told) {
    if (type != null && told.add(type.getName())) {
      tell(all.get(type.getSuperclass()), all, told);
      for (String parent : type.getInterfaces()) {
        tell(all.get(parent), all, told);
      }
    }
  }

  /** {@return what no longer compiles or runs, one line each} */
  static List<String> breaks(List<String> then, List<String> now) throws IOException {
    JarArchiveComparatorOptions options = new JarArchiveComparatorOptions();
    options.setAccessModifier(AccessModifier.PACKAGE_PROTECTED);
    options.getIgnoreMissingClasses().setIgnoreAllMissingClasses(true);
    List<String> breaks = new ArrayList<>();
    for (JApiClass type :
        new JarArchiveComparator(options).compare(archive("then", then), archive("now", now))) {
      tell(breaks, type, type, "");
      tell(breaks, type, type.getSuperclass(), " extends");
      type.getInterfaces().forEach(it -> tell(breaks, type, it, " implements"));
      type.getFields().forEach(it -> tell(breaks, type, it, "." + it.getName()));
      type.getConstructors().forEach(it -> tell(breaks, type, it, described(it)));
      type.getMethods().forEach(it -> tell(breaks, type, it, described(it)));
    }
    return breaks;
  }

  private static String described(JApiBehavior behavior) {
    return "."
        + behavior.getName()
        + behavior.getParameters().stream().map(parameter -> parameter.getType()).toList();
  }

  private static JApiCmpArchive archive(String name, List<String> api) throws IOException {
    return new JApiCmpArchive(
        ApiText.archive(api.subList(1, api.size())), version(api).toString(), name);
  }

  private static void tell(
      List<String> breaks, JApiClass type, JApiCompatibility of, String where) {
    for (JApiCompatibilityChange change : of.getCompatibilityChanges()) {
      if (!change.isBinaryCompatible()
          || (!change.isSourceCompatible() && !isAttributeAdded(type, change))) {
        breaks.add(type.getFullyQualifiedName() + where + ": " + change.getType());
      }
    }
  }

  /** Values are made by their builders and implemented by nobody else. */
  private static boolean isAttributeAdded(JApiClass type, JApiCompatibilityChange change) {
    return change.getType() == JApiCompatibilityChangeType.METHOD_ADDED_TO_INTERFACE
        && isValue(type.getFullyQualifiedName());
  }

  private static boolean isValue(String name) {
    int at = name.lastIndexOf('.') + 1;
    try {
      Class.forName(
          name.substring(0, at) + "Immutable" + name.substring(at),
          false,
          ApiBaseline.class.getClassLoader());
      return true;
    } catch (ClassNotFoundException e) {
      return false;
    }
  }
}
