package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.TradeUnits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Quotes parts at their cost and an uplift: price = cost x (1 + markup) = cost / (1 - margin).
 *
 * <p>Unit prices are not rounded; what is rounded, once each and on record, is the amount of a line
 * and its tax, as the tax policy of the terms says.
 */
public final class CostPlusQuoter {
  private static final CostPlusQuoter STANDARD = new CostPlusQuoter();

  private CostPlusQuoter() {}

  /** {@return the quoter} */
  public static CostPlusQuoter standard() {
    return STANDARD;
  }

  /**
   * A quote.
   *
   * @param items what is quoted, at least one item, all of one currency
   * @param terms the rules
   * @return the quote
   * @throws IllegalArgumentException with all problems, if there is no item, or the currencies of
   *     items and minimum charge differ
   */
  public Quote quote(List<QuoteItem> items, QuoteTerms terms) {
    new Problems("quote")
        .require(!items.isEmpty(), "there is no item; accepted is one or more")
        .refuseIfAny();
    CurrencyUnit currency = items.get(0).costPerPart().getCurrencyUnit();
    refuseOthers(items, terms, currency);
    Draft draft = new Draft(terms, currency);
    items.forEach(draft::add);
    draft.addMinimumCharge();
    return draft.quote();
  }

  private static void refuseOthers(List<QuoteItem> items, QuoteTerms terms, CurrencyUnit currency) {
    Problems problems = new Problems("quote");
    for (QuoteItem item : items) {
      problems.require(
          item.costPerPart().getCurrencyUnit().equals(currency),
          item.name()
              + " costs "
              + item.costPerPart()
              + "; accepted is one currency, that of the first item, "
              + currency);
    }
    terms
        .minimumCharge()
        .ifPresent(
            least ->
                problems.require(
                    least.getCurrencyUnit().equals(currency),
                    "the minimum charge is " + least + "; accepted is in " + currency));
    problems.refuseIfAny();
  }

  /** A quote in the making. */
  private static final class Draft {
    private final QuoteTerms terms;
    private final CurrencyUnit currency;
    private final BigDecimal rate;
    private final boolean fromGross;
    private final List<QuoteLine.Builder> lines = new ArrayList<>();

    /** The rounded amount of each line: its gross if the tax is taken out of it, else its net. */
    private final List<Money> amounts = new ArrayList<>();

    private final List<RoundingStep> roundings = new ArrayList<>();

    Draft(QuoteTerms terms, CurrencyUnit currency) {
      this.terms = terms;
      this.currency = currency;
      this.rate = terms.taxRate().decimalIn(TradeUnits.ONE);
      this.fromGross = terms.taxPolicy() == QuoteTax.FROM_GROSS;
    }

    void add(QuoteItem item) {
      Uplift uplift = terms.upliftFor(item.parts());
      BigMoney unitPrice = uplift.priceOf(item.costPerPart());
      BigMoney exact = unitPrice.multipliedBy(item.parts());
      if (fromGross) {
        exact = exact.multipliedBy(BigDecimal.ONE.add(rate));
      }
      amounts.add(
          rounded(
              item.name()
                  + (fromGross ? ": unit price x parts x (1 + tax rate)" : ": unit price x parts"),
              exact));
      lines.add(
          line(
              item.name(), item.parts(), unitPrice, item.costPerPart() + " with " + uplift.text()));
    }

    void addMinimumCharge() {
      Money sum = Money.total(currency, amounts);
      Optional<Money> least = terms.minimumCharge();
      if (least.isPresent() && sum.isLessThan(least.get())) {
        Money missing = least.get().minus(sum);
        amounts.add(missing);
        BigMoney net = missing.toBigMoney();
        lines.add(
            line(
                "minimum charge",
                1,
                fromGross ? dividedBy(net, BigDecimal.ONE.add(rate)) : net,
                "up to " + least.get() + " from " + sum));
      }
    }

    Quote quote() {
      List<TaxedAmount> taxed = terms.taxPolicy() == QuoteTax.ON_SUM ? onSum() : byLine();
      List<QuoteLine> done = new ArrayList<>();
      for (int i = 0; i < taxed.size(); i++) {
        done.add(lines.get(i).amount(taxed.get(i)).build());
      }
      return Quote.builder()
          .terms(terms)
          .currency(currency)
          .lines(done)
          .roundings(roundings)
          .build();
    }

    private List<TaxedAmount> onSum() {
      Money sum = Money.total(currency, amounts);
      Money tax = rounded("net sum x tax rate", sum.toBigMoney().multipliedBy(rate));
      List<BigDecimal> weights = amounts.stream().map(Money::getAmount).toList();
      List<Money> shares =
          sum.isZero()
              ? amounts // all of them zero, as no amount is negative
              : LargestRemainder.standard().split(tax, weights);
      List<TaxedAmount> taxed = new ArrayList<>();
      for (int i = 0; i < shares.size(); i++) {
        taxed.add(TaxedAmount.of(amounts.get(i), shares.get(i)));
      }
      return taxed;
    }

    private List<TaxedAmount> byLine() {
      List<TaxedAmount> taxed = new ArrayList<>();
      for (int i = 0; i < amounts.size(); i++) {
        BigMoney amount = amounts.get(i).toBigMoney();
        String line = "line " + (i + 1);
        if (fromGross) {
          Money net =
              rounded(
                  line + ": gross / (1 + tax rate)", dividedBy(amount, BigDecimal.ONE.add(rate)));
          taxed.add(TaxedAmount.of(net, amounts.get(i).minus(net)));
        } else {
          Money tax = rounded(line + ": net x tax rate", amount.multipliedBy(rate));
          taxed.add(TaxedAmount.of(amounts.get(i), tax));
        }
      }
      return taxed;
    }

    private Money rounded(String what, BigMoney exact) {
      RoundingStep step =
          RoundingStep.builder().what(what).exact(exact).rounding(terms.rounding()).build();
      roundings.add(step);
      return step.rounded();
    }

    private static BigMoney dividedBy(BigMoney money, BigDecimal divisor) {
      return BigMoney.of(
          money.getCurrencyUnit(), money.getAmount().divide(divisor, MathContext.DECIMAL128));
    }

    private static QuoteLine.Builder line(
        String name, long parts, BigMoney unitPrice, String formula) {
      QuoteLine.Builder line = QuoteLine.builder();
      line.name(name).parts(parts).unitPrice(unitPrice).formula(formula);
      return line;
    }
  }
}
