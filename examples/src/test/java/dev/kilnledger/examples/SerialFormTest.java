package dev.kilnledger.examples;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.thermal.profile.Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
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

/** Values written by version 0.1.0 are still read: one of each module, kept as Base64. */
class SerialFormTest {

  static Stream<Arguments> values() {
    return Stream.of(
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
    assertThat(thawed(name)).isEqualTo(value);
  }

  private static Object thawed(String name) throws IOException, ClassNotFoundException {
    Path file = Path.of("src", "test", "resources", "serial", name + ".base64");
    byte[] bytes = Base64.getMimeDecoder().decode(Files.readString(file));
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
      return in.readObject();
    }
  }
}
