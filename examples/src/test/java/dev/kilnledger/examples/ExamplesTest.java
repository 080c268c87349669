package dev.kilnledger.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.costing.uncertainty.UncertainInput;
import dev.kilnledger.thermal.design.ProfileDesign;
import dev.kilnledger.thermal.design.ProfileDesigner;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples run, and print what the README says they print. */
class ExamplesTest {
  private static final String README = read(Path.of("..", "README.md"));

  @Test
  void theMainJobPrintsWhatIsPinned() {
    String printed = printedBy(() -> LatchCams.main(new String[0]));
    assertThat(printed).isEqualTo(read(Path.of("src", "test", "resources", "latch-cams.txt")));
    assertThat(README).contains(printed);
    assertThat(printed.lines()).allMatch(line -> line.length() <= 100);
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "hi-IN"})
  void theMainJobPrintsTheSameInEveryLocale(String tag) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(read(Path.of("src", "test", "resources", "latch-cams.txt")))
          .startsWith(LatchCams.job());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theFirstProgramStandsInTheReadmeWithItsOutput() {
    Path source = Path.of("src/main/java/dev/kilnledger/examples/FirstProgram.java");
    String program =
        read(source)
            .lines()
            .dropWhile(line -> !line.contains("spotless:off"))
            .skip(1)
            .takeWhile(line -> !line.contains("spotless:on"))
            .map(line -> line.substring(4))
            .collect(Collectors.joining("\n"));
    assertThat(program.lines()).hasSizeLessThanOrEqualTo(15);
    assertThat(README).contains(program);
    assertThat(README).contains(printedBy(() -> FirstProgram.main(new String[0])));
  }

  /** Not pinned as a whole: what is designed moves by minutes whenever a model gets better. */
  @Test
  void theDesignedProfilesPassAllThatAProfileCanAndAreFasterThanTheWorkshops() {
    ProfileDesigner designer = ProfileDesigner.standard();
    ProfileDesign design = designer.design(DesignedProfile.task());
    assertThat(design.finished()).isTrue();
    assertThat(design.contradictions()).isEmpty();
    assertThat(design.failing()).containsExactlyElementsOf(design.unmended());
    assertThat(design.unmended())
        .as("the kinetics of the binder, which the workshop has not measured")
        .isNotEmpty()
        .allMatch(finding -> finding.severity() == Severity.UNDETERMINED);
    assertThat(design.duration()).isLessThan(design.task().setup().route().duration());

    String text = DesignedProfile.text(designer, design);
    assertThat(text)
        .contains("Debinding\n", "Sintering\n", "1 is no faster: the profiles heat at up to")
        .contains("The workshop's own profiles", "until cold; designed", "slower");
    assertThat(text.lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void theBandOfUncertaintyPrintsBandsAndDrivers() {
    String printed = printedBy(() -> BandOfUncertainty.main(new String[0]));
    assertThat(printed)
        .contains("Bands, by 20000 trials from seed 1, all made")
        .contains("all parts: median EUR ")
        .contains("stays within EUR 3000: ")
        .contains("half of the trials by part ");
    assertThat(printed.lines()).allMatch(line -> line.length() <= 100);
    // Every input is told and ranked, the shares of the variance are shares.
    for (UncertainInput input : BandOfUncertainty.plan().inputs()) {
      assertThat(printed).contains("- " + input.name() + ": ");
      assertThat(printed).containsPattern("  " + input.name() + " +\\d+ % +\\d+ %   \\d+ to \\d+");
    }
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(BandOfUncertainty.text()).isEqualTo(printed);
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String printedBy(Runnable program) {
    PrintStream before = System.out;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
      program.run();
    } finally {
      System.setOut(before);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
