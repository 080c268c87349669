package dev.kilnledger.core.document.internal;

import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import java.io.Serializable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import javax.measure.Quantity;

/** The forms of plain values, and of lists and maps of others. */
public final class Forms {
  private static final String DECIMAL_PATTERN = "-?[0-9]{1,200}(\\.[0-9]{1,200})?";

  private static final Pattern DECIMAL_TEXT = Pattern.compile(DECIMAL_PATTERN);

  /** Any text. */
  public static final Form<String> TEXT =
      ScalarForm.text("text", text -> text, text -> text, Map.of("type", "string"));

  /** True or false. */
  public static final Form<Boolean> TRUTH =
      new ScalarForm<>(
          JsonValue.Type.BOOLEAN,
          "true or false",
          Boolean::valueOf,
          (value, out) -> out.writeBoolean(value),
          Map.of("type", "boolean"));

  /** A whole number. */
  public static final Form<Long> WHOLE =
      new ScalarForm<>(
          JsonValue.Type.NUMBER,
          "a whole number",
          Long::valueOf,
          (value, out) -> out.writeNumber(value),
          Map.of("type", "integer"));

  /** A whole number that fits an int. */
  public static final Form<Integer> COUNT =
      new ScalarForm<>(
          JsonValue.Type.NUMBER,
          "a whole number up to " + Integer.MAX_VALUE,
          Integer::valueOf,
          (value, out) -> out.writeNumber(value),
          Map.of("type", "integer"));

  /** A floating-point number without unit. */
  public static final Form<Double> NUMBER =
      new ScalarForm<>(
          JsonValue.Type.NUMBER,
          "a number within the range of a double",
          Forms::finite,
          (value, out) -> out.writeNumber(value),
          Map.of("type", "number"));

  /** A decimal number kept to its last digit, as text. */
  public static final Form<BigDecimal> DECIMAL =
      ScalarForm.text(
          "a decimal number as text, such as \"12.50\"",
          Forms::decimal,
          BigDecimal::toPlainString,
          Map.of("type", "string", "pattern", "^" + DECIMAL_PATTERN + "$"));

  /** A date, ISO 8601. */
  public static final Form<LocalDate> DATE =
      ScalarForm.text(
          "a date such as \"2026-11-25\"",
          Forms::date,
          LocalDate::toString,
          Map.of("type", "string", "format", "date"));

  /** How a figure was come by. */
  public static final Form<Standing> STANDING = choice(Standing.class);

  /** Where a figure comes from. */
  public static final Form<Source> SOURCE = source();

  /** An amount of any kind, with the name of its kind. */
  public static final Form<Amount<?>> ANY_AMOUNT = new KindAmountForm();

  private Forms() {}

  private static Double finite(String text) {
    Double number = Double.valueOf(text);
    if (number.isInfinite()) {
      throw new IllegalArgumentException("out of range");
    }
    return number;
  }

  private static BigDecimal decimal(String text) {
    if (!DECIMAL_TEXT.matcher(text).matches()) {
      throw new IllegalArgumentException("no decimal number");
    }
    return new BigDecimal(text);
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private static Form<Source> source() {
    ObjectForm<Source> form =
        ObjectForm.<Source>named("source", "Where a figure comes from.").onOneLine();
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
    ObjectForm<Span<Q>> form = ObjectForm.<Span<Q>>nameless().onOneLine();
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
    ObjectForm<Estimate<Q>> form = ObjectForm.<Estimate<Q>>nameless().onOneLine();
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
    return choice(type, constant -> constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /**
   * A constant, by words of the caller's choice.
   *
   * @param <E> the enumeration
   * @param type the enumeration
   * @param word the word of a constant
   * @return the form
   */
  public static <E extends Enum<E>> Form<E> choice(Class<E> type, Function<E, String> word) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E constant : type.getEnumConstants()) {
      words.put(word.apply(constant), constant);
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
    return new WordForm<>(words);
  }

  /**
   * Several values in their order.
   *
   * @param <T> the values
   * @param item the form of each
   * @return the form
   */
  public static <T> Form<List<T>> list(Form<T> item) {
    return new ListForm<>(item, false);
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
    return new MapForm<>(key, text, item);
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
    return new KnownForm<>(known, name, own);
  }
}
