package dev.kilnledger.costing.document;

import static dev.kilnledger.core.document.internal.Forms.COUNT;
import static dev.kilnledger.core.document.internal.Forms.DATE;

import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.ExchangeRates;
import dev.kilnledger.costing.offer.PriceBook;
import java.util.List;

/** The forms of price books and of the exchange rates that bring prices into their currency. */
final class PriceBookForms {
  static final ObjectForm<PriceBook> PRICE_BOOK = bookForm();
  static final ObjectForm<ExchangeRates> EXCHANGE_RATES = ratesForm();

  private PriceBookForms() {}

  /**
   * A book holds the prices in its own currency, each with the rate by which it came there: the
   * exchange rates are needed for reading only, and are not written again.
   */
  private static ObjectForm<PriceBook> bookForm() {
    ObjectForm<PriceBook> form =
        ObjectForm.named(
            "priceBook",
            "Offers looked at on one day. Prices in another currency than the book's are converted"
                + " by its exchange rates when it is read.");
    var currency = form.required("currency", MoneyForms.CURRENCY, PriceBook::currency);
    var asOf = form.required("asOf", DATE, PriceBook::asOf);
    var oldAfter = form.defaulted("oldAfterDays", COUNT, PriceBook::oldAfterDays);
    var rates =
        form.list("exchangeRates", OfferForms.EXCHANGE_RATE, book -> List.<ExchangeRate>of());
    var offers = form.list("offers", OfferForms.OFFER, PriceBook::offers);
    var shipping = form.list("shipping", OfferForms.SHIPPING, PriceBook::shipping);
    return form.read(
        values -> {
          ExchangeRates known = ExchangeRates.of(values.get(rates));
          PriceBook.Builder book =
              PriceBook.builder()
                  .currency(values.get(currency))
                  .asOf(values.get(asOf))
                  .offers(known.convert(values.get(offers), values.get(currency)))
                  .shipping(known.convertTerms(values.get(shipping), values.get(currency)));
          values.get(oldAfter).ifPresent(book::oldAfterDays);
          return book.build();
        });
  }

  private static ObjectForm<ExchangeRates> ratesForm() {
    ObjectForm<ExchangeRates> form =
        ObjectForm.named("exchangeRates", "The exchange rates a caller stands by.");
    var rates = form.list("rates", OfferForms.EXCHANGE_RATE, ExchangeRates::rates);
    return form.read(values -> ExchangeRates.of(values.get(rates)));
  }
}
