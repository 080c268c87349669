package dev.kilnledger.costing.offer;

import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

class PriceBookTest {
  private static final Offer WAX = offer("wax", grams(100), "5").build();

  @Test
  void findsTheOfferOfAnItem() {
    PriceBook book = book().addOffers(WAX).build();
    assertThat(book.offer("wax")).isEqualTo(WAX);
    assertThatThrownBy(() -> book.offer("vax"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no offer of \"vax\"; accepted is one of [wax]");
  }

  @Test
  void refusesABookThatContradictsItselfWithAllItsProblems() {
    Offer foreign = offer("nozzle", ratio(1), "9").price(BigMoney.parse("USD 9.50")).build();
    Offer tomorrow = offer("kiln", ratio(1), "3200").date(TODAY.plusDays(1)).build();
    assertThatThrownBy(() -> book().addOffers(WAX, foreign, tomorrow, WAX).oldAfterDays(-1).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "price book: old after -1 days; accepted is zero or more; and the offer of nozzle is"
                + " USD 9.50; accepted is the book's currency EUR; and the offer of kiln is dated"
                + " 2026-11-03; accepted is a day up to 2026-11-02; and wax is offered 2 times;"
                + " accepted is one offer of each item");
  }

  @Test
  void refusesAnOfferThatCannotBeBought() {
    assertThatThrownBy(() -> offer(" ", celsius(20), "-1").supplier("").build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("item is blank; accepted is any text")
        .hasMessageContaining("supplier is blank; accepted is any text")
        .hasMessageContaining(
            "content is 20 °C, which measures temperature; accepted is a mass, volume, length, area, energy,"
                + " time or number of pieces")
        .hasMessageContaining("price is EUR -1.00; accepted is zero or more");
    assertThatThrownBy(() -> offer("wax", grams(0), "5").build())
        .hasMessageContaining("content is 0 g; accepted is more than zero");
    assertThatThrownBy(() -> offer("nozzle", ratio(1.5), "5").build())
        .hasMessageContaining("content is 1.5 pieces; accepted is a whole number of pieces");
  }

  private static PriceBook.Builder book() {
    return PriceBook.builder().currency(CurrencyUnit.EUR).asOf(TODAY);
  }
}
