package dev.kilnledger.costing.offer;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * The exchange rates a caller stands by: the one way in which prices of several currencies come
 * into one book. Prices are multiplied by the stated rate and not rounded; no rate is inverted or
 * chained, as the result would be a rate that nobody stated.
 */
@Value.Immutable
@ValueStyle
public interface ExchangeRates extends Serializable {
  /** {@return the rates, one for each pair of currencies} */
  @Value.Parameter
  List<ExchangeRate> rates();

  /**
   * Exchange rates.
   *
   * @param rates the rates, one for each pair of currencies
   * @return the rates
   * @throws IllegalArgumentException if a pair is stated more than once
   */
  static ExchangeRates of(List<ExchangeRate> rates) {
    return ImmutableExchangeRates.of(rates);
  }

  /**
   * Offers in one currency; each one converted says by which rate.
   *
   * @param offers offers of any currency
   * @param currency the currency wanted
   * @return the offers in the order given
   * @throws IllegalArgumentException with all rates that are missing
   */
  default List<Offer> convert(List<Offer> offers, CurrencyUnit currency) {
    requireRates(offers.stream().map(Offer::price), currency);
    return offers.stream().map(offer -> converted(offer, currency)).toList();
  }

  /**
   * Shipping terms in one currency.
   *
   * @param terms terms of any currency
   * @param currency the currency wanted
   * @return the terms in the order given
   * @throws IllegalArgumentException with all rates that are missing
   */
  default List<ShippingTerms> convertTerms(List<ShippingTerms> terms, CurrencyUnit currency) {
    requireRates(terms.stream().map(ShippingTerms::charge), currency);
    return terms.stream().map(term -> converted(term, currency)).toList();
  }

  /**
   * A price book in another currency, with its offers and shipping terms.
   *
   * @param book a price book
   * @param currency the currency wanted
   * @return the book, unchanged if it is in that currency
   * @throws IllegalArgumentException if the rate is missing, or is of a later day than the book's
   */
  default PriceBook convert(PriceBook book, CurrencyUnit currency) {
    requireRates(Stream.of(BigMoney.zero(book.currency())), currency);
    return PriceBook.builder()
        .from(book)
        .currency(currency)
        .offers(convert(book.offers(), currency))
        .shipping(convertTerms(book.shipping(), currency))
        .build();
  }

  private Optional<ExchangeRate> rate(CurrencyUnit from, CurrencyUnit to) {
    return rates().stream()
        .filter(rate -> rate.base().equals(from) && rate.counter().equals(to))
        .findFirst();
  }

  private void requireRates(Stream<BigMoney> prices, CurrencyUnit currency) {
    Problems problems = new Problems("exchange rates");
    TreeSet<CurrencyUnit> missing = new TreeSet<>();
    prices
        .map(BigMoney::getCurrencyUnit)
        .filter(from -> !from.equals(currency) && rate(from, currency).isEmpty())
        .forEach(missing::add);
    for (CurrencyUnit from : missing) {
      problems.require(
          false,
          "there is no rate from "
              + from
              + " to "
              + currency
              + "; accepted is one of "
              + rates().stream().map(rate -> rate.base() + " to " + rate.counter()).toList());
    }
    problems.refuseIfAny();
  }

  private Offer converted(Offer offer, CurrencyUnit currency) {
    return rate(offer.price().getCurrencyUnit(), currency)
        .map(
            rate ->
                Offer.builder()
                    .from(offer)
                    .price(offer.price().convertedTo(currency, rate.rate()))
                    .breaks(
                        offer.breaks().stream()
                            .map(
                                step ->
                                    PriceBreak.of(
                                        step.fromPacks(),
                                        step.price().convertedTo(currency, rate.rate())))
                            .toList())
                    .convertedAt(rate)
                    .build())
        .orElse(offer);
  }

  private ShippingTerms converted(ShippingTerms terms, CurrencyUnit currency) {
    return rate(terms.charge().getCurrencyUnit(), currency)
        .map(
            rate ->
                ShippingTerms.builder()
                    .from(terms)
                    .charge(terms.charge().convertedTo(currency, rate.rate()))
                    .freeFrom(
                        terms.freeFrom().map(value -> value.convertedTo(currency, rate.rate())))
                    .build())
        .orElse(terms);
  }

  /**
   * Refuses two rates for one pair of currencies.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("exchange rates");
    rates().stream()
        .collect(
            groupingBy(rate -> rate.base() + " to " + rate.counter(), TreeMap::new, counting()))
        .forEach(
            (pair, count) ->
                problems.require(
                    count == 1,
                    "the rate from " + pair + " is stated " + count + " times; accepted is once"));
    problems.refuseIfAny();
  }
}
