package dev.kilnledger.benchmarks;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Random;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** Packs of some contents at some prices, of which the cheapest have to hold a need. */
final class PackProblem {
  private final long[] contents;
  private final long[] cents;
  private final long need;

  private PackProblem(long[] contents, long[] cents, long need) {
    this.contents = contents;
    this.cents = cents;
    this.need = need;
  }

  /**
   * Contents of 100 to 2,500 at prices per piece that scatter by a fifth, larger packs somewhat
   * cheaper.
   */
  static PackProblem random(Random random, int offers, long need) {
    long[] contents = new long[offers];
    long[] cents = new long[offers];
    for (int i = 0; i < offers; i++) {
      contents[i] = 100L + random.nextInt(2_401);
      double perPiece = (10 - contents[i] / 1_000.0) * (0.9 + 0.2 * random.nextDouble());
      cents[i] = Math.round(contents[i] * perPiece);
    }
    return new PackProblem(contents, cents, need);
  }

  int offers() {
    return contents.length;
  }

  /** The pieces in a pack of an offer. */
  long content(int offer) {
    return contents[offer];
  }

  /** What a pack of an offer costs. */
  String price(int offer) {
    return BigDecimal.valueOf(cents[offer], 2).toPlainString();
  }

  /** The pieces wanted. */
  long need() {
    return need;
  }

  /** The packs of each offer by the integer solver, rounded to whole numbers. */
  long[] bySolver() {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Expression held = model.newExpression("held").lower(need);
    Variable[] packs = new Variable[contents.length];
    for (int i = 0; i < packs.length; i++) {
      packs[i] = model.newVariable("packs " + i).integer(true).lower(0).weight(cents[i]);
      held.set(packs[i], contents[i]);
    }
    Optimisation.Result result = model.minimise();
    long[] counts = new long[packs.length];
    for (int i = 0; i < counts.length; i++) {
      counts[i] = Math.round(result.doubleValue(i));
    }
    return counts;
  }

  long cost(long[] packs) {
    long cost = 0;
    for (int i = 0; i < packs.length; i++) {
      cost += packs[i] * cents[i];
    }
    return cost;
  }

  boolean isCoveredBy(long[] packs) {
    long held = 0;
    for (int i = 0; i < packs.length; i++) {
      held += packs[i] * contents[i];
    }
    return held >= need;
  }

  @Override
  public String toString() {
    return need + " in packs of " + Arrays.toString(contents) + " at " + Arrays.toString(cents);
  }
}
