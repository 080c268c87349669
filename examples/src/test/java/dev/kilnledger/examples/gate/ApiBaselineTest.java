package dev.kilnledger.examples.gate;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.examples.gate.ApiBaseline.Version;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Nothing that an embedder compiled against the recorded API breaks, unless the version says so.
 * {@code -Dkilnledger.write=true} records the API as it is.
 */
class ApiBaselineTest {
  private static final Pattern METHOD = Pattern.compile("  method public static (\\w+) \\(.*");

  private static Path record(LibraryModule module) {
    return Path.of("src", "test", "resources", "api", module.folder() + ".txt");
  }

  private static List<String> recorded(LibraryModule module) throws IOException {
    return Files.readString(record(module), UTF_8).lines().toList();
  }

  @ParameterizedTest
  @EnumSource
  void nothingBreaksUnlessTheVersionSaysSo(LibraryModule module) throws IOException {
    List<String> now = ApiBaseline.of(module);
    if (Boolean.getBoolean("kilnledger.write")) {
      Files.createDirectories(record(module).getParent());
      Files.writeString(record(module), String.join("\n", now) + "\n", UTF_8);
      return;
    }
    List<String> then = recorded(module);
    if (ApiBaseline.version(now).mayBreak(ApiBaseline.version(then))) {
      return;
    }
    assertThat(ApiBaseline.breaks(then, now))
        .as(
            "what breaks embedders of %s; a version that may break is %s, and what was never"
                + " published is recorded anew and told in CHANGELOG.md",
            module.folder(), ApiBaseline.version(then).nextThatMayBreak())
        .isEmpty();
  }

  /** The gate is not blind: each of these changes of the recorded text is told. */
  @ParameterizedTest
  @EnumSource
  void recordReadsBackAndEachMissingMemberIsTold(LibraryModule module) throws IOException {
    List<String> then = recorded(module);
    assertThat(ApiBaseline.breaks(then, then)).isEmpty();
    List<String> less = new ArrayList<>(then);
    Matcher method =
        then.stream().map(METHOD::matcher).filter(Matcher::find).findFirst().orElseThrow();
    less.remove(method.group());
    assertThat(ApiBaseline.breaks(then, less))
        .singleElement()
        .asString()
        .contains("METHOD_REMOVED", method.group(1));
    assertThat(ApiBaseline.breaks(less, then)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0.1.0, 0.1.0, false",
    "0.1.0, 0.1.1, false",
    "0.1.0, 0.2.0, true",
    "0.9.0, 1.0.0, true",
    "1.2.0, 1.3.0, false",
    "1.2.0, 2.0.0, true",
    "1.2.0, 0.9.0, false",
  })
  void versionsMayBreakByTheirRule(String then, String now, boolean mayBreak) {
    assertThat(Version.of(now).mayBreak(Version.of(then))).isEqualTo(mayBreak);
  }

  @Test
  void recordIsOfTheVersionOfTheBuildOrOlder() throws IOException {
    for (LibraryModule module : LibraryModule.values()) {
      assertThat(ApiBaseline.version(recorded(module)))
          .isLessThanOrEqualTo(ApiBaseline.version(ApiBaseline.of(module)));
    }
  }
}
