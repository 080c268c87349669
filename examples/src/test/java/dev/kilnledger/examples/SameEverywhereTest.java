package dev.kilnledger.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.costing.document.CostingDocuments;
import dev.kilnledger.costing.document.JobDesk;
import dev.kilnledger.costing.document.PriceListCsv;
import dev.kilnledger.costing.job.Job;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A whole job gives the same bytes in every place, as locale, zone and encoding of a fresh JVM say
 * where it is.
 */
class SameEverywhereTest {

  /**
   * Prints all that a job gives: the text for people, documents, and a price list.
   *
   * @param arguments none
   * @throws IOException never
   */
  public static void main(String[] arguments) throws IOException {
    new PrintStream(System.out, true, StandardCharsets.UTF_8).print(all());
  }

  private static String all() throws IOException {
    Job job = WindowWorkshop.latchCams(100);
    String document = CostingDocuments.job(MaterialLibrary.standard()).text(job);
    return String.join(
        "\n",
        LatchCams.text(),
        document,
        JobDesk.standard().answer(document).text(),
        PriceListCsv.standard().text(job.prices().offers()));
  }

  @ParameterizedTest
  @CsvSource({
    "de, DE, Asia/Kathmandu, ISO-8859-1",
    "fr, FR, America/St_Johns, windows-1252",
    "tr, TR, Pacific/Chatham, ISO-8859-9",
    "ar, EG, Australia/Eucla, UTF-16",
    "hi, IN, Asia/Kolkata, US-ASCII",
  })
  void aWholeJobGivesTheSameBytes(String language, String country, String zone, String encoding)
      throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
    command.add("-Duser.language=" + language);
    command.add("-Duser.country=" + country);
    command.add("-Duser.timezone=" + zone);
    command.add("-Dfile.encoding=" + encoding);
    command.add(getClass().getName());
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("CLASSPATH", System.getProperty("java.class.path"));
    Process there = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
    byte[] printed = there.getInputStream().readAllBytes();
    assertThat(there.waitFor()).isZero();
    assertThat(new String(printed, StandardCharsets.UTF_8)).isEqualTo(all());
  }
}
