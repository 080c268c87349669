package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.PriceLoad;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Staircase;
import dev.kilnledger.costing.yield.FailureRule;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * The cash of one plan in doubles, trial by trial: what the ledger would count for the plan with
 * the values that are drawn, prepared once. Counts of packs that doubles cannot decide are decided
 * by the {@link Staircase} of the ledger. Not to be shared between threads.
 */
final class CashKernel {
  private final UncertainPlan uncertain;
  private final DrawnPlan drawnPlan;
  private final Course course;
  private final boolean expected;
  private final List<Term> terms = new ArrayList<>();
  private final List<Orders> orders = new ArrayList<>();
  private final boolean planned;
  private final List<Staircase> fixed;
  private double[] drawn = new double[0];
  private long parts;

  /** Cash for whole packs and orders, through the parts that were last asked for. */
  double packs;

  /** Cash for what is paid by measure, or charged by depreciation. */
  double metered;

  /** One resource. */
  private static final class Term {
    final int index;
    final Driver driver;
    final PackCount count;
    final DrawnFigure price;
    final double load;
    double weight;

    Term(int index, Driver driver, PackCount count, DrawnFigure price, double load) {
      this.index = index;
      this.driver = driver;
      this.count = count;
      this.price = price;
      this.load = load;
    }
  }

  /** The orders to one supplier. */
  private static final class Orders {
    final DrawnFigure price;
    final double load;
    final List<Term> terms = new ArrayList<>();
    double[] first = new double[0];
    double weight;

    Orders(DrawnFigure price, double load) {
      this.price = price;
      this.load = load;
    }
  }

  CashKernel(UncertainPlan uncertain, UniformRandomProvider random) {
    LedgerPlan plan = uncertain.plan();
    this.uncertain = uncertain;
    this.drawnPlan = new DrawnPlan(uncertain);
    Binding binding = drawnPlan.binding();
    this.course =
        uncertain.failsAtRandom()
            ? new RandomCourse(plan, binding, random)
            : new CountedCourse(plan, binding);
    this.expected =
        !uncertain.failsAtRandom() && plan.failures().rule() == FailureRule.EXPECTED_VALUES;
    this.planned = plan.buying() == BuyingRule.PLANNED_FOR_N;
    this.fixed = withoutLosses(plan).staircases();
    for (int i = 0; i < plan.resources().size(); i++) {
      Resource resource = plan.resources().get(i);
      Offer offer = plan.offerOf(resource);
      terms.add(
          new Term(
              i,
              resource.driver(),
              new PackCount(plan, resource, binding),
              binding.figure(FigureName.price(plan, offer)),
              PriceLoad.factor(offer, plan)));
    }
    for (Offer order : plan.shipping()) {
      Orders sent =
          new Orders(
              binding.figure(FigureName.price(plan, order)), PriceLoad.factor(order, plan));
      for (Term term : terms) {
        Offer offer = plan.offerOf(plan.resources().get(term.index));
        if (offer.supplier().equals(order.supplier()) && !term.count.isMetered()) {
          sent.terms.add(term);
        }
      }
      sent.first = new double[sent.terms.size()];
      orders.add(sent);
    }
  }

  private static LedgerPlan withoutLosses(LedgerPlan plan) {
    return LedgerPlan.builder().from(plan).failures(plan.failures().trialsOnly()).build();
  }

  /** Starts a trial and counts its first part. */
  void start(double[] trial) {
    drawn = trial;
    course.start(trial);
    for (Term term : terms) {
      term.weight = term.price.si(trial) * term.load;
      if (term.count.varies()) {
        term.count.set(trial);
      }
    }
    for (Orders sent : orders) {
      sent.weight = sent.price.si(trial) * sent.load;
    }
    through(1);
  }

  /** Counts the cash through a number of parts, not less than before where failures are random. */
  void through(long good) {
    parts = good;
    course.until(good);
    packs = 0;
    metered = 0;
    for (Term term : terms) {
      double count = count(term, false);
      if (term.count.isMetered()) {
        metered += term.weight * count;
      } else {
        packs += term.weight * count;
      }
    }
    for (Orders sent : orders) {
      packs += sent.weight * ordered(sent);
    }
  }

  private double ordered(Orders sent) {
    double count = 0;
    boolean any = false;
    for (int i = 0; i < sent.terms.size(); i++) {
      double bought = count(sent.terms.get(i), true);
      if (parts == 1) {
        sent.first[i] = bought;
      }
      any |= planned ? bought > 0 : sent.first[i] > 0;
      count += bought - sent.first[i];
    }
    return planned ? (any ? 1 : 0) : count + (any ? 1 : 0);
  }

  private double count(Term term, boolean ofOrders) {
    double events = course.events(term.driver);
    double count = ofOrders ? term.count.orders(events) : term.count.of(events);
    return Double.isNaN(count) ? decided(term, ofOrders) : count;
  }

  /** The count by the ledger's own staircase. */
  private double decided(Term term, boolean ofOrders) {
    if (expected) {
      Staircase own = drawnPlan.plan(drawn, false).staircases().get(term.index);
      Staircase staircase = ofOrders ? own.orders().orElseThrow() : own;
      return over(staircase.count(parts), staircase.divisor());
    }
    Staircase own =
        term.count.varies()
            ? drawnPlan.plan(drawn, true).staircases().get(term.index)
            : fixed.get(term.index);
    Staircase staircase = ofOrders ? own.orders().orElseThrow() : own;
    return over(
        staircase.countOf(BigInteger.valueOf(course.numerator(term.driver))), staircase.divisor());
  }

  private static double over(BigInteger count, BigInteger divisor) {
    return new BigDecimal(count)
        .divide(new BigDecimal(divisor), MathContext.DECIMAL128)
        .doubleValue();
  }

  /** What one part uses up in the long run. */
  double usage() {
    double usage = 0;
    for (Term term : terms) {
      usage += term.weight * term.count.usage(course.perPart(term.driver));
    }
    if (!planned) {
      for (Orders sent : orders) {
        for (Term term : sent.terms) {
          usage += sent.weight * term.count.orderUsage(course.perPart(term.driver));
        }
      }
    }
    return usage;
  }
}
