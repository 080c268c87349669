package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import java.io.IOException;
import java.io.Serializable;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/** The forms of plain values, and of lists and maps of others. */
public final class Forms {
  /** Any text. */
  public static final Form<String> TEXT =
      new Form<>() {
        @Override
        @Nullable String read(JsonValue value, String path, Reading reading) {
          return isType(value, JsonValue.Type.TEXT, "text", path, reading) ? value.text() : null;
        }

        @Override
        void write(String value, JsonGenerator out) throws IOException {
          out.writeString(value);
        }

        @Override
        Map<String, Object> schema(Definitions definitions) {
          return Map.of("type", "string");
        }
      };

  /** True or false. */
  public static final Form<Boolean> TRUTH =
      new Form<>() {
        @Override
        @Nullable Boolean read(JsonValue value, String path, Reading reading) {
          return isType(value, JsonValue.Type.BOOLEAN, "true or false", path, reading)
              ? Boolean.valueOf(value.text())
              : null;
        }

        @Override
        void write(Boolean value, JsonGenerator out) throws IOException {
          out.writeBoolean(value);
        }

        @Override
        Map<String, Object> schema(Definitions definitions) {
          return Map.of("type", "boolean");
        }
      };

  /** A whole number. */
  public static final Form<Long> WHOLE =
      new Form<>() {
        @Override
        @Nullable Long read(JsonValue value, String path, Reading reading) {
          String accepted = "a whole number";
          if (!isType(value, JsonValue.Type.NUMBER, accepted, path, reading)) {
            return null;
          }
          try {
            return Long.valueOf(value.text());
          } catch (NumberFormatException e) {
            reading.problem(value, path, value.shown() + " stands there", accepted);
            return null;
          }
        }

        @Override
        void write(Long value, JsonGenerator out) throws IOException {
          out.writeNumber(value);
        }

        @Override
        Map<String, Object> schema(Definitions definitions) {
          return Map.of("type", "integer");
        }
      };

  /** A whole number that fits an int. */
  public static final Form<Integer> COUNT = WHOLE.as(Forms::toInt, Long::valueOf);

  /** A date, ISO 8601. */
  public static final Form<LocalDate> DATE =
      format("date", TEXT.as(Forms::date, LocalDate::toString));

  /** How a figure was come by. */
  public static final Form<Standing> STANDING = choice(Standing.class);

  /** Where a figure comes from. */
  public static final Form<Source> SOURCE = source();

  private Forms() {}

  private static int toInt(long number) {
    if (number != (int) number) {
      throw new IllegalArgumentException(
          number + " stands there; accepted is a whole number up to " + Integer.MAX_VALUE);
    }
    return (int) number;
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(
          "\"" + text + "\" stands there; accepted is a date such as \"2026-11-25\"", e);
    }
  }

  private static <T> Form<T> format(String format, Form<T> form) {
    return new Form<>() {
      @Override
      @Nullable T read(JsonValue value, String path, Reading reading) {
        return form.read(value, path, reading);
      }

      @Override
      void write(T value, JsonGenerator out) throws IOException {
        form.write(value, out);
      }

      @Override
      Map<String, Object> schema(Definitions definitions) {
        return Map.of("type", "string", "format", format);
      }
    };
  }

  private static Form<Source> source() {
    ObjectForm<Source> form = ObjectForm.named("source", "Where a figure comes from.");
    var text = form.required("text", TEXT, Source::text);
    var standing = form.required("standing", STANDING, Source::standing);
    return form.read(values -> Source.of(values.get(text), values.get(standing)));
  }

  /**
   * An amount: number and UCUM unit.
   *
   * @param <Q> the quantity
   * @param kind what it is an amount of
   * @return the form
   */
  public static <Q extends Quantity<Q>> Form<Amount<Q>> amount(Kind<Q> kind) {
    return new AmountForm<>(kind);
  }

  /**
   * An amount of one of several kinds, told apart by its unit.
   *
   * @param kinds the kinds, whose units must not be the same
   * @return the form
   */
  public static Form<Amount<?>> amountOf(Kind<?>... kinds) {
    return new AnyAmountForm(List.of(kinds));
  }

  /**
   * A low and a high amount.
   *
   * @param <Q> the quantity
   * @param kind what they are amounts of
   * @return the form
   */
  public static <Q extends Quantity<Q>> Form<Span<Q>> span(Kind<Q> kind) {
    ObjectForm<Span<Q>> form = ObjectForm.nameless();
    var low = form.required("low", amount(kind), Span::low);
    var high = form.required("high", amount(kind), Span::high);
    return form.read(values -> Span.of(values.get(low), values.get(high)));
  }

  /**
   * An expected amount between a low and a high one.
   *
   * @param <Q> the quantity
   * @param kind what they are amounts of
   * @return the form
   */
  public static <Q extends Quantity<Q>> Form<Estimate<Q>> estimate(Kind<Q> kind) {
    ObjectForm<Estimate<Q>> form = ObjectForm.nameless();
    var low = form.required("low", amount(kind), value -> value.span().low());
    var expected = form.required("expected", amount(kind), Estimate::expected);
    var high = form.required("high", amount(kind), value -> value.span().high());
    return form.read(
        values -> Estimate.of(values.get(low), values.get(expected), values.get(high)));
  }

  /**
   * A fact with its source.
   *
   * @param <T> the fact
   * @param fact the form of the fact
   * @return the form
   */
  public static <T extends Serializable> Form<Sourced<T>> sourced(Form<T> fact) {
    ObjectForm<Sourced<T>> form = ObjectForm.nameless();
    var value = form.required("value", fact, Sourced::value);
    var condition = form.withDefault("condition", TEXT, "", Sourced::condition);
    var source = form.required("source", SOURCE, Sourced::source);
    return form.read(
        values -> Sourced.of(values.get(value), values.get(condition), values.get(source)));
  }

  /**
   * A constant, in small letters with hyphens.
   *
   * @param <E> the enumeration
   * @param type the enumeration
   * @return the form
   */
  public static <E extends Enum<E>> Form<E> choice(Class<E> type) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E constant : type.getEnumConstants()) {
      words.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
    }
    return choice(words);
  }

  /**
   * One of several values, each told by a word.
   *
   * @param <E> the values
   * @param words the values by their words
   * @return the form
   */
  public static <E> Form<E> choice(Map<String, E> words) {
    Map<String, E> copy = new LinkedHashMap<>(words);
    return new Form<>() {
      @Override
      @Nullable E read(JsonValue value, String path, Reading reading) {
        String accepted = "one of " + String.join(", ", copy.keySet());
        if (!isType(value, JsonValue.Type.TEXT, accepted, path, reading)) {
          return null;
        }
        E chosen = copy.get(value.text());
        if (chosen == null) {
          reading.problem(value, path, value.shown() + " stands there", accepted);
        }
        return chosen;
      }

      @Override
      void write(E value, JsonGenerator out) throws IOException {
        for (Map.Entry<String, E> word : copy.entrySet()) {
          if (word.getValue().equals(value)) {
            out.writeString(word.getKey());
            return;
          }
        }
        throw new IllegalArgumentException("there is no word for " + value);
      }

      @Override
      Map<String, Object> schema(Definitions definitions) {
        return Map.of("enum", List.copyOf(copy.keySet()));
      }
    };
  }

  /**
   * Several values in their order.
   *
   * @param <T> the values
   * @param item the form of each
   * @return the form
   */
  public static <T> Form<List<T>> list(Form<T> item) {
    return new Form<>() {
      @Override
      @Nullable List<T> read(JsonValue value, String path, Reading reading) {
        if (!isType(value, JsonValue.Type.LIST, "a list", path, reading)) {
          return null;
        }
        List<T> read = new ArrayList<>();
        for (int i = 0; i < value.items().size(); i++) {
          T one = item.read(value.items().get(i), path + "/" + i, reading);
          if (one != null) {
            read.add(one);
          }
        }
        return read.size() == value.items().size() ? read : null;
      }

      @Override
      void write(List<T> values, JsonGenerator out) throws IOException {
        out.writeStartArray();
        for (T value : values) {
          item.write(value, out);
        }
        out.writeEndArray();
      }

      @Override
      Map<String, Object> schema(Definitions definitions) {
        return Map.of("type", "array", "items", item.schema(definitions));
      }
    };
  }

  /**
   * Values by a key that is written as text.
   *
   * @param <K> the keys
   * @param <V> the values
   * @param key the key of a text; what it refuses becomes a problem
   * @param text the text of a key
   * @param item the form of each value
   * @return the form, keys in the order of their text
   */
  public static <K, V> Form<Map<K, V>> map(
      Function<String, K> key, Function<K, String> text, Form<V> item) {
    return new Form<>() {
      @Override
      @Nullable Map<K, V> read(JsonValue value, String path, Reading reading) {
        if (!isType(value, JsonValue.Type.OBJECT, "an object", path, reading)) {
          return null;
        }
        Map<K, V> read = new LinkedHashMap<>();
        value
            .fields()
            .forEach(
                (name, field) -> {
                  String place = path + "/" + escaped(name);
                  try {
                    K one = key.apply(name);
                    V of = item.read(field, place, reading);
                    if (of != null) {
                      read.put(one, of);
                    }
                  } catch (IllegalArgumentException e) {
                    reading.refused(field, place, e);
                  }
                });
        return read.size() == value.fields().size() ? read : null;
      }

      @Override
      void write(Map<K, V> values, JsonGenerator out) throws IOException {
        Map<String, V> sorted = new TreeMap<>();
        values.forEach((one, of) -> sorted.put(text.apply(one), of));
        out.writeStartObject();
        for (Map.Entry<String, V> entry : sorted.entrySet()) {
          out.writeFieldName(entry.getKey());
          item.write(entry.getValue(), out);
        }
        out.writeEndObject();
      }

      @Override
      Map<String, Object> schema(Definitions definitions) {
        return Map.of("type", "object", "additionalProperties", item.schema(definitions));
      }
    };
  }

  /**
   * A value that a library knows by name, or one of its own: text is the name.
   *
   * @param <T> the value
   * @param known the values of the library
   * @param name the name of a value
   * @param own the form of a value of its own
   * @return the form; a value that the library holds is written by its name
   */
  public static <T> Form<T> known(List<T> known, Function<T, String> name, Form<T> own) {
    Map<String, T> byName =
        known.stream().collect(Collectors.toMap(name, one -> one, (a, b) -> a, TreeMap::new));
    return new Form<>() {
      @Override
      @Nullable T read(JsonValue value, String path, Reading reading) {
        if (value.type() != JsonValue.Type.TEXT) {
          return own.read(value, path, reading);
        }
        T found = byName.get(value.text());
        if (found == null) {
          reading.problem(
              value,
              path,
              value.shown() + " is not known",
              "an object, or one of the names "
                  + byName.keySet().stream()
                      .map(one -> "\"" + one + "\"")
                      .collect(Collectors.joining(", ")));
        }
        return found;
      }

      @Override
      void write(T value, JsonGenerator out) throws IOException {
        if (value.equals(byName.get(name.apply(value)))) {
          out.writeString(name.apply(value));
        } else {
          own.write(value, out);
        }
      }

      @Override
      Map<String, Object> schema(Definitions definitions) {
        return Map.of("anyOf", List.of(TEXT.schema(definitions), own.schema(definitions)));
      }
    };
  }
}
