package dev.kilnledger.costing.document;

import static dev.kilnledger.core.document.internal.Forms.DATE;
import static dev.kilnledger.core.document.internal.Forms.DECIMAL;
import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.TEXT;
import static dev.kilnledger.core.document.internal.Forms.TRUTH;
import static dev.kilnledger.core.document.internal.Forms.WHOLE;
import static dev.kilnledger.core.document.internal.Forms.amount;
import static dev.kilnledger.costing.document.MoneyForms.CURRENCY;
import static dev.kilnledger.costing.document.MoneyForms.MONEY;

import dev.kilnledger.core.document.internal.Cell;
import dev.kilnledger.core.document.internal.Form;
import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.core.document.internal.TableForm;
import dev.kilnledger.costing.offer.BreakRule;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoney;

/** The forms of offers, of shipping terms and of exchange rates. */
final class OfferForms {
  /** Whatever is counted or measured when it is bought. */
  static final Form<Amount<?>> QUANTITY =
      Forms.amountOf(
          Kind.MASS, Kind.VOLUME, Kind.LENGTH, Kind.AREA, Kind.ENERGY, Kind.TIME, Kind.RATIO);

  static final ObjectForm<ExchangeRate> EXCHANGE_RATE = rateForm();
  static final ObjectForm<Offer> OFFER = offerForm();
  static final ObjectForm<ShippingTerms> SHIPPING = shippingForm();
  static final TableForm<Offer> TABLE = table();

  private OfferForms() {}

  /** The packs of an order, from the least to the most. */
  private record Packs(Optional<Long> least, Optional<Long> most) {
    static final Packs ANY = new Packs(Optional.empty(), Optional.empty());
  }

  private static ObjectForm<Packs> packsForm() {
    ObjectForm<Packs> form =
        ObjectForm.named("eligibleQuantity", "How many packs an order may have.");
    var least = form.optional("minValue", WHOLE, Packs::least);
    var most = form.optional("maxValue", WHOLE, Packs::most);
    return form.read(values -> new Packs(values.get(least), values.get(most)));
  }

  /** A price from a number of packs on, in the currency of its offer. */
  private record Break(long from, BigDecimal price) {}

  private static ObjectForm<Break> breakForm() {
    ObjectForm<Long> from = ObjectForm.nameless();
    var least = from.required("minValue", WHOLE, packs -> packs);
    from.read(values -> values.get(least));
    ObjectForm<Break> form =
        ObjectForm.<Break>named(
                "priceBreak", "A lower price of one pack, from a number of packs on.")
            .onOneLine();
    var packs = form.required("eligibleQuantity", from, Break::from);
    var price = form.required("price", DECIMAL, Break::price);
    return form.read(values -> new Break(values.get(packs), values.get(price)));
  }

  private static ObjectForm<ExchangeRate> rateForm() {
    ObjectForm<ExchangeRate> form =
        ObjectForm.named(
            "exchangeRate",
            "How many units of the counter currency one unit of the base is worth.");
    var base = form.required("base", CURRENCY, ExchangeRate::base);
    var counter = form.required("counter", CURRENCY, ExchangeRate::counter);
    var rate = form.required("rate", DECIMAL, ExchangeRate::rate);
    var date = form.required("date", DATE, ExchangeRate::date);
    var source = form.required("source", SOURCE, ExchangeRate::source);
    return form.read(
        values ->
            ExchangeRate.builder()
                .base(values.get(base))
                .counter(values.get(counter))
                .rate(values.get(rate))
                .date(values.get(date))
                .source(values.get(source))
                .build());
  }

  private static ObjectForm<Offer> offerForm() {
    ObjectForm<Offer> form =
        ObjectForm.named(
            "offer", "What a supplier asks for one pack of an item, or for a measure of it.");
    var item = form.required("item", TEXT, Offer::item);
    var supplier = form.required("supplier", TEXT, Offer::supplier);
    var content = form.required("referenceQuantity", QUANTITY, Offer::content);
    var price = form.required("price", DECIMAL, offer -> offer.price().getAmount());
    var currency =
        form.required("priceCurrency", CURRENCY, offer -> offer.price().getCurrencyUnit());
    var tax = form.optional("valueAddedTaxIncluded", TRUTH, offer -> told(offer.tax()));
    var taxRate = form.optional("taxRate", amount(Kind.RATIO), Offer::taxRate);
    var metered = form.withDefault("metered", TRUTH, false, Offer::metered);
    var packs = form.optional("eligibleQuantity", packsForm(), OfferForms::packs);
    var increment =
        form.optional(
            "orderIncrement",
            WHOLE,
            offer -> Optional.of(offer.orderIncrement()).filter(n -> n != 1));
    var breaks = form.list("breaks", breakForm(), OfferForms::breaks);
    var breakRule =
        form.optional(
            "breakRule",
            Forms.choice(BreakRule.class),
            offer ->
                Optional.of(offer.breakRule())
                    .filter(rule -> !offer.breaks().isEmpty() || rule != BreakRule.ALL_UNITS));
    var date = form.optional("date", DATE, Offer::date);
    var from = form.optional("validFrom", DATE, Offer::validFrom);
    var through = form.optional("validThrough", DATE, Offer::validThrough);
    var shelfLife = form.optional("shelfLife", amount(Kind.TIME), Offer::shelfLife);
    var convertedAt = form.optional("convertedAt", EXCHANGE_RATE, Offer::convertedAt);
    var source = form.required("source", SOURCE, Offer::source);
    return form.read(
        values -> {
          Packs order = values.get(packs).orElse(Packs.ANY);
          Offer.Builder offer =
              Offer.builder()
                  .item(values.get(item))
                  .supplier(values.get(supplier))
                  .content(values.get(content))
                  .price(BigMoney.of(values.get(currency), values.get(price)))
                  .tax(tax(values.get(tax)))
                  .taxRate(values.get(taxRate))
                  .metered(values.get(metered))
                  .available(order.most())
                  .date(values.get(date))
                  .validFrom(values.get(from))
                  .validThrough(values.get(through))
                  .shelfLife(values.get(shelfLife))
                  .convertedAt(values.get(convertedAt))
                  .source(values.get(source));
          order.least().ifPresent(offer::minimumOrder);
          values.get(increment).ifPresent(offer::orderIncrement);
          values.get(breakRule).ifPresent(offer::breakRule);
          for (Break step : values.get(breaks)) {
            offer.addBreaks(
                PriceBreak.of(step.from(), BigMoney.of(values.get(currency), step.price())));
          }
          return offer.build();
        });
  }

  private static Optional<Packs> packs(Offer offer) {
    Packs packs =
        new Packs(Optional.of(offer.minimumOrder()).filter(least -> least != 1), offer.available());
    return Optional.of(packs).filter(some -> !some.equals(Packs.ANY));
  }

  private static List<Break> breaks(Offer offer) {
    return offer.breaks().stream()
        .map(step -> new Break(step.fromPacks(), step.price().getAmount()))
        .toList();
  }

  /** A price that does not say leaves the field out. */
  private static Optional<Boolean> told(Tax tax) {
    return tax == Tax.UNKNOWN ? Optional.empty() : Optional.of(tax == Tax.INCLUDED);
  }

  private static Tax tax(Optional<Boolean> included) {
    return included.map(yes -> yes ? Tax.INCLUDED : Tax.EXCLUDED).orElse(Tax.UNKNOWN);
  }

  private static ObjectForm<ShippingTerms> shippingForm() {
    ObjectForm<ShippingTerms> form =
        ObjectForm.named("shippingTerms", "What a supplier asks for sending one order.");
    var supplier = form.required("supplier", TEXT, ShippingTerms::supplier);
    var charge = form.required("charge", MONEY, ShippingTerms::charge);
    var freeFrom = form.optional("freeFrom", MONEY, ShippingTerms::freeFrom);
    var tax = form.optional("valueAddedTaxIncluded", TRUTH, terms -> told(terms.tax()));
    var taxRate = form.optional("taxRate", amount(Kind.RATIO), ShippingTerms::taxRate);
    var source = form.required("source", SOURCE, ShippingTerms::source);
    return form.read(
        values ->
            ShippingTerms.builder()
                .supplier(values.get(supplier))
                .charge(values.get(charge))
                .freeFrom(values.get(freeFrom))
                .tax(tax(values.get(tax)))
                .taxRate(values.get(taxRate))
                .source(values.get(source))
                .build());
  }

  private static TableForm<Offer> table() {
    return new TableForm<>(OFFER)
        .required("item", Cell.TEXT)
        .required("supplier", Cell.TEXT)
        .required("referenceQuantity", Cell.AMOUNT)
        .required("price", Cell.PLAIN)
        .required("priceCurrency", Cell.PLAIN)
        .optional("valueAddedTaxIncluded", Cell.TRUTH)
        .optional("taxRate", Cell.AMOUNT)
        .optional("metered", Cell.TRUTH)
        .optional("eligibleQuantity.minValue", Cell.NUMBER)
        .optional("eligibleQuantity.maxValue", Cell.NUMBER)
        .optional("orderIncrement", Cell.NUMBER)
        .optional("breaks", Cell.pairs("eligibleQuantity.minValue", "price"))
        .optional("breakRule", Cell.PLAIN)
        .optional("date", Cell.PLAIN)
        .optional("validFrom", Cell.PLAIN)
        .optional("validThrough", Cell.PLAIN)
        .optional("shelfLife", Cell.AMOUNT)
        .optional("convertedAt.base", Cell.PLAIN)
        .optional("convertedAt.counter", Cell.PLAIN)
        .optional("convertedAt.rate", Cell.PLAIN)
        .optional("convertedAt.date", Cell.PLAIN)
        .optional("convertedAt.source.text", Cell.TEXT)
        .optional("convertedAt.source.standing", Cell.PLAIN)
        .required("source.text", Cell.TEXT)
        .required("source.standing", Cell.PLAIN);
  }
}
