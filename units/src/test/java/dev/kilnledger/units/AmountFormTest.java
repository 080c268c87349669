package dev.kilnledger.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.Units;

class AmountFormTest {
  /** The form of 46 g since version 0.1.0: a change here breaks what others have stored. */
  private static final String PINNED =
      "aced00057372001f6465762e6b696c6e6c65646765722e756e6974732e416d6f756e74466f726d0000000000"
          + "0000010200034400066e756d6265724c0004636f64657400124c6a6176612f6c616e672f537472696e673b"
          + "4c00046b696e6471007e0001787040470000000000007400016774"
          + "00046d617373";

  static Stream<UnitScale<?>> shipped() {
    return UnitScales.shipped().stream();
  }

  @Test
  void keepsItsForm() throws Exception {
    assertThat(HexFormat.of().formatHex(written(Amounts.grams(46)))).isEqualTo(PINNED);
    assertThat(read(HexFormat.of().parseHex(PINNED)))
        .isEqualTo(Amounts.grams(46))
        .hasToString("46 g");
  }

  @ParameterizedTest
  @MethodSource("shipped")
  <Q extends Quantity<Q>> void returnsEqualAndReadsTheSame(UnitScale<Q> scale) throws Exception {
    Amount<Q> amount = new Amount<>(123.456, scale);
    assertThat(read(written(amount))).isEqualTo(amount).hasToString(amount.toString());
  }

  @Test
  void returnsEqualInUnitsThatAreNotShipped() throws Exception {
    for (Amount<?> amount :
        new Amount<?>[] {
          Amounts.grams(123.456).to(TradeUnits.POUND),
          Amount.of(3, Units.METRE.multiply(1.7)),
          Amounts.seconds(4).inverse(),
          Amount.of(7, Units.NEWTON)
        }) {
      assertThat(read(written(amount))).isEqualTo(amount);
    }
  }

  @Test
  void refusesForgedForms() {
    String forged =
        new String(HexFormat.of().parseHex(PINNED), StandardCharsets.ISO_8859_1)
            .replace("t\0\1g", "t\0\1?");
    assertThatThrownBy(() -> read(forged.getBytes(StandardCharsets.ISO_8859_1)))
        .isInstanceOf(InvalidObjectException.class)
        .hasMessageContaining("\"?\" is not a unit code");
  }

  private static byte[] written(Object value) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    return bytes.toByteArray();
  }

  private static Object read(byte[] bytes) throws IOException, ClassNotFoundException {
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
      return in.readObject();
    }
  }
}
