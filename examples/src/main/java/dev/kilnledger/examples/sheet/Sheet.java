package dev.kilnledger.examples.sheet;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.UcumText;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;

/**
 * Rows with named columns, each number in the one unit of its column: the same data as a table for
 * people and as comma-separated values for a chart. It does not change; each column added makes a
 * new sheet.
 *
 * <p>Example: {@code Sheet.of("lengths", List.of(millimetres(5), metres(1))).amount("length",
 * METRE, 3, length -> length)} prints as
 *
 * <pre>
 * lengths
 *   length
 *        m
 *    0.005
 *    1.000
 * </pre>
 *
 * @param <T> what one row is about
 */
public final class Sheet<T> {
  private static final MathContext DIGITS = new MathContext(12);
  private static final int MONEY_DECIMALS = 6;

  private final String title;
  private final List<T> rows;
  private final List<Column<T>> columns;

  private Sheet(String title, List<T> rows, List<Column<T>> columns) {
    this.title = title;
    this.rows = rows;
    this.columns = columns;
  }

  /**
   * Starts without columns.
   *
   * @param <T> what one row is about
   * @param title what the sheet shows
   * @param rows the rows in their order
   * @return the sheet
   */
  public static <T> Sheet<T> of(String title, Collection<? extends T> rows) {
    return new Sheet<>(title, List.copyOf(rows), List.of());
  }

  /**
   * Adds a column of text.
   *
   * @param name what stands in it
   * @param value the text of a row, or whatever has one; a constant becomes words
   * @return the wider sheet
   */
  public Sheet<T> text(String name, Function<? super T, ?> value) {
    return with(new Column<>(name, "", "", false, row -> Cell.text(words(value.apply(row)))));
  }

  private static String words(Object value) {
    return value instanceof Enum<?> constant
        ? constant.name().toLowerCase(Locale.ROOT).replace('_', ' ')
        : value.toString();
  }

  /**
   * Adds a column of whole numbers.
   *
   * @param name what stands in it
   * @param value the number of a row
   * @return the wider sheet
   */
  public Sheet<T> count(String name, Function<? super T, ? extends Number> value) {
    return with(
        new Column<>(
            name,
            "",
            "",
            true,
            row -> {
              BigDecimal number = new BigDecimal(value.apply(row).toString());
              return Cell.number(number.toPlainString(), number);
            }));
  }

  /**
   * Adds a column of amounts, which are written with twelve digits.
   *
   * @param <Q> the quantity
   * @param name what stands in it
   * @param unit the unit of the whole column
   * @param decimals how many decimals people see
   * @param value the amount of a row
   * @return the wider sheet
   */
  public <Q extends Quantity<Q>> Sheet<T> amount(
      String name, Unit<Q> unit, int decimals, Function<? super T, Amount<Q>> value) {
    return amountIfAny(name, unit, decimals, row -> Optional.of(value.apply(row)));
  }

  /**
   * Adds a column of amounts that not every row has.
   *
   * @param <Q> the quantity
   * @param name what stands in it
   * @param unit the unit of the whole column
   * @param decimals how many decimals people see
   * @param value the amount of a row, if it has one
   * @return the wider sheet
   */
  public <Q extends Quantity<Q>> Sheet<T> amountIfAny(
      String name, Unit<Q> unit, int decimals, Function<? super T, Optional<Amount<Q>>> value) {
    Amount<Q> one = Amount.of(1, unit);
    return with(
        new Column<>(
            name,
            behindTheNumber(one.format(unit, 0)),
            behindTheNumber(UcumText.print(one)),
            true,
            row ->
                value
                    .apply(row)
                    .map(amount -> cell(number(amount.in(unit)), decimals))
                    .orElse(Cell.text(""))));
  }

  /**
   * Adds a column of money, shown with the decimals of its currency and written with up to six.
   *
   * @param name what stands in it
   * @param currency the currency of the whole column
   * @param value the money of a row
   * @return the wider sheet
   */
  public Sheet<T> money(
      String name, CurrencyUnit currency, Function<? super T, ? extends BigMoneyProvider> value) {
    return with(
        new Column<>(
            name,
            currency.getCode(),
            currency.getCode(),
            true,
            row ->
                cell(inCurrency(value.apply(row), currency, name), currency.getDecimalPlaces())));
  }

  private static BigDecimal inCurrency(
      BigMoneyProvider value, CurrencyUnit currency, String column) {
    BigMoney money = value.toBigMoney();
    if (!money.getCurrencyUnit().equals(currency)) {
      throw new IllegalArgumentException(
          "column \"" + column + "\": " + money + "; accepted is money in " + currency);
    }
    BigDecimal amount = money.getAmount();
    return amount.scale() > MONEY_DECIMALS
        ? amount.setScale(MONEY_DECIMALS, RoundingMode.HALF_EVEN)
        : amount;
  }

  private static Cell cell(BigDecimal number, int decimals) {
    return Cell.number(number.setScale(decimals, RoundingMode.HALF_EVEN).toPlainString(), number);
  }

  private static BigDecimal number(double value) {
    return BigDecimal.valueOf(value).round(DIGITS);
  }

  /** The unit behind the number; nothing for a plain number, whose code is 1. */
  private static String behindTheNumber(String amount) {
    String unit = amount.contains(" ") ? amount.substring(amount.indexOf(' ') + 1) : "";
    return unit.equals("1") ? "" : unit;
  }

  private Sheet<T> with(Column<T> column) {
    List<Column<T>> wider = new ArrayList<>(columns);
    wider.add(column);
    return new Sheet<>(title, rows, List.copyOf(wider));
  }

  /** {@return what the sheet shows} */
  public String title() {
    return title;
  }

  List<Column<T>> columns() {
    return columns;
  }

  /** {@return the cells, row by row} */
  List<List<Cell>> cells() {
    List<List<Cell>> cells = new ArrayList<>();
    for (T row : rows) {
      cells.add(columns.stream().map(column -> column.cell().apply(row)).toList());
    }
    return cells;
  }

  /** {@return the sheet as a table at most 100 columns wide, with line feeds} */
  @Override
  public String toString() {
    return SheetTable.of(this);
  }
}
