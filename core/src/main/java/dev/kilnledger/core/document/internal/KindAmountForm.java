package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import dev.kilnledger.units.UcumText;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An amount of any kind: {@code {"value": 820, "unit": "Cel", "kind": "temperature"}}. A kind
 * without a name is told by the unit alone.
 */
final class KindAmountForm extends Form<Amount<?>> {
  private static final String KIND = "kind";

  @Override
  @Nullable Amount<?> read(JsonValue value, String path, Reading reading) {
    JsonValue kind = value.fields().get(KIND);
    JsonValue rest = kind == null ? value : value.without(KIND);
    String text = AmountForm.text(rest, accepted(), path, reading);
    if (text == null) {
      return null;
    }
    try {
      if (kind == null) {
        return UcumText.parse(text);
      }
      Optional<Kind<?>> named =
          kind.type() == JsonValue.Type.TEXT ? Kind.named(kind.text()) : Optional.empty();
      if (named.isEmpty()) {
        reading.problem(
            kind,
            path + "/" + KIND,
            kind.shown() + " stands there",
            "the name of a kind of quantity, such as \"temperature\"");
        return null;
      }
      return UcumText.parse(text, named.get());
    } catch (IllegalArgumentException e) {
      reading.refused(value, path, e);
      return null;
    }
  }

  @Override
  String accepted() {
    return "an amount such as {\"value\": 820, \"unit\": \"Cel\", \"kind\": \"temperature\"}";
  }

  @Override
  void write(Amount<?> value, JsonGenerator out) throws IOException {
    DocumentPrinter.onOneLine(out);
    out.writeStartObject();
    AmountForm.writeFields(value, out);
    if (Kind.named(value.kind().name()).isPresent()) {
      out.writeStringField(KIND, value.kind().name());
    }
    out.writeEndObject();
  }

  @Override
  Map<String, Object> schema(Definitions definitions) {
    return definitions.reference(
        "amount",
        () ->
            Map.of(
                "description",
                "An amount: a number, a UCUM unit code, and the kind of quantity.",
                "type",
                "object",
                "properties",
                Map.of(
                    "value",
                    Map.of("type", "number"),
                    "unit",
                    Map.of("type", "string"),
                    KIND,
                    Map.of("type", "string")),
                "required",
                List.of("value", "unit"),
                "additionalProperties",
                false));
  }
}
