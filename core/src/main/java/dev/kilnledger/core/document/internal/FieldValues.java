package dev.kilnledger.core.document.internal;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/** What was read for the fields of one object. */
public final class FieldValues {
  private final Map<String, Object> values = new HashMap<>();

  FieldValues() {}

  void put(String name, Object value) {
    values.put(name, value);
  }

  /**
   * The value of a field.
   *
   * @param <F> the value
   * @param field the field
   * @return the value, or what stands for it where the field is left out
   */
  @SuppressWarnings("unchecked") // a field is only ever read by its own form
  public <F> F get(Field<F> field) {
    return (F) Objects.requireNonNull(values.get(field.name()), field.name());
  }
}
