package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Kind;
import java.util.Optional;
import javax.measure.Quantity;

/**
 * A figure of a plan that can vary: its value there, and the values it can have at all, in SI units
 * or units of the currency.
 */
record PlanFigure(
    String name,
    Amount<?> value,
    Bound least,
    double most,
    double floor,
    boolean whole,
    boolean isPrice) {

  /** The least value, or what has to be exceeded. */
  record Bound(double value, boolean excluded) {}

  static PlanFigure positive(String name, Amount<?> value) {
    return new PlanFigure(name, value, new Bound(0, true), Double.MAX_VALUE, 0, false, false);
  }

  static PlanFigure within(String name, Amount<?> value, double least, double most) {
    return new PlanFigure(name, value, new Bound(least, false), most, 0, false, false);
  }

  /** Money has no kind; its number is in units of the currency. */
  static PlanFigure price(String name, double price, Bound least) {
    return new PlanFigure(name, Amounts.ratio(price), least, Double.MAX_VALUE, 0, false, true);
  }

  /** A life that is counted lasts for the event in which it ends. */
  PlanFigure atLeastOne() {
    return new PlanFigure(name, value, least, most, 1, whole, isPrice);
  }

  PlanFigure inWholeNumbers() {
    return new PlanFigure(name, value, least, most, 1, true, isPrice);
  }

  PlanFigure upTo(double highest) {
    return new PlanFigure(name, value, least, highest, floor, whole, isPrice);
  }

  /** Whether everything from a low to a high value can be. */
  boolean holds(double low, double high) {
    return (least.excluded ? low > least.value : low >= least.value) && high <= most;
  }

  String accepted() {
    String from =
        least.excluded
            ? "more than " + shown(least.value)
            : most == Double.MAX_VALUE
                ? shown(least.value) + " or more"
                : "from " + shown(least.value);
    return most == Double.MAX_VALUE
        ? from
        : from + (least.excluded ? " and up to " : " to ") + shown(most);
  }

  /** What a unit has to measure, if this figure cannot do without one. */
  Optional<Kind<?>> measure() {
    return value.kind().equals(Kind.RATIO) ? Optional.empty() : Optional.of(value.kind());
  }

  /** An SI value for people, in the unit of the figure. */
  String shown(double si) {
    return like(one(value), si / one(value).si()).toString();
  }

  static <Q extends Quantity<Q>> Amount<Q> one(Amount<Q> sample) {
    return like(sample, 1);
  }

  static <Q extends Quantity<Q>> Amount<Q> like(Amount<Q> sample, double number) {
    return Amount.of(number, sample.getUnit(), sample.kind());
  }
}
