package dev.kilnledger.costing.offer;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amounts;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Holds prices against the day on which they are used. It answers with what deserves attention
 * only: where nothing is found, every price is dated, young enough, in force, and clear about tax
 * and shipping.
 */
public final class PriceCheck {
  private static final Source LIMIT = Source.user("age limit of the price book");
  private static final Source OFFER = Source.user("the offer as it was entered");
  private static final PriceCheck STANDARD = new PriceCheck();

  private PriceCheck() {}

  /** {@return the check} */
  public static PriceCheck standard() {
    return STANDARD;
  }

  /**
   * Checks all offers of a book.
   *
   * @param book the book
   * @return what deserves attention, offer by offer, then supplier by supplier
   */
  public List<Finding> book(PriceBook book) {
    return offers(book, book.offers());
  }

  /**
   * Checks some offers of a book, such as those that are bought.
   *
   * @param book the book
   * @param offers offers of the book
   * @return what deserves attention, offer by offer, then supplier by supplier
   */
  public List<Finding> offers(PriceBook book, List<Offer> offers) {
    List<Finding> found = new ArrayList<>();
    TreeSet<String> suppliers = new TreeSet<>();
    for (Offer offer : offers) {
      age(book, offer, found);
      validity(book, offer, found);
      if (offer.tax() == Tax.UNKNOWN) {
        found.add(
            finding(PriceFinding.TAX_BASIS, Severity.UNDETERMINED, offer.item(), OFFER)
                .message("the price does not say whether it holds the tax: " + offer.text())
                .build());
      }
      if (!offer.metered() && book.shippingOf(offer.supplier()).isEmpty()) {
        suppliers.add(offer.supplier());
      }
    }
    for (String supplier : suppliers) {
      found.add(
          finding(PriceFinding.SHIPPING_TERMS, Severity.UNDETERMINED, supplier, OFFER)
              .message("what it asks for sending is not known and counts as nothing")
              .build());
    }
    return List.copyOf(found);
  }

  private static void age(PriceBook book, Offer offer, List<Finding> found) {
    if (offer.date().isEmpty()) {
      found.add(
          finding(PriceFinding.PRICE_AGE, Severity.UNDETERMINED, offer.item(), OFFER)
              .message("the price carries no date: " + offer.text())
              .build());
    } else {
      old(book, offer, offer.date().get(), PriceFinding.PRICE_AGE, "the price is of ", found);
    }
    offer
        .convertedAt()
        .ifPresent(
            rate ->
                old(
                    book,
                    offer,
                    rate.date(),
                    PriceFinding.EXCHANGE_RATE_AGE,
                    "the exchange rate is of ",
                    found));
  }

  private static void old(
      PriceBook book,
      Offer offer,
      LocalDate date,
      PriceFinding code,
      String what,
      List<Finding> found) {
    long days = ChronoUnit.DAYS.between(date, book.asOf());
    if (days > book.oldAfterDays()) {
      found.add(
          finding(code, Severity.NOTE, offer.item(), LIMIT)
              .message(
                  what + date + ", " + days + " days before " + book.asOf() + ": " + offer.text())
              .measured(Amounts.days((double) days))
              .limit(Amounts.days(book.oldAfterDays()))
              .build());
    }
  }

  private static void validity(PriceBook book, Offer offer, List<Finding> found) {
    if (!offer.holdsOn(book.asOf())) {
      found.add(
          finding(PriceFinding.OFFER_VALIDITY, Severity.NOTE, offer.item(), OFFER)
              .message(
                  "the offer does not hold on "
                      + book.asOf()
                      + " and is left out: "
                      + offer.text()
                      + offer.validFrom().map(day -> ", from " + day).orElse("")
                      + offer.validThrough().map(day -> ", through " + day).orElse(""))
              .build());
    }
  }

  private static Finding.Builder finding(
      PriceFinding code, Severity severity, String subject, Source basis) {
    Finding.Builder finding = Finding.builder();
    finding.code(code).severity(severity).subject(subject).basis(basis);
    return finding;
  }
}
