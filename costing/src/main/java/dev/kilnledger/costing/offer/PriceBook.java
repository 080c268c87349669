package dev.kilnledger.costing.offer;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.immutables.value.Value;
import org.joda.money.CurrencyUnit;

/** Offers in one currency, one for each item, looked at on one day. */
@Value.Immutable
@ValueStyle
public interface PriceBook extends Serializable {
  /** {@return the currency of every offer} */
  CurrencyUnit currency();

  /** {@return the day on which the prices are used, against which their age is told} */
  LocalDate asOf();

  /** {@return the offers, one for each item} */
  List<Offer> offers();

  /**
   * {@return the age in days above which a price is called old, zero or more; 180 unless stated,
   * which is common practice and has no source}
   */
  @Value.Default
  default int oldAfterDays() {
    return 180;
  }

  /**
   * The offer of an item, if there is one.
   *
   * @param item the item's name
   * @return the offer
   */
  default Optional<Offer> find(String item) {
    return offers().stream().filter(offer -> offer.item().equals(item)).findFirst();
  }

  /**
   * The offer of an item that has to be there.
   *
   * @param item the item's name
   * @return the offer
   * @throws IllegalArgumentException if there is none; the message lists the items there are
   */
  default Offer offer(String item) {
    return find(item).orElseThrow(() -> new IllegalArgumentException(missing(item)));
  }

  /**
   * Why an item cannot be bought from this book.
   *
   * @param item a name that no offer has
   * @return a message that lists the items there are
   */
  default String missing(String item) {
    return "no offer of \""
        + item
        + "\"; accepted is one of "
        + offers().stream().map(Offer::item).sorted().toList();
  }

  /**
   * Starts one.
   *
   * @return a builder; currency and day are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link PriceBook} values. */
  final class Builder extends ImmutablePriceBook.Builder {
    Builder() {}
  }

  /**
   * Refuses several currencies, several offers of one item, and prices of a later day.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("price book")
            .require(
                oldAfterDays() >= 0,
                "old after " + oldAfterDays() + " days; accepted is zero or more");
    for (Offer offer : offers()) {
      problems
          .require(
              offer.price().getCurrencyUnit().equals(currency()),
              "the offer of "
                  + offer.item()
                  + " is "
                  + offer.price()
                  + "; accepted is the book's currency "
                  + currency())
          .require(
              offer.date().filter(date -> date.isAfter(asOf())).isEmpty(),
              "the offer of "
                  + offer.item()
                  + " is dated "
                  + offer.date().map(LocalDate::toString).orElse("")
                  + "; accepted is a day up to "
                  + asOf());
    }
    offers().stream()
        .collect(groupingBy(Offer::item, TreeMap::new, counting()))
        .forEach(
            (item, count) ->
                problems.require(
                    count == 1,
                    item + " is offered " + count + " times; accepted is one offer of each item"));
    problems.refuseIfAny();
  }
}
