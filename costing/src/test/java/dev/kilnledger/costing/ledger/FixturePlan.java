package dev.kilnledger.costing.ledger;

import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilowattHours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The ledger case of the project, computed by hand; its prices are invented. */
public final class FixturePlan {
  public static final Source INVENTED = Source.user("invented");
  public static final LocalDate TODAY = LocalDate.of(2026, 11, 2);

  private FixturePlan() {}

  public static LedgerPlan of(int partsPerFiring) {
    return builder().partsPerFiring(partsPerFiring).build();
  }

  public static LedgerPlan.Builder builder() {
    return LedgerPlan.builder().prices(book().build()).addAllResources(resources());
  }

  public static List<Resource> resources() {
    return List.of(
        Durable.toBuy("printer"),
        Durable.toBuy("kiln"),
        Wearing.builder().item("crucible").driver(Driver.FIRING).life(6).source(INVENTED).build(),
        consumed("filament", Driver.PART, grams(128)).build(),
        ToppedUp.builder()
            .item("packing powder")
            .fill(grams(1800))
            .loss(percent(5))
            .source(INVENTED)
            .build(),
        consumed("carbon", Driver.FIRING, grams(300)).build(),
        consumed("energy", Driver.FIRING, kilowattHours(28)).build());
  }

  public static PriceBook.Builder book() {
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
            offer("energy", kilowattHours(1), "0.30").metered(true).build());
  }

  public static Consumed.Builder consumed(String item, Driver driver, Amount<?> quantity) {
    return Consumed.builder().item(item).driver(driver).quantity(quantity).source(INVENTED);
  }

  public static Offer.Builder offer(String item, Amount<?> content, String price) {
    return Offer.builder()
        .item(item)
        .supplier("supplier A")
        .content(content)
        .price(Money.of(CurrencyUnit.EUR, new BigDecimal(price)))
        .date(TODAY)
        .tax(Tax.INCLUDED)
        .source(INVENTED);
  }

  public static BigMoney eur(String amount) {
    return BigMoney.of(CurrencyUnit.EUR, new BigDecimal(amount));
  }
}
