package dev.kilnledger.costing.document;

import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.costing.offer.Offer;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Offers as comma-separated values by RFC 4180, in UTF-8, one in each line below a header. The
 * columns are named as the fields of an offer in a JSON document, with dots where fields lie in
 * each other; in any order, and those that are not needed left out. Amounts stand as number and
 * UCUM unit, a number of pieces alone, and price breaks as {@code 5: 74.00; 10: 70.00}.
 *
 * <pre>
 * item,supplier,referenceQuantity,price,priceCurrency,date,source.text,source.standing
 * bronze filament,corner shop,500 g,80.00,EUR,2026-11-02,seen in the shop,user
 * electricity,town works,1 kW.h,0.30,EUR,2026-11-02,the bill,user
 * </pre>
 *
 * <p>Lines end with carriage return and line feed; a line feed alone is read as well, and so is a
 * byte order mark at the start.
 *
 * <p>Spreadsheets compute what begins with {@code =}, {@code +}, {@code -} or {@code @}. Here it is
 * text and nothing else: such a text is read as it stands, and written after an apostrophe, which
 * keeps it text in a spreadsheet and is taken off when it is read again.
 *
 * <p>Offers may be of several currencies; {@link dev.kilnledger.costing.offer.ExchangeRates} bring
 * them into that of a price book.
 */
public final class PriceListCsv {
  private static final PriceListCsv STANDARD = new PriceListCsv();

  private PriceListCsv() {}

  /** {@return the form of price lists} */
  public static PriceListCsv standard() {
    return STANDARD;
  }

  /**
   * Reads a price list within the standard limits.
   *
   * @param source its bytes, UTF-8
   * @return the offers in their order
   * @throws UnreadableInputException if it is no price list, with all problems
   * @throws IOException if the bytes cannot be read
   */
  public List<Offer> read(ByteSource source) throws IOException {
    return read(source, DocumentLimits.standard());
  }

  /**
   * Reads a price list.
   *
   * @param source its bytes, UTF-8
   * @param limits how large it and its cells may be
   * @return the offers in their order
   * @throws UnreadableInputException if it is no price list, with all problems
   * @throws IOException if the bytes cannot be read
   */
  public List<Offer> read(ByteSource source, DocumentLimits limits) throws IOException {
    return OfferForms.TABLE.read(source, limits);
  }

  /**
   * Reads a price list from text within the standard limits.
   *
   * @param text the price list
   * @return the offers in their order
   * @throws UnreadableInputException if it is no price list, with all problems
   */
  public List<Offer> read(String text) throws UnreadableInputException {
    try {
      return read(ByteSource.of(text.getBytes(StandardCharsets.UTF_8)));
    } catch (UnreadableInputException e) {
      throw e;
    } catch (IOException e) {
      throw new UncheckedIOException("bytes in memory can always be read", e);
    }
  }

  /**
   * Writes a price list, with the columns in which there is something.
   *
   * @param offers the offers
   * @param out takes the bytes; it is flushed and left open
   * @throws IOException if they cannot be written
   */
  public void write(List<Offer> offers, OutputStream out) throws IOException {
    OfferForms.TABLE.write(offers, out);
  }

  /**
   * A price list as text.
   *
   * @param offers the offers
   * @return the text
   */
  public String text(List<Offer> offers) {
    return OfferForms.TABLE.text(offers);
  }
}
