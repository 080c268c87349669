package dev.kilnledger.costing.explanation;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.TODAY;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.percent;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.costing.breakeven.BreakEven;
import dev.kilnledger.costing.breakeven.Crossing;
import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.purchase.Need;
import dev.kilnledger.costing.purchase.PurchasePlan;
import dev.kilnledger.costing.purchase.PurchasePlanner;
import dev.kilnledger.costing.quote.CostPlusQuoter;
import dev.kilnledger.costing.quote.Quote;
import dev.kilnledger.costing.quote.QuoteItem;
import dev.kilnledger.costing.quote.QuoteTax;
import dev.kilnledger.costing.quote.QuoteTerms;
import dev.kilnledger.costing.quote.Uplift;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Break-evens, purchase plans and quotes, opened; figures of the project's worked cases. */
class OtherExplainersTest {

  /** Against 60 a part: first crossing at 203, permanent from 206, without packs 200. */
  @Test
  void aBreakEvenOpensToTheCashOfBothSides() {
    Crossing crossing = BreakEven.standard().find(FixturePlan.of(1), eur("60"));
    List<Explanation> figures = CrossingExplainer.standard().figures(crossing);
    assertThat(figures)
        .extracting(Explanation::line)
        .satisfies(
            lines -> {
              assertThat(lines.get(0)).startsWith("first crossing: 203, from smallest n");
              assertThat(lines.get(1)).startsWith("permanent crossing: 206, from smallest n");
              assertThat(lines.get(2)).startsWith("crossing without packs: 200, from");
            });
    BigMoney other = (BigMoney) figures.get(0).at("other plan").value();
    assertThat(other).isEqualByComparingTo(eur("12180")); // 203 x 60
    assertThat((BigMoney) figures.get(0).at("plan").value()).isLessThanOrEqualTo(other);
    assertThat((BigMoney) figures.get(2).at("usage").value()).isEqualByComparingTo(eur("39.48"));
    assertThat(figures.get(1).at("plan", "filament", "packs", "n").shown()).isEqualTo("206");
  }

  @Test
  void neverIsExplainedByTheUsages() {
    Crossing crossing = BreakEven.standard().find(FixturePlan.of(1), eur("39"));
    Explanation first = CrossingExplainer.standard().figures(crossing).get(0);
    assertThat(first.value()).isEqualTo("never");
    assertThat(first.at("usage", "filament").value()).isEqualTo(eur("15.36"));
    assertThat((BigMoney) first.at("other usage").value()).isEqualByComparingTo(eur("39"));
  }

  /** Packs 250 @ 19, 500 @ 32, 1000 @ 55, 2500 @ 125; 600 are covered best by 250 + 500, for 51. */
  @Test
  void aPurchasePlanOpensToPacksPricesAndNeeds() {
    PriceBook book =
        PriceBook.builder()
            .currency(CurrencyUnit.EUR)
            .asOf(TODAY)
            .addOffers(
                offer("powder", grams(250), "19").build(),
                offer("powder", grams(500), "32").build(),
                offer("powder", grams(1000), "55").build(),
                offer("powder", grams(2500), "125").build())
            .addShipping(
                ShippingTerms.builder()
                    .supplier("supplier A")
                    .charge(eur("5.90"))
                    .freeFrom(eur("100"))
                    .source(INVENTED)
                    .build())
            .build();
    PurchasePlan plan =
        PurchasePlanner.standard().plan(book, List.of(Need.of("powder", grams(600))));
    Explanation total = PurchaseExplainer.standard().total(plan);
    assertThat((BigMoney) total.value()).isEqualByComparingTo(eur("56.90"));
    assertThat(
            total.children().stream()
                .map(line -> ((BigMoney) line.value()).getAmount())
                .reduce(BigDecimal.ZERO, BigDecimal::add))
        .isEqualByComparingTo("56.90");
    assertThat(total.at("powder", "packs", "need").value()).isEqualTo(grams(600));
    assertThat(total.at("powder", "price").source()).contains(INVENTED);
    assertThat(total.at("shipping by supplier A", "charge").source()).contains(INVENTED);
    assertThat(total.at("shipping by supplier A", "goods").value())
        .isEqualTo(plan.deliveries().get(0).goods());
    Explanation shipping = total.at("shipping by supplier A");
    assertThat(shipping.formula()).contains("charge, or nothing where goods reach free from");
    assertThat((BigMoney) shipping.at("free from").value()).isEqualByComparingTo(eur("100"));
    assertThat(total.children().get(0).formula()).contains("packs x price");
  }

  /** Three packs at the price of the break, 4 each, sent for 2 whatever they are worth. */
  @Test
  void aPurchaseAtABreakOpensToItsPrices() {
    PriceBook book =
        PriceBook.builder()
            .currency(CurrencyUnit.EUR)
            .asOf(TODAY)
            .addOffers(
                offer("powder", grams(250), "5").addBreaks(PriceBreak.of(3, eur("4"))).build())
            .addShipping(
                ShippingTerms.builder()
                    .supplier("supplier A")
                    .charge(eur("2"))
                    .source(INVENTED)
                    .build())
            .build();
    Explanation total =
        PurchaseExplainer.standard()
            .total(PurchasePlanner.standard().plan(book, List.of(Need.of("powder", grams(750)))));
    assertThat((BigMoney) total.value()).isEqualByComparingTo(eur("14"));
    assertThat(total.at("powder").formula()).contains("packs by their price, on all packs");
    assertThat((BigMoney) total.at("powder", "price from 3 packs").value())
        .isEqualByComparingTo(eur("4"));
    assertThat(total.at("shipping by supplier A").formula()).contains("charge");
    assertThat(total.at("shipping by supplier A").children())
        .extracting(Explanation::what)
        .containsExactly("charge", "goods");
  }

  /** Cost 80, margin 20 %: 100; cost 80, markup 20 %: 96. */
  @Test
  void aQuoteOpensToItsUpliftAndToTheCostBelow() {
    Statement statement = Ledger.standard().statement(FixturePlan.of(1), 4);
    Explanation cost =
        StatementExplainer.standard().figure(statement, StatementFigure.AVERAGE).at("exact amount");
    for (Uplift uplift : List.of(Uplift.margin(percent(20)), Uplift.markup(percent(20)))) {
      Quote quote = quote(eur("80"), uplift, QuoteTax.PER_LINE);
      Explanation plain = QuoteExplainer.standard().gross(quote);
      boolean margin = uplift.text().startsWith("margin");
      assertThat(plain.at("net", "cam", "unit price").shown())
          .isEqualTo(margin ? "EUR 100.00" : "EUR 96.00");
      assertThat(plain.at("net", "cam", "unit price").condition())
          .isEqualTo("EUR 80 with " + uplift.text());
      Quote averaged = quote(statement.average(), uplift, QuoteTax.PER_LINE);
      Explanation opened = QuoteExplainer.standard().gross(averaged, Map.of("cam", cost));
      Explanation unitPrice = opened.at("net", "cam", "unit price");
      assertThat(unitPrice.formula())
          .contains(margin ? "cost / (1 - margin)" : "cost x (1 + markup)");
      assertThat((BigMoney) unitPrice.at("cost").value()).isEqualByComparingTo(eur("1099.15"));
      assertThat(unitPrice.at(margin ? "margin" : "markup").value()).isEqualTo(percent(20));
      assertThat(unitPrice.at("cost", "all parts", "kiln", "price").shown())
          .isEqualTo("EUR 3200.00");
    }
  }

  @ParameterizedTest
  @EnumSource(QuoteTax.class)
  void theSumsOfAQuoteAddUpUnderEveryTaxPolicy(QuoteTax policy) {
    Quote quote = quote(eur("7.77"), Uplift.markup(percent(13)), policy);
    Explanation gross = QuoteExplainer.standard().gross(quote);
    assertThat(((BigMoney) gross.at("net").value()).plus((BigMoney) gross.at("tax").value()))
        .isEqualTo(gross.value());
    for (String sum : List.of("net", "tax")) {
      assertThat(
              gross.at(sum).children().stream()
                  .map(line -> (BigMoney) line.value())
                  .reduce(BigMoney.zero(CurrencyUnit.EUR), BigMoney::plus))
          .isEqualByComparingTo((BigMoney) gross.at(sum).value());
    }
    assertThat(QuoteExplainer.standard().roundings(quote)).hasSameSizeAs(quote.roundings());
    assertThat(gross.nodes()).allMatch(n -> n.formula().isPresent() || n.source().isPresent());
    boolean fromGross = policy == QuoteTax.FROM_GROSS;
    Explanation net = gross.at("net", "cam");
    assertThat(net.formula())
        .contains(
            fromGross
                ? "unit price x parts x (1 + tax rate) rounded, less the tax in it rounded"
                : "unit price x parts rounded half even");
    assertThat(net.children())
        .extracting(Explanation::what)
        .containsExactlyElementsOf(
            fromGross
                ? List.of("unit price", "parts", "tax rate")
                : List.of("unit price", "parts"));
    assertThat(QuoteExplainer.standard().roundings(quote))
        .allSatisfy(step -> assertThat(step.formula()).contains("exact rounded half even"));
  }

  private static Quote quote(BigMoney cost, Uplift uplift, QuoteTax policy) {
    return CostPlusQuoter.standard()
        .quote(
            List.of(QuoteItem.of("cam", 7, cost), QuoteItem.of("knob", 3, cost)),
            QuoteTerms.builder().uplift(uplift).taxRate(percent(19)).taxPolicy(policy).build());
  }
}
