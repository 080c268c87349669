package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import dev.kilnledger.units.UcumText;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/** An amount: {@code {"value": 1.75, "unit": "mm"}}. */
final class AmountForm<Q extends Quantity<Q>> extends Form<Amount<Q>> {
  private final Kind<Q> kind;

  AmountForm(Kind<Q> kind) {
    this.kind = kind;
  }

  @Override
  @Nullable Amount<Q> read(JsonValue value, String path, Reading reading) {
    String text = text(value, accepted(), path, reading);
    if (text == null) {
      return null;
    }
    try {
      return UcumText.parse(text, kind);
    } catch (IllegalArgumentException e) {
      reading.refused(value, path, e);
      return null;
    }
  }

  /** Number and unit of an object that is nothing else; null where it is not. */
  static @Nullable String text(JsonValue value, String accepted, String path, Reading reading) {
    JsonValue number = value.fields().get("value");
    JsonValue unit = value.fields().get("unit");
    if (number == null || unit == null) {
      reading.problem(value, path, value.shown() + " stands there", accepted);
      return null;
    }
    boolean fine = isType(number, JsonValue.Type.NUMBER, "a number", path + "/value", reading);
    fine = isType(unit, JsonValue.Type.TEXT, "a UCUM unit code", path + "/unit", reading) && fine;
    for (String name : value.fields().keySet()) {
      if (!name.equals("value") && !name.equals("unit")) {
        reading.problem(
            value.fields().get(name),
            path + "/" + escaped(name),
            "the field is not known",
            "value and unit");
        fine = false;
      }
    }
    return fine ? number.text() + " " + unit.text() : null;
  }

  @Override
  String accepted() {
    String unit = UcumText.print(Amount.of(1, kind.siUnit(), kind)).substring(2);
    return kind.name() + " such as {\"value\": 1.5, \"unit\": \"" + unit + "\"}";
  }

  @Override
  void write(Amount<Q> value, JsonGenerator out) throws IOException {
    writeAny(value, out);
  }

  static void writeAny(Amount<?> value, JsonGenerator out) throws IOException {
    DocumentPrinter.onOneLine(out);
    out.writeStartObject();
    writeFields(value, out);
    out.writeEndObject();
  }

  static void writeFields(Amount<?> value, JsonGenerator out) throws IOException {
    String text = UcumText.print(value);
    int space = text.indexOf(' ');
    out.writeFieldName("value");
    out.writeNumber(text.substring(0, space));
    out.writeStringField("unit", text.substring(space + 1));
  }

  @Override
  Map<String, Object> schema(Definitions definitions) {
    return reference(kind, definitions);
  }

  static Map<String, Object> reference(Kind<?> kind, Definitions definitions) {
    return definitions.reference(
        "amount-of-" + kind.name().replace(" ", "-"),
        () ->
            Map.of(
                "description",
                "An amount of " + kind.name() + ": a number and a UCUM unit code.",
                "type",
                "object",
                "properties",
                Map.of("value", Map.of("type", "number"), "unit", Map.of("type", "string")),
                "required",
                List.of("value", "unit"),
                "additionalProperties",
                false));
  }
}
