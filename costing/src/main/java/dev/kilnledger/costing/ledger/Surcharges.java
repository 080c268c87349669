package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import javax.measure.quantity.Dimensionless;
import org.joda.money.BigMoney;

/** Overheads and tax of a plan, on the lines of an account. */
final class Surcharges {
  private Surcharges() {}

  static List<Surcharge> on(List<Line> lines, LedgerPlan plan) {
    List<Surcharge> surcharges = new ArrayList<>();
    for (Overhead overhead : plan.overheads()) {
      Surcharge.Builder surcharge =
          Surcharge.builder()
              .title("overhead on " + overhead.base().words())
              .share(decimal(overhead.rate()))
              .divisor(BigDecimal.ONE)
              .formula("rate x base")
              .inputs(List.of(Input.of("rate", overhead.rate(), overhead.source())));
      add(
          surcharge,
          lines,
          line -> overhead.base().holds(line.offer(), plan.resourceOf(line.item())),
          plan,
          surcharges);
    }
    surcharges.addAll(tax(lines, plan));
    return surcharges;
  }

  /** The tax alone, if there is one. */
  static List<Surcharge> tax(List<Line> lines, LedgerPlan plan) {
    List<Surcharge> surcharges = new ArrayList<>();
    TaxPolicy tax = plan.tax();
    if (tax.rule() != TaxRule.AS_PRICED) {
      boolean added = tax.rule() == TaxRule.ADDED;
      BigDecimal rate = decimal(tax.rate());
      Surcharge.Builder surcharge =
          Surcharge.builder()
              .title("tax " + tax.rule().words())
              .share(added ? rate : rate.negate())
              .divisor(added ? BigDecimal.ONE : BigDecimal.ONE.add(rate))
              .formula(added ? "rate x base" : "-rate / (1 + rate) x base")
              .inputs(List.of(Input.of("rate", tax.rate(), tax.source())));
      add(surcharge, lines, line -> tax.touches(line.offer().tax()), plan, surcharges);
    }
    return surcharges;
  }

  private static void add(
      Surcharge.Builder surcharge,
      List<Line> lines,
      Predicate<Line> which,
      LedgerPlan plan,
      List<Surcharge> surcharges) {
    BigMoney base = BigMoney.zero(plan.currency());
    for (Line line : lines) {
      if (which.test(line)) {
        base = base.plus(line.amount());
        surcharge.addItems(line.item());
      }
    }
    if (!base.isZero()) {
      surcharges.add(surcharge.base(base).build());
    }
  }

  /**
   * By what the price of an offer is multiplied when all surcharges on it are told together: (tax
   * factor + overhead rates), over {@link #divisor}.
   */
  static BigDecimal factor(Offer offer, LedgerPlan plan) {
    BigDecimal divisor = divisor(offer, plan);
    BigDecimal factor = BigDecimal.ONE;
    if (plan.tax().rule() == TaxRule.ADDED && plan.tax().touches(offer.tax())) {
      factor = factor.add(decimal(plan.tax().rate()));
    }
    for (Overhead overhead : plan.overheads()) {
      if (overhead.base().holds(offer, plan.resourceOf(offer.item()))) {
        factor = factor.add(decimal(overhead.rate()).multiply(divisor));
      }
    }
    return factor;
  }

  static BigDecimal divisor(Offer offer, LedgerPlan plan) {
    return plan.tax().rule() == TaxRule.DEDUCTED && plan.tax().touches(offer.tax())
        ? BigDecimal.ONE.add(decimal(plan.tax().rate()))
        : BigDecimal.ONE;
  }

  private static BigDecimal decimal(Amount<Dimensionless> share) {
    return share.decimalIn(Amounts.ratio(1).getUnit());
  }
}
