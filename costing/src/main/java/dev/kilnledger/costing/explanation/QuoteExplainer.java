package dev.kilnledger.costing.explanation;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.quote.Quote;
import dev.kilnledger.costing.quote.QuoteLine;
import dev.kilnledger.costing.quote.QuoteTax;
import dev.kilnledger.costing.quote.RoundingStep;
import dev.kilnledger.costing.quote.UpliftBasis;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Opens a quote: the sum a customer is asked, each line's net and tax, the unit price with its
 * uplift, and every rounding step on record.
 */
public final class QuoteExplainer {
  private static final Source TERMS = Source.user("the terms of the quote");
  private static final QuoteExplainer STANDARD = new QuoteExplainer();

  private QuoteExplainer() {}

  /** {@return the explainer} */
  public static QuoteExplainer standard() {
    return STANDARD;
  }

  /**
   * Opens what a customer is asked, down to the uplift.
   *
   * @param quote the quote
   * @return the gross total, standing on net and tax
   */
  public Explanation gross(Quote quote) {
    return gross(quote, Map.of());
  }

  /**
   * Opens what a customer is asked, down to the costs that were quoted.
   *
   * @param quote the quote
   * @param costs what one part costs by the name of its item, such as the average of a statement
   * @return the gross total, standing on net and tax
   */
  public Explanation gross(Quote quote, Map<String, Explanation> costs) {
    List<Explanation> nets = new ArrayList<>();
    List<Explanation> taxes = new ArrayList<>();
    for (int i = 0; i < quote.lines().size(); i++) {
      QuoteLine line = quote.lines().get(i);
      nets.add(net(quote, line, Optional.ofNullable(costs.get(line.name()))));
      taxes.add(tax(quote, line, nets.get(i)));
    }
    return MoneyNode.computed(
        "gross",
        quote.total().gross(),
        "net + tax",
        sum("net", quote.total().net(), nets),
        sum("tax", quote.total().tax(), taxes));
  }

  /**
   * Opens the rounding steps.
   *
   * @param quote the quote
   * @return what each step rounded, in the order of the computation
   */
  public List<Explanation> roundings(Quote quote) {
    return quote.roundings().stream().map(QuoteExplainer::rounding).toList();
  }

  private static Explanation rounding(RoundingStep step) {
    return MoneyNode.of(step.what(), step.rounded())
        .formula("exact rounded " + words(step.rounding().name()))
        .source(TERMS)
        .addChildren(
            MoneyNode.given("exact", step.exact(), Source.recomputed("the lines of the quote")))
        .build();
  }

  private static Explanation net(Quote quote, QuoteLine line, Optional<Explanation> cost) {
    List<Explanation> from = new ArrayList<>();
    from.add(unitPrice(quote, line, cost));
    from.add(Explanation.given("parts", Amounts.ratio((double) line.parts()), TERMS));
    boolean fromGross = quote.terms().taxPolicy() == QuoteTax.FROM_GROSS;
    if (fromGross) {
      from.add(rate(quote));
    }
    return MoneyNode.of(line.name(), line.amount().net())
        .formula(
            fromGross
                ? "unit price x parts x (1 + tax rate) rounded, less the tax in it rounded"
                : "unit price x parts rounded " + words(quote.terms().rounding().name()))
        .source(TERMS)
        .children(from)
        .build();
  }

  private static Explanation unitPrice(Quote quote, QuoteLine line, Optional<Explanation> cost) {
    Explanation.Builder price = MoneyNode.of("unit price", line.unitPrice()).source(TERMS);
    if (cost.isEmpty()) {
      return price.condition(line.formula()).build();
    }
    boolean margin = quote.terms().upliftFor(line.parts()).basis() == UpliftBasis.MARGIN;
    return price
        .formula(margin ? "cost / (1 - margin)" : "cost x (1 + markup)")
        .addChildren(
            cost.get().as("cost"),
            Explanation.given(
                margin ? "margin" : "markup", quote.terms().upliftFor(line.parts()).share(), TERMS))
        .build();
  }

  private static Explanation tax(Quote quote, QuoteLine line, Explanation net) {
    String formula =
        switch (quote.terms().taxPolicy()) {
          case PER_LINE -> "net x tax rate rounded " + words(quote.terms().rounding().name());
          case ON_SUM -> "share of net sum x tax rate rounded, by largest remainder";
          case FROM_GROSS -> "gross less net, the gross being rounded";
        };
    return MoneyNode.of("tax on " + line.name(), line.amount().tax())
        .formula(formula)
        .source(TERMS)
        .addChildren(net.as("net"), rate(quote))
        .build();
  }

  private static Explanation rate(Quote quote) {
    return Explanation.given("tax rate", quote.terms().taxRate(), TERMS);
  }

  private static Explanation sum(String what, Money money, List<Explanation> children) {
    return MoneyNode.of(what, money).formula("sum of the lines").children(children).build();
  }

  private static String words(String name) {
    return name.toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
