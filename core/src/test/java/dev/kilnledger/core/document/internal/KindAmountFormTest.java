package dev.kilnledger.core.document.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class KindAmountFormTest {
  private static final Document<Amount<?>> DOCUMENT = document();

  private static Document<Amount<?>> document() {
    ObjectForm<Amount<?>> form = ObjectForm.named("one", "One.");
    var it = form.<Amount<?>>required("it", Forms.ANY_AMOUNT, each -> each);
    form.read(values -> values.get(it));
    return new DocumentForm<>("one", 1, form);
  }

  private static Amount<?> read(String it) throws IOException {
    String text = "{\"document\": \"one\", \"schemaVersion\": 1, \"it\": " + it + "}";
    return DOCUMENT.read(ByteSource.of(text.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void saysTheKindWhereItHasAName() throws IOException {
    String temperature = "{ \"value\" : 820, \"unit\" : \"Cel\", \"kind\" : \"temperature\" }";
    assertThat(DOCUMENT.text(Amounts.celsius(820))).contains("\"it\" : " + temperature + "\n");
    assertThat(read(temperature)).isEqualTo(Amounts.celsius(820));
    Amount<?> nameless = Amounts.kilograms(4).inverse();
    String inverse = "{ \"value\" : 0.25, \"unit\" : \"kg-1\" }";
    assertThat(read(inverse)).isEqualTo(nameless);
    assertThat(read(DOCUMENT.text(nameless).replaceAll("(?s).*\"it\" : (.*)\n}\n", "$1")))
        .isEqualTo(nameless);
    assertThat(DOCUMENT.text(nameless)).doesNotContain("\"kind\"");
  }

  /** The same unit and two kinds. */
  @Test
  void tellsKindsApartThatShareAUnit() throws IOException {
    assertThat(read("{\"value\": 5, \"unit\": \"K\", \"kind\": \"temperature difference\"}"))
        .isEqualTo(Amounts.kelvinDifference(5));
    assertThat(read("{\"value\": 5, \"unit\": \"K\"}")).isEqualTo(Amounts.kelvin(5));
  }

  @Test
  void refusesWhatIsNoAmountOfItsKind() {
    assertThatThrownBy(() -> read("7"))
        .hasMessageEndingWith(
            "/it: 7 stands there; accepted is an amount such as {\"value\": 820, \"unit\": \"Cel\","
                + " \"kind\": \"temperature\"}");
    for (String kind : new String[] {"\"warmth\"", "5"}) {
      assertThatThrownBy(() -> read("{\"value\": 5, \"unit\": \"K\", \"kind\": " + kind + "}"))
          .hasMessageEndingWith(
              "/it/kind: "
                  + kind
                  + " stands there; accepted is the name of a kind of quantity, such as"
                  + " \"temperature\"");
    }
    assertThatThrownBy(() -> read("{\"value\": 5, \"unit\": \"K\", \"kind\": \"mass\"}"))
        .hasMessageContaining("/it: unit K does not measure mass");
  }

  @Test
  void schemaRefusesWhatIsNoAmount() {
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(DOCUMENT.schema(), InputFormat.JSON);
    String text = DOCUMENT.text(Amounts.celsius(820));
    assertThat(schema.validate(text, InputFormat.JSON)).isEmpty();
    for (String wrong : new String[] {text.replace("\"Cel\"", "5"), text.replace("unit", "of")}) {
      assertThat(schema.validate(wrong, InputFormat.JSON)).isNotEmpty();
    }
  }

  @Test
  void schemaAsksForNumberAndUnit() {
    assertThat(DOCUMENT.schema().replaceAll("\\s+", " "))
        .contains("\"amount\" : { \"additionalProperties\" : false,")
        .contains("\"kind\" : { \"type\" : \"string\" }")
        .contains("\"required\" : [ \"value\", \"unit\" ]");
  }
}
