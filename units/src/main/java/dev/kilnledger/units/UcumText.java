package dev.kilnledger.units;

import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import systems.uom.ucum.format.UCUMFormat;
import systems.uom.ucum.format.UCUMFormat.Variant;

/**
 * Amounts as text that programs exchange: a number, a space, and a unit code of the Unified Code
 * for Units of Measure (UCUM, case sensitive), such as {@code "8.96 g/cm3"} or {@code "820 Cel"}.
 * The same in every locale. A bare number stands for the unit {@code 1}.
 *
 * <p>Since {@code K} may be a temperature or a difference and {@code %} a share of mass or of
 * volume, reading takes the kind.
 */
public final class UcumText {
  private static final int LONGEST_CODE = 64;
  private static final Pattern FORM =
      Pattern.compile("([-+]?[0-9]{1,40}(?:\\.[0-9]{1,40})?(?:[eE][-+]?[0-9]{1,3})?)(?: (\\S+))?");

  // The units library raises to a power by recursion and would run out of stack.
  private static final Pattern HUGE_EXPONENT = Pattern.compile("[^-+./(0-9][-+]?[0-9]{3}");

  private UcumText() {}

  /**
   * Reads an amount.
   *
   * @param <Q> the quantity
   * @param text a decimal number, one space, and a UCUM code
   * @param kind what the amount is an amount of
   * @return the amount, in the unit of the text
   * @throws IllegalArgumentException if the text is not of this form, the code is unknown or
   *     measures something else, or the number is refused by {@link Amount#of(double, Unit, Kind)}
   */
  public static <Q extends Quantity<Q>> Amount<Q> parse(String text, Kind<Q> kind) {
    Matcher matcher = match(text, kind.name(), kind.siScale().ucum());
    return amount(Double.parseDouble(matcher.group(1)), code(matcher), kind);
  }

  /**
   * Reads an amount of whatever its unit measures: of several kinds that share a unit, such as a
   * temperature and a difference, the one that {@link Amount#of(double, Unit)} takes it for.
   *
   * @param text a decimal number, one space, and a UCUM code
   * @return the amount, in the unit of the text
   * @throws IllegalArgumentException if the text is not of this form, the code is unknown, or the
   *     number is refused
   */
  public static Amount<?> parse(String text) {
    Matcher matcher = match(text, "amount", "mm");
    return amount(Double.parseDouble(matcher.group(1)), code(matcher));
  }

  /**
   * Reads an amount of one of several kinds, told apart by its unit.
   *
   * @param text a decimal number, one space, and a UCUM code
   * @param kinds the kinds; of several that share a unit, the first counts
   * @return the amount, in the unit of the text
   * @throws IllegalArgumentException if the text is not of this form, the code is unknown or
   *     measures something else, or the number is refused
   */
  public static Amount<?> parse(String text, List<Kind<?>> kinds) {
    String names = kinds.stream().map(Kind::name).collect(Collectors.joining(", "));
    Matcher matcher = match(text, names, kinds.get(0).siScale().ucum());
    double number = Double.parseDouble(matcher.group(1));
    String code = code(matcher);
    for (Kind<?> kind : kinds) {
      if (UnitScales.ofCode(code, kind) != null) {
        return amount(number, code, kind);
      }
    }
    Unit<?> unit = unit(code);
    for (Kind<?> kind : kinds) {
      if (unit.isCompatible(kind.siUnit())) {
        return amount(number, code, kind);
      }
    }
    throw new IllegalArgumentException(
        "unit " + unit + " measures something else; accepted is a unit of " + names);
  }

  private static Matcher match(String text, String what, String unit) {
    Matcher matcher = FORM.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "\""
              + abridged(text)
              + "\" is no "
              + what
              + "; accepted is a decimal number, a space"
              + " and a UCUM code, such as \"1.5 "
              + unit
              + "\"");
    }
    return matcher;
  }

  private static String code(Matcher matcher) {
    return matcher.group(2) == null ? "1" : matcher.group(2);
  }

  /**
   * Prints an amount so that {@link #parse} gives back an equal one. The unit given is kept unless
   * UCUM has no code for it or its number would lead to a neighbouring SI value; then the SI unit
   * is used.
   *
   * @param amount the amount
   * @return number, space, code
   */
  public static String print(Amount<?> amount) {
    Amount<?> written = writable(amount);
    return DecimalText.of(written.given()) + " " + code(written.scale());
  }

  /** The amount of a number of units with a code. */
  static <Q extends Quantity<Q>> Amount<Q> amount(double number, String code, Kind<Q> kind) {
    return new Amount<>(number, scale(code, kind));
  }

  private static <Q extends Quantity<Q>> UnitScale<Q> scale(String code, Kind<Q> kind) {
    UnitScale<Q> shipped = UnitScales.ofCode(code, kind);
    return shipped != null ? shipped : UnitScale.resolve(unit(code), kind);
  }

  /** The amount of a number of units with a code, its kind being told by the unit. */
  @SuppressWarnings({"unchecked", "rawtypes"}) // the wildcard only says that the kind is not known
  static Amount<?> amount(double number, String code) {
    return Amount.of(number, (Unit) unit(code));
  }

  /** The same amount in a unit whose code and number lead back to the same SI value. */
  static <Q extends Quantity<Q>> Amount<Q> writable(Amount<Q> amount) {
    String code = code(amount.scale());
    // The code may lead to another object for the same unit, which rounds otherwise.
    boolean exact =
        !code.isEmpty() && scale(code, amount.kind()).toSi(amount.given()) == amount.si();
    return exact ? amount : new Amount<>(amount.si(), amount.kind().siScale());
  }

  /** The UCUM code of a scale, empty where there is none that reads back. */
  static String code(UnitScale<?> scale) {
    if (!scale.ucum().isEmpty()) {
      return scale.ucum();
    }
    try {
      String code = format().format(scale.unit());
      return unit(code).getConverterToAny(scale.unit()).isIdentity() ? code : "";
    } catch (IllegalArgumentException
        | UnsupportedOperationException
        | IncommensurableException
        | UnconvertibleException e) {
      return "";
    }
  }

  private static Unit<?> unit(String code) {
    if (code.length() > LONGEST_CODE) {
      throw new IllegalArgumentException(
          "unit code \""
              + abridged(code)
              + "\" is longer than "
              + LONGEST_CODE
              + " characters; accepted is a UCUM code such as \"g/cm3\"");
    }
    if (HUGE_EXPONENT.matcher(code).find()) {
      throw new IllegalArgumentException(
          "unit code \""
              + code
              + "\" has an exponent of more than two digits; accepted is a UCUM code such as"
              + " \"g/cm3\"");
    }
    try {
      Unit<?> unit = format().parse(code);
      // The library reads some that it cannot name, and fails over that wherever it converts them.
      Objects.requireNonNull(unit.toString());
      return unit;
    } catch (RuntimeException | Error e) {
      // The reader of the UCUM library reports a bad token as an Error of its own.
      if (e instanceof VirtualMachineError fatal) {
        throw fatal;
      }
      throw new IllegalArgumentException(
          "\""
              + code
              + "\" is not a unit code; accepted is a UCUM code such as \"g/cm3\", \"Cel\""
              + " or \"kW.h\"",
          e);
    }
  }

  private static UCUMFormat format() {
    return UCUMFormat.getInstance(Variant.CASE_SENSITIVE);
  }

  private static String abridged(String text) {
    return text.length() <= LONGEST_CODE ? text : text.substring(0, LONGEST_CODE) + "…";
  }
}
