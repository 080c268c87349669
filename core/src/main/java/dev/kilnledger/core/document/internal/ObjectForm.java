package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * An object of named fields. Its fields are declared in the order in which they are written, and
 * then how a value is made of them; unknown fields are problems.
 *
 * @param <T> the value
 */
public final class ObjectForm<T> extends Form<T> {
  private final String name;
  private final String description;
  private final List<Declared<T, ?>> fields = new ArrayList<>();
  private boolean onOneLine;
  private Function<FieldValues, T> maker =
      values -> {
        throw new IllegalStateException("the form is not complete");
      };

  private ObjectForm(String name, String description) {
    this.name = name;
    this.description = description;
  }

  /**
   * Starts the form of an object that has a name in the schema.
   *
   * @param <T> the value
   * @param name the name, such as {@code "kiln"}
   * @param description what it is, a sentence
   * @return a form without fields
   */
  public static <T> ObjectForm<T> named(String name, String description) {
    return new ObjectForm<>(name, description);
  }

  /**
   * Starts the form of a small object that stands in the schema where it is used.
   *
   * @param <T> the value
   * @return a form without fields
   */
  public static <T> ObjectForm<T> nameless() {
    return new ObjectForm<>("", "");
  }

  /**
   * Has the object written on one line.
   *
   * @return this
   */
  public ObjectForm<T> onOneLine() {
    onOneLine = true;
    return this;
  }

  /** How a field is read and written. */
  private static final class Declared<T, F> {
    private final Field<F> field;
    private final Form<F> form;
    private final Function<T, Optional<F>> getter;
    private final @Nullable Object whenAbsent;

    Declared(
        Field<F> field,
        Form<F> form,
        Function<T, Optional<F>> getter,
        @Nullable Object whenAbsent) {
      this.field = field;
      this.form = form;
      this.getter = getter;
      this.whenAbsent = whenAbsent;
    }

    void write(T value, JsonGenerator out) throws IOException {
      Optional<F> content = getter.apply(value);
      if (content.isPresent()) {
        out.writeFieldName(field.name());
        form.write(content.get(), out);
      }
    }
  }

  /**
   * A field that has to be there.
   *
   * @param <F> its value
   * @param field its name
   * @param form the form of its value
   * @param getter its value of an object
   * @return the field
   */
  public <F> Field<F> required(String field, Form<F> form, Function<T, F> getter) {
    Field<F> key = new Field<>(field);
    fields.add(new Declared<>(key, form, value -> Optional.of(getter.apply(value)), null));
    return key;
  }

  /**
   * A field that may be left out.
   *
   * @param <F> its value
   * @param field its name
   * @param form the form of its value
   * @param getter its value of an object, if there is one
   * @return the field
   */
  public <F> Field<Optional<F>> optional(
      String field, Form<F> form, Function<T, Optional<F>> getter) {
    fields.add(
        new Declared<>(
            new Field<Optional<F>>(field),
            form.as(Optional::of, Optional::orElseThrow),
            value -> Optional.of(getter.apply(value)).filter(Optional::isPresent),
            Optional.empty()));
    return new Field<>(field);
  }

  /**
   * A field for which the value has a default of its own where it is left out; it is always
   * written.
   *
   * @param <F> its value
   * @param field its name
   * @param form the form of its value
   * @param getter its value of an object
   * @return the field, empty where it is left out
   */
  public <F> Field<Optional<F>> defaulted(String field, Form<F> form, Function<T, F> getter) {
    return optional(field, form, value -> Optional.of(getter.apply(value)));
  }

  /**
   * A field that stands for a value of its own where it is left out; it is always written.
   *
   * @param <F> its value
   * @param field its name
   * @param form the form of its value
   * @param value what it is where it is left out
   * @param getter its value of an object
   * @return the field
   */
  public <F> Field<F> withDefault(String field, Form<F> form, F value, Function<T, F> getter) {
    Field<F> key = new Field<>(field);
    fields.add(new Declared<>(key, form, of -> Optional.of(getter.apply(of)), value));
    return key;
  }

  /**
   * A list that is empty where it is left out; it is written where it is not.
   *
   * @param <F> its items
   * @param field its name
   * @param item the form of an item
   * @param getter its items of an object
   * @return the field
   */
  public <F> Field<List<F>> list(String field, Form<F> item, Function<T, List<F>> getter) {
    Field<List<F>> key = new Field<>(field);
    fields.add(
        new Declared<>(
            key,
            Forms.list(item),
            value -> Optional.of(getter.apply(value)).filter(items -> !items.isEmpty()),
            List.of()));
    return key;
  }

  /**
   * Values each of which stands at most once; left out where there is none.
   *
   * @param <F> its items
   * @param field its name
   * @param item the form of an item
   * @param getter its items of an object
   * @return the field, its items in their natural order when written
   */
  public <F extends Comparable<? super F>> Field<List<F>> set(
      String field, Form<F> item, Function<T, Set<F>> getter) {
    Field<List<F>> key = new Field<>(field);
    fields.add(
        new Declared<>(
            key,
            new ListForm<>(item, true),
            value ->
                Optional.of(getter.apply(value).stream().sorted().toList())
                    .filter(items -> !items.isEmpty()),
            List.of()));
    return key;
  }

  /**
   * Completes the form.
   *
   * @param make makes the value of its fields; what it refuses becomes a problem
   * @return this
   */
  public ObjectForm<T> read(Function<FieldValues, T> make) {
    maker = make;
    return this;
  }

  @Override
  @Nullable T read(JsonValue value, String path, Reading reading) {
    if (!isType(value, JsonValue.Type.OBJECT, path, reading)) {
      return null;
    }
    FieldValues values = new FieldValues();
    boolean complete = true;
    for (Declared<T, ?> declared : fields) {
      String field = declared.field.name();
      JsonValue content = value.fields().get(field);
      Object read =
          content == null
              ? declared.whenAbsent
              : declared.form.read(content, path + "/" + escaped(field), reading);
      if (read != null) {
        values.put(field, read);
      } else {
        complete = false;
        if (content == null) {
          reading.problem(
              value, path, "the field " + field + " is missing", declared.form.accepted());
        }
      }
    }
    for (Map.Entry<String, JsonValue> field : value.fields().entrySet()) {
      if (fields.stream().noneMatch(known -> known.field.name().equals(field.getKey()))) {
        reading.problem(
            field.getValue(),
            path + "/" + escaped(field.getKey()),
            "the field is not known",
            String.join(", ", fields.stream().map(known -> known.field.name()).toList()));
      }
    }
    if (!complete) {
      return null;
    }
    try {
      return maker.apply(values);
    } catch (IllegalArgumentException e) {
      reading.refused(value, path, e);
      return null;
    }
  }

  @Override
  String accepted() {
    return "an object";
  }

  @Override
  void write(T value, JsonGenerator out) throws IOException {
    if (onOneLine) {
      DocumentPrinter.onOneLine(out);
    }
    out.writeStartObject();
    writeFields(value, out);
    out.writeEndObject();
  }

  void writeFields(T value, JsonGenerator out) throws IOException {
    for (Declared<T, ?> field : fields) {
      field.write(value, out);
    }
  }

  @Override
  Map<String, Object> schema(Definitions definitions) {
    return name.isEmpty()
        ? body(definitions)
        : definitions.reference(name, () -> body(definitions));
  }

  /** The schema without a name for it. */
  Map<String, Object> body(Definitions definitions) {
    Map<String, Object> properties = new LinkedHashMap<>();
    List<String> required = new ArrayList<>();
    for (Declared<T, ?> field : fields) {
      properties.put(field.field.name(), field.form.schema(definitions));
      if (field.whenAbsent == null) {
        required.add(field.field.name());
      }
    }
    Map<String, Object> schema = new LinkedHashMap<>();
    if (!description.isEmpty()) {
      schema.put("description", description);
    }
    schema.put("type", "object");
    schema.put("properties", properties);
    schema.put("required", required);
    schema.put("additionalProperties", false);
    return schema;
  }
}
