package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import dev.kilnledger.units.UcumText;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** An amount of one of several kinds, told apart by its unit. */
final class AnyAmountForm extends Form<Amount<?>> {
  private final List<Kind<?>> kinds;

  AnyAmountForm(List<Kind<?>> kinds) {
    this.kinds = kinds;
  }

  @Override
  @Nullable Amount<?> read(JsonValue value, String path, Reading reading) {
    String text = AmountForm.text(value, accepted(), path, reading);
    if (text == null) {
      return null;
    }
    try {
      return UcumText.parse(text, kinds);
    } catch (IllegalArgumentException e) {
      reading.problem(value, path, "\"" + text + "\" stands there", accepted());
      return null;
    }
  }

  @Override
  String accepted() {
    return "a number and a UCUM unit code of "
        + kinds.stream().map(Kind::name).collect(Collectors.joining(", "));
  }

  @Override
  void write(Amount<?> value, JsonGenerator out) throws IOException {
    AmountForm.writeAny(value, out);
  }

  @Override
  Map<String, Object> schema(Definitions definitions) {
    return Map.of(
        "anyOf", kinds.stream().map(kind -> AmountForm.reference(kind, definitions)).toList());
  }
}
