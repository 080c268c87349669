package dev.kilnledger.costing.document;

import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.document.internal.DocumentForm;
import dev.kilnledger.core.document.internal.MaterialForms;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.offer.ExchangeRates;
import dev.kilnledger.costing.offer.PriceBook;

/** The documents of prices, jobs and answers; offers alone also stand in a {@link PriceListCsv}. */
public final class CostingDocuments {
  private CostingDocuments() {}

  /**
   * A price book, kind {@code "price-book"}. Where it is read, its field {@code exchangeRates} may
   * hold the rates by which prices of other currencies come into that of the book; each converted
   * offer keeps its rate, so that they are not written again.
   *
   * @return the document
   */
  public static Document<PriceBook> priceBook() {
    return new DocumentForm<>("price-book", 1, PriceBookForms.PRICE_BOOK);
  }

  /** {@return exchange rates, kind {@code "exchange-rates"}} */
  public static Document<ExchangeRates> exchangeRates() {
    return new DocumentForm<>("exchange-rates", 1, PriceBookForms.EXCHANGE_RATES);
  }

  /**
   * A job with all its inputs, kind {@code "job"}.
   *
   * @param known the materials that may stand by their name, such as {@link
   *     MaterialLibrary#standard()}
   * @return the document
   */
  public static Document<Job> job(MaterialLibrary known) {
    return new DocumentForm<>("job", 1, JobForms.job(new MaterialForms(known)));
  }

  /** {@return the figures of an answer, kind {@code "answer"}} */
  public static Document<AnswerFigures> answer() {
    return new DocumentForm<>("answer", 1, AnswerForms.ANSWER);
  }
}
