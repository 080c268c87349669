package dev.kilnledger.costing.uncertainty;

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
import org.apache.commons.rng.UniformRandomProvider;

/**
 * The cash of one plan in doubles, trial by trial: what the ledger would count for the plan with
 * the values that are drawn. Counts of packs that doubles cannot decide are decided by the {@link
 * Staircase} of the ledger; those that are the same in every trial are kept. Not to be shared
 * between threads.
 */
final class CashKernel {
  private final DrawnPlan drawnPlan;
  private final Course course;
  private final boolean expected;
  private final Term[] terms;
  private final List<Point> points = new ArrayList<>();
  private double[] drawn = new double[0];
  private long parts;

  /** Cash for whole packs, through the parts that were last asked for. */
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
    final boolean varies;
    double weight;
    double bought;

    Term(int index, Driver driver, PackCount count, DrawnFigure price, double load) {
      this.index = index;
      this.driver = driver;
      this.count = count;
      this.price = price;
      this.load = load;
      this.varies = count.varies();
    }
  }

  /** A number of parts whose events are the same in every trial, and so some counts are. */
  private static final class Point {
    final long parts;
    final double[] counts;

    Point(long parts, double[] counts) {
      this.parts = parts;
      this.counts = counts;
    }
  }

  /**
   * A kernel for one thread.
   *
   * @param drawnPlan the plan, shared by all kernels
   * @param atRandom whether failures fall at random
   * @param random where they are drawn from
   */
  CashKernel(DrawnPlan drawnPlan, boolean atRandom, UniformRandomProvider random) {
    LedgerPlan plan = drawnPlan.plan();
    Binding binding = drawnPlan.binding();
    this.drawnPlan = drawnPlan;
    this.course =
        atRandom ? new RandomCourse(plan, binding, random) : new CountedCourse(plan, binding);
    this.expected = !atRandom && plan.failures().rule() == FailureRule.EXPECTED_VALUES;
    this.terms = new Term[plan.resources().size()];
    for (int i = 0; i < terms.length; i++) {
      Resource resource = plan.resources().get(i);
      Offer offer = plan.offerOf(resource);
      terms[i] =
          new Term(
              i,
              resource.driver(),
              new PackCount(plan, resource, binding),
              binding.figure(FigureName.price(plan, offer)),
              PriceLoad.factor(offer, plan));
    }
  }

  /** Keeps what is the same in every trial for a number of parts that will be asked for again. */
  void keep(long good) {
    if (course.varies()) {
      return;
    }
    parts = good;
    course.until(good);
    double[] counts = new double[terms.length];
    for (Term term : terms) {
      counts[term.index] = term.varies ? course.events(term.driver) : count(term);
    }
    points.add(new Point(good, counts));
  }

  /** Starts a trial and counts its first part. */
  void start(double[] trial) {
    drawn = trial;
    course.start(trial);
    for (Term term : terms) {
      term.weight = term.price.si(trial) * term.load;
      if (term.varies) {
        term.count.set(trial);
      }
    }
    through(1);
  }

  /** Counts the cash through a number of parts, not less than before where failures are random. */
  void through(long good) {
    parts = good;
    boolean kept = false;
    for (Point point : points) {
      if (point.parts == good) {
        kept = true;
        for (Term term : terms) {
          double count = point.counts[term.index];
          term.bought = term.varies ? sure(term, term.count.of(count)) : count;
        }
      }
    }
    if (!kept) {
      course.until(good);
      for (Term term : terms) {
        term.bought = count(term);
      }
    }
    packs = 0;
    metered = 0;
    for (Term term : terms) {
      if (term.count.isMetered()) {
        metered += term.weight * term.bought;
      } else {
        packs += term.weight * term.bought;
      }
    }
  }

  private double count(Term term) {
    return sure(term, term.count.of(course.events(term.driver)));
  }

  /** A count that doubles have told, or else the count by the ledger's own staircase. */
  private double sure(Term term, double count) {
    if (!Double.isNaN(count)) {
      return count;
    }
    course.until(parts);
    Staircase staircase =
        expected
            ? asExpected(term).get(term.index)
            : term.varies
                ? drawnPlan.plan(drawn, true).staircases().get(term.index)
                : drawnPlan.withoutLosses().get(term.index);
    BigInteger exact =
        expected
            ? staircase.count(parts)
            : staircase.countOf(BigInteger.valueOf(course.numerator(term.driver)));
    return new BigDecimal(exact)
        .divide(new BigDecimal(staircase.divisor()), MathContext.DECIMAL128)
        .doubleValue();
  }

  private List<Staircase> asExpected(Term term) {
    boolean same = !term.varies && !course.varies();
    return (same ? drawnPlan.plan() : drawnPlan.plan(drawn, false)).staircases();
  }

  /** What one part uses up in the long run. */
  double usage() {
    double usage = 0;
    for (Term term : terms) {
      usage += term.weight * term.count.usage(course.perPart(term.driver));
    }
    return usage;
  }
}
