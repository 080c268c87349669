package dev.kilnledger.examples.gate;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.costing.document.CostingDocuments;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.WholeJob;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Ten whole jobs of invented workshops come to the figures recorded beside them. A figure that is
 * meant to change is recorded by {@code -Dkilnledger.write=true} and explained in CHANGELOG.md,
 * which has to name the digest of the records.
 */
class GoldenResultsTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "golden");
  private static final Path CHANGELOG = Path.of("..", "CHANGELOG.md");
  private static final String EQUALS = " = ";

  /** Records have ten digits; one unit in the last may come of rounding. */
  private static final double ROUNDED = 1.1e-9;

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?(E[+-]?\\d+)?(?![\\w.])");
  private static final Pattern EXPLAINED =
      Pattern.compile("Golden results `([0-9a-f]{12})`:((?:[^\\n]|\\n  )+)");

  static Stream<String> jobs() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - ".json".length()))
          .sorted()
          .toList()
          .stream();
    }
  }

  private static Path record(String job) {
    return FOLDER.resolve(job + ".txt");
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void figuresAreThoseRecorded(String name) throws IOException {
    Job job =
        CostingDocuments.job(MaterialLibrary.standard())
            .read(Files.readString(FOLDER.resolve(name + ".json"), UTF_8));
    Map<String, String> now = GoldenText.of(WholeJob.standard().answer(job));
    if (Boolean.getBoolean("kilnledger.write")) {
      StringBuilder text = new StringBuilder();
      now.forEach((figure, value) -> text.append(figure).append(EQUALS).append(value).append('\n'));
      Files.writeString(record(name), text, UTF_8);
      return;
    }
    Map<String, String> then = new LinkedHashMap<>();
    for (String line : Files.readAllLines(record(name), UTF_8)) {
      int at = line.indexOf(EQUALS);
      then.put(line.substring(0, at), line.substring(at + EQUALS.length()));
    }
    assertThat(changes(then, now))
        .as("what changed in %s; if that is meant, record it and explain it in CHANGELOG.md", name)
        .isEmpty();
  }

  private static List<String> changes(Map<String, String> then, Map<String, String> now) {
    Set<String> figures = new LinkedHashSet<>(then.keySet());
    figures.addAll(now.keySet());
    List<String> changes = new ArrayList<>();
    for (String figure : figures) {
      String before = then.getOrDefault(figure, "nothing");
      String after = now.getOrDefault(figure, "nothing");
      if (!isSame(before, after)) {
        changes.add(figure + ": " + before + " -> " + after);
      }
    }
    return changes;
  }

  /** The same words, and the same numbers but for the rounding of the record. */
  private static boolean isSame(String before, String after) {
    if (before.equals(after)) {
      return true;
    }
    if (!NUMBER.matcher(before).replaceAll("#").equals(NUMBER.matcher(after).replaceAll("#"))) {
      return false;
    }
    Matcher one = NUMBER.matcher(before);
    Matcher other = NUMBER.matcher(after);
    while (one.find() && other.find()) {
      double a = Double.parseDouble(one.group());
      double b = Double.parseDouble(other.group());
      if (Math.abs(a - b) > ROUNDED * Math.max(Math.abs(a), Math.abs(b))) {
        return false;
      }
    }
    return true;
  }

  @Test
  void changelogExplainsTheRecordedFigures() throws Exception {
    Matcher newest = EXPLAINED.matcher(Files.readString(CHANGELOG, UTF_8));
    String digest = digest();
    String wanted = "- Golden results `" + digest + "`: which figures changed, and why";
    assertThat(newest.find()).as("CHANGELOG.md has to say: " + wanted).isTrue();
    assertThat(newest.group(1))
        .as("the recorded figures have changed; the newest entry of CHANGELOG.md says: " + wanted)
        .isEqualTo(digest);
    assertThat(newest.group(2).strip().split("\\s+", -1))
        .as("words of the explanation in CHANGELOG.md")
        .hasSizeGreaterThan(5);
  }

  /** Of the figures, whatever the ends of lines. */
  private static String digest() throws IOException, NoSuchAlgorithmException {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    for (String job : jobs().toList()) {
      digest.update(job.getBytes(UTF_8));
      for (String line : Files.readAllLines(record(job), UTF_8)) {
        digest.update((line + "\n").getBytes(UTF_8));
      }
    }
    return HexFormat.of().formatHex(digest.digest()).substring(0, 12);
  }

  @Test
  void thereAreTenAndTheyDiffer() throws IOException {
    assertThat(jobs()).hasSize(10);
    Set<String> worst = new LinkedHashSet<>();
    Set<String> currencies = new LinkedHashSet<>();
    for (String job : jobs().toList()) {
      List<String> lines = Files.readAllLines(record(job), UTF_8);
      worst.add(lines.get(0));
      lines.stream()
          .filter(line -> line.startsWith("average of all parts"))
          .forEach(line -> currencies.add(line.substring(line.length() - 3)));
    }
    assertThat(worst).hasSizeGreaterThanOrEqualTo(3);
    assertThat(currencies).hasSizeGreaterThanOrEqualTo(5);
  }
}
