package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * What an hour of a machine costs: its standing charges of a year over its effective hours, and its
 * running cost of an hour.
 */
@Value.Immutable
@ValueStyle
public interface MachineHourRate extends Serializable {
  /** {@return the machine} */
  String machine();

  /** {@return the currency of every part} */
  CurrencyUnit currency();

  /** {@return what a year costs whether it runs or not, such as rent and depreciation} */
  List<CostPart> standing();

  /** {@return the hours a year in which it works, more than zero} */
  Amount<Time> effectiveHours();

  /** {@return what an hour costs while it runs, such as power} */
  List<CostPart> running();

  /**
   * {@return what each part costs for one hour, standing ones first: cost / hours, to 34 digits, or
   * the running cost as it is}
   */
  default List<CostPart> hourly() {
    BigDecimal hours = effectiveHours().decimalIn(TradeUnits.HOUR);
    List<CostPart> parts = new ArrayList<>();
    for (CostPart part : standing()) {
      BigDecimal cost = part.cost().getAmount().divide(hours, MathContext.DECIMAL128);
      parts.add(CostPart.of(part.name(), BigMoney.of(currency(), cost), part.source()));
    }
    parts.addAll(running());
    return List.copyOf(parts);
  }

  /** {@return the sum of {@link #hourly}, unrounded} */
  default BigMoney perHour() {
    BigMoney sum = BigMoney.zero(currency());
    for (CostPart part : hourly()) {
      sum = sum.plus(part.cost());
    }
    return sum;
  }

  /**
   * What some time on the machine costs.
   *
   * @param time the time
   * @return time x rate, unrounded
   * @throws IllegalArgumentException if the time is negative
   */
  default BigMoney costOf(Amount<Time> time) {
    new Problems("time on " + machine()).notNegative("time", time).refuseIfAny();
    return perHour().multipliedBy(time.decimalIn(TradeUnits.HOUR));
  }

  /**
   * {@return the machine by the hour as an offer of the workshop itself, so that a ledger can count
   * its hours: by measure, an hour at {@link #perHour}, without tax}
   */
  default Offer offer() {
    return Offer.builder()
        .item(machine())
        .supplier("own workshop")
        .content(Amounts.hours(1))
        .price(perHour())
        .metered(true)
        .tax(Tax.EXCLUDED)
        .source(
            Source.recomputed(
                "machine-hour rate of "
                    + Stream.concat(standing().stream(), running().stream())
                        .map(CostPart::name)
                        .collect(Collectors.joining(", "))))
        .build();
  }

  /**
   * Starts one.
   *
   * @return a builder; machine, currency and effective hours are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link MachineHourRate} values. */
  final class Builder extends ImmutableMachineHourRate.Builder {
    Builder() {}
  }

  /**
   * Refuses a machine without hours, and parts of another currency.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("machine-hour rate of " + machine())
            .text("machine", machine())
            .positive("effective hours", effectiveHours());
    Stream.concat(standing().stream(), running().stream())
        .forEach(
            part ->
                problems.require(
                    part.cost().getCurrencyUnit().equals(currency()),
                    part.name() + " is " + part.cost() + "; accepted is in " + currency()));
    problems.refuseIfAny();
  }
}
