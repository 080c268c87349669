package dev.kilnledger.benchmarks;

import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.units.Amount;
import java.time.LocalDate;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What a part needs and what that costs, four parts in a firing; all figures are invented. */
final class CostedPart {
  static final Source INVENTED = Source.user("invented");
  static final LocalDate TODAY = LocalDate.of(2026, 11, 2);
  static final int PARTS_PER_FIRING = 4;

  private CostedPart() {}

  static LedgerPlan plan() {
    return LedgerPlan.builder()
        .prices(prices())
        .addResources(
            Durable.toBuy("printer"),
            Durable.toBuy("kiln"),
            Wearing.builder()
                .item("crucible")
                .driver(Driver.FIRING)
                .life(6)
                .source(INVENTED)
                .build(),
            consumed("filament", Driver.PART, grams(128)),
            ToppedUp.builder()
                .item("packing powder")
                .fill(grams(1800))
                .loss(percent(5))
                .source(INVENTED)
                .build(),
            consumed("carbon", Driver.FIRING, grams(300)),
            consumed("energy", Driver.FIRING, kilowattHours(28)))
        .partsPerFiring(PARTS_PER_FIRING)
        .build();
  }

  private static Consumed consumed(String item, Driver driver, Amount<?> quantity) {
    return Consumed.builder().item(item).driver(driver).quantity(quantity).source(INVENTED).build();
  }

  private static PriceBook prices() {
    return PriceBook.builder()
        .currency(CurrencyUnit.EUR)
        .asOf(TODAY)
        .addOffers(
            offer("printer", ratio(1), "900").build(),
            offer("kiln", ratio(1), "3200").build(),
            offer("crucible", ratio(1), "45").build(),
            offer("filament", grams(500), "60").build(),
            offer("packing powder", kilograms(1), "18").build(),
            offer("carbon", kilograms(1), "22").build(),
            offer("energy", kilowattHours(1), "0.30").metered(true).build())
        .build();
  }

  static Offer.Builder offer(String item, Amount<?> content, String price) {
    return Offer.builder()
        .item(item)
        .supplier("supplier A")
        .content(content)
        .price(Money.parse("EUR " + price))
        .date(TODAY)
        .tax(Tax.INCLUDED)
        .source(INVENTED);
  }
}
