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
import java.util.function.Predicate;
import org.immutables.value.Value;
import org.joda.money.CurrencyUnit;

/**
 * Offers in one currency and the shipping terms of their suppliers, looked at on one day.
 *
 * <p>A book may hold several offers of an item: of several suppliers, in several packs, of several
 * periods. Which one is bought is never guessed: {@link #find} and {@link #offer} answer with the
 * only offer that holds on the day, and treat several as none. A caller who has chosen narrows the
 * book with {@link #choosing(Offer)} or {@link #choosing(String, String)}; a purchase planner,
 * which weighs them all, reads {@link #offersOf}.
 */
@Value.Immutable
@ValueStyle
public interface PriceBook extends Serializable {
  /** {@return the currency of every offer} */
  CurrencyUnit currency();

  /** {@return the day on which the prices are used, against which their age is told} */
  LocalDate asOf();

  /** {@return the offers in catalogue order, any number for each item} */
  List<Offer> offers();

  /** {@return what suppliers ask for sending, once for each supplier of whom it is known} */
  List<ShippingTerms> shipping();

  /**
   * {@return the age in days above which a price is called old, zero or more; 180 unless stated,
   * which is common practice and has no source}
   */
  @Value.Default
  default int oldAfterDays() {
    return 180;
  }

  /**
   * The offers of an item that hold on the book's day.
   *
   * @param item the item's name
   * @return the offers in catalogue order, empty if there is none
   */
  default List<Offer> offersOf(String item) {
    return offers().stream()
        .filter(offer -> offer.item().equals(item) && offer.holdsOn(asOf()))
        .toList();
  }

  /**
   * The only offer of an item that holds on the book's day.
   *
   * @param item the item's name
   * @return the offer; empty if there is none, or if there are several and none has been chosen
   */
  default Optional<Offer> find(String item) {
    List<Offer> offers = offersOf(item);
    return offers.size() == 1 ? Optional.of(offers.get(0)) : Optional.empty();
  }

  /**
   * The only offer of an item, which has to be there.
   *
   * @param item the item's name
   * @return the offer
   * @throws IllegalArgumentException if there is none or a choice of several; the message lists
   *     what there is
   */
  default Offer offer(String item) {
    return find(item).orElseThrow(() -> new IllegalArgumentException(missing(item)));
  }

  /**
   * Why {@link #find} does not find an item.
   *
   * @param item a name for which it answers empty
   * @return a message that lists what there is
   */
  default String missing(String item) {
    List<Offer> all = offers().stream().filter(offer -> offer.item().equals(item)).toList();
    if (all.isEmpty()) {
      return "no offer of \""
          + item
          + "\"; accepted is one of "
          + offers().stream().map(Offer::item).distinct().sorted().toList();
    }
    List<Offer> holding = offersOf(item);
    return holding.isEmpty()
        ? "no offer of \""
            + item
            + "\" holds on "
            + asOf()
            + "; accepted is a day on which one of "
            + all.stream().map(PriceBook::withValidity).toList()
            + " does"
        : holding.size()
            + " offers of \""
            + item
            + "\" and none is chosen; accepted is a book narrowed to one of "
            + holding.stream().map(Offer::text).toList();
  }

  private static String withValidity(Offer offer) {
    return offer.text()
        + offer.validFrom().map(day -> " from " + day).orElse("")
        + offer.validThrough().map(day -> " through " + day).orElse("");
  }

  /**
   * This book with one offer only for its item.
   *
   * @param offer an offer of this book
   * @return the book without the item's other offers
   * @throws IllegalArgumentException if the book does not hold the offer
   */
  default PriceBook choosing(Offer offer) {
    return narrowed(offer.item(), offer::equals, offer.text());
  }

  /**
   * This book with one supplier only for an item. If the supplier offers several packs, a choice
   * among them is left.
   *
   * @param item the item's name
   * @param supplier the supplier
   * @return the book without the item's offers of others
   * @throws IllegalArgumentException if the supplier does not offer the item
   */
  default PriceBook choosing(String item, String supplier) {
    return narrowed(item, offer -> offer.supplier().equals(supplier), supplier);
  }

  private PriceBook narrowed(String item, Predicate<Offer> chosen, String what) {
    List<Offer> rest =
        offers().stream()
            .filter(offer -> !offer.item().equals(item) || chosen.test(offer))
            .toList();
    if (rest.stream().noneMatch(offer -> offer.item().equals(item))) {
      throw new IllegalArgumentException(
          "the choice for "
              + item
              + " is "
              + what
              + "; accepted is one of "
              + offers().stream()
                  .filter(offer -> offer.item().equals(item))
                  .map(Offer::text)
                  .toList());
    }
    return builder().from(this).offers(rest).build();
  }

  /**
   * This book with every price and shipping charge on one tax basis. With tax they are exact;
   * without it they are price / (1 + rate), kept to 10 decimals, halves to the even neighbour.
   * Thresholds of free shipping stay as they are stated.
   *
   * @param basis {@link Tax#INCLUDED} or {@link Tax#EXCLUDED}
   * @return the book
   * @throws IllegalArgumentException with every offer and charge that does not say its basis, or
   *     has to be converted and has no rate
   */
  default PriceBook on(Tax basis) {
    TaxShift shift = new TaxShift(basis);
    Problems problems =
        new Problems("price book with tax " + basis.words())
            .require(basis != Tax.UNKNOWN, "basis is unknown; accepted is included or excluded");
    for (Offer offer : offers()) {
      shift
          .obstacle(
              "the offer of " + offer.item() + " by " + offer.supplier(),
              offer.tax(),
              offer.taxRate())
          .ifPresent(text -> problems.require(false, text));
    }
    for (ShippingTerms terms : shipping()) {
      shift
          .obstacle("the shipping of " + terms.supplier(), terms.tax(), terms.taxRate())
          .ifPresent(text -> problems.require(false, text));
    }
    problems.refuseIfAny();
    return builder()
        .from(this)
        .offers(offers().stream().map(offer -> on(basis, shift, offer)).toList())
        .shipping(
            shipping().stream()
                .map(
                    terms ->
                        ShippingTerms.builder()
                            .from(terms)
                            .charge(shift.shifted(terms.charge(), terms.tax(), terms.taxRate()))
                            .tax(basis)
                            .build())
                .toList())
        .build();
  }

  private static Offer on(Tax basis, TaxShift shift, Offer offer) {
    return Offer.builder()
        .from(offer)
        .price(shift.shifted(offer.price(), offer.tax(), offer.taxRate()))
        .breaks(
            offer.breaks().stream()
                .map(
                    step ->
                        PriceBreak.of(
                            step.fromPacks(),
                            shift.shifted(step.price(), offer.tax(), offer.taxRate())))
                .toList())
        .tax(basis)
        .build();
  }

  /**
   * What a supplier asks for sending.
   *
   * @param supplier the supplier
   * @return the terms, empty if they are not known
   */
  default Optional<ShippingTerms> shippingOf(String supplier) {
    return shipping().stream().filter(terms -> terms.supplier().equals(supplier)).findFirst();
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
   * Refuses several currencies, prices and rates of a later day, two prices of one pack of one
   * supplier on the same day, and terms of one supplier stated twice.
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
                  + currency()
                  + ", into which exchange rates convert")
          .require(
              offer.date().filter(date -> date.isAfter(asOf())).isEmpty(),
              "the offer of "
                  + offer.item()
                  + " is dated "
                  + offer.date().map(LocalDate::toString).orElse("")
                  + "; accepted is a day up to "
                  + asOf())
          .require(
              offer.convertedAt().filter(rate -> rate.date().isAfter(asOf())).isEmpty(),
              "the offer of "
                  + offer.item()
                  + " is converted at "
                  + offer.convertedAt().map(ExchangeRate::text).orElse("")
                  + "; accepted is a day up to "
                  + asOf());
    }
    offers().stream()
        .filter(offer -> offer.holdsOn(asOf()))
        .collect(
            groupingBy(
                offer -> offer.item() + " by " + offer.supplier() + " in " + offer.content(),
                TreeMap::new,
                counting()))
        .forEach(
            (pack, count) ->
                problems.require(
                    count == 1,
                    pack + " is offered " + count + " times; accepted is one offer of each pack"));
    for (ShippingTerms terms : shipping()) {
      problems.require(
          terms.charge().getCurrencyUnit().equals(currency()),
          "the shipping of "
              + terms.supplier()
              + " is "
              + terms.charge()
              + "; accepted is the book's currency "
              + currency()
              + ", into which exchange rates convert");
    }
    shipping().stream()
        .collect(groupingBy(ShippingTerms::supplier, TreeMap::new, counting()))
        .forEach(
            (supplier, count) ->
                problems.require(
                    count == 1,
                    "the shipping of "
                        + supplier
                        + " is stated "
                        + count
                        + " times; accepted is once"));
    problems.refuseIfAny();
  }
}
