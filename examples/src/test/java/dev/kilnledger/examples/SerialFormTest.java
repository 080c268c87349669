package dev.kilnledger.examples;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.costing.document.CostingDocuments;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.thermal.check.FiringFinding;
import dev.kilnledger.thermal.profile.Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Base64;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Values written by version 0.1.0 are still read, and are equal: kept as Base64. The job states
 * everything that can be stated, with all its materials in full, so that most values of all modules
 * are in it. {@code -Dkilnledger.write=true} writes what is not kept yet, and nothing anew: what
 * others have stored cannot be written again.
 */
class SerialFormTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "serial");

  static Stream<Arguments> values() throws IOException {
    Job job = job();
    return Stream.of(
        Arguments.of("units-amount", grams(46)),
        Arguments.of("core-part", job.part()),
        Arguments.of("core-feedstock", job.feedstock()),
        Arguments.of("core-kiln", job.kiln()),
        Arguments.of(
            "core-finding",
            Finding.builder()
                .code(FiringFinding.KILN_REACHES_PEAK)
                .severity(Severity.STOP)
                .subject("bench kiln")
                .message("invented for this test")
                .measured(celsius(1100))
                .limit(celsius(1150))
                .basis(Source.user("invented for this test"))
                .build()),
        Arguments.of("thermal-route", job.route()),
        Arguments.of("costing-prices", job.prices()),
        Arguments.of("costing-job", job),
        Arguments.of("core-span", Span.of(celsius(780), celsius(840))),
        Arguments.of(
            "thermal-profile",
            Profile.from(celsius(20)).rampTo(celsius(820), kelvinPerHour(100)).build()),
        Arguments.of(
            "costing-offer",
            Offer.builder()
                .item("filament")
                .supplier("corner shop")
                .content(grams(500))
                .price(Money.of(CurrencyUnit.EUR, 60))
                .date(LocalDate.of(2026, 11, 2))
                .source(Source.user("invented for this test"))
                .build()));
  }

  @ParameterizedTest
  @MethodSource("values")
  void readsWhatTheFirstVersionWrote(String name, Serializable value) throws Exception {
    Path file = FOLDER.resolve(name + ".base64");
    if (Boolean.getBoolean("kilnledger.write") && !Files.exists(file)) {
      Files.writeString(file, frozen(value));
    }
    assertThat(thawed(Files.readString(file))).isEqualTo(value);
  }

  private static Job job() throws IOException {
    return CostingDocuments.job(MaterialLibrary.empty())
        .read(Files.readString(FOLDER.resolve("costing-job.json")));
  }

  private static String frozen(Serializable value) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    return Base64.getMimeEncoder(76, new byte[] {'\n'}).encodeToString(bytes.toByteArray()) + "\n";
  }

  private static Object thawed(String base64) throws IOException, ClassNotFoundException {
    byte[] bytes = Base64.getMimeDecoder().decode(base64);
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
      return in.readObject();
    }
  }
}
