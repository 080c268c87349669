package dev.kilnledger.costing.document;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.costing.offer.BreakRule;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** Offers with anything in them that an offer may hold. */
final class RandomOffers {
  private static final List<CurrencyUnit> CURRENCIES =
      List.of(CurrencyUnit.EUR, CurrencyUnit.USD, CurrencyUnit.JPY);
  private static final String LETTERS = "abc ÄİıßЖ中😀,;:\"'\\/=+-@\t\r\n<>&\u0001";

  private final Random random;

  RandomOffers(long seed) {
    random = new Random(seed);
  }

  Offer next() {
    CurrencyUnit currency = CURRENCIES.get(random.nextInt(CURRENCIES.size()));
    BigMoney price = BigMoney.of(currency, decimal());
    Offer.Builder offer =
        Offer.builder()
            .item(text())
            .supplier(text())
            .content(content())
            .price(price)
            .tax(pick(Tax.values()))
            .source(source());
    if (random.nextBoolean()) {
      offer.taxRate(Amounts.percent(random.nextInt(30)));
    }
    if (random.nextBoolean()) {
      offer.date(date());
    }
    if (random.nextBoolean()) {
      LocalDate from = date();
      offer.validFrom(from).validThrough(from.plusDays(random.nextInt(400)));
    }
    if (random.nextBoolean()) {
      offer.shelfLife(Amounts.days(1 + random.nextInt(700)));
    }
    if (random.nextBoolean()) {
      offer.convertedAt(
          ExchangeRate.builder()
              .base(CurrencyUnit.GBP)
              .counter(currency)
              .rate(decimal().add(BigDecimal.ONE))
              .date(date())
              .source(source())
              .build());
    }
    if (random.nextInt(3) == 0) {
      return offer.metered(true).build();
    }
    offer.minimumOrder(1 + random.nextInt(3)).orderIncrement(1 + random.nextInt(3));
    if (random.nextBoolean()) {
      offer.available(9L + random.nextInt(100));
    }
    offer.breakRule(pick(BreakRule.values()));
    long from = 2;
    for (int i = random.nextInt(3); i > 0; i--) {
      price = price.multipliedBy(new BigDecimal("0.9"));
      offer.addBreaks(PriceBreak.of(from, price));
      from += 1 + random.nextInt(50);
    }
    return offer.build();
  }

  private Amount<?> content() {
    double number = 0.001 + random.nextDouble() * Math.pow(10, random.nextInt(6));
    return switch (random.nextInt(6)) {
      case 0 -> Amounts.grams(number);
      case 1 -> Amounts.litres(number);
      case 2 -> Amounts.metres(number);
      case 3 -> Amounts.kilowattHours(number);
      case 4 -> Amounts.hours(number);
      default -> Amounts.ratio(1 + random.nextInt(1000));
    };
  }

  private BigDecimal decimal() {
    return BigDecimal.valueOf(random.nextInt(1_000_000), random.nextInt(9));
  }

  private LocalDate date() {
    return LocalDate.of(2020, 1, 1).plusDays(random.nextInt(2000));
  }

  private Source source() {
    return Source.of(text(), pick(Standing.values()));
  }

  private <E> E pick(E[] values) {
    return values[random.nextInt(values.length)];
  }

  /** Any text that is not blank. */
  private String text() {
    StringBuilder text = new StringBuilder();
    for (int n = 1 + random.nextInt(6); n > 0; n--) {
      int letter = random.nextInt(LETTERS.codePointCount(0, LETTERS.length()));
      text.appendCodePoint(LETTERS.codePointAt(LETTERS.offsetByCodePoints(0, letter)));
    }
    return text.toString().isBlank() ? "=1+1" : text.toString();
  }
}
