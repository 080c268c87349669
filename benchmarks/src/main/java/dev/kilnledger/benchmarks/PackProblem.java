package dev.kilnledger.benchmarks;

import java.math.BigDecimal;
import java.util.Random;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Packs of some contents at some prices, of which the cheapest have to hold a need.
 *
 * @param contents the pieces in a pack of each offer
 * @param cents what a pack of each costs
 * @param need the pieces wanted
 */
record PackProblem(long[] contents, long[] cents, long need) {

  /**
   * Contents of 100 to 2,500 at prices per piece that scatter by a fifth, larger packs somewhat
   * cheaper.
   */
  static PackProblem random(Random random, int offers, long need) {
    long[] contents = new long[offers];
    long[] cents = new long[offers];
    for (int i = 0; i < offers; i++) {
      contents[i] = 100 + random.nextInt(2_401);
      double perPiece = (10 - contents[i] / 1_000.0) * (0.9 + 0.2 * random.nextDouble());
      cents[i] = Math.round(contents[i] * perPiece);
    }
    return new PackProblem(contents, cents, need);
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

  static String money(long cents) {
    return BigDecimal.valueOf(cents, 2).toPlainString();
  }
}
