package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.immutables.value.Value;
import org.joda.money.CurrencyUnit;

/**
 * Something that is not known for sure: its name, how likely which value of it is, and who says so.
 *
 * <p>In a {@linkplain UncertainPlan plan} the name is that of a figure of the plan, such as {@code
 * "life of crucible"}, or of several that go up and down together, such as {@code "prices of
 * supplier corner shop"}; the methods below write these names. For a {@linkplain Model formula of
 * one's own} it is any text, and the order of the inputs counts.
 *
 * <p>Each input is drawn once per trial and shared by all it acts on. Inputs are independent of
 * each other: the only correlation there is comes from a shared input, for which {@link #factor} is
 * made.
 */
@Value.Immutable
@ValueStyle
public interface UncertainInput extends Serializable {
  /** {@return the name, which stands for the input in every result} */
  String name();

  /** {@return how likely which value is, in {@link #unit}} */
  Distribution distribution();

  /** {@return who says so} */
  Source source();

  /** {@return one unit of the distribution's values; plain numbers and prices have none} */
  Optional<Amount<?>> unit();

  /**
   * {@return the names of the figures it multiplies; none where its own name says what it acts on}
   */
  List<String> multiplies();

  /**
   * {@return on how many degrees of freedom the standard deviation stands (JCGM 100 G.3), 1 or
   * more; infinite, as it is taken to be known, unless stated}
   */
  @Value.Default
  default double degreesOfFreedom() {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * An input by its name.
   *
   * @param name the name
   * @param distribution how likely which value is
   * @param source who says so
   * @return the input
   * @throws IllegalArgumentException if the name is blank
   */
  static UncertainInput of(String name, Distribution distribution, Source source) {
    return builder().name(name).distribution(distribution).source(source).build();
  }

  /**
   * The price of a pack of an item, in the currency of the plan.
   *
   * @param item the item, or the shipping of a supplier by the name it has in the plan
   * @param distribution of the price, zero or more
   * @param source who says so
   * @return the input
   */
  static UncertainInput price(String item, Distribution distribution, Source source) {
    return of(FigureName.price(item), distribution, source);
  }

  /**
   * All prices of a supplier, shipping included, by one common factor.
   *
   * @param supplier the supplier, as the offers name it
   * @param factor of the factor on the prices of the plan, more than zero
   * @param source who says so
   * @return the input
   */
  static UncertainInput supplierPrices(String supplier, Distribution factor, Source source) {
    return of(FigureName.supplier(supplier), factor, source);
  }

  /**
   * The exchange rate by which prices came into the currency of the plan.
   *
   * @param base the currency the prices were in
   * @param rate of what one unit of it is worth in the plan's currency, more than zero
   * @param source who says so
   * @return the input
   */
  static UncertainInput exchangeRate(CurrencyUnit base, Distribution rate, Source source) {
    return of(FigureName.exchangeRate(base), rate, source);
  }

  /**
   * The share of the parts, taken one by one, that pass a stage.
   *
   * @param stage the stage
   * @param share of the share, 0.001 to 1
   * @param source who says so
   * @return the input
   */
  static UncertainInput partYield(Stage stage, Distribution share, Source source) {
    return of(FigureName.partYield(stage), share, source);
  }

  /**
   * The share of the charges that are not lost at a stage.
   *
   * @param stage the stage
   * @param share of the share, 0.001 to 1
   * @param source who says so
   * @return the input
   */
  static UncertainInput chargeYield(Stage stage, Distribution share, Source source) {
    return of(FigureName.chargeYield(stage), share, source);
  }

  /**
   * How long an item lasts: counted in the events of its driver, what is drawn below 1 counting as
   * 1, or measured as its driver is. This is what is not known about the life, the same for all
   * pieces of a trial; that pieces scatter among themselves is told by {@link
   * dev.kilnledger.costing.resource.WeibullLife}.
   *
   * @param item a wearing, depreciated or aged item
   * @param life of the life, more than zero; of an aged item in whole cycles, to which it is
   *     rounded
   * @param source who says so
   * @return the input, counted; measured by {@link #in}
   */
  static UncertainInput life(String item, Distribution life, Source source) {
    return of(FigureName.life(item), life, source);
  }

  /**
   * How much of an item one event of its driver uses.
   *
   * @param item a consumed item that one resource of the plan needs
   * @param quantity of the quantity, more than zero
   * @param source who says so
   * @return the input, in pieces; measured by {@link #in}
   */
  static UncertainInput quantity(String item, Distribution quantity, Source source) {
    return of(FigureName.quantity(item), quantity, source);
  }

  /**
   * How much of an item one event uses, where several resources need it, as labour.
   *
   * @param item a consumed item
   * @param driver the driver of the resource that is meant
   * @param quantity of the quantity, more than zero
   * @param source who says so
   * @return the input, in pieces; measured by {@link #in}
   */
  static UncertainInput quantity(String item, Driver driver, Distribution quantity, Source source) {
    return of(FigureName.quantity(item, driver), quantity, source);
  }

  /**
   * The fill of a crucible with an item.
   *
   * @param item an item that is topped up, run down or aged
   * @param fill of the fill, more than zero
   * @param source who says so
   * @return the input, in pieces; measured by {@link #in}
   */
  static UncertainInput fill(String item, Distribution fill, Source source) {
    return of(FigureName.fill(item), fill, source);
  }

  /**
   * The share that one firing loses.
   *
   * @param item an item that is topped up or run down
   * @param loss of the share, 0 to 1
   * @param source who says so
   * @return the input; in percent by {@link #in}
   */
  static UncertainInput loss(String item, Distribution loss, Source source) {
    return of(FigureName.loss(item), loss, source);
  }

  /**
   * What one event takes of a driver that is measured, such as the hours of a print.
   *
   * @param driver the driver
   * @param amount of the amount, more than zero
   * @param source who says so
   * @return the input, to be measured by {@link #in}
   */
  static UncertainInput amount(Driver driver, Distribution amount, Source source) {
    return of(FigureName.amount(driver), amount, source);
  }

  /**
   * A common cause: one factor on several figures, drawn once for all of them, such as firings that
   * take longer and with them more energy.
   *
   * @param name a name of its own
   * @param figures the names of the figures it multiplies, as {@link UncertainPlan#figures} lists
   *     them
   * @param factor of the factor, more than zero
   * @param source who says so
   * @return the input
   */
  static UncertainInput factor(
      String name, List<String> figures, Distribution factor, Source source) {
    return builder().name(name).multiplies(figures).distribution(factor).source(source).build();
  }

  /**
   * This input with the values of its distribution in a unit.
   *
   * @param <Q> the quantity
   * @param unit a unit whose scale is proportional to the SI unit's
   * @return the input
   */
  default <Q extends Quantity<Q>> UncertainInput in(Unit<Q> unit) {
    return builder().from(this).unit(Amount.of(1, unit)).build();
  }

  /**
   * {@return the input for people: {@code "life of crucible: triangular, 8 to 16, most likely 12"}}
   */
  default String text() {
    String symbol =
        unit().map(Amount::toString).filter(one -> one.startsWith("1 ")).orElse("1 ").substring(2);
    return name() + ": " + distribution().text() + (symbol.isEmpty() ? "" : ", in " + symbol);
  }

  /**
   * Starts one.
   *
   * @return a builder; name, distribution and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link UncertainInput} values. */
  final class Builder extends ImmutableUncertainInput.Builder {
    Builder() {}
  }

  /**
   * Refuses a blank name and degrees of freedom that are none.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("uncertain input " + name())
        .text("name", name())
        .require(
            degreesOfFreedom() >= 1,
            "degrees of freedom is "
                + Numbers.text(degreesOfFreedom())
                + "; accepted is 1 or more, and infinity")
        .refuseIfAny();
  }
}
