package dev.kilnledger.costing.outfit;

import static dev.kilnledger.units.Amounts.ratio;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.Tax;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A price book that grows with the options of a test. */
final class Shop {
  static final Source MADE = Source.user("made for this test");
  private final Map<String, Offer> offers = new LinkedHashMap<>();

  static Money euros(double amount) {
    return Money.of(CurrencyUnit.EUR, amount);
  }

  /** An option that is one piece of an item of its name. */
  Option.Builder option(String name, double price) {
    offers.put(
        name,
        Offer.builder()
            .item(name)
            .supplier("corner shop")
            .content(ratio(1))
            .price(euros(price))
            .date(LocalDate.of(2026, 11, 2))
            .tax(Tax.INCLUDED)
            .source(MADE)
            .build());
    return Option.builder().name(name).buy(name);
  }

  Option scored(String name, double price, long score) {
    return option(name, price).score(score).build();
  }

  static Option owned(String name) {
    return Option.builder().name(name).owned(true).build();
  }

  PriceBook book() {
    return PriceBook.builder()
        .currency(CurrencyUnit.EUR)
        .asOf(LocalDate.of(2026, 11, 25))
        .addAllOffers(offers.values())
        .build();
  }

  OutfitQuestion.Builder question(OptionGroup... groups) {
    return OutfitQuestion.builder().catalogue(OutfitCatalogue.of(List.of(groups))).prices(book());
  }
}
